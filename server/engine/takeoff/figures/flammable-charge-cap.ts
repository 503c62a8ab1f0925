import { factsOf, isFlammable } from '../../reference/refrigerant-facts';
import { chargeCapConfidence, chargeCapSource, chargeCaps } from '../../reference/room-limits';
import { relation } from '../relation';

const refrigerant = {
  kind: 'refrigerant',
  title: 'refrigerant',
  from: '`refrigerant` of the system',
  byNameAlone: true,
} as const;

/** A charge cap of the appliance standard for a flammable refrigerant, kg. */
export const flammableChargeCap = relation({
  name: 'flammable-charge-cap',
  title: 'Charge cap of a flammable refrigerant',
  group: 14,
  inputs: {
    refrigerant,
    cap: { kind: 'word', title: 'cap', from: 'm1 (no room asked), m2 or m3' },
  },
  output: 'mass',
  formula: 'm1, m2, m3 = 6, 52, 260 m³ × LFL for A2L; 4, 26, 130 m³ × LFL for A2 and A3',
  validity: 'classes A2L, A2 and A3',
  sources: [chargeCapSource],
  confidence: chargeCapConfidence,
  assumptions: ['lower flammability limit as in the table of refrigerants'],
  examples: [
    {
      inputs: { refrigerant: 'R-32', cap: 'm1' },
      expect: '1.84 kg',
      tolerance: 2e-3,
      source: 'handbook section 11: the well-known published value',
    },
    { inputs: { refrigerant: 'R-32', cap: 'm2' }, expect: '15.96 kg', tolerance: 2e-3, source: 'handbook section 11' },
    { inputs: { refrigerant: 'R-454B', cap: 'm1' }, expect: '1.78 kg', tolerance: 4e-3, source: 'handbook section 11' },
    {
      inputs: { refrigerant: 'R-290', cap: 'm1' },
      expect: '0.152 kg',
      tolerance: 2e-3,
      source: 'handbook section 11: 0.15 kg is the published value',
    },
  ],
  compute: ({ refrigerant: gas, cap }, { say }) => {
    const facts = factsOf(gas.name);
    const index = ['m1', 'm2', 'm3'].indexOf(cap);
    if (index < 0) return { refused: `\`${cap}\` is no cap; m1, m2 or m3 belongs here.` };
    if (facts?.safetyClass == null) return { refused: `No safety class of ${gas.name} is in the tables.` };
    if (!isFlammable(facts.safetyClass))
      return { refused: `${gas.name} is not flammable (${facts.safetyClass}): no cap of this kind.` };
    const caps = chargeCaps(facts.safetyClass);
    if (caps === undefined || facts.flammabilityLimit === null)
      return { refused: `No lower flammability limit of ${gas.name} is in the tables.` };
    const value = caps[index]! * facts.flammabilityLimit.low;
    return {
      value,
      workings: () => [
        `${caps[index]} m³ × ${say('charge-per-volume', facts.flammabilityLimit!.low, 'g/m3')} = ${say('mass', value, 'kg')}`,
      ],
    };
  },
});
