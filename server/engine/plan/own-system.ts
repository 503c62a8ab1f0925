import { ofSteps } from './assemble';
import type { Bound } from './bind';
import type { Head } from './plan';
import type { Amount } from './term';

export type System = 'inch-pound' | 'si';

const known = new WeakMap<Head, System>();

/** The system that most amounts of a plan's head are written in; inch-pound where it says nothing. */
export function ownSystem(head: Head): System {
  let found = known.get(head);
  if (found === undefined) known.set(head, (found = counted(head.declaration.bound.block)));
  return found;
}

function counted(block: readonly Bound[]): System {
  let si = 0;
  let inchPound = 0;
  const visit = (bounds: readonly Bound[]): void => {
    for (const bound of bounds) {
      for (const value of Object.values(bound.values)) {
        const system = (value as Amount | undefined)?.literal?.unit.system;
        if (system === 'si') si++;
        else if (system === 'inch-pound') inchPound++;
      }
      visit(bound.block);
    }
  };
  visit(block.filter((each) => each.word && !ofSteps.has(each.word.word)));
  return si > inchPound ? 'si' : 'inch-pound';
}
