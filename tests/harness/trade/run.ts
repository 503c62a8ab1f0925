import type { Plan } from '../../../server/engine/plan/plan';
import type { Step } from '../../../server/engine/plan/step';
import type { Amount } from '../../../server/engine/plan/term';
import { isProblem, toQuantity } from '../../../server/engine/quantity';
import { type Fault, keyOf, type Rule, reasons } from './fault';
import { air, type Fill, Plant, type Space } from './plant';

/** A plan gone through step by step, with what a practitioner would stop at on the way. */
export class Run {
  readonly plant: Plant;
  readonly faults = new Map<string, Fault>();
  /** The last steps that opened, closed, tested, evacuated or filled each part: what a fault of the part hangs on. */
  readonly touchedBy = new Map<number, Step[]>();
  step: Step | null = null;

  constructor(readonly plan: Plan) {
    this.plant = new Plant(plan);
  }

  report(rule: Rule, subject: string, parts: readonly number[] = [], also: readonly (Step | null)[] = []): void {
    const steps = [this.step, ...also, ...parts.flatMap((part) => (this.touchedBy.get(part) ?? []).slice(-6))].filter(
      (each) => each !== null,
    );
    const fault: Fault = { rule, subject, why: reasons[rule], steps, parts };
    const known = this.faults.get(keyOf(fault));
    this.faults.set(
      keyOf(fault),
      known ? { ...known, steps: [...known.steps, ...steps], parts: [...known.parts, ...parts] } : fault,
    );
  }

  /** Pa over the atmosphere; null where it is not stated or not a pressure. */
  level(amount: unknown): number | null {
    const quantity = this.quantity(amount, 'pressure');
    return quantity === null ? null : quantity - this.plan.site.atmosphere;
  }
  quantity(amount: unknown, kind: 'pressure' | 'time' | 'mass'): number | null {
    if (typeof amount !== 'object' || amount === null || !('literal' in amount)) return null;
    const read = toQuantity((amount as Amount).literal, kind, this.plan.site.atmosphere);
    return isProblem(read) ? null : read.low;
  }

  touch(parts: readonly number[]): void {
    for (const part of parts) this.touchedBy.set(part, [...(this.touchedBy.get(part) ?? []), this.step!]);
  }
  name(part: number): string {
    return this.plant.graph.parts[part]!.name;
  }
  names(parts: readonly number[]): string {
    return parts.map((part) => this.name(part)).join(',');
  }

  /** What is open takes air in; what has come together mixes. */
  settle(): void {
    for (const space of this.plant.spaces()) {
      const fills = [
        ...space.ends.map((end) => this.plant.ends[end]!.fill),
        ...space.joints.map((at) => this.plant.joints[at]!),
      ];
      if (space.leaks.length > 0) this.plant.fill(space, air);
      else if (new Set(fills.map(kindOfFill)).size > 1) this.plant.fill(space, this.mixed(space, fills));
    }
  }

  private mixed(space: Space, fills: readonly Fill[]): Fill {
    const has = (gas: Fill['gas']): Fill | undefined => fills.find((fill) => fill.gas === gas);
    const parts = this.plant.partsOf(space);
    const refrigerant = has('own') ?? has('charge') ?? has('old');
    if (refrigerant) {
      const vacuum = fills.filter((fill) => fill.gas === 'vacuum');
      if (vacuum.some((fill) => !fill.held)) this.report('let-in-unproven', '', parts);
      for (const fill of vacuum) this.needsDepth(fill.pressure, parts);
      if (has('nitrogen') || has('air') || has('traces')) this.report('let-in-dirty', '', parts);
      if (vacuum.length > 0 || has('air') || has('nitrogen')) this.letIn(parts);
      return { ...refrigerant, gas: has('old') && !has('own') && !has('charge') ? 'old' : 'charge', held: false };
    }
    const pressed = fills.reduce((most, fill) => Math.max(most, fill.pressure), -this.plan.site.atmosphere);
    const gas = has('nitrogen') ? 'nitrogen' : has('air') ? 'air' : has('traces') ? 'traces' : 'vacuum';
    return {
      gas,
      pressure: pressed,
      proved: fills.every((fill) => fill.proved),
      held: fills.every((fill) => fill.held),
    };
  }

  /** Refrigerant comes to parts that were opened: they must have been tested, and flammable gas wants a look round. */
  letIn(parts: readonly number[]): void {
    this.needsTest(parts);
    const after = this.plan.system.refrigerant.after ?? this.plan.system.refrigerant.before;
    if (after && flammable.has(after) && !this.plant.done.has('ignition-sources'))
      this.report('ignition-unchecked', '');
  }

  /** The vacuum that refrigerant breaks: 500 micron are 66.7 Pa. */
  needsDepth(pressure: number, parts: readonly number[]): void {
    if (pressure + this.plan.site.atmosphere > 68) this.report('pull-rough', '', parts);
  }

  needsTest(parts: readonly number[]): void {
    const { designLow } = this.plan.system;
    const least = designLow ? (designLow.quantity.low - this.plan.site.atmosphere) * 0.95 : 3e5;
    for (const part of parts) {
      const now = this.plant.parts[part]!;
      if (now.opened && now.tested < least)
        this.report('untested', `${this.name(part)} ${Math.round(now.tested / 1e4)}`, [part]);
    }
  }
}

/** Nitrogen at two pressures is no longer what either was. */
const kindOfFill = ({ gas, held, pressure }: Fill): string =>
  `${gas} ${held} ${gas === 'nitrogen' ? Math.round(pressure) : ''}`;

/** Classes 2L, 2 and 3 of the handbook's tables 3.3 and 3.4. */
const flammable = new Set(
  'R-32 R-454A R-454B R-454C R-452B R-455A R-457A R-1234yf R-1234ze(E) R-152a R-290 R-600a R-600 R-1270 R-717'.split(
    ' ',
  ),
);
