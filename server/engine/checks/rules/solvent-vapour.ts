import { exactly } from '../../quantity';
import { ventilationChanges } from '../../reference/flush-practice';
import { hour } from '../../reference/table-units';
import { defineCheck } from '../define';
import { amount, edits, shown } from '../support';

/** Solvent vapour let into a closed space with too little air. */
export const solventVapour = defineCheck({
  name: 'solvent-vapour',
  severity: 'information',
  title: 'Solvent vapour in a closed space with little air',
  acceptable: true,
  reads: 'figure',
  ground: 'practice',
  yieldsTo: ['oxygen-falls', 'solvent-burns'],
  meaning:
    'A flush comes out in a work space that is not open air, and the ventilation that the site states is below ten changes of its air in an hour, or none is stated.',
  why: 'The vapour is heavier than air and gathers where people kneel; it numbs them before they notice, and a torch turns it into acid gas.',
  source: `${ventilationChanges.source} (handbook 5.3)`,
  wrong: {
    base: 'split',
    instead: [
      ['work-space yard open-air', 'work-space attic 9000 ft3'],
      ['flush each kept line into container', 'flush each kept line into container # <- here'],
    ],
  },
  right: {
    base: 'split',
    instead: [
      ['work-space yard open-air', 'work-space attic 9000 ft3'],
      ['flush each kept line into container', 'flush each kept line into container outdoors'],
    ],
  },
  step(here) {
    const space = here.plan.site.workSpace;
    const flow = here.events('flows').find((each) => each.medium === 'solvent' && !each.outdoors);
    if (!flow || !space || space.open || !space.volume || here.per !== null) return;
    const volume = space.volume.quantity.high;
    const least = (ventilationChanges.quantity.low * volume) / hour;
    const air = space.ventilation?.quantity.low ?? 0;
    if (air >= least * 0.99) return;
    here.report({
      message: `The flush comes out in the ${space.where} of ${amount(here.plan, 'volume', volume, 'ft3')}, ${space.ventilation ? `where ${shown(here.plan, space.ventilation.quantity)} of fresh air go through` : 'for which no ventilation is stated'}; solvent work asks for about ${shown(here.plan, exactly('volume-flow', least))} there (${ventilationChanges.source}): lead the outlet outdoors, or bring a fan and state it.`,
      slot: 'what',
      root: here.plan.graph,
      related: [{ bound: space.bound, message: 'the work space' }],
      fixes: [{ title: 'Lead the outlet outdoors', edits: (mend) => edits(mend.append(here.step, ' outdoors')) }],
    });
  },
});
