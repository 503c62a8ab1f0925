/** A piece of the sheet that is measured before it is drawn, and never parted. */
export interface Slab {
  readonly height: number;
  /** Clear space above it, left out at the head of a page. */
  readonly space: number;
  /** Stays on the page of the slab that follows. */
  readonly keep: boolean;
  readonly newPage: boolean;
  /** Drawn again above it where it begins a page: the head of its table. */
  readonly header: Slab | null;
  /** What it may be parted into if it is higher than a page; empty where it can't be. */
  readonly parts: readonly Slab[];
  readonly draw: (x: number, y: number) => void;
}

export interface Placed {
  readonly slab: Slab;
  /** From the top of the page's room. */
  readonly y: number;
}

export const slab = (height: number, draw: Slab['draw'], more: Partial<Omit<Slab, 'height' | 'draw'>> = {}): Slab => ({
  height,
  draw,
  space: 0,
  keep: false,
  newPage: false,
  header: null,
  parts: [],
  ...more,
});

/** Slabs one under the other as one. */
export function stacked(parts: readonly Slab[], more: Partial<Omit<Slab, 'height' | 'draw' | 'parts'>> = {}): Slab {
  const tops: number[] = [];
  let height = 0;
  for (const [n, part] of parts.entries()) {
    height += n === 0 ? 0 : part.space;
    tops.push(height);
    height += part.height;
  }
  return slab(
    height,
    (x, y) => {
      for (const [n, part] of parts.entries()) part.draw(x, y + tops[n]!);
    },
    { ...more, parts },
  );
}

const headerHeight = (one: Slab): number => (one.header === null ? 0 : one.header.height);

/** The slabs from `start` that must share a page. */
function tied(slabs: readonly Slab[], start: number): readonly Slab[] {
  let end = start;
  while (end < slabs.length - 1 && slabs[end]!.keep) end += 1;
  return slabs.slice(start, end + 1);
}

const heightOf = (slabs: readonly Slab[]): number =>
  slabs.reduce((sum, one, n) => sum + one.height + (n === 0 ? 0 : one.space), 0);

/** Parts slabs that no page can hold. */
const fitting = (slabs: readonly Slab[], room: number): readonly Slab[] =>
  slabs.flatMap((one) =>
    one.height > room && one.parts.length > 0
      ? one.parts.map((part, n) => (n === 0 ? { ...part, space: one.space, newPage: one.newPage } : part))
      : [one],
  );

/**
 * Puts slabs on pages with `room` points each. What is tied together stays together unless it is higher than a page;
 * only then it is parted between its slabs.
 */
export function paginate(all: readonly Slab[], room: number): readonly (readonly Placed[])[] {
  const slabs = fitting(all, room);
  const pages: Placed[][] = [[]];
  let y = 0;
  const turn = () => {
    pages.push([]);
    y = 0;
  };
  const place = (one: Slab) => {
    const page = pages.at(-1)!;
    if (page.length > 0) y += one.space;
    else if (one.header !== null) {
      page.push({ slab: one.header, y });
      y += one.header.height;
    }
    page.push({ slab: one, y });
    y += one.height;
  };
  for (let n = 0; n < slabs.length; ) {
    const together = tied(slabs, n);
    const first = together[0]!;
    const filled = pages.at(-1)!.length > 0;
    if (filled && (first.newPage || y + first.space + heightOf(together) > room)) turn();
    const whole = heightOf(together) + headerHeight(first) <= room;
    for (const one of together) {
      if (!whole && pages.at(-1)!.length > 0 && y + one.space + one.height > room) turn();
      place(one);
    }
    n += together.length;
  }
  return pages;
}
