import { type Bound, child } from '../../plan/bind';
import type { BringItem } from '../../plan/plan';
import type { Amount as Authored, Name } from '../../plan/term';
import { exactly } from '../../quantity';
import { gaugeResolution, temperatureUncertainty } from '../../reference/pressure-test';
import type { Tool } from '../document';
import { type Sentence, sentence } from '../sentence';
import { classOf, flammable } from './hazards';
import { hereOf } from './here';
import { reliefWindow } from './lines/pressure';
import type { Sheet } from './sheet';
import { joined } from './words';

/** A scale for cylinders reads half an ounce (common practice, no source), kg. */
const scaleStep = 0.0142;

/** What the tools must stand: from the pressures, the gases and the levels of this job. */
export function toolsOf(sheet: Sheet): readonly Tool[] {
  const item = (word: string): BringItem | undefined => (sheet.plan.bring ?? []).find((each) => each.word === word);
  return [
    ...regulator(sheet, item('regulator')),
    ...recoveryMachine(sheet, item('recovery-machine')),
    ...scale(sheet),
    ...pump(sheet, item('pump')),
    ...detector(sheet, item('leak-detector')),
    ...handTools(sheet),
    ...stated(sheet),
  ];
}

const named = (what: string, item: BringItem | undefined): Sentence =>
  sentence(item?.name ? `${what} ${item.name}` : what);

const events = (sheet: Sheet) => sheet.walk.entries.flatMap((entry) => entry.events);

const amountIn = (bound: Bound | null | undefined, word: string, slot: string): Authored | undefined =>
  bound ? (child(bound.block, word)?.values[slot] as Authored | undefined) : undefined;

function regulator(sheet: Sheet, item: BringItem | undefined): readonly Tool[] {
  const { ruler } = sheet;
  const levels = events(sheet).flatMap((event) => {
    if (event.type === 'pressurises' && event.medium === 'nitrogen') return [event.level];
    return event.type === 'flows' && event.medium === 'nitrogen' && event.level !== null ? [event.level] : [];
  });
  if (levels.length === 0) return [];
  const highest = Math.max(...levels);
  const outlet = amountIn(item?.declaration?.bound, 'outlet', 'pressure');
  const tools: Tool[] = [
    {
      take: named('Nitrogen regulator', item),
      rating: [
        ...sentence('outlet to ', ruler.fact(exactly('pressure', highest), 'psig'), ' or more'),
        ...(outlet ? sentence('; this one gives ', ruler.authored(outlet)) : []),
      ],
      why: 'the highest pressure of the job',
    },
  ];
  for (const entry of sheet.walk.entries) {
    const test = entry.events.find((event) => event.type === 'pressurises' && event.purpose === 'test');
    if (test?.type !== 'pressurises' || test.level < highest) continue;
    const here = hereOf(sheet, entry.slot.step, sheet.entriesOf(entry.slot.step));
    const window = here ? reliefWindow(here) : null;
    const shown = window ? ruler.figure(window) : null;
    const own = item?.declaration?.bound && child(item.declaration.bound.block, 'relief');
    const range = own?.values['range'] as Authored | undefined;
    tools.push({
      take: sentence('Relief valve on its outlet'),
      rating: [
        ...(shown ? sentence('set at ', shown) : sentence('set above the test, below the weakest part')),
        ...(range ? sentence('; this one takes ', ruler.authored(range)) : []),
      ],
      why: `step ${sheet.numberOf(entry.slot.step) ?? ''}`.trim(),
    });
    break;
  }
  const flow = events(sheet).some((event) => event.type === 'joins' && event.torch);
  if (flow)
    tools.push({
      take: sentence('Flow meter for nitrogen'),
      rating: sentence('reads the few cfh of a purge'),
      why: 'nitrogen while brazing',
    });
  return tools;
}

function gasesOf(sheet: Sheet): { readonly recovered: readonly string[]; readonly charged: readonly string[] } {
  const recovered = new Set<string>();
  const charged = new Set<string>();
  for (const event of events(sheet)) {
    if (event.type === 'recovers') for (const held of event.held) if (held.refrigerant) recovered.add(held.refrigerant);
    if (event.type === 'charges' && event.refrigerant) charged.add(event.refrigerant);
  }
  return { recovered: [...recovered], charged: [...charged] };
}

function recoveryMachine(sheet: Sheet, item: BringItem | undefined): readonly Tool[] {
  const { recovered } = gasesOf(sheet);
  if (recovered.length === 0) return [];
  return [
    {
      take: named('Recovery machine', item),
      rating: sentence(`certified for ${recovered.map((gas) => `${gas} (${classOf(gas)})`).join(', ')}`),
      why: 'recovery',
    },
  ];
}

function scale(sheet: Sheet): readonly Tool[] {
  const { recovered, charged } = gasesOf(sheet);
  if (recovered.length + charged.length === 0) return [];
  return [
    {
      take: sentence('Scale'),
      rating: sentence('carries a full cylinder, reads to ', sheet.ruler.fact(exactly('mass', scaleStep))),
      why: 'cylinders in and out',
    },
  ];
}

function pump(sheet: Sheet, item: BringItem | undefined): readonly Tool[] {
  const { ruler, plan } = sheet;
  const levels = events(sheet).flatMap((event) => (event.type === 'evacuates' ? [event.level] : []));
  if (levels.length === 0) return [];
  const lowest = Math.min(...levels);
  const ultimate = amountIn(item?.declaration?.bound, 'ultimate', 'level');
  const after = plan.system.refrigerant.after;
  const hose = (item?.bound.values['hose'] as Name | undefined)?.text;
  return [
    {
      take: sentence(
        `Vacuum pump${item?.name ? ` ${item.name}` : ''}${hose ? ` with ${item!.number} x ${hose}` : ''}, fresh oil`,
      ),
      rating: joined([
        sentence('reaches well below ', ruler.fact(exactly('pressure', lowest), ruler.vacuum)),
        ultimate ? sentence('this one ', ruler.authored(ultimate)) : [],
        after !== null && flammable(after) ? sentence(`made for ${classOf(after)}`) : [],
      ]),
      why: 'evacuation',
    },
    {
      take: sentence('Micron gauge'),
      rating: sentence('at the far end, never at the pump'),
      why: 'evacuation and the watch after it',
    },
  ];
}

function detector(sheet: Sheet, item: BringItem | undefined): readonly Tool[] {
  const after = sheet.plan.system.refrigerant.after ?? sheet.plan.system.refrigerant.before;
  if (after === null) return [];
  const own = item?.bound.values['class'] as string | undefined;
  const needs = events(sheet).some((event) => event.type === 'charges' || event.type === 'lets-in');
  if (!needs && !item) return [];
  return [
    {
      take: sentence('Leak detector'),
      rating: sentence(
        `made for ${classOf(after)} (${after})${own && own !== classOf(after) ? `; this one for ${own}` : ''}`,
      ),
      why: flammable(after) ? 'on before gas is let in' : 'leak search',
    },
  ];
}

function handTools(sheet: Sheet): readonly Tool[] {
  const tools: Tool[] = [];
  const words = new Set(sheet.walk.entries.map((entry) => entry.slot.step.word.word));
  const add = (asks: boolean, take: string, rating: string, why: string): void => {
    if (asks) tools.push({ take: sentence(take), rating: sentence(rating), why });
  };
  const all = events(sheet);
  const high = Math.max(
    0,
    ...all.flatMap((event) => (event.type === 'pressurises' && event.purpose === 'test' ? [event.level] : [])),
  );
  if (high > 0)
    tools.push({
      take: sentence('Gauges and hoses'),
      rating: sentence(
        'good for ',
        sheet.ruler.fact(exactly('pressure', high), 'psig'),
        '; test gauge reads to ',
        sheet.ruler.fact(gaugeResolution.quantity, undefined, 2),
      ),
      why: 'pressure test',
    });
  if (high > 0)
    tools.push({
      take: sentence('Pipe thermometer'),
      rating: sentence('within ', sheet.ruler.fact(temperatureUncertainty.quantity, undefined, 2)),
      why: 'correction of the test reading',
    });
  add(
    all.some((event) => event.type === 'joins' && event.torch),
    'Torch, tube cutter, deburrer',
    'extinguisher with it',
    'brazing',
  );
  add(words.has('flare'), 'Flaring tool, cutter, deburrer', '45 degrees, for this tube', 'new flares');
  add(
    all.some((event) => event.type === 'joins' && /torque/.test(event.with ?? '')),
    'Torque wrench',
    'jaws and range for these nuts, in its test date',
    'flares',
  );
  add(words.has('crimp'), 'Crimping pliers', 'leave the hole that the plan asks', 'flush');
  add(words.has('choke'), 'Chokes', 'bore as the plan asks, counted', 'flush');
  add(
    words.has('flush'),
    'Catch container with lid and hose tie',
    'for this solvent, larger than all that comes out',
    'flush',
  );
  add(words.has('lock-out'), 'Locks, tags, voltage tester', 'tester proven on a live point', 'lock-out');
  const by = sheet.walk.entries.flatMap((entry) =>
    entry.slot.step.word.word === 'open' ? [(entry.slot.step.values['by'] as string | undefined) ?? ''] : [],
  );
  add(by.includes('magnet'), 'Magnets', 'one for each solenoid', 'solenoids held open');
  add(words.has('acid-test'), 'Acid test kit', 'for this oil', 'acid');
  return tools;
}

/** Tools that the plan names in its own words. */
const stated = (sheet: Sheet): readonly Tool[] =>
  (sheet.plan.bring ?? [])
    .filter((item) => item.word === 'tool')
    .map((item) => ({ take: sentence(item.name), rating: [], why: 'the plan asks for it' }));
