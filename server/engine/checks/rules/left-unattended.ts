import { minute } from '../../reference/table-units';
import { visitOf } from '../course';
import { defineCheck, type Whole } from '../define';
import { type Left, unattended, waiting } from '../left-behind';
import { edits } from '../support';

/** The circuit as it stands when the crew goes away, or waits at a hold. */
export const leftUnattended = defineCheck({
  name: 'left-unattended',
  severity: 'warning',
  title: 'The circuit is left open, wet, under pressure or vacuum, or open with the power on',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: [
    'work-without-lock-out',
    'joint-left-open',
    'flush-not-purged',
    'wet-with-solvent',
    'decay-test-missing',
    'valve-left-shut',
    'not-put-back',
  ],
  meaning:
    'When the crew leaves before a visit or at the end of one, a kept or new part stands open to the air, wet with solvent, under a vacuum that nobody has proved or under nitrogen that is no stand test; liquid is shut in between two valves; something of the running machine is out of action; or a torch was used less than half an hour before. By every hold, too, it is looked at whether the circuit is open with the power on, whether liquid is shut in (both are errors), and whether a new drier stands open. Caps, plugs and pinched ends shut; a stand test, a holding charge of nitrogen and the silent alarm of a box that was emptied are fine.',
  why: 'Over night a line draws in water and dirt, solvent creeps, a drier fills with moisture, shut-in liquid bursts its pipe as it warms, an ember becomes a fire, and somebody who was not there switches on.',
  source:
    'common practice (handbook 2.1, 5.3, 8.2); power: 29 CFR 1910.147 (handbook 11); half an hour of fire watch: 29 CFR 1910.252(a)(2)(iii)(B); holding charge up to 30 psig: common practice, no source',
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
        const waits = waiting(entry.after);
        const lines = waits?.lines;
        if (waits)
          whole.report(entry, {
            ...waits,
            slot: 'what',
            fixes: lines
              ? [
                  {
                    title: `Before the hold: ${lines.join(', ')}`,
                    edits: (mend) => edits(mend.insertBefore(entry.slot.step, ...lines)),
                  },
                ]
              : [],
          });
      }
      const earlier = entries[at - 1];
      if (!earlier) return;
      const visit = visitOf(entry);
      const last = visitOf(earlier);
      // Whoever goes away leaves what stands before the first step of a visit, and after the last one of it.
      const apart = visit === last ? undefined : (visit ?? last);
      if (!apart) return;
      const left = unattended(whole.plan, earlier.after) ?? justBrazed(whole, at);
      if (!left) return;
      const { related, lines, back, ...report } = left;
      whole.reportAt(
        apart.bound,
        apart.bound.spans['title'] ?? { from: 0, to: apart.word.word.length },
        {
          ...report,
          root: left.root ?? apart,
          related: related ?? [],
          fixes: lines
            ? [
                {
                  title: `Before anybody goes: ${lines.join(', ')}`,
                  edits: (mend) =>
                    edits(
                      mend.insertAfter(earlier.slot.step, ...lines),
                      ...(back && visit ? [mend.insertBefore(entry.slot.step, ...back)] : []),
                    ),
                },
              ]
            : [],
        },
        apart.file,
      );
    });
  },
});

/** A torch was used so shortly before the crew goes that nobody is there to see it smoulder. */
function justBrazed(whole: Whole, leaving: number): Left | null {
  const { entries } = whole;
  let since = 0;
  for (let at = leaving - 1; at >= 0 && since < fireWatch; at--) {
    const entry = entries[at]!;
    if (visitOf(entry) !== visitOf(entries[leaving - 1]!)) return null;
    if (entry.events.some((event) => event.type === 'joins' && event.torch))
      return {
        message: (say) =>
          `Everybody goes less than half an hour after the torch of ${say.step(entry.cause)}: watch for fire first.`,
        severity: 'warning',
        root: entry.slot.step,
        concerns: entry.events.flatMap((event) => (event.type === 'joins' ? [event.part] : [])),
        related: [{ cause: entry.cause, message: 'the torch was used here' }],
        lines: ['watch hot-work for 30 min'],
      };
    const time = whole.view.takeOff.time.steps.get(entry);
    since += (time?.work.low ?? 0) + (time?.wait.low ?? 0);
  }
  return null;
}

/** s. */
const fireWatch = 30 * minute;
