import { isFlammable } from '../../reference/refrigerant-facts';
import { chargeCapSource, chargeCaps } from '../../reference/room-limits';
import { defineCheck } from '../define';
import { chargeInAll, newFacts, systemSpot, unfit } from '../plant-facts';
import { amount, authority } from '../support';

/** A flammable charge above the first cap with no leak sensor in the circuit. */
export const leakSensorMissing = defineCheck({
  name: 'leak-sensor-missing',
  severity: 'error',
  title: 'A flammable charge without a leak sensor',
  acceptable: true,
  noFix:
    'Whether the machine has a sensor stands in its papers; a plan that says so without looking is worse than one that does not.',
  reads: 'figure',
  ground: 'memory',
  meaning:
    'The charge of a refrigerant that burns is above the first cap of the equipment standard, and no part of the circuit states a leak sensor.',
  why: 'Above that cap the standard lets the machine stand in a house only if a sensor starts the fan and shuts the gas off when it leaks.',
  source: chargeCapSource,
  wrong: {
    base: 'split',
    instead: [
      ['    leak-sensor built-in\n', ''],
      ['charge 6 lb for 15 ft of line', 'charge 6 lb for 15 ft of line # <- here'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const { plan } = whole;
    const facts = newFacts(plan);
    const charge = chargeInAll(plan);
    if (unfit(plan) !== null || !facts?.safetyClass || charge === null || !isFlammable(facts.safetyClass)) return;
    const cap = chargeCaps(facts.safetyClass)?.[0];
    if (cap === undefined || !facts.flammabilityLimit || charge <= cap * facts.flammabilityLimit.low * 1.005) return;
    if (plan.graph.parts.some((part) => part.properties.sensor)) return;
    // Out of doors nothing gathers; a plan that states no room is taken to stand in one.
    const [bound, span] = systemSpot(plan, 'charge', 'mass');
    whole.reportAt(bound, span, {
      message: `${amount(plan, 'mass', charge)} of ${facts.name} (${facts.safetyClass}) is above the ${amount(plan, 'mass', cap * facts.flammabilityLimit.low)} that may stand in a room without a leak sensor (${chargeCapSource}; from memory): state "leak-sensor" at the part that has one, or fit one; ${authority}.`,
    });
  },
});
