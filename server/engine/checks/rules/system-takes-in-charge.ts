import type { Selector } from '../../plan/selection';
import { defineCheck } from '../define';
import { isOrAre } from '../is-are';
import { touched } from '../plant';
import { edits } from '../support';

/** Steps that put gas or a pump on what they name, or take it for proved under vacuum. */
const puts = new Set(['pressure-test', 'evacuate', 'decay-test', 'break-vacuum']);

/** A test or a pump on "the system" while the new unit stands shut with the charge that it came with. */
export const systemTakesInCharge = defineCheck({
  name: 'system-takes-in-charge',
  severity: 'warning',
  title: 'A test or a pump is put on the system, with the unit’s own charge shut in',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['joint-left-open'],
  meaning:
    'The step names the system, and at that moment a new unit stands behind its shut valves with the charge that it came with. What was opened on the job is meant: say so.',
  why: 'Whoever takes the sheet at its word opens the valves first: the charge goes into the pump, or nitrogen into the charge.',
  source: 'lines and coil are tested and pumped with the unit’s valves shut: common practice (handbook 13.1)',
  wrong: {
    base: 'split',
    instead: [['evacuate each open part to 500 micron', 'evacuate system to 500 micron # <- here']],
  },
  right: { base: 'split' },
  step(here) {
    const what = here.step.values['what'] as readonly Selector[] | undefined;
    if (!puts.has(here.step.word.word) || !what?.some(({ noun }) => noun === 'system')) return;
    const { graph, parts: states } = here.before;
    const parts = states.flatMap(({ ownCharge }, part) => (ownCharge && touched(graph, part) ? [part] : []));
    if (parts.length === 0) return;
    here.report({
      message: (say) =>
        `${say.parts(parts)} ${isOrAre(parts.length)} shut with the charge that the unit came with, and the step names the system: name what was opened, \`each open part\`.`,
      slot: 'what',
      root: 'system',
      concerns: parts,
      fixes: [
        {
          title: 'Each open part',
          edits: (mend) => edits(mend.replace(here.step, 'what', 'each open part')),
        },
      ],
    });
  },
});
