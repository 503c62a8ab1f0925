import type { Unit } from '../quantity';
import { ofSteps } from './assemble';
import type { Bound } from './bind';
import type { Head } from './plan';
import type { Amount } from './term';

export type System = 'inch-pound' | 'si';
/** The unit of pressure that a plan goes by; of gauges above a megapascal `MPa`. */
export type PressureUnit = 'psi' | 'kPa' | 'MPa' | 'bar';

const known = new WeakMap<Head, System>();

/** The system that most amounts of a plan's head are written in; inch-pound where it says nothing. */
export function ownSystem(head: Head): System {
  let found = known.get(head);
  if (found === undefined) known.set(head, (found = counted(head.declaration.bound.block)));
  return found;
}

const pressures = new WeakMap<Head, PressureUnit>();

/**
 * The unit that most pressures of a plan's head are written in, whatever its lengths are: tube by the inch and gauges in bar go
 * together. The steps do not count, so that what is said of one step never hangs on another.
 */
export function ownPressure(head: Head): PressureUnit {
  let found = pressures.get(head);
  if (found === undefined) {
    const times = new Map<PressureUnit, number>();
    for (const { kinds, name } of unitsIn(head.declaration.bound.block)) {
      if (!kinds.includes('pressure') && !kinds.includes('pressure-difference')) continue;
      const unit = /^(kPa|MPa|bar)\b/.exec(name)?.[0] ?? (/^(psi|inHg)/.test(name) ? 'psi' : null);
      if (unit !== null) times.set(unit as PressureUnit, (times.get(unit as PressureUnit) ?? 0) + 1);
    }
    const [most] = [...times].sort((a, b) => b[1] - a[1]);
    found = most?.[0] ?? (ownSystem(head) === 'si' ? 'kPa' : 'psi');
    pressures.set(head, found);
  }
  return found;
}

function counted(block: readonly Bound[]): System {
  let si = 0;
  let inchPound = 0;
  for (const { system } of unitsIn(block)) {
    if (system === 'si') si++;
    else if (system === 'inch-pound') inchPound++;
  }
  return si > inchPound ? 'si' : 'inch-pound';
}

/** The units of all amounts outside the steps. */
function unitsIn(block: readonly Bound[]): readonly Unit[] {
  const found: Unit[] = [];
  const visit = (bounds: readonly Bound[]): void => {
    for (const bound of bounds) {
      for (const value of Object.values(bound.values)) {
        const unit = (value as Amount | undefined)?.literal?.unit;
        if (unit) found.push(unit);
      }
      visit(bound.block);
    }
  };
  visit(block.filter((each) => each.word && !ofSteps.has(each.word.word)));
  return found;
}
