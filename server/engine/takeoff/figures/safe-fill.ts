import { liquidDensity } from '../../properties';
import {
  fillingDensity,
  fillingDensitySource,
  guidelineFillShare,
  guidelineFillTemperature,
  hottestCylinder,
  liquidFillMost,
  waterDensity77,
  waterDensityStamp,
} from '../../reference/recovery-cylinders';
import { relation } from '../relation';

/** Most refrigerant that may go into a recovery cylinder, kg net. */
export const safeFill = relation({
  name: 'safe-fill',
  title: 'Most that may go into a recovery cylinder',
  group: 4,
  inputs: {
    refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' },
    waterCapacity: {
      kind: 'mass',
      title: 'water capacity',
      from: '`water-capacity` of the recovery cylinder',
      valid: [0.1, 5000],
    },
    fillShare: {
      kind: 'share',
      title: 'fill at 77 °F',
      from: '`recovery-cylinder fill at most` of the house rules',
      default: guidelineFillShare,
      valid: [0.05, 1],
    },
  },
  output: 'mass',
  formula:
    'the least of fill × water capacity × specific gravity at 77 °F, 95 % of the cylinder as liquid at 131 °F, and the filling density of the regulation',
  validity: 'liquefied gases that are liquid at 131 °F; the collar’s water capacity',
  sources: [guidelineFillShare.source, liquidFillMost.source, fillingDensitySource],
  confidence: 'practice',
  assumptions: ['one refrigerant without oil', 'an empty, evacuated cylinder'],
  examples: [
    {
      inputs: { refrigerant: 'R-22', waterCapacity: '1000 lb' },
      expect: '957.6 lb',
      tolerance: 4e-3,
      source: 'handbook section 12, WE-01 (with the printed specific gravity of 1.197)',
    },
    {
      inputs: { refrigerant: 'R-22', waterCapacity: '26.2 lb' },
      expect: '25.1 lb',
      tolerance: 4e-3,
      source: 'handbook section 12, WE-05: the guideline governs',
    },
    {
      inputs: { refrigerant: 'R-134a', waterCapacity: '26.2 lb' },
      expect: '25.4 lb',
      tolerance: 3e-3,
      source: 'handbook 2.3, table of limits',
    },
    {
      inputs: { refrigerant: 'R-454B', waterCapacity: '123 lb' },
      expect: '97 lb',
      tolerance: 6e-3,
      source: 'handbook 2.3, table of limits',
    },
    {
      inputs: { refrigerant: 'R-22', waterCapacity: '1000 lb', fillShare: '75 %' },
      expect: '895.5 lb',
      tolerance: 2e-3,
      source: 'by hand: 0.75 × 1.194',
    },
  ],
  compute: ({ refrigerant, waterCapacity, fillShare }, { say }) => {
    const at77 = liquidDensity(refrigerant, guidelineFillTemperature);
    const hot = liquidDensity(refrigerant, hottestCylinder);
    if (at77 === null || hot === null)
      return {
        refused: `${refrigerant.name} is no liquid at 131 °F, its critical point being ${say('temperature', refrigerant.critical.temperature)}: it goes into high-pressure cylinders by their own rule.`,
      };
    const share = Math.min(fillShare, guidelineFillShare.quantity.high);
    const byGuideline = share * waterCapacity * (at77 / waterDensity77);
    const byVolume = liquidFillMost.quantity.high * (waterCapacity / waterDensityStamp) * hot;
    const byDensity = (fillingDensity(refrigerant.name) ?? Number.POSITIVE_INFINITY) * waterCapacity;
    const value = Math.min(byGuideline, byVolume, byDensity);
    // The rule of the 1990s left the specific gravity out: it overfills with gas lighter than water (R-32, R-454B, R-290).
    const older = guidelineFillShare.quantity.high * waterCapacity;
    return {
      value,
      notes:
        older > value * 1.005
          ? [
              `The older rule, 80 % of the water capacity for every gas, would put in ${say('mass', older)}: too much of ${refrigerant.name}.`,
            ]
          : [],
      workings: () => [
        `${share} × ${say('mass', waterCapacity)} × ${(at77 / waterDensity77).toFixed(4)} = ${say('mass', byGuideline)}`,
        `95 % of ${say('volume', waterCapacity / waterDensityStamp, 'ft3')} as liquid of ${say('density', hot)} at 131 °F = ${say('mass', byVolume)}`,
        ...(Number.isFinite(byDensity)
          ? [
              `filling density of the regulation: ${say('share', byDensity / waterCapacity)} of ${say('mass', waterCapacity)} = ${say('mass', byDensity)}`,
            ]
          : []),
        `the least: ${say('mass', value)}`,
      ],
    };
  },
});
