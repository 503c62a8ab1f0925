import type { Bound } from '../engine/plan/bind';
import type { Asked } from './asking';
import { type Definition, definitionsOf, type Mention, mentionAt } from './names';

/** The name at the place that was asked about, and where it is made. */
export interface SymbolAt {
  readonly bound: Bound;
  /** The statement's start, an offset of the file. */
  readonly at: number;
  readonly mention: Mention;
  readonly definitions: readonly Definition[];
}

export function symbolAt({ snapshot, path, look, offset }: Asked): SymbolAt | undefined {
  const placed = look.bound;
  const top = look.chain[0]?.bound;
  const mention = placed && mentionAt(placed.bound, offset - placed.at);
  if (placed === undefined || top === undefined || mention === undefined) return undefined;
  return { ...placed, mention, definitions: definitionsOf(snapshot, path, top, mention) };
}
