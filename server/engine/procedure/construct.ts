import type { BlankEntry, ChecksLine, Fact, Hold, Reading, Step, TextLine } from './document';
import { type Run, type Sentence, sentence } from './sentence';

/** The limit of a reading that is taken and not judged: it says so, so that no blank stands without a limit. */
export const forTheRecord: Sentence = sentence('for the record');

type Said = string | Sentence;
const said = (value: Said): Sentence => (typeof value === 'string' ? sentence(value) : value);

export const fact = (label: string, ...value: readonly (string | Run)[]): Fact => ({
  label,
  value: sentence(...value),
});

/** A step with only what is given; everything else of it is empty. */
export function step(number: string, id: string, text: Said, more: Partial<Omit<Step, 'kind'>> = {}): Step {
  return {
    kind: 'step',
    number,
    id,
    line: null,
    text: said(text),
    aim: [],
    by: null,
    cautions: [],
    lines: [],
    each: [],
    because: null,
    ifFails: null,
    ...more,
  };
}

export function hold(number: string, id: string, see: Said, by: string, line: number | null = null): Hold {
  return { kind: 'hold', number, id, line, see: said(see), by };
}

export const textLine = (label: string, value: Said): TextLine => ({ kind: 'text', label, value: said(value) });
export const checks = (label: string, ...items: readonly string[]): ChecksLine => ({ kind: 'checks', label, items });

/** Blanks in the given units; `limit` is never empty. The time is asked beside it unless `time` is false. */
export function reading(label: string, units: string | readonly BlankEntry[], limit: Said, time = true): Reading {
  const entries = typeof units === 'string' ? [{ lead: '', unit: units }] : units;
  const bound = said(limit);
  return { kind: 'reading', label, entries, limit: bound.length === 0 ? forTheRecord : bound, time };
}
