import type { Space } from '../../circuit/spaces';
import type { Cause, Plant } from '../../circuit/state';
import type { Severity } from '../../finding';
import type { Event } from '../../steps/events';
import { defineCheck, type Whole } from '../define';
import { listed } from '../listed';
import { endName, openedBy, standsNow, touchedSpaces } from '../plant';

/** A joint undone that is never made up, where it first matters. */
export const jointLeftOpen = defineCheck({
  name: 'joint-left-open',
  severity: 'warning',
  title: 'A joint is still open when the circuit is tested, evacuated or charged',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'A joint that an earlier step undid, or a part that it took off, is not back when the circuit is tested (a warning), evacuated, charged or given power (an error), or when the plan ends.',
  why: 'A test on an open circuit proves nothing; a pump draws in air and water; a charge goes into the room.',
  source: 'common practice (handbook 13.1: all joints made before the test)',
  wrong: {
    base: 'split',
    instead: [
      ['install filter-drier with nitrogen at 5 cfh\n', ''],
      [
        'pressure-test each open part to 450 psig for 30 min',
        'pressure-test each open part to 450 psig for 30 min # <- here',
      ],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const told = new Set<unknown>();
    for (const entry of whole.entries) {
      for (const event of entry.events) {
        const stage = stageOf(event);
        if (!stage) continue;
        let once = false;
        for (const space of reached(event, entry.before)) {
          for (const [cause, ends] of byCause(entry.before, space)) {
            const root = rootOf(entry.before, ends) ?? cause;
            if (told.has(root)) continue;
            told.add(root);
            told.add(cause);
            // Power that comes too early is one mistake, however many joints are open by then.
            if (once) continue;
            once = event.type === 'powers';
            whole.report(entry, {
              message: (say) =>
                `${list(whole, entry.before, ends)} still open when ${stage.when}: ${cause ? `${say.step(cause)} opened ${ends.length > 1 ? 'them' : 'it'}` : `${ends.length > 1 ? 'they were' : 'it was'} never made up`}.`,
              slot: 'what',
              severity: stage.severity,
              root: root ?? 'never',
              concerns: space.parts,
              related: cause ? [{ cause, message: 'it was opened here' }] : [],
            });
          }
        }
      }
    }
    const last = whole.entries.at(-1);
    if (!last) return;
    for (const space of touchedSpaces(last.after)) {
      for (const [cause, ends] of byCause(last.after, space)) {
        const entry = whole.entries.find((each) => each.cause === cause);
        const root = rootOf(last.after, ends) ?? cause;
        if (told.has(cause) || told.has(root) || !entry) continue;
        told.add(root);
        whole.report(entry, {
          message: `${list(whole, last.after, ends)} never made up again: the plan ends with the circuit open.`,
          slot: 'what',
          root,
          concerns: space.parts,
        });
      }
    }
  },
});

function stageOf(event: Event): { readonly when: string; readonly severity: Severity } | null {
  switch (event.type) {
    case 'pressurises':
      return event.purpose === 'test' ? { when: 'the pressure test begins', severity: 'warning' } : null;
    case 'evacuates':
      return { when: 'the pump is put on', severity: 'error' };
    case 'charges':
      return { when: 'refrigerant goes in', severity: 'error' };
    case 'powers':
      return event.to === 'on' ? { when: 'the power comes back', severity: 'error' } : null;
    default:
      return null;
  }
}

function reached(event: Event, plant: Plant): readonly Space[] {
  if (event.type === 'pressurises' || event.type === 'evacuates' || event.type === 'charges')
    return event.spaces.filter((space) => space.openings.length > 0);
  return touchedSpaces(plant).filter((space) => space.openings.length > 0);
}

function byCause(plant: Plant, space: Space): ReadonlyMap<Cause | null, readonly number[]> {
  const found = new Map<Cause | null, number[]>();
  for (const { end } of space.openings) {
    const cause = openedBy(plant, end);
    found.set(cause, [...(found.get(cause) ?? []), end]);
  }
  return found;
}

/** A part that is off leaves both its neighbours open: that is one mistake. */
const rootOf = (plant: Plant, ends: readonly number[]): string | null => {
  const gone = missingAt(plant, ends);
  return gone.length > 0 ? `off ${gone.join()}` : null;
};

const missingAt = (plant: Plant, ends: readonly number[]): readonly number[] => [
  ...new Set(
    ends.flatMap((end) =>
      (plant.graph.joints[plant.graph.ends[end]!.joint]?.ends ?? [])
        .map((each) => plant.graph.ends[each]!.part)
        .filter((part) => !standsNow(plant, part)),
    ),
  ),
];

/** "The inlet of suction-line (to filter-drier) is", or the parts that are missing there. */
function list(whole: Whole, plant: Plant, ends: readonly number[]): string {
  const { graph } = whole.plan;
  const gone = missingAt(plant, ends);
  const names = ends.map((end) => endName(graph, end));
  const text = `${names.slice(0, 2).join(' and ')}${names.length > 2 ? ` and ${names.length - 2} more ends` : ''}`;
  const missing = gone.map((part) => graph.parts[part]!.name);
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}${missing.length > 0 ? `, where ${listed(missing)} ${missing.length > 1 ? 'are' : 'is'} off,` : ''} ${names.length > 1 ? 'are' : 'is'}`;
}
