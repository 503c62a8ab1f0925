import type { Plan } from '../plan/plan';
import { between, exactly, type Quantity } from '../quantity';
import type { Entry } from '../walk/walk';
import type { Draw } from './draws';

/** How much of each refrigerant is in the machine, kg; null where the plan lets nobody know. */
export class ChargeLedger {
  private readonly held = new Map<string, Quantity | null>();

  constructor({ system }: Plan) {
    if (system.refrigerant.before) this.held.set(system.refrigerant.before, system.recoverCharge?.quantity ?? null);
  }

  /** The charge of new equipment that a step lets in from behind its own valves. */
  letIn({ before, after }: Entry): void {
    for (const [index, part] of before.parts.entries()) {
      const own = before.graph.parts[index]!.properties.holds;
      if (!own || !part.ownCharge || after.parts[index]!.ownCharge) continue;
      this.add(own.refrigerant, own.mass === null ? null : exactly('mass', own.mass));
    }
  }

  add(refrigerant: string, mass: Quantity | null): void {
    const before = this.held.get(refrigerant);
    if (before === undefined) this.held.set(refrigerant, mass);
    else if (before === null || mass === null) this.held.set(refrigerant, null);
    else this.held.set(refrigerant, between('mass', before.low + mass.low, before.high + mass.high));
  }

  /** A draw with what comes out by the ledger: the charge comes out once, however often the machine is recovered from. */
  recovered(draw: Extract<Draw, { of: 'recovery' }>): Extract<Draw, { of: 'recovery' }> {
    if (!draw.whole) return draw;
    const mass = this.held.get(draw.refrigerant) ?? null;
    this.held.set(draw.refrigerant, exactly('mass', 0));
    return { ...draw, mass };
  }
}
