import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import { isRefrigerant } from '../../plan/refrigerants';
import { defineCheck } from '../define';

/** New equipment comes with a charge that is not the plan's refrigerant. */
export const shippedWithOtherRefrigerant = defineCheck({
  name: 'shipped-with-other-refrigerant',
  severity: 'error',
  title: 'The new unit is shipped with another refrigerant',
  acceptable: false,
  reads: 'state',
  ground: 'practice',
  meaning: 'A new part holds a refrigerant from its maker that is not the one that the plan goes over to.',
  why: 'Its oil, valve and pressures are made for the gas in it; what is charged on top is a mixture that nobody can reclaim.',
  source: 'rating plate of the unit; 40 CFR 82.154 on mixtures',
  wrong: { base: 'split', instead: [['holds R-454B 6 lb', 'holds R-32 6 lb # <- here']] },
  right: { base: 'split' },
  plan(whole) {
    const { plan } = whole;
    const { after } = plan.system.refrigerant;
    if (after === null || !isRefrigerant(after)) return;
    for (const part of plan.graph.parts) {
      const { holds } = part.properties;
      if (
        !holds ||
        holds.refrigerant === after ||
        !isRefrigerant(holds.refrigerant) ||
        plan.graph.circuits[part.circuit]?.untouched
      )
        continue;
      const statement = child(plan.partStatements[part.index]?.block ?? [], 'holds');
      if (!statement) continue;
      const span = statement.spans['refrigerant'] ?? wordSpan(statement);
      whole.reportAt(statement, span, {
        message: `${part.name} comes with ${holds.refrigerant}, and the plan goes over to ${after}: one of the two is wrong.`,
        fixes: [
          {
            title: `Write "${after}"`,
            edits: () => [{ at: { file: plan.file, item: statement.item, ...span }, text: after }],
          },
        ],
      });
    }
  },
});
