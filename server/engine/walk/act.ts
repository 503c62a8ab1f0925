import type { Draft } from '../circuit/settle';
import { type Space, spaces } from '../circuit/spaces';
import type { Cause } from '../circuit/state';
import type { Plan } from '../plan/plan';
import type { Selector } from '../plan/selection';
import type { Step } from '../plan/step';
import type { Amount } from '../plan/terms';
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
    const named = selectors && this.targets(selectors).some((target) => target.thing === null);
    const parts = named ? new Set(this.parts(selectors)) : null;
    return spaces(now).filter((space) =>
      parts ? space.parts.some((index) => parts.has(index)) : space.parts.some((index) => !this.untouched(index)),
    );
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
