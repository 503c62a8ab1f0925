import fc from 'fast-check';
import { expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { aboveZero, underPressure } from '../../../server/engine/checks/plant';
import { waysBack } from '../../../server/engine/takeoff/rounds';
import { walkBack } from '../../../server/engine/walk/back';
import type { Entry } from '../../../server/engine/walk/walk';
import { Workspace } from '../../../server/engine/workspace';

/** Steps at which a part is opened while it holds pressure; by the events and states alone, not by what a check says. */
const opensPressure = (entries: readonly Entry[]): readonly string[] =>
  entries
    .filter(({ before, events }) =>
      events.some(
        (event) =>
          event.type === 'opens' &&
          (underPressure(before, event.held) || (event.held.gas === 'refrigerant' && aboveZero(before, event.held))),
      ),
    )
    .map((entry) => entry.slot.step.text);

/** Variations of one order of work that are sound by construction. */
const sound = fc.record({
  length: fc.integer({ min: 25, max: 50 }),
  pulls: fc.integer({ min: 0, max: 2 }),
  hold: fc.boolean(),
  firstStage: fc.boolean(),
  decayMinutes: fc.integer({ min: 15, max: 30 }),
  back: fc.constantFrom('close-up', 'test'),
});

it('no way through a sound plan, nor a way back, opens a part under pressure', () => {
  fc.assert(
    fc.property(sound, ({ length, pulls, hold, firstStage, decayMinutes, back }) => {
      const test = 'pressure-test each open part to 450 psig for 30 min';
      const decay = 'decay-test each open part for 15 min, rise at most 300 micron';
      const pull =
        '  evacuate each open part to 1500 micron\n    break-vacuum system with nitrogen to 2 psig for 20 min\n  ';
      const text = exampleText({
        base: 'split',
        instead: [
          ['length 40 ft', `length ${length} ft`],
          ['  place new', `${hold ? '  hold "Clean cloth" by lead\n  ' : ''}  place new`],
          ['  connect each kept', '  close-up: connect each kept'],
          [
            test,
            `${firstStage ? 'pressure-test each open part to 10 psig for 10 min\n    ' : ''}test: ${test} {\n    if-fails back to close-up, at most 2 times\n  }`,
          ],
          ['  evacuate each', `${pull.repeat(pulls)}  evacuate each`],
          [decay, `${decay.replace('15', String(decayMinutes))} {\n    if-fails back to ${back}, at most 2 times\n  }`],
        ],
      });
      const workspace = new Workspace();
      workspace.setFile('sound.jobplan', text);
      const snapshot = workspace.snapshot();
      const [view] = snapshot.plans('sound.jobplan');
      const { entries } = view!.walk;
      const ways = waysBack(entries);
      expect(ways).toHaveLength(2);
      expect(entries.some((entry) => entry.events.some((event) => event.type === 'opens'))).toBe(true);
      expect(opensPressure(entries)).toEqual([]);
      for (const { from, to } of ways) expect(opensPressure(walkBack(view!.plan, entries, to, from))).toEqual([]);
      const grave = snapshot.findings('sound.jobplan').filter((finding) => finding.severity !== 'information');
      expect(grave.map((finding) => `${finding.name}: ${finding.message}`)).toEqual([]);
    }),
    { numRuns: 60 },
  );
});
