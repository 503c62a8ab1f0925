import type { Confidence } from '../../engine/takeoff/figure';

/** How sure a figure is, in words. */
export const sure: Readonly<Record<Confidence, string>> = {
  published: 'published',
  computed: 'computed',
  practice: 'common practice',
  memory: 'from memory',
};

const cell = (text: string): string => text.replaceAll('|', '\\|').replaceAll('\n', ' ');

/** A table in Markdown. */
export const rows = (head: readonly string[], body: readonly (readonly string[])[]): string =>
  [head, head.map(() => '---'), ...body].map((row) => `| ${row.map(cell).join(' | ')} |`).join('\n');

/** A bare number with three digits at most. */
export const figure = (value: number): string => String(Number(value.toPrecision(3)));
