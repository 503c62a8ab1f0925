import { type Space, spacesOf } from '../../circuit/spaces';
import type { Plant } from '../../circuit/state';
import type { Entry } from '../../walk/walk';
import { aroundOf } from '../course';
import { defineCheck, type Here, type Mend } from '../define';
import { isCompressor, onlyDriers, readyCompressors } from '../plant';
import { roundTrip } from '../round-trip';
import { edits, underLaw } from '../support';
import { said } from '../ways-out';

/** A joint undone or a torch lit while the compressors can still start. */
export const workWithoutLockOut = defineCheck({
  name: 'work-without-lock-out',
  severity: 'error',
  title: 'The circuit is opened or brazed with the power on',
  acceptable: false,
  reads: 'state',
  ground: 'law',
  meaning:
    'At this step the circuit is opened, cut or brazed while neither the power nor the machine that it hangs on is locked out. Control power alone, survey, pump-down and oil rounds before the lock-out are fine; so is a drier shell between its own shut valves while the machine runs on past it; once it is stopped, it can start by itself.',
  why: 'A compressor or fan that starts by itself hurts people, draws air into an open circuit and burns out.',
  source: '29 CFR 1910.147 (handbook 11, electrical isolation)',
  wrong: {
    base: 'split',
    instead: [
      ['lock-out power\n', ''],
      ['disconnect each kept line at both ends', 'disconnect each kept line at both ends # <- here'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    if (here.before.power !== 'on') return;
    for (const event of here.events('opens')) {
      if (event.how === 'pierced') continue;
      // Cores are changed beside a machine that runs on past them; one that was stopped for it starts when its control calls.
      if (here.before.running && onlyDriers(here.before, event.space) && runsPast(here.before)) continue;
      if (lockedOutAt(here, event.part, event.space)) continue;
      say(here, event.part, 'opened');
      return;
    }
    const torch = here
      .events('joins')
      .find(
        ({ torch, part }) =>
          torch &&
          !here.before.lockedOut.has(part) &&
          !spacesOf(here.before, part).some((space) => lockedOutAt(here, part, space)),
      );
    if (torch) say(here, torch.part, 'brazed');
  },
});

/** Whether every compressor has a way round with the valves as they stand. */
const runsPast = (plant: Plant): boolean =>
  readyCompressors(plant).every((part) => roundTrip(plant, part.index).comesBack);

/**
 * Whether what could start at a part is locked out: the part itself, every compressor that it hangs together with, or where
 * there is none anything in the section, such as the fans and the solenoid of a case while the rack runs on; or, where nothing
 * in it has fans, every compressor of its circuit by name.
 */
function lockedOutAt({ before: plant }: Here, part: number, space: Space): boolean {
  const { graph, lockedOut } = plant;
  if (lockedOut.has(part)) return true;
  const compressors = space.parts.filter((index) => isCompressor(graph.parts[index]!));
  if (compressors.length > 0) return compressors.some((index) => lockedOut.has(index));
  if (space.parts.some((index) => lockedOut.has(index))) return true;
  // A coil has fans, which have power of their own; at a line or a shell between shut valves the machine alone could start.
  if (space.parts.some((index) => graph.parts[index]!.kind.group === 'coil')) return false;
  const machines = graph.parts.filter(
    (each) =>
      isCompressor(each) && each.circuit === graph.parts[part]!.circuit && plant.parts[each.index]!.mounted !== 'none',
  );
  return machines.length > 0 && machines.every(({ index }) => lockedOut.has(index));
}

function say(here: Here, part: number, what: string): void {
  here.report({
    message: (name) =>
      `${name.parts([part])} is ${what} with the power on: lock out first, so that nothing starts under your hands${underLaw(here.plan, 'lockOut')}.`,
    slot: 'what',
    root: here.before.powerBy ?? here.before.graph,
    related: here.before.powerBy ? [{ cause: here.before.powerBy, message: 'the power came back here' }] : [],
    fixes: [
      {
        title: 'Lock out before this step',
        edits: (mend) => {
          const what = givenBack(mend, here.entry);
          return what === null ? [] : edits(mend.insertBefore(here.step, `lock-out ${what}`));
        },
      },
    ],
  });
}

/** What a later step restores, power or a part by its name, that was never locked out: null where nothing is given back. */
function givenBack(mend: Mend, entry: Entry): string | null {
  for (const { slot, events } of aroundOf(mend.view.walk.entries, entry).later) {
    if (slot.step.word.word !== 'restore') continue;
    if (events.some((event) => event.type === 'powers')) return 'power';
    if (events.some((event) => event.type === 'no-effect')) return said(slot.step, 'what');
  }
  return null;
}
