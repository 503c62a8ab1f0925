import { bubblePressure } from '../../properties';
import {
  chargeBorder,
  recoveryLevel as levelOf,
  machineDateBorder,
  pressureClass,
  pressureClassBounds,
  pressureClassSource,
  recoveryLevelSource,
} from '../../reference/recovery-levels';
import { celsius, inchOfMercury } from '../../reference/table-units';
import { relation } from '../relation';

/** The table counts its vacuum from an atmosphere of 29.9 inHg. */
const tableAtmosphere = 29.9 * inchOfMercury;
/** A liquid that reaches the border to very high by less than this is held to the stricter row: its class is not printed. */
const nearBorder = 1.03;
const dateForm = /^\d{4}(-\d{2}){0,2}$/;

/** The level that recovery must reach before opening, Pa absolute. */
export const recoveryLevel = relation({
  name: 'recovery-level',
  title: 'Recovery level before opening',
  group: 4,
  inputs: {
    refrigerant: { kind: 'refrigerant', title: 'refrigerant', from: '`refrigerant` of the system' },
    charge: { kind: 'mass', title: 'charge', from: '`recover-charge` of the system', valid: [0, 1e6] },
    machineMade: { kind: 'date', title: 'date of the recovery machine', from: '`made` of the recovery machine' },
  },
  output: 'pressure',
  formula: 'row of 40 CFR 82.156 table 1 by pressure class (liquid pressure at 104 °F), charge and the machine’s date',
  validity: 'appliances under 40 CFR 82 subpart F, not vehicles and small appliances',
  sources: [recoveryLevelSource, pressureClassSource],
  confidence: 'published',
  assumptions: [
    'vacuum counted from 29.9 inHg as in the table',
    'a section that is shut off counts with its own charge',
  ],
  examples: [
    {
      inputs: { refrigerant: 'R-22', charge: '150 lb', machineMade: '2020' },
      expect: '0 psig',
      tolerance: 1e-3,
      source: 'handbook section 12, WE-13; 40 CFR 82.156 table 1',
    },
    {
      inputs: { refrigerant: 'R-22', charge: '220 lb', machineMade: '2020' },
      expect: '67.4 kPa absolute',
      tolerance: 1e-3,
      source: 'handbook section 12, WE-13: 10 inHg',
    },
    {
      inputs: { refrigerant: 'R-22', charge: '220 lb', machineMade: '1990' },
      expect: '87.7 kPa absolute',
      tolerance: 1e-3,
      source: '40 CFR 82.156 table 1: 4 inHg with an older machine',
    },
    {
      inputs: { refrigerant: 'R-134a', charge: '20 lb', machineMade: '2020' },
      expect: '67.4 kPa absolute',
      tolerance: 1e-3,
      source: 'handbook 2.1: a medium-pressure gas needs 10 inHg',
    },
    {
      inputs: { refrigerant: 'R-410A', charge: '20 lb', machineMade: '2020' },
      expect: '0 psig',
      tolerance: 1e-3,
      source: 'handbook 2.1: R-410A needs 0 psig',
    },
    {
      inputs: { refrigerant: 'R-123', charge: '900 lb', machineMade: '2020' },
      expect: '25 torr',
      tolerance: 1e-3,
      source: '40 CFR 82.156 table 1: 25 mmHg absolute',
    },
  ],
  compute: ({ refrigerant, charge, machineMade }, { say, atmosphere }) => {
    if (!dateForm.test(machineMade))
      return { refused: `\`${machineMade}\` is no date; a year such as 2021 belongs here.` };
    const at104 = bubblePressure(refrigerant, celsius(40));
    const byNumber = pressureClass(at104);
    const onBorder = byNumber === 'very-high' && at104 !== null && at104 < nearBorder * pressureClassBounds.veryHigh;
    const group = onBorder ? 'high' : byNumber;
    const level = levelOf(group, charge, machineMade);
    const value =
      'absoluteMmHg' in level
        ? level.absoluteMmHg * (101325 / 760)
        : level.vacuumInHg === 0
          ? atmosphere
          : Math.min(atmosphere, tableAtmosphere - level.vacuumInHg * inchOfMercury);
    const asked =
      'absoluteMmHg' in level ? `${level.absoluteMmHg} mmHg absolute` : `${level.vacuumInHg} inHg of vacuum`;
    return {
      value,
      withoutTables: true,
      notes: onBorder
        ? [
            `${refrigerant.name} lies just above the border to very high pressure; the stricter row for high pressure is taken.`,
          ]
        : [],
      workings: () => [
        `liquid at 104 °F: ${at104 === null ? 'above the critical point' : say('pressure', at104, 'psia')}, so ${group.replace('-', ' ')} pressure`,
        `charge ${say('mass', charge)} is ${charge >= chargeBorder - 1e-9 ? 'at least' : 'below'} ${say('mass', chargeBorder)}; machine of ${machineMade}, ${machineMade >= machineDateBorder ? 'on or after' : 'before'} ${machineDateBorder}`,
        `table 1: ${asked}, here ${say('pressure', value)}`,
      ],
    };
  },
});
