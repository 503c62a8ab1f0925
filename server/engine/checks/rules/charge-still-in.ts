import { spacesOf } from '../../circuit/spaces';
import type { Entry } from '../../walk/walk';
import { aroundOf } from '../course';
import { defineCheck, type Mend, type WayOut } from '../define';
import { heldBy, refrigerantShows } from '../plant';
import { edits, gauge, inOwn, underLaw } from '../support';
import { said } from '../ways-out';

/** Nitrogen or a vacuum pump put on a circuit whose refrigerant was never recovered. */
export const chargeStillIn = defineCheck({
  name: 'charge-still-in',
  severity: 'error',
  title: 'Nitrogen or a pump is put on a charge that was not recovered',
  acceptable: false,
  reads: 'state',
  ground: 'law',
  yieldsTo: ['open-under-pressure', 'section-not-recovered', 'recovery-too-shallow', 'valves-opened-early'],
  meaning:
    'This step puts test nitrogen or a vacuum pump on a part that still holds its refrigerant. A new unit with its own charge behind shut valves is not meant.',
  why: 'A pump blows the charge into the air; nitrogen on top of a charge may only be let go where the charge was recovered first.',
  source: '40 CFR 82.154, 82.156 (handbook 2.2)',
  wrong: {
    base: 'rack',
    instead: [
      ['liquid-drier: filter-drier new', 'liquid-drier: filter-drier kept'],
      ['txv-1: expansion-valve new', 'txv-1: expansion-valve kept'],
      ['txv-2: expansion-valve new', 'txv-2: expansion-valve kept'],
      ['    recover system to 0 inHg\n', ''],
      ['    prove-zero system\n', ''],
      ['    cut-out liquid-drier\n', ''],
      ['    change txv-1, txv-2\n', ''],
      ['    install liquid-drier with nitrogen at 5 cfh\n', ''],
      [
        'pressure-test low-side, high-side to 200 psig for 60 min',
        'pressure-test low-side, high-side to 200 psig for 60 min # <- here',
      ],
    ],
  },
  right: { base: 'rack' },
  step(here) {
    const aimed = [
      ...here.events('pressurises').filter((event) => event.medium !== 'refrigerant'),
      ...here.events('evacuates'),
    ];
    for (const event of aimed) {
      for (const space of event.spaces) {
        const held = heldBy(here.before, spacesOf(here.before, space.parts[0]!)[0] ?? space);
        if (!refrigerantShows(here.before, held)) continue;
        const isOwn = space.parts.some((part) => here.before.parts[part]!.ownCharge);
        here.report({
          message: (say) =>
            isOwn
              ? `${say.parts(space.parts)} ${space.parts.length > 1 ? 'stand' : 'stands'} shut with the new unit's own charge: ${event.type === 'evacuates' ? 'a pump would draw it out' : 'nitrogen would mix with it'}; name what was opened on the job instead.`
              : `${say.parts(space.parts)} still ${space.parts.length > 1 ? 'hold' : 'holds'} ${held.refrigerant ?? 'refrigerant'} at up to ${gauge(here.plan, held.high)}: recover it before ${event.type === 'evacuates' ? 'a pump' : 'nitrogen'} is put on${underLaw(here.plan, 'opening', held.refrigerant)}.`,
          slot: 'what',
          root: here.before.graph,
          concerns: space.parts,
          related: held.since ? [{ cause: held.since, message: 'it holds this since here' }] : [],
          // What the job itself let in is wanted: taking it out again is no way to mend the order.
          fixes:
            held.since !== null
              ? []
              : [
                  onSection(here.entry),
                  {
                    title: 'Recover and prove zero before this step',
                    // The charge that a section's recovery, or a pump-down, has left in is meant to stay.
                    edits: (mend) =>
                      here.before.marks.has('pump-down') || recoveredBefore(mend, here.entry)
                        ? []
                        : edits(
                            mend.insertBefore(
                              here.step,
                              `recover system to ${inOwn(here.plan, '0 inHg', '0 kPa vacuum')}`,
                              'prove-zero system',
                            ),
                          ),
                  },
                ],
        });
      }
    }
  },
});

/** The step by which something was recovered before another one. */
const recoveredBefore = (mend: Mend, entry: Entry): Entry | undefined =>
  [...aroundOf(mend.view.walk.entries, entry).earlier]
    .reverse()
    .find(({ events }) => events.some((event) => event.type === 'recovers' && event.spaces.length > 0));

/** Where a section was recovered, the pump or the nitrogen is meant for it alone. */
const onSection = (entry: Entry): WayOut => ({
  title: 'Put it on what was recovered',
  edits: (mend) => {
    const by = recoveredBefore(mend, entry);
    const what = by ? said(by.slot.step, 'what') : '';
    return what === '' || what === 'system' ? [] : edits(mend.replace(entry.slot.step, 'what', what));
  },
});
