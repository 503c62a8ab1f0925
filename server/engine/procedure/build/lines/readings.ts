import type { Bound } from '../../../plan/bind';
import type { Selector } from '../../../plan/selection';
import type { Amount as Authored, Name } from '../../../plan/term';
import type { Kind } from '../../../quantity';
import { forTheRecord, reading } from '../../construct';
import type { StepLine } from '../../document';
import { type Sentence, sentence } from '../../sentence';
import { type Here, repeatOf } from '../here';
import { inBlock } from '../sheet';
import { capital, joined, unhyphened } from '../words';

/** What people read, by words in its name, and the unit that they read it in. The first that fits counts. */
const kinds: readonly (readonly [RegExp, Kind | string])[] = [
  [/superheat|subcooling|split|glide/, 'temperature-difference'],
  [/pressure-drop/, 'pressure-difference'],
  [/temperature|bulb/, 'temperature'],
  // A level in a glass is read as it stands; any other level is one of vacuum.
  [/(?:oil|water|liquid|receiver|tank|glass)-level/, 'as read'],
  [/level|vacuum/, 'micron'],
  [/pressure/, 'pressure'],
  [/amp|current/, 'A'],
  [/volt/, 'V'],
  [/charge|weight|mass|weighed/, 'mass'],
  [/wall|diameter|thickness|gap/, 'length'],
  [/acid/, 'acid-number'],
  [/oil|solvent/, 'volume'],
  [/time/, 'time'],
  [/torque/, 'torque'],
];
const bareUnits = new Set(['A', 'V', 'as read']);

/** The unit in which something is read: that of its limit, else by what it is called. */
export function unitFor(here: Here, what: string, limit: Authored | null | undefined): string {
  if (limit) return here.ruler.unit(limit.kind, limit);
  const found = kinds.find(([pattern]) => pattern.test(what))?.[1];
  if (found === undefined) return 'as read';
  if (found === 'micron') return here.ruler.vacuum;
  return bareUnits.has(found) ? found : here.ruler.unit(found as Kind);
}

export function limits(here: Here, most: Authored | null | undefined, least: Authored | null | undefined): Sentence {
  const both = joined(
    [
      least ? sentence('at least ', here.ruler.authored(least)) : [],
      most ? sentence('at most ', here.ruler.authored(most)) : [],
    ],
    ', ',
  );
  return both.length > 0 ? both : forTheRecord;
}

/** `read NAME` in a step's block. */
export function blockReadings(here: Here): readonly StepLine[] {
  return inBlock(here.step, 'read').map((bound: Bound) => {
    const what = (bound.values['name'] as Name).text;
    const at = (bound.values['at'] as Name | undefined)?.text;
    const most = bound.values['most'] as Authored | undefined;
    const least = bound.values['least'] as Authored | undefined;
    const label = `${capital(unhyphened(what, here.sheet.isName))}${at ? ` at ${unhyphened(at, here.sheet.isName)}` : ''}`;
    return reading(
      label,
      unitFor(here, what, most ?? least),
      [
        ...limits(here, most, least),
        ...(typeof bound.values['per'] === 'string' ? sentence(` (per ${bound.values['per']})`) : []),
      ],
      false,
    );
  });
}

/** The step `read …`: a blank for each thing, in each zone. */
export function readLines(here: Here): readonly StepLine[] {
  const most = here.stated('most');
  const least = here.stated('least');
  const selectors = here.value<readonly Selector[]>('what') ?? [];
  const zones = here.value<string>('zone') === 'zone' ? zonesOf(here) : [''];
  return selectors.flatMap((selector) => {
    const noun = selector.noun;
    const label = capital(unhyphened(noun, here.sheet.isName));
    if (noun === 'pressures') {
      const unit = here.ruler.unit('pressure');
      const entries = [
        { lead: 'suction', unit },
        { lead: 'discharge', unit },
      ];
      return [reading(label, entries, limits(here, most, least))];
    }
    const owners = selector.of.length > 0 ? selector.of.map((each) => each.noun) : zones;
    return owners.map((owner) =>
      reading(
        owner === '' ? label : `${label}, ${owner}`,
        unitFor(here, noun, most ?? least),
        limits(here, most, least),
      ),
    );
  });
}

/** A zone is a branch with a coil that takes heat up; of a machine with one coil, the coil. */
function zonesOf(here: Here): readonly string[] {
  const coils = here.plan.graph.parts.filter((part) => part.kind.kind === 'evaporator');
  const zones = coils.map((part) => part.within.at(-1) ?? part.name);
  return zones.length > 0 ? [...new Set(zones)] : [''];
}

export function acidLines(here: Here): readonly StepLine[] {
  const most = here.stated('most');
  const severe = here.stated('severe');
  const limit = joined(
    [
      most ? sentence('at most ', here.ruler.authored(most)) : [],
      severe ? sentence('severe above ', here.ruler.authored(severe)) : [],
    ],
    ', ',
  );
  return [reading('Acid number', here.ruler.unit('acid-number', most ?? severe), limit)];
}

/** A sample of oil in a repeat is what the rounds are ended by. */
export function sampleLines(here: Here): readonly StepLine[] {
  const repeat = repeatOf(here)?.step;
  const share = repeat?.values['share'] as Authored | undefined;
  const oil = (repeat?.values['oil'] as Name | undefined)?.text;
  const ofOil = here.value<readonly Selector[]>('what')?.some((each) => each.noun === 'oil') ?? false;
  if (!share || !ofOil) return [];
  return [
    reading(`${capital(oil ?? 'old')} oil left`, here.ruler.unit('share', share), limits(here, share, null), false),
  ];
}

export const weighLines = (here: Here): readonly StepLine[] => [
  reading('Weight', here.ruler.unit('mass'), forTheRecord),
];
