import { factsOf } from '../../reference/refrigerant-facts';
import { defineCheck } from '../define';
import { chargeInAll, systemSpot, unfit } from '../plant-facts';
import { amount, authority } from '../support';

/** More refrigerant than the smallest room can take if all of it leaks. */
export const chargeOverRoomLimit = defineCheck({
  name: 'charge-over-room-limit',
  severity: 'error',
  title: 'The charge is over the limit of the smallest room',
  acceptable: false,
  noFix:
    'The charge and the room are as they are: a smaller charge, another room or ventilation by the code is a decision of the design.',
  reads: 'figure',
  ground: 'published',
  meaning:
    'The charge, with what long lines add, divided by the air of the smallest room that a leak could fill, is above the concentration limit of the refrigerant.',
  why: 'Whoever is in that room when it leaks is short of air, poisoned, or in a mixture that can be lit.',
  source: 'refrigerant concentration limits of the mechanical code, table 1103.1, and of ASHRAE 34',
  wrong: {
    base: 'split',
    instead: [
      ['smallest-room 9600 ft3', 'smallest-room 1600 ft3'],
      ['charge 6 lb for 15 ft of line', 'charge 6 lb for 15 ft of line # <- here'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const { plan } = whole;
    const room = plan.site.smallestRoom?.quantity.low;
    const charge = chargeInAll(plan);
    const facts = factsOf(plan.system.refrigerant.after ?? '');
    if (unfit(plan) !== null || !room || charge === null || !facts?.concentrationLimit) return;
    const most = facts.concentrationLimit.low * room;
    if (charge <= most * 1.005) return;
    const [bound, span] = systemSpot(plan, 'charge', 'mass');
    whole.reportAt(bound, span, {
      message: `${amount(plan, 'mass', charge)} of ${facts.name} is more than the ${amount(plan, 'mass', most)} that the smallest room of ${amount(plan, 'volume', room, 'ft3')} may take (limit ${amount(plan, 'charge-per-volume', facts.concentrationLimit.low)}, mechanical code table 1103.1 and ASHRAE 34): less charge, a larger room, or leak detection with ventilation by the code; ${authority}.`,
      related: plan.site.smallestRoom ? [{ bound: plan.site.smallestRoom.bound, message: 'the room' }] : [],
    });
  },
});
