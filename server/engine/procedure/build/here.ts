import type { Space } from '../../circuit/spaces';
import type { Plant } from '../../circuit/state';
import type { Plan } from '../../plan/plan';
import type { Step } from '../../plan/step';
import type { Amount as Authored } from '../../plan/term';
import type { Event } from '../../steps/events';
import type { Figure } from '../../takeoff/figure';
import { type Entry, roundsOf } from '../../walk/walk';
import type { Ruler } from './ruler';
import type { Sheet } from './sheet';

/** One step while its lines and cautions are written. */
export interface Here {
  readonly sheet: Sheet;
  readonly plan: Plan;
  readonly ruler: Ruler;
  readonly step: Step;
  /** The first round and the last; the same entry outside of a repeat. */
  readonly entry: Entry;
  readonly last: Entry;
  readonly before: Plant;
  readonly after: Plant;
  events<T extends Event['type']>(type: T): readonly Extract<Event, { type: T }>[];
  /** A value of the step as the author wrote it. */
  value<T>(slot: string): T | undefined;
  /** An amount of the step, or the parameter of the plan that stands for it. */
  stated(slot: string): Authored | null;
  figures(name: string): readonly Figure[];
  partName(index: number): string;
  partNames(spaces: readonly Space[]): readonly string[];
}

export function hereOf(sheet: Sheet, step: Step, entries: readonly Entry[]): Here | null {
  const [entry] = entries;
  const last = entries.at(-1);
  if (!entry || !last) return null;
  const { plan } = sheet;
  const partName = (index: number): string => plan.graph.parts[index]?.name ?? '';
  return {
    sheet,
    plan,
    ruler: sheet.ruler,
    step,
    entry,
    last,
    before: entry.before,
    after: last.after,
    events: (type) =>
      entry.events.filter((event): event is Extract<Event, { type: typeof type }> => event.type === type),
    value: <T>(slot: string) => step.values[slot] as T | undefined,
    stated: (slot) => {
      const value = step.values[slot] as Authored | { readonly text: string } | undefined;
      if (value && 'literal' in value) return value;
      return value?.text === 'test-pressure' ? (plan.parameters.testPressure?.amount ?? null) : null;
    },
    figures: (name) => sheet.figuresOf(step, name),
    partName,
    partNames: (spaces) => [...new Set(spaces.flatMap((space) => space.parts))].map(partName),
  };
}

/** The repeat that the step stands in, the innermost, with its rounds. */
export function repeatOf(here: Here): { readonly step: Step; readonly least: number; readonly most: number } | null {
  const repeat = here.entry.slot.within.filter((each) => each.word.word === 'repeat').at(-1);
  return repeat ? { step: repeat, ...roundsOf(repeat) } : null;
}
