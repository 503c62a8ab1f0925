import { Option } from 'commander';
import { meantRefrigerant } from '../../engine/plan/refrigerants';
import * as saturation from '../../engine/properties';
import { type Refrigerant, refrigerantNamed, refrigerantNames, trustIn, whyLeftOut } from '../../engine/properties';
import { exactly, isProblem, nearest, readLiteral, type ShowOptions, show, toQuantity } from '../../engine/quantity';
import type { CommandDescription } from '../description';
import { type Paint, paintFor } from '../host';
import { formatOption, unitsIn, unitsOption, wantsJson } from '../options';
import { jsonText } from '../report/json';
import { table } from '../report/table';
import type { PropertiesPoint, PropertiesReport } from '../shapes/properties';
import { fine, Trouble } from '../trouble';
import { altitudeOption, atmosphereIn } from '../units';

type At = PropertiesPoint['at'];

export const properties: CommandDescription = {
  about:
    'Bubble is where liquid begins to boil (subcooling goes by it), dew where vapour begins to condense (superheat goes by it).',
  takes: [['<refrigerant>', 'as in a plan: R-454B']],
  options: [
    new Option('--at <value...>', 'temperatures or pressures: "40 degF" "118 psig"').makeOptionMandatory(),
    formatOption('text', 'json'),
    unitsOption,
    altitudeOption,
  ],
  examples: [
    'jobplan properties R-410A --at "40 degF" "118 psig"',
    'jobplan properties R-454B --at "5 degC" --units si',
  ],
  run: async (host, words) => {
    const refrigerant = refrigerantOf(words.one(0));
    const atmosphere = atmosphereIn(words);
    const asked = (words.option<readonly string[]>('at') ?? []).map((text) => readPoint(text, atmosphere));
    const points = asked.map((at) => pointOf(refrigerant, at, atmosphere));
    const { pressure, density, note } = trustIn(refrigerant);
    const report: PropertiesReport = {
      version: 1,
      refrigerant: refrigerant.name,
      trust: { pressure, density, note },
      points,
    };
    const options: ShowOptions = { system: unitsIn(words), atmosphere };
    host.out(wantsJson(words) ? jsonText(report) : textOf(refrigerant, points, options, paintFor(host)));
    return fine;
  },
};

function refrigerantOf(name: string): Refrigerant {
  const refrigerant = refrigerantNamed(name);
  if (refrigerant) return refrigerant;
  const why = whyLeftOut(name);
  if (why !== undefined) throw new Trouble(`There is no table of ${name}: ${why}`);
  const meant = meantRefrigerant(name);
  const near = meant !== undefined && refrigerantNamed(meant) ? meant : nearest(name, refrigerantNames);
  throw new Trouble(`There is no refrigerant "${name}" in the tables${near ? `; perhaps "${near}" is meant` : ''}.`);
}

/** A temperature or a pressure level, one figure; psi without gauge or absolute is no level. */
function readPoint(text: string, atmosphere: number): At {
  const literal = readLiteral(text);
  if (isProblem(literal)) throw new Trouble(`--at: ${literal.message}`);
  const isTemperature = literal.unit.kinds.includes('temperature');
  const isPressure = literal.unit.kinds.some((kind) => kind === 'pressure' || kind === 'pressure-difference');
  if (!isTemperature && !isPressure) throw new Trouble(`--at: "${text}" is neither a temperature nor a pressure.`);
  const quantity = toQuantity(literal, isTemperature ? 'temperature' : 'pressure', atmosphere);
  if (isProblem(quantity)) {
    const meant = quantity.suggestions.map((each) => `"${each}"`).join(' or ');
    throw new Trouble(`--at: ${quantity.message}${meant === '' ? '' : ` Perhaps ${meant} is meant.`}`);
  }
  if (quantity.low !== quantity.high) throw new Trouble(`--at: "${text}" is a range; write its two ends.`);
  return isTemperature ? { temperature: quantity.low } : { pressure: quantity.low };
}

function pointOf(refrigerant: Refrigerant, at: At, atmosphere: number): PropertiesPoint {
  if ('temperature' in at) {
    const figures = {
      bubblePressure: saturation.bubblePressure(refrigerant, at.temperature),
      dewPressure: saturation.dewPressure(refrigerant, at.temperature),
      liquidDensity: saturation.liquidDensity(refrigerant, at.temperature),
      vapourDensity: saturation.vapourDensity(refrigerant, at.temperature),
      liquidEnthalpy: saturation.liquidEnthalpy(refrigerant, at.temperature),
      vapourEnthalpy: saturation.vapourEnthalpy(refrigerant, at.temperature),
    };
    const lacking = Object.values(figures).includes(null);
    return {
      at,
      ...known(figures),
      ...(lacking && { outside: saturation.outside(refrigerant, 'temperature', atmosphere) }),
    };
  }
  const bubbleTemperature = saturation.bubbleTemperature(refrigerant, at.pressure);
  const dewTemperature = saturation.dewTemperature(refrigerant, at.pressure);
  const why = [
    ...(bubbleTemperature === null ? [saturation.outside(refrigerant, 'bubble', atmosphere)] : []),
    ...(dewTemperature === null ? [saturation.outside(refrigerant, 'dew', atmosphere)] : []),
  ];
  return { at, ...known({ bubbleTemperature, dewTemperature }), ...(why.length > 0 && { outside: why.join(' ') }) };
}

/** Without what is not known. */
const known = (figures: Readonly<Record<string, number | null>>): Readonly<Record<string, number>> =>
  Object.fromEntries(Object.entries(figures).filter((each): each is [string, number] => each[1] !== null));

const titles = {
  bubbleTemperature: 'bubble at',
  dewTemperature: 'dew at',
  bubblePressure: 'bubble at',
  dewPressure: 'dew at',
  liquidDensity: 'liquid',
  vapourDensity: 'vapour',
  liquidEnthalpy: 'liquid heat',
  vapourEnthalpy: 'vapour heat',
} as const;

const kinds = {
  bubbleTemperature: 'temperature',
  dewTemperature: 'temperature',
  bubblePressure: 'pressure',
  dewPressure: 'pressure',
  liquidDensity: 'density',
  vapourDensity: 'density',
  liquidEnthalpy: 'enthalpy',
  vapourEnthalpy: 'enthalpy',
} as const;
type Name = keyof typeof titles;

function textOf(
  refrigerant: Refrigerant,
  points: readonly PropertiesPoint[],
  options: ShowOptions,
  paint: Paint,
): string {
  const cell = (name: Name, point: PropertiesPoint): string => {
    const value = point[name];
    return value === undefined ? '' : show(exactly(kinds[name], value), { ...options, digits: 4 });
  };
  const at = (point: PropertiesPoint): string =>
    'temperature' in point.at
      ? show(exactly('temperature', point.at.temperature), { ...options, digits: 4 })
      : show(exactly('pressure', point.at.pressure), { ...options, digits: 4 });
  const part = (wanted: readonly Name[], some: readonly PropertiesPoint[]): readonly string[] => {
    if (some.length === 0) return [];
    const rows = some.map((point) => [at(point), ...wanted.map((name) => cell(name, point))]);
    const [head, ...rest] = table([['at', ...wanted.map((name) => titles[name])], ...rows], '  ');
    return [paint('bold', head!), ...rest, ''];
  };
  const byTemperature = points.filter((point) => 'temperature' in point.at);
  const byPressure = points.filter((point) => 'pressure' in point.at);
  const notes = [...new Set(points.flatMap(({ outside }) => (outside === undefined ? [] : [outside])))];
  const { note, pressure } = trustIn(refrigerant);
  return [
    `${refrigerant.name}, saturated`,
    '',
    ...part(
      ['bubblePressure', 'dewPressure', 'liquidDensity', 'vapourDensity', 'liquidEnthalpy', 'vapourEnthalpy'],
      byTemperature,
    ),
    ...part(['bubbleTemperature', 'dewTemperature'], byPressure),
    ...notes.map((each) => `  ${each}`),
    `  ${note} Pressures within about ${Number((pressure * 100).toPrecision(2))} %.`,
    '',
  ].join('\n');
}
