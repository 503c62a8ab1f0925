import { pound } from '../../reference/table-units';
import { marked } from '../course';
import { defineCheck } from '../define';
import { authority, edits, underLaw } from '../support';

/** From this charge on, up to 50 lb, what is recovered from a machine that is disposed of is written down (40 CFR 82.156(a)(3)). */
const recordedFrom = 5 * pound;

/** A charge recovered and nothing written down. */
export const recordMissing = defineCheck({
  name: 'record-missing',
  severity: 'warning',
  title: 'Nothing is recorded though refrigerant is recovered',
  acceptable: true,
  reads: 'state',
  ground: 'law',
  meaning: 'Five pounds or more of refrigerant are recovered, and no step records quantities or weighs the cylinder.',
  why: 'The owner and the law ask how much went out and in; the weight is also the best estimate of the right charge.',
  source: `40 CFR 82.156(a)(3) for 5 to 50 lb of a machine that is disposed of, 82.157(b) from 50 lb, 84.106 from 15 lb; for the rest common practice (handbook 2.2); ${authority}`,
  wrong: {
    base: 'split',
    instead: [
      ['    record quantities, readings\n', ''],
      ['recover system to 0 inHg', 'recover system to 0 inHg # <- here'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const { recoverCharge } = whole.plan.system;
    const last = whole.entries.at(-1);
    const recovery = whole.entries.find((entry) =>
      entry.events.some((event) => event.type === 'recovers' && event.spaces.length > 0),
    );
    if (!last || !recovery || !recoverCharge || recoverCharge.quantity.low < recordedFrom) return;
    if (marked(last, /^(record|weigh)/)) return;
    whole.report(recovery, {
      message: `What is recovered here is never written down: it is the best measure of the charge, and the law asks for it where a machine is given up, or is large${underLaw(whole.plan, 'records')}.`,
      slot: 'what',
      fixes: [
        {
          title: 'Record quantities at the end',
          edits: (mend) => edits(mend.insertAfter(last.slot.step, 'record quantities, readings')),
        },
      ],
    });
  },
});
