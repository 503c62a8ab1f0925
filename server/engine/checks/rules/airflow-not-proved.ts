import type { Selector } from '../../plan/selection';
import { hasWaterSide } from '../../steps/water';
import { membersOf } from '../../walk/targets';
import type { Entry } from '../../walk/walk';
import { adjustsCharge, leaves } from '../course';
import { defineCheck } from '../define';
import { touched } from '../plant';
import { edits } from '../support';

/** Charge judged while nobody knows that the air moves. */
export const airflowNotProved = defineCheck({
  name: 'airflow-not-proved',
  severity: 'information',
  title: 'The charge is adjusted before the airflow is proved',
  acceptable: true,
  reads: 'state',
  ground: 'published',
  meaning:
    'The charge is trimmed by a temperature reading and no step before proves the airflow or reads the temperature split. With a fixed orifice, where the target hangs on the air, the finding is a warning; so it is where the airflow is proved afterwards, or while no fan has power.',
  why: 'A dirty filter reads like a wrong charge, and refrigerant is let in or out for it.',
  source: 'state energy code, field verification RA3.2: airflow before charge (handbook 9.2)',
  wrong: {
    base: 'split',
    instead: [
      ['expansion-valve new', 'fixed-orifice new'],
      ['subcooling 10 Δ°F', 'superheat 12 Δ°F'],
      ['adjust charge after 15 min', 'adjust charge after 15 min # <- here'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const proofs = whole.entries.filter((entry) => leaves(entry, /^(prove-|check )airflow/));
    for (const proof of proofs) {
      const at = whole.entries.indexOf(proof);
      const adjusted = whole.entries.slice(0, at).find(adjustsCharge);
      if (proof.before.power !== 'on' && !isOfWater(proof))
        whole.report(proof, {
          message: (say) =>
            `No fan has power here, since ${say.step(proof.before.powerBy)}: the airflow is proved when the power is back.`,
          severity: 'warning',
          root: 'power',
          related: [{ cause: proof.before.powerBy, message: 'the power went off here' }],
        });
      else if (adjusted && proofs[0] === proof)
        whole.report(proof, {
          message: (say) =>
            `The airflow is proved only after ${say.step(adjusted.cause)} has judged the charge by it: prove it before.`,
          severity: 'warning',
          root: 'late',
          related: [{ cause: adjusted.cause, message: 'the charge is judged here' }],
        });
    }
  },
  step(here) {
    const event = here.events('adjusts').find((each) => each.what === 'charge' && typeof each.to !== 'string');
    if (!event || here.per) return;
    const { graph } = here.before;
    const kinds = graph.parts.filter((part) => touched(graph, part.index)).map((part) => part.kind.kind);
    if (kinds.includes('receiver')) return;
    if ([...here.before.marks.keys()].some((mark) => /airflow|water-flow|temperature-split/.test(mark))) return;
    const fixed = kinds.some((kind) => kind === 'fixed-orifice' || kind === 'cap-tube');
    here.report({
      message: 'No step before this one proves the airflow: a dirty filter reads like a wrong charge.',
      slot: 'what',
      severity: fixed ? 'warning' : 'information',
      fixes: [
        {
          title: 'Prove the airflow first',
          edits: (mend) => edits(mend.insertBefore(here.step, 'prove-airflow system')),
        },
      ],
    });
  },
});

/** Water is driven by pumps of the building, whose power the lock-out of the machine leaves alone. */
function isOfWater({ slot, before }: Entry): boolean {
  const what = (slot.step.values['what'] ?? []) as readonly Selector[];
  return (
    what.length > 0 &&
    what.every(
      ({ noun }) =>
        noun === 'water' || membersOf(before.graph, noun)?.every((part) => hasWaterSide(before.graph.parts[part]!)),
    )
  );
}
