import type { Amount as Authored } from '../../plan/term';
import { refrigerantNamed } from '../../properties';
import { fromSI, type Quantity, unitNamed } from '../../quantity';
import { pressureStrip } from '../../takeoff/pressure-strip';
import type { ChargeAids, Fact, PressureStrip, StripRow } from '../document';
import { type Amount, sentence } from '../sentence';
import type { Sheet } from './sheet';

/** What is at hand while the charge is set. Nothing at all for a job that charges nothing. */
export function chargeAidsOf(sheet: Sheet): ChargeAids {
  const events = sheet.walk.entries.flatMap((entry) => entry.events);
  const gets = events.some((event) => event.type === 'charges' || event.type === 'lets-in');
  if (!gets) return { strips: [], targets: [], weights: [], weighIn: null };
  return {
    strips: strips(sheet),
    targets: targets(sheet),
    weights: weights(sheet),
    weighIn: weighIn(sheet),
  };
}

/** Where a plan states no working point: comfort cooling, coil at 40 °F, condenser 25 °F over outdoors (common practice, no source), K. */
const usualEvaporating = 277.6;
const usualLift = 25 / 1.8;
const usualOutdoors = 308.15; // 95 °F, the rating point of air conditioners (AHRI 210/240)

interface Point {
  readonly temperature: number;
  readonly stated: boolean;
}

function workingPoint({ plan }: Sheet): { readonly low: Point; readonly high: Point } {
  const { evaporating, condensing } = plan.system;
  const middle = (quantity: Quantity): number => (quantity.low + quantity.high) / 2;
  return {
    low: evaporating
      ? { temperature: middle(evaporating.quantity), stated: true }
      : { temperature: usualEvaporating, stated: false },
    high: condensing
      ? { temperature: middle(condensing.quantity), stated: true }
      : { temperature: (plan.site.outdoors?.quantity.high ?? usualOutdoors) + usualLift, stated: false },
  };
}

function strips(sheet: Sheet): readonly PressureStrip[] {
  const { ruler, plan } = sheet;
  const refrigerant =
    plan.system.refrigerant.after === null ? undefined : refrigerantNamed(plan.system.refrigerant.after);
  if (!refrigerant) return [];
  const si = ruler.main === 'si';
  const pressureUnit = si ? 'kPa gauge' : 'psig';
  const step = si ? 2 : 5 / 1.8;
  const point = workingPoint(sheet);
  const rows = [point.low, point.high].flatMap(({ temperature, stated }, k): StripRow[] => {
    const middle = roundTo(temperature, si);
    return pressureStrip(refrigerant, middle - 3 * step, middle + 3 * step, step).map((row) => ({
      temperature: String(Math.round(si ? row.temperature - 273.15 : row.temperature * 1.8 - 459.67)),
      bubble: level(row.bubble, pressureUnit, ruler.atmosphere),
      dew: level(row.dew, pressureUnit, ruler.atmosphere),
      note:
        Math.abs(row.temperature - middle) < step / 4
          ? `${k === 0 ? 'evaporating' : 'condensing'}${stated ? '' : ', about'}`
          : null,
    }));
  });
  return [
    {
      refrigerant: refrigerant.name,
      temperatureUnit: si ? '°C' : '°F',
      pressureUnit,
      bubbleUse: 'liquid leaving the condenser, for subcooling',
      dewUse: 'vapour leaving the coil, for superheat',
      rows,
    },
  ];
}

/** Whole steps of 5 °F or 2 °C stand in the strip, so that it is read like the card in the van. */
function roundTo(kelvin: number, si: boolean): number {
  if (si) return Math.round((kelvin - 273.15) / 2) * 2 + 273.15;
  const fahrenheit = kelvin * 1.8 - 459.67;
  return (Math.round(fahrenheit / 5) * 5 + 459.67) / 1.8;
}

/** One decimal below this, none above: what a gauge can show. */
const finelyRead = 100;

/** Below the atmosphere a gauge reads vacuum; it says so itself. */
function level(pressure: number, unit: string, atmosphere: number): string {
  const vacuum = pressure < atmosphere;
  const as = unitNamed(vacuum && unit === 'psig' ? 'inHg' : unit)!;
  const value = fromSI(pressure, as, 'pressure', atmosphere);
  const shown = value.toFixed(Math.abs(value) < finelyRead ? 1 : 0);
  return vacuum ? `${shown} ${as.name}` : shown;
}

function targets(sheet: Sheet): readonly Fact[] {
  const { plan, ruler } = sheet;
  const { subcooling, superheat, evaporating, condensing } = plan.system;
  const rows: Fact[] = [];
  const add = (label: string, stated: typeof subcooling): void => {
    if (stated) rows.push({ label, value: sentence(ruler.stated(stated), stated.per ? ` (per ${stated.per})` : '') });
  };
  add('Subcooling', subcooling);
  add('Superheat', superheat);
  add('Evaporating', evaporating);
  add('Condensing', condensing);
  for (const figure of [...figuresOf(sheet, 'target-superheat')]) {
    const shown = ruler.figure(figure);
    if (shown) rows.push({ label: 'Superheat by the weather', value: sentence(shown) });
  }
  return rows;
}

const figuresOf = (sheet: Sheet, name: string) => [
  ...sheet.totals(name),
  ...sheet.view.takeOff.steps.flat().filter((figure) => figure.name === name),
];

function weights(sheet: Sheet): readonly Fact[] {
  const { plan, ruler } = sheet;
  const rows: Fact[] = [];
  const { charge, chargeCovers } = plan.system;
  if (charge)
    rows.push({
      label: 'By the plate',
      value: sentence(ruler.stated(charge), ...(chargeCovers ? [' for ', ruler.stated(chargeCovers), ' of line'] : [])),
    });
  const caps = sheet.walk.entries.flatMap((entry) =>
    entry.slot.step.word.word === 'adjust' ? ((entry.slot.step.values['most'] as Authored | undefined) ?? []) : [],
  );
  for (const cap of caps) rows.push({ label: 'Never over', value: sentence(ruler.authored(cap), ' in all') });
  const capped = caps.length > 0;
  const seen = new Set<string>();
  for (const [name, label] of [
    ['line-allowance', 'For the lines'],
    ['total-charge', 'In all'],
    ['first-charge', 'First charge'],
    ['most-charge', 'Not over'],
  ] as const) {
    if (name === 'most-charge' && capped) continue;
    for (const figure of figuresOf(sheet, name)) {
      const shown = ruler.figure(figure);
      const key = `${name} ${JSON.stringify(figure.quantity)}`;
      if (shown && figure.quantity?.high !== 0 && !seen.has(key)) rows.push({ label, value: sentence(shown) });
      seen.add(key);
    }
  }
  return rows;
}

/** A usual cylinder of refrigerant, kg (25 lb; common practice, no source): how many rows the weighing-in wants. */
const usualCylinder = 11.34;
const mostRows = 6;

function weighIn(sheet: Sheet): ChargeAids['weighIn'] {
  const { ruler } = sheet;
  for (const entry of sheet.walk.entries) {
    const event = entry.events.find((each) => each.type === 'charges' && each.purpose === 'charge');
    if (event?.type !== 'charges') continue;
    const { step } = entry.slot;
    const stated = (step.values['with'] as { b?: Parameters<typeof ruler.authored>[0] } | undefined)?.b;
    const added = sheet.figuresOf(step, 'line-allowance');
    if (!stated && added[0]?.quantity?.high === 0) continue;
    const allowance = added.flatMap((figure) => ruler.figure(figure) ?? [])[0];
    const planned: Amount | null = stated ? ruler.authored(stated) : (allowance ?? null);
    const rows = Math.min(mostRows, Math.max(1, Math.ceil((event.mass?.high ?? 0) / usualCylinder)));
    return {
      cylinders: Array.from(
        { length: rows },
        (_, k) => `${event.refrigerant}, ${rows === 1 ? 'cylinder' : `no. ${k + 1}`}`,
      ),
      unit: ruler.unit('mass'),
      limit: planned ? sentence(planned, ' by the plan') : sentence('by the readings'),
    };
  }
  return null;
}
