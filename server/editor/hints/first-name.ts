import type { Name } from '../../engine/plan/term';

/** The first name among a statement's values: what a line of stock brings. */
export function firstName(values: Readonly<Record<string, unknown>>): string | undefined {
  for (const value of Object.values(values))
    if (typeof value === 'object' && value !== null && 'refers' in value) return (value as Name).text;
  return undefined;
}
