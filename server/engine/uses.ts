import type { Finding } from './finding';
import type { Bound } from './plan/bind';

/** Where a `use` leads: a path inside the workspace folder, or why it leads nowhere. */
export type Lead = { readonly path: string } | { readonly why: string };

/** Resolves a `use` path against the file that it stands in. Both are relative to the workspace folder, with `/`. */
export function leadOf(from: string, written: string): Lead {
  if (written.trim() === '') return { why: 'The path is empty.' };
  if (written.includes('\\')) return { why: 'Write the path with "/", as on every machine.' };
  if (/^([a-z]+:|\/)/i.test(written))
    return { why: 'The path must be relative to this file and stay inside the workspace folder.' };
  const parts = from.split('/').slice(0, -1);
  for (const part of written.split('/')) {
    if (part === '' || part === '.') continue;
    if (part === '..') {
      if (parts.length === 0) return { why: 'The path leaves the workspace folder; nothing outside it is read.' };
      parts.pop();
    } else parts.push(part);
  }
  const path = parts.join('/');
  if (written.endsWith('/') || !/\.jobplan$/.test(path))
    return { why: 'The path must name a .jobplan file, not a folder.' };
  return { path };
}

export interface Use {
  readonly bound: Bound;
  readonly from: number;
  readonly to: number;
  readonly written: string;
  readonly lead: Lead;
}

export function usesOf(file: string, statements: readonly Bound[]): readonly Use[] {
  return statements.flatMap((bound): Use[] => {
    const written = bound.values['path'];
    if (bound.word?.word !== 'use' || typeof written !== 'string') return [];
    const span = bound.spans['path'] ?? { from: 0, to: 0 };
    return [{ bound, ...span, written, lead: leadOf(file, written) }];
  });
}

export const useFinding = (file: string, use: Use, name: string, message: string): Finding => ({
  name,
  severity: 'error',
  message,
  at: { file, item: use.bound.item, from: use.from, to: use.to },
  related: [],
  fixes: [],
});
