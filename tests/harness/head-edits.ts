import type { Line } from './scene';
import type { Made } from './step-edits';
import { figuresIn, inSI } from './units';

type Change = readonly [operator: string, find: RegExp, put: string | ((...found: string[]) => string)];
const part = '^(\\s+(?:[\\w-]+: )?[\\w-]+)';
const scaled =
  (factor: number) =>
  (_: string, head: string, number: string): string =>
    `${head}${Math.round(Number(number) * factor * 1000) / 1000}`;

/** Statements of the site, the crew, the system, the circuit, the stock and the plan itself, put differently. */
const changes: readonly Change[] = [
  ['state kept to removed', new RegExp(`${part} kept\\b`), '$1 removed'],
  ['state kept to new', new RegExp(`${part} kept\\b`), '$1 new'],
  ['state kept to added', new RegExp(`${part} kept\\b`), '$1 added'],
  ['state new to kept', new RegExp(`${part} new\\b`), '$1 kept'],
  ['state new to removed', new RegExp(`${part} new\\b`), '$1 removed'],
  ['state reused to removed', new RegExp(`${part} reused\\b`), '$1 removed'],
  ['state added to kept', new RegExp(`${part} added\\b`), '$1 kept'],
  ['kind misspelt', /^(\s+(?:[\w-]+: )?)([\w-]+)( (?:kept|new)\b)/, '$1$2x$3'],
  ['kind line to drier', /^(\s+[\w-]+: )[\w-]+-line( kept\b)/, '$1filter-drier$2'],
  ['kind valve to orifice', /^(\s+(?:[\w-]+: )?)expansion-valve (new|kept)/, '$1fixed-orifice $2'],
  ['kind condenser to microchannel', /^(\s+(?:[\w-]+: )?)condenser kept/, '$1microchannel-coil kept'],
  ['refrigerant unknown', /^(\s+refrigerant (?:\S+ -> )?R-)(\d+)/, '$19$2'],
  ['refrigerant dropped', /^\s{4}refrigerant R-\S+( -> \S+)?$/, ''],
  ['refrigerant propane', /^(\s+refrigerant (?:\S+ -> )?)R-\S+/, '$1R-290'],
  ['refrigerant carbon dioxide', /^(\s+refrigerant (?:\S+ -> )?)R-\S+/, '$1R-744'],
  ['refrigerant of the old', /^(\s+refrigerant )(\S+) -> \S+/, '$1$2'],
  ['oil mineral', /^(\s+oil (?:\S+ -> )?)POE/, '$1mineral'],
  ['oil unknown', /^(\s+oil (?:\S+ -> )?)(\w+)/, '$1$2x'],
  ['holds another', /^(\s+holds )R-\S+/, '$1R-22'],
  ['holds dropped', /^\s+holds .*/, ''],
  ['unit valves open', /^(\s+valves )closed/, '$1open'],
  ['unit valves dropped', /^\s+valves closed/, ''],
  ['tube misspelt', /^(\s+tube .*)(ACR|EN)\s*$/, '$1QX'],
  ['tube far wider', /^(\s+tube )\S+( in ACR)/, '$12-5/8$2'],
  ['tube far smaller', /^(\s+tube )(?!1\/4)\S+( in ACR)/, '$11/4$2'],
  ['tube dropped', /^\s+tube .*/, ''],
  ['length dropped', /^\s+length .*/, ''],
  ['joint flare', /^(\s+joint )brazed/, '$1flare'],
  ['joint unknown', /^(\s+joint )\w+/, '$1glued'],
  ['both ways dropped', /^\s+both-ways/, ''],
  ['sensor dropped', /^\s+leak-sensor .*/, ''],
  ['core plain', /^(\s+core )acid/, '$1standard'],
  ['file misspelt', /^use "/, 'use "no-'],
  ['use dropped', /^use ".*/, ''],
  ['standard revision', /^(\s+follows .* revision )(\d+)/, (_, head, n) => `${head}${Number(n) + 1}`],
  ['standard misspelt', /^(\s+follows )/, '$1x'],
  ['plan revision', /^( {2}revision )(\d+)/, (_, head, n) => `${head}${Number(n) + 1}`],
  ['date after the retest', /^( {2}date )\d{4}/, '$12035'],
  ['date impossible', /^( {2}date \d{4}-)\d\d/, '$113'],
  ['date dropped', /^ {2}date .*/, ''],
  ['kind of job misspelt', /^( {2}kind )(\w)(\w)/, '$1$3$2q'],
  ['burnout not said', /^( {2}kind .*), burnout/, '$1'],
  ['certificate too low', /^(\s+\w+ )certified (?:universal|type-II)\b(?!I)/, '$1certified type-III'],
  ['certificate dropped', /^(\s+\w+ )certified .*/, '$1'],
  ['certificate unknown', /^(\s+\w+ certified )/, '$1x'],
  ['rules unknown', /^( {2}under )/, '$1x'],
  ['because dropped', / because "[^"]*"/, ''],
  ['departure label', /^( {2}(?:before|after|change|skip|replace) )([\w-]+)/, '$1$2x'],
  ['solvent unknown', /^( {2}solvent )/, '$1x'],
  ['solvent dropped', /^ {2}solvent .*/, ''],
  ['test pressure dropped', /^ {2}test-pressure .*/, ''],
  ['difference to temperature', /Δ°([FC])/, 'deg$1'],
  ['psig to psi', /(\d) psig/, '$1 psi'],
  ['unit dropped', /(\d) (ft|psig|lb|kg|m)\s*$/, '$1'],
  [
    'stock unknown',
    /^(\s{4}(?:[\w-]+: )?(?:solvent|nitrogen|recovery|pump|regulator|recovery-machine) (?:\d+ x )?)/,
    '$1x',
  ],
  [
    'stock dropped',
    /^\s{4}(?:[\w-]+: )?(?:solvent|nitrogen|recovery|pump|regulator|recovery-machine|leak-detector) (?:\d+ x )?[\w-]+( |$).*/,
    '',
  ],
  ['stock dropped', /^\s{4}(?:oil|refrigerant) \S+ \d.*/, ''],
  ['cylinder full', /^(\s+(?:[\w-]+: )?recovery 1 x [\w-]+) empty/, '$1 holding R-134a 18 lb'],
  ['detector of another class', /^(\s+leak-detector )A2L/, '$1A1'],
  ['section end unknown', /^(\s+section \S+ from )/, '$1x'],
  ['through unknown', /^(\s+through )/, '$1x'],
  ['branch misspelt', /^(\s+)branch /, '$1brnach '],
  ['rating / 10', /^(\s+rated )(\d+(?:\.\d+)?)/, scaled(0.1)],
  ['rating / 2', /^(\s+rated )(\d+(?:\.\d+)?)/, scaled(0.5)],
  ['design low x 10', /(design-pressure low )(\d+(?:\.\d+)?)/, scaled(10)],
  ['design low x 2', /(design-pressure low )(\d+(?:\.\d+)?)/, scaled(2)],
  ['design high / 10', /(design-pressure .*high )(\d+(?:\.\d+)?)/, scaled(0.1)],
  ['test pressure x 2', /^( {2}test-pressure )(\d+(?:\.\d+)?)/, scaled(2)],
  ['test pressure / 10', /^( {2}test-pressure )(\d+(?:\.\d+)?)/, scaled(0.1)],
  ['room / 100', /^(\s+smallest-room )(\d+(?:\.\d+)?)/, scaled(0.01)],
  ['outdoors frost', /^(\s+outdoors )\d+ deg(F|C)/, '$1-20 deg$2'],
  ['altitude impossible', /^(\s+altitude )(\d+(?:\.\d+)?)/, scaled(1000)],
  ['charge x 10', /^(\s{4}charge )(\d+(?:\.\d+)?)/, scaled(10)],
  ['recover-charge x 20', /^(\s{4}recover-charge )(\d+(?:\.\d+)?)/, scaled(20)],
];

/** One line above the steps changed. */
export function* headEdits(lines: readonly string[], steps: readonly Line[]): Generator<Made> {
  const inSteps = (at: number): boolean => steps.some((step) => at >= step.from && at <= step.to);
  for (let at = 0; at < lines.length; at++) {
    if (inSteps(at)) continue;
    const was = lines[at]!;
    for (const [operator, find, put] of changes) {
      const now = typeof put === 'string' ? was.replace(find, put) : was.replace(find, put as (s: string) => string);
      if (now === was) continue;
      const [old, fresh] = [figuresIn(was)[0], figuresIn(now)[0]];
      // A block goes with its word.
      if (now.trim() === '' && /\{\s*$/.test(was)) continue;
      yield {
        operator,
        at: -1,
        was,
        now,
        lines:
          now.trim() === ''
            ? [...lines.slice(0, at), ...lines.slice(at + 1)]
            : [...lines.slice(0, at), now, ...lines.slice(at + 1)],
        touched: now.trim() === '' ? [at - 1, at] : [at],
        ...(old &&
          fresh && {
            figure: {
              was: inSI(old.number, old.unit) ?? old.number,
              now: inSI(fresh.number, fresh.unit) ?? fresh.number,
              key: old.key,
              unit: old.unit,
              nowUnit: fresh.unit,
            },
          }),
      };
    }
    // A part left out of the circuit, with its block.
    if (/^\s+(?:[\w-]+: )?[\w-]+ (?:kept|new|added|reused)\b/.test(was)) {
      let to = at;
      if (/\{\s*$/.test(was)) while (!/^\s*\}\s*$/.test(lines[to]!) && to + 1 < lines.length) to++;
      yield {
        operator: 'part dropped',
        at: -1,
        was,
        now: '',
        lines: [...lines.slice(0, at), ...lines.slice(to + 1)],
        touched: [at - 1, at],
      };
    }
  }
}
