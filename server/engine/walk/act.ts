import type { Draft } from '../circuit/settle';
import { type Space, seatPasses, spaces } from '../circuit/spaces';
import type { Cause, Plant } from '../circuit/state';
import type { Plan } from '../plan/plan';
import type { Selector } from '../plan/selection';
import type { Step } from '../plan/step';
import type { Amount } from '../plan/term';
import { isProblem, type Quantity, toQuantity } from '../quantity';
import type { Event } from '../steps/events';
import { levelOf } from '../steps/tests';
import type { Act, Target } from '../steps/verb';
import { openSpaces, resolve, type Wanted } from './targets';

/** What a verb works with at one step of the walk. */
export class Acting implements Act {
  readonly events: Event[] = [];

  constructor(
    readonly draft: Draft,
    readonly plan: Plan,
    readonly step: Step,
    readonly cause: Cause,
    readonly round: number | null,
  ) {}

  private get wanted(): Wanted {
    const proof = this.step.word.word === 'pressure-test' ? 'test' : 'dryness';
    return {
      proof,
      level: proof === 'test' ? (levelOf(this, this.step.values['level'] as Amount | undefined) ?? 0) : 0,
    };
  }

  targets(selectors: readonly Selector[] | undefined): readonly Target[] {
    const now = this.draft.now();
    return (selectors ?? []).map((selector) => resolve(now, selector, this.wanted));
  }

  parts(selectors: readonly Selector[] | undefined): readonly number[] {
    const found = new Set(this.targets(selectors).flatMap((target) => target.parts));
    return this.draft.graph.parts.filter((part) => found.has(part.index)).map((part) => part.index);
  }

  spaces(selectors: readonly Selector[] | undefined): readonly Space[] {
    const now = this.draft.now();
    if (selectors?.some((selector) => selector.standing === 'open')) return openSpaces(now, this.wanted);
    const targets = this.targets(selectors).filter((target) => target.thing === null);
    if (targets.length === 0) return spaces(now).filter((space) => space.parts.some((index) => !this.untouched(index)));
    return spaces(now).filter((space) => targets.some((target) => meant(now, space, target.parts)));
  }

  quantity(amount: Amount | undefined): Quantity | null {
    if (!amount?.literal) return null;
    const quantity = toQuantity(amount.literal, amount.kind, this.plan.site.atmosphere);
    return isProblem(quantity) ? null : quantity;
  }

  emit(event: Event): void {
    this.events.push(event);
  }

  private untouched(index: number): boolean {
    const { graph } = this.draft;
    return graph.circuits[graph.parts[index]!.circuit]?.untouched ?? false;
  }
}

/**
 * Whether a step that speaks of these parts means a space. A branch behind a shut valve does not mean what stands before
 * that valve, although the valve's body hangs there; the valve alone, by its name, does.
 */
function meant(plant: Plant, space: Space, parts: readonly number[]): boolean {
  const here = space.parts.filter((index) => parts.includes(index));
  if (here.length === 0) return false;
  const isShut = (index: number): boolean => {
    const part = plant.graph.parts[index]!;
    return part.kind.shuts !== undefined && !seatPasses(plant, part);
  };
  return parts.length === 1 || here.length === space.parts.length || here.some((index) => !isShut(index));
}
