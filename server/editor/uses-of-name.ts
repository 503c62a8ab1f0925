import type { Bound } from '../engine/plan/bind';
import type { Snapshot } from './engine';
import { type Definition, definitionsOf, type Mention, mentionsIn, sameDefinition } from './names';

/** A place where a name stands. */
export interface NamePlace {
  readonly file: string;
  readonly bound: Bound;
  readonly mention: Mention;
}

/** Every place in the given files that means the same as `wanted`, where it is made included. */
export function placesOfName(snapshot: Snapshot, paths: readonly string[], wanted: Definition): readonly NamePlace[] {
  const found: NamePlace[] = [];
  for (const path of paths) {
    const file = snapshot.bound(path);
    for (const top of file?.statements ?? []) visit(top, top, path);
  }
  return found;

  function visit(bound: Bound, top: Bound, path: string): void {
    for (const mention of mentionsIn(bound)) {
      if (mention.text !== wanted.text) continue;
      const meant = definitionsOf(snapshot, path, top, mention);
      if (meant.some((each) => sameDefinition(each, wanted))) found.push({ file: path, bound, mention });
    }
    for (const each of bound.block) visit(each, top, path);
  }
}
