import type { Confidence } from './source';
import { bar } from './table-units';

/** Whose law a site is under. `elsewhere`: none of those that the tables know. */
export const laws = ['US', 'EU', 'elsewhere'] as const;
export type Law = (typeof laws)[number];

/** Taken where a site states none, and shown as taken. */
export const lawDefault: Law = 'US';

/** What findings rest on the law for. */
export type LawMatter =
  | 'opening'
  | 'machine'
  | 'mixing'
  | 'cylinder'
  | 'waste'
  | 'lockOut'
  | 'fireWatch'
  | 'oxygen'
  | 'records';

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

/**
 * Categories of (EU) 2015/2067 article 3: I for all, II below 3 kg. Article 11 of (EU) 2024/2215 repealed it; its
 * certificates A1 and A2 cover the same charges, as ministries and institutes report them, and its article 10 deals with
 * the older ones that people hold. Below 6 kg where sealed is from memory, and taken for A2 as for II.
 */
export const europeanCertificates: Readonly<Record<string, CertificateRule>> = {
  'category-I': { law: 'EU', most: Number.POSITIVE_INFINITY, mostSealed: Number.POSITIVE_INFINITY },
  'category-II': { law: 'EU', most: 3, mostSealed: 6 },
  A1: { law: 'EU', most: Number.POSITIVE_INFINITY, mostSealed: Number.POSITIVE_INFINITY },
  A2: { law: 'EU', most: 3, mostSealed: 6 },
};
export const europeanCertificateSource =
  '(EU) 2024/2215, certificates A1 and A2; before it (EU) 2015/2067, categories I and II';

/** What a finding rests on, by matter and law. Of the EU, the articles of (EU) 2024/573 were read; the rest is from memory. */
export const citations: Readonly<Record<Law, Readonly<Record<LawMatter, string>>>> = {
  US: {
    opening: '40 CFR 82.154, 82.156',
    machine: '40 CFR 82.158',
    mixing: '40 CFR 82.154, 82.164',
    cylinder: '49 CFR 173.301a(d), 173.304(b), 180.205(c)',
    waste: '40 CFR 279.10(b)(1)(ii), 261.31(a)',
    lockOut: '29 CFR 1910.147',
    fireWatch: '29 CFR 1910.252(a)(2)(iii)(B)',
    oxygen: '29 CFR 1910.146(b)',
    records: '40 CFR 82.156(a)(3), 82.157, 84.106',
  },
  EU: {
    opening: '(EU) 2024/573 articles 4 and 8',
    machine: '(EU) 2024/573 article 8',
    mixing: '(EU) 2024/573 article 8',
    cylinder: 'ADR P200',
    waste: '2008/98/EC',
    lockOut: '2009/104/EC annex II',
    fireWatch: '1999/92/EC and the permit of the site',
    oxygen: '98/24/EC',
    records: '(EU) 2024/573 article 7',
  },
  elsewhere: {
    opening: 'law of most countries',
    machine: 'law of most countries',
    mixing: 'law of most countries',
    cylinder: 'rules on the carriage of dangerous goods',
    waste: 'rules on dangerous waste',
    lockOut: 'rules on safety at work',
    fireWatch: 'the permit of the site',
    oxygen: 'rules on safety at work',
    records: 'law of most countries',
  },
};

/** In place of an article on fluorinated gases, for a gas that is none; from memory. */
export const citedForNatural: Readonly<Partial<Record<LawMatter, string>>> = {
  opening: 'EN 378-4',
  machine: 'EN 378-4',
  mixing: 'EN 378-4',
};
