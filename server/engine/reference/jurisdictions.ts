import type { Confidence } from './source';
import { bar } from './table-units';

/** Whose law a site is under. `elsewhere`: none of those that the tables know. */
export const laws = ['US', 'EU', 'elsewhere'] as const;
export type Law = (typeof laws)[number];

/** Taken where a site states none, and shown as taken. */
export const lawDefault: Law = 'US';

/**
 * What each law asks of recovery before opening, Pa absolute where it is one figure. The table of the US goes by pressure
 * class, charge and age of the machine (see `recovery-levels.ts`). EN 378-4 is from memory: 0.6 bar absolute up to 0.2 m3
 * inside, 0.3 bar above; the milder one is taken, since no plan states that volume.
 */
export const recoveryByLaw: Readonly<
  Record<
    Law,
    { readonly level: number | 'table' | 'atmosphere'; readonly source: string; readonly confidence: Confidence }
  >
> = {
  US: { level: 'table', source: '40 CFR 82.156 table 1', confidence: 'published' },
  EU: {
    level: 0.6 * bar,
    source: 'EN 378-4: 0.6 bar absolute, 0.3 bar above 0.2 m3 inside; from memory',
    confidence: 'memory',
  },
  elsewhere: {
    level: 'atmosphere',
    source: 'at most atmospheric pressure: common practice, no source',
    confidence: 'practice',
  },
};

/** What a certificate covers; `closed` of a machine that is sealed at the factory. Masses in kg. */
export interface CertificateRule {
  readonly law: Law;
  /** The charge up to which it covers opening the circuit; of a machine sealed at the factory it may be another. */
  readonly most: number;
  readonly mostSealed: number;
}

/** Categories of (EU) 2015/2067 article 3, kept by (EU) 2024/2215: II to 3 kg (6 kg sealed), I for all. From memory. */
export const europeanCertificates: Readonly<Record<string, CertificateRule>> = {
  'category-I': { law: 'EU', most: Number.POSITIVE_INFINITY, mostSealed: Number.POSITIVE_INFINITY },
  'category-II': { law: 'EU', most: 3, mostSealed: 6 },
};
export const europeanCertificateSource = '(EU) 2015/2067 article 3, categories I and II (from memory)';
