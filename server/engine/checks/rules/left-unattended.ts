import type { Space } from '../../circuit/spaces';
import type { Plant } from '../../circuit/state';
import type { Severity } from '../../finding';
import { defineCheck, type RelatedTo, type Say } from '../define';
import { endName, heldBy, isDrier, openedBy, touchedSpaces } from '../plant';

/** The circuit as it stands when the crew goes away, or waits at a hold. */
export const leftUnattended = defineCheck({
  name: 'left-unattended',
  severity: 'warning',
  title: 'The circuit is left open, wet, under an unproven vacuum, or open with the power on',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['work-without-lock-out', 'joint-left-open', 'flush-not-purged', 'wet-with-solvent', 'decay-test-missing'],
  meaning:
    'When the crew leaves before a visit or at the end of one, a kept or new part stands open to the air, wet with solvent, or under a vacuum that nobody has proved; or the circuit is open with the power on, which is looked at by every hold, too, and is an error. Caps, plugs and pinched ends shut; a stand test and a holding charge of nitrogen are fine.',
  why: 'Over night a line draws in water and dirt, solvent creeps, a drier fills with moisture, and somebody who was not there switches on.',
  source: 'common practice (handbook 2.1, 5.3, 8.2); power: 29 CFR 1910.147 (handbook 11)',
  wrong: {
    base: 'split',
    instead: [
      [
        '  crimp each kept line at far end, leaving 1/8 in',
        '  visit "Second day" within 1 day { # <- here\n    crimp each kept line at far end, leaving 1/8 in',
      ],
      ['record quantities, readings', 'record quantities, readings\n  }'],
    ],
  },
  right: {
    base: 'split',
    instead: [
      [
        '  crimp each kept line at far end, leaving 1/8 in',
        '  cap each kept line at both ends\n  visit "Second day" within 1 day {\n    uncap each kept line at both ends\n    crimp each kept line at far end, leaving 1/8 in',
      ],
      ['record quantities, readings', 'record quantities, readings\n  }'],
    ],
  },
  plan(whole) {
    const { entries } = whole;
    entries.forEach((entry, at) => {
      if (entry.slot.step.word.word === 'hold') {
        const live = entry.after.power === 'on' ? leftOpen(entry.after)[0] : undefined;
        if (live) whole.report(entry, { ...powered(entry.after, live), slot: 'what' });
      }
      const earlier = entries[at - 1];
      if (!earlier) return;
      const visit = entry.slot.within.find((step) => step.word.word === 'visit');
      const last = earlier.slot.within.find((step) => step.word.word === 'visit');
      // Whoever goes away leaves what stands before the first step of a visit, and after the last one of it.
      const apart = visit === last ? undefined : (visit ?? last);
      if (!apart) return;
      const left = looked(earlier.after);
      if (!left) return;
      const { related, ...report } = left;
      whole.reportAt(
        apart.bound,
        apart.bound.spans['title'] ?? { from: 0, to: apart.word.word.length },
        { ...report, root: left.root ?? apart, related: related ?? [] },
        apart.file,
      );
    });
  },
});

interface Left {
  readonly message: string | ((say: Say) => string);
  readonly severity: Severity;
  readonly root: unknown;
  readonly concerns: readonly number[];
  readonly related?: readonly RelatedTo[];
}

/** What the crew must not leave, the gravest first. */
function looked(plant: Plant): Left | null {
  const open = leftOpen(plant);
  const [first] = open;
  if (first && plant.power === 'on') return powered(plant, first);
  if (first) {
    const [opening] = first.openings;
    const cause = opening ? openedBy(plant, opening.end) : null;
    const drier = first.parts.find(
      (index) => isDrier(plant.graph.parts[index]!) && plant.parts[index]!.mounted === 'new',
    );
    return {
      message: (say) =>
        `${say.parts(first.parts)} ${first.parts.length > 1 ? 'are' : 'is'} left open to the air at ${endName(plant.graph, opening!.end)} while nobody is there${drier === undefined ? '' : `, and ${say.part(drier)} takes up its water`}: cap every end.`,
      severity: 'warning',
      root: cause,
      concerns: open.flatMap((space) => space.parts),
      ...(cause && { related: [{ cause, message: 'it was opened here' }] }),
    };
  }
  const closed = touchedSpaces(plant).filter((space) => !goes(plant, space));
  for (const space of closed) {
    const wet = space.parts.find((index) => plant.parts[index]!.wet !== null);
    if (wet !== undefined)
      return {
        message: (say) => `${say.part(wet)} is left wet with solvent while nobody is there: purge it dry first.`,
        severity: 'warning',
        root: plant.parts[wet]!.wet,
        concerns: [wet],
        related: [{ cause: plant.parts[wet]!.wet, message: 'the solvent came in here' }],
      };
    const held = heldBy(plant, space);
    if (held.gas === 'vacuum' && space.parts.some((index) => plant.parts[index]!.decayTested === null))
      return {
        message: (say) =>
          `${say.parts(space.parts)} ${space.parts.length > 1 ? 'are' : 'is'} left under a vacuum that no decay test has proved: break it with nitrogen, or prove it before anybody goes.`,
        severity: 'warning',
        root: held.since,
        concerns: space.parts,
        related: [{ cause: held.since, message: 'it was pumped down here' }],
      };
  }
  return null;
}

const powered = (plant: Plant, space: Space): Left => ({
  message: (say) =>
    `${say.parts(space.parts)} ${space.parts.length > 1 ? 'stand' : 'stands'} open with the power on: lock it out.`,
  severity: 'error',
  root: plant.powerBy ?? plant.graph,
  concerns: space.parts,
});

/** Spaces that stand open, of parts that stay in the plant. The mouth of a shut valve is a stub, not an open circuit. */
const leftOpen = (plant: Plant): readonly Space[] =>
  touchedSpaces(plant).filter(
    (space) =>
      space.openings.length > 0 &&
      !goes(plant, space) &&
      space.parts.some((index) => plant.graph.parts[index]!.kind.shuts === undefined),
  );

/** Old equipment that is taken away, or is about to be. */
const goes = (plant: Plant, space: Space): boolean =>
  space.parts.every((index) => {
    const { standing } = plant.graph.parts[index]!;
    return plant.parts[index]!.mounted === 'old' && (standing === 'new' || standing === 'removed');
  });
