import { fact } from './fact';
import { inchOfMercury, standardAtmosphere } from './table-units';

/** The air conditioning of motor vehicles has rules of its own (handbook 13.6); those of stationary plant do not reach it. */
export const vehicleCertificate = {
  name: 'section-609',
  source: '40 CFR 82.34(a)(2), 82.40: motor vehicle air conditioners; from memory',
} as const;

/** What a machine for vehicles draws down to. */
export const vehicleRecovery = fact(
  'pressure',
  standardAtmosphere - 4 * inchOfMercury,
  standardAtmosphere - 4 * inchOfMercury,
  '4 inHg of vacuum, 102 mmHg: handbook 2.1, from memory',
  'memory',
);
