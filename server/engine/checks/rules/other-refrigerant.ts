import type { Name } from '../../plan/term';
import { refrigerantNamed } from '../../properties';
import { factsOf } from '../../reference/refrigerant-facts';
import { defineCheck } from '../define';
import { systemSpot } from '../plant-facts';
import { spotOf, unusedRefrigerants } from '../stock';
import { bringInstead, writeAt } from '../ways-out';

/** The slot in which these verbs name the refrigerant that goes in or that a control is set for. */
const slots = new Map([
  ['charge', 'with'],
  ['adjust', 'with'],
  ['reset', 'for'],
]);

/** The name of a refrigerant, alone or with its mass. */
const nameIn = (value: unknown): unknown => (value as { readonly a?: Name } | undefined)?.a ?? value;

/** A step that names another refrigerant than the one the system is to run on. */
export const otherRefrigerant = defineCheck({
  name: 'other-refrigerant',
  severity: 'error',
  title: 'A step names another refrigerant than the system runs on',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The charge is weighed in or trimmed with, or a control is set for, a refrigerant that is not the one that the system is to run on after the work. Or one is brought that nothing in the plan runs on, before or after (a warning).',
  why: 'A mixture has no table: pressures and superheat tell nothing, the oil may not come back, and the whole charge is waste. A control set for the old gas trips or never stops.',
  source: 'one refrigerant in one circuit, controls set for it (handbook 7.2, 9.3, 13.3)',
  wrong: {
    base: 'rack',
    instead: [['charge system with R-448A 50 lb', 'charge system with R-404A 50 lb # <- here']],
  },
  right: { base: 'rack' },
  step(here) {
    const slot = slots.get(here.step.word.word);
    const { after } = here.plan.system.refrigerant;
    if (slot === undefined || after === null || here.per !== null) return;
    const named = here.events('charges')[0]?.refrigerant ?? (here.step.values[slot] as Name | undefined)?.text;
    if (named === undefined || named === '' || named === after || !here.step.spans[slot]) return;
    // What comes with a new unit has a check of its own.
    if (here.plan.graph.parts.some((part) => part.properties.holds?.refrigerant === named)) return;
    const tables = refrigerantNamed(named);
    // A word that is no refrigerant has its finding as a name.
    if (!tables && !factsOf(named)) return;
    if (tables && tables === refrigerantNamed(after)) return;
    const [bound, span] = systemSpot(here.plan, 'refrigerant');
    here.report({
      message: `${named} is named here, and the system runs on ${after} after the work: ${slot === 'for' ? 'set the control for that' : 'only that goes in'}.`,
      slot,
      root: named,
      related: [{ bound, span, message: 'what the system runs on' }],
      fixes: writeAt(here.step, nameIn(here.step.values[slot]), after),
    });
  },
  plan(whole) {
    const { plan } = whole;
    const { after } = plan.system.refrigerant;
    const [bound, span] = systemSpot(plan, 'refrigerant');
    if (after === null) return;
    for (const item of unusedRefrigerants(plan)) {
      whole.reportAt(item.bound, item.bound.spans['refrigerant'] ?? spotOf(item), {
        message: `${item.name} is brought, and nothing here runs on it: the system takes ${after}.`,
        severity: 'warning',
        root: item.name,
        related: [{ bound, span, message: 'what the system runs on' }],
        fixes: bringInstead(item, after),
      });
    }
  },
});
