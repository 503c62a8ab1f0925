import { factsOf, isFlammable, type SafetyClass } from '../../reference/refrigerant-facts';
import { chargeCapSource, chargeCaps, refrigerationCapSource, refrigerationCaps } from '../../reference/room-limits';
import { defineCheck } from '../define';
import { statedEquipment } from '../equipment';
import { chargeInAll, systemSpot, unfit } from '../plant-facts';
import { amount, authority } from '../support';

/** More of a flammable refrigerant than the standard of the equipment lets stand in it, whatever the room. */
export const chargeOverCap = defineCheck({
  name: 'charge-over-cap',
  severity: 'error',
  title: 'A flammable charge is over the highest cap of its standard',
  acceptable: true,
  noFix:
    'The charge follows from the machine: another refrigerant, several circuits or a machine room is a decision of the design.',
  reads: 'figure',
  ground: 'memory',
  yieldsTo: ['charge-over-room-limit', 'charge-does-not-fit'],
  meaning:
    'The charge of a refrigerant that burns is above the highest cap that the standard of the equipment knows: that of self-contained refrigeration where the plan states it or calls it a small appliance, else that of air conditioning. A machine room by the code may hold more.',
  why: 'Above it no sensor and no fan makes the machine safe where people are: it belongs in a machine room or in the open.',
  source: `${chargeCapSource}; ${refrigerationCapSource}`,
  wrong: {
    base: 'split',
    instead: [
      ['  oil mineral -> POE', '  oil mineral -> POE\n    equipment self-contained'],
      ['charge 6 lb for 15 ft of line', 'charge 6 lb for 15 ft of line # <- here'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const { plan } = whole;
    const facts = factsOf(plan.system.refrigerant.after ?? '');
    const charge = chargeInAll(plan);
    if (unfit(plan) !== null || !facts?.safetyClass || charge === null || !isFlammable(facts.safetyClass)) return;
    if (plan.site.workSpace?.where.includes('machine-room')) return;
    const sealed = statedEquipment(plan) === 'self-contained' || plan.system.smallAppliance !== null;
    const limit = facts.flammabilityLimit?.low;
    if (limit === undefined) return;
    const most = sealed ? sealedMost(facts.safetyClass, limit) : roomMost(facts.safetyClass, limit);
    if (most === null) return;
    if (charge <= most * 1.005) return;
    const [bound, span] = systemSpot(plan, 'charge', 'mass');
    whole.reportAt(bound, span, {
      message: `${amount(plan, 'mass', charge)} of ${facts.name} (${facts.safetyClass}) is above the highest cap of ${amount(plan, 'mass', most)} for ${sealed ? 'a self-contained refrigerator' : 'air conditioning where people are'} (${sealed ? refrigerationCapSource : chargeCapSource}): less charge, several circuits, or a machine room; ${authority}.`,
    });
  },
});

/** Highest caps in kg at a lower flammability limit in kg/m3; null where the standard knows none. */
const roomMost = (safetyClass: SafetyClass, limit: number): number | null => {
  const caps = chargeCaps(safetyClass);
  return caps ? caps[2] * limit : null;
};
const sealedMost = (safetyClass: SafetyClass, limit: number): number | null => {
  const cap = refrigerationCaps(safetyClass);
  return cap ? Math.min(cap.volume * limit, cap.most) : null;
};
