import type { Entry } from '../walk/walk';

/** One draw of a supply in the order of the work, in SI. */
export interface SupplyDraw {
  readonly entry: Entry;
  readonly amount: number;
}

/** A container of a supply: what was in it at the start, and what is left at the end. */
export interface SupplyContainer {
  readonly name: string;
  readonly start: number;
  readonly left: number;
}

export interface SupplyRun {
  /** What is drawn: the solvent, the refrigerant or the oil by its name. */
  readonly what: string;
  readonly kind: 'mass' | 'volume';
  /** In the order of use. A container that is used up is changed. */
  readonly containers: readonly SupplyContainer[];
  /** Each draw from a container, with what it held before and after: the weights that a scale shows less the tare. */
  readonly draws: readonly {
    readonly entry: Entry;
    readonly container: string;
    readonly before: number;
    readonly after: number;
  }[];
  readonly changes: readonly { readonly entry: Entry; readonly from: string; readonly to: string }[];
  /** The first step that the supply cannot serve, and what it lacks from there on in all. */
  readonly short: { readonly entry: Entry; readonly amount: number } | null;
  /** Whether the stock is stated; without it, containers are taken as they are needed. */
  readonly stated: boolean;
  /** The shop's price of a container, as it is written there. */
  readonly price: string | null;
}

/** Where a supply comes from: containers in the order in which they are taken, then spare ones without end. */
export interface Supply {
  readonly what: string;
  readonly kind: 'mass' | 'volume';
  readonly stock: readonly { readonly name: string; readonly start: number }[];
  readonly spare: { readonly name: string; readonly start: number } | null;
  readonly stated: boolean;
  readonly price: string | null;
}

/** More containers than this for one job mean that the container's size is wrong. */
const mostContainers = 500;

/** Draws a supply container by container. All that is in a container can be had; a draw may go on in the next. */
export function runSupply(supply: Supply, draws: readonly SupplyDraw[]): SupplyRun {
  const waiting = [...supply.stock];
  const used: { name: string; start: number; left: number }[] = [];
  const drawn: SupplyRun['draws'][number][] = [];
  const changes: SupplyRun['changes'][number][] = [];
  const short: SupplyDraw[] = [];

  const take = (): (typeof used)[number] | null => {
    const spare =
      supply.spare && used.length < mostContainers
        ? { ...supply.spare, name: `${supply.spare.name} no. ${used.length + 1}` }
        : null;
    const next = waiting.shift() ?? spare;
    if (!next || next.start <= 0) return null;
    const container = { name: next.name, start: next.start, left: next.start };
    used.push(container);
    return container;
  };

  let current = draws.length > 0 ? take() : null;
  for (const { entry, amount } of draws) {
    let open = amount;
    while (current && open > hair(amount)) {
      const gives = Math.min(open, current.left);
      if (gives > 0) drawn.push({ entry, container: current.name, before: current.left, after: current.left - gives });
      current.left -= gives;
      open -= gives;
      if (open <= hair(amount)) break;
      const next = take();
      if (next) changes.push({ entry, from: current.name, to: next.name });
      current = next;
    }
    if (open > hair(amount)) short.push({ entry, amount: open });
  }
  return {
    what: supply.what,
    kind: supply.kind,
    containers: used,
    draws: drawn,
    changes,
    short: short[0] ? { entry: short[0].entry, amount: short.reduce((sum, each) => sum + each.amount, 0) } : null,
    stated: supply.stated,
    price: supply.price,
  };
}

/** Rounding of sums is no need for another container. */
const hair = (amount: number): number => 1e-9 * Math.max(amount, 1e-6);
