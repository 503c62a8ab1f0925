import { between, type Kind, type Quantity } from '../quantity/quantity';
import type { Confidence } from './source';

/** One constant of the trade with where it comes from. */
export interface Fact {
  readonly quantity: Quantity;
  readonly source: string;
  readonly confidence: Confidence;
}

/** A fact in SI; `low` equals `high` unless practice gives a range. */
export const fact = (kind: Kind, low: number, high: number, source: string, confidence: Confidence): Fact => ({
  quantity: between(kind, low, high),
  source,
  confidence,
});
