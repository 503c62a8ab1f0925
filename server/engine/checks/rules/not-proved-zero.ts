import type { Cause } from '../../circuit/state';
import type { Entry } from '../../walk/walk';
import { has, leaves } from '../course';
import { defineCheck } from '../define';
import { aboveZero, heldBy, onlyDriers, touchedSpaces } from '../plant';
import { edits, underLaw } from '../support';
import { insertBefore } from '../ways-out';

/** Opened, and perhaps brazed, without having waited to see that nothing comes back. */
export const notProvedZero = defineCheck({
  name: 'not-proved-zero',
  severity: 'warning',
  title: 'The circuit is opened without having been proved at zero',
  acceptable: true,
  reads: 'state',
  ground: 'law',
  yieldsTo: ['open-under-pressure', 'section-not-recovered', 'charge-still-in', 'flush-before-recovery'],
  meaning:
    'After recovery nobody waits with open gauges to see whether pressure comes back, and then the part is opened, or seals or valve cores are taken out. Where a torch comes to such a part later, somebody can be hurt: the finding is then an error.',
  why: 'Liquid under oil or behind a valve boils out after the machine has stopped; in a flame it makes acid and phosgene-like gas.',
  source: 'verify the level before opening: 40 CFR 82.156 (handbook 2.1); 5 to 10 minutes: common practice',
  wrong: {
    base: 'split',
    instead: [
      ['prove-zero system\n', ''],
      ['disconnect each kept line at both ends', 'disconnect each kept line at both ends # <- here'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    // A proof holds for the recovery before it: a visit that empties the part anew proves it anew.
    const emptied = new Map<number, number>();
    const made = new Map<Cause, number>();
    for (const [at, entry] of whole.entries.entries()) {
      made.set(entry.cause, at);
      if (takesOut(entry))
        whole.report(entry, {
          message: `Seals or cores come out here without anybody having waited to see that no pressure comes back: prove zero first${underLaw(whole.plan, 'opening')}.`,
          slot: 'what',
          root: whole.plan.head,
          concerns: whole.plan.graph.parts.map((part) => part.index),
          fixes: [insertBefore('Prove zero before this step', entry.slot.step, 'prove-zero system')],
        });
      for (const event of entry.events) {
        if (event.type === 'recovers' || event.type === 'vents')
          for (const space of event.spaces) for (const part of space.parts) emptied.set(part, at);
        if (event.type !== 'opens' || event.held.refrigerant === null || event.how === 'pierced') continue;
        const unproved = event.space.parts.filter((part) => {
          // What this job has set in place, and nobody has recovered from since, came with nothing in it.
          const { provedZero, setBy } = entry.before.parts[part]!;
          const proof = provedZero ?? setBy;
          return proof === null || (made.get(proof) ?? at) < (emptied.get(part) ?? 0);
        });
        if (unproved.length === 0 || onlyDriers(entry.before, event.space)) continue;
        const torch = whole.entries
          .slice(at)
          .find((later) =>
            later.events.some(
              (each) =>
                each.type === 'joins' &&
                each.torch &&
                unproved.includes(each.part) &&
                later.before.parts[each.part]!.provedZero === null,
            ),
          );
        // Once the vacuum was broken there is no zero to be seen any more.
        const recovered = aboveZero(entry.before, event.held)
          ? whole.entries
              .slice(0, at)
              .reverse()
              .find((each) => has(each, 'recovers'))
          : undefined;
        whole.report(entry, {
          message: (say) =>
            `${say.parts([event.part])} is opened without waiting to see that no pressure comes back${torch ? `, and a torch comes to it at ${say.step(torch.cause)}` : ''}: prove zero first${underLaw(whole.plan, 'opening')}.`,
          slot: 'what',
          severity: torch ? 'error' : 'warning',
          root: whole.plan.head,
          concerns: event.space.parts,
          fixes: [
            {
              title: recovered ? 'Prove zero after the recovery' : 'Prove zero before this step',
              edits: (mend) =>
                edits(
                  recovered
                    ? mend.insertAfter(recovered.slot.step, 'prove-zero system')
                    : mend.insertBefore(entry.slot.step, 'prove-zero system'),
                ),
            },
          ],
        });
      }
    }
  },
});

/** Seals or cores, of whatever part, that come out of a circuit that was emptied and that nobody has proved at zero. */
function takesOut(entry: Entry): boolean {
  const { before } = entry;
  if (!leaves(entry, /^(renew|change) .*(seal|gasket|core)/)) return false;
  const held = touchedSpaces(before).map((space) => ({ space, contents: heldBy(before, space) }));
  return (
    held.some(({ contents }) => contents.refrigerant !== null) &&
    held.every(
      ({ space, contents }) =>
        !aboveZero(before, contents) && space.parts.every((part) => before.parts[part]!.provedZero === null),
    )
  );
}
