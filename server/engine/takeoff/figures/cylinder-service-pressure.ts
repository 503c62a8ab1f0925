import { bubblePressure } from '../../properties';
import { cylinderServicePressures, hottestCylinder, pressureShare } from '../../reference/recovery-cylinders';
import { standardAtmosphere } from '../../reference/table-units';
import { relation } from '../relation';

/** Least marked service pressure of a recovery cylinder for a refrigerant, Pa absolute (marked as gauge). */
export const cylinderServicePressure = relation({
  name: 'cylinder-service-pressure',
  title: 'Least service pressure of the recovery cylinder',
  group: 4,
  inputs: { refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' } },
  output: 'pressure',
  formula: 'service pressure (gauge) = bubble pressure at 131 °F (gauge) / 1.25',
  validity: 'welded cylinders of liquefied gas',
  sources: [pressureShare.source],
  confidence: 'published',
  assumptions: ['marked by gauge against the standard atmosphere; given here as a gauge on site reads it'],
  examples: [
    {
      inputs: { refrigerant: 'R-410A' },
      expect: '387 psig',
      tolerance: 0.005,
      source: 'handbook 2.3: 484 psig at 131 °F over 1.25',
    },
    {
      inputs: { refrigerant: 'R-32' },
      expect: '397 psig',
      tolerance: 0.005,
      source: 'handbook 2.3: 496 psig at 131 °F over 1.25',
    },
    {
      inputs: { refrigerant: 'R-22' },
      expect: '241 psig',
      tolerance: 0.005,
      source: 'handbook 2.3: 301 psig at 131 °F over 1.25',
    },
  ],
  compute: ({ refrigerant }, { say, atmosphere }) => {
    const hot = bubblePressure(refrigerant, hottestCylinder);
    if (hot === null)
      return {
        refused: `${refrigerant.name} is above its critical point or its tables at 131 °F: only high-pressure cylinders take it.`,
      };
    const gauge = (hot - standardAtmosphere) / pressureShare.quantity.low;
    const usual = cylinderServicePressures.find((one) => one >= gauge);
    const said = (value: number): string => say('pressure', value + atmosphere);
    return {
      value: gauge + atmosphere,
      notes: [
        usual === undefined
          ? 'More than the usual welded cylinders are marked for.'
          : `A cylinder marked ${said(usual)} is the least usual one that will do.`,
      ],
      workings: () => [`${said(hot - standardAtmosphere)} at 131 °F / ${pressureShare.quantity.low} = ${said(gauge)}`],
    };
  },
});
