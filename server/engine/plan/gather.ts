import type { Finding, Severity } from '../finding';
import { isProblem, nearest, toQuantity } from '../quantity';
import type { Bound } from './bind';
import type { Stated } from './plan';
import type { Span } from './read-terms';
import { meantRefrigerant, whyNoRefrigerant } from './refrigerants';
import { shortened } from './shortened';
import type { Amount, TermFault } from './term';

/** Collects findings while a plan is put together, each at its place in a file. */
export class Gather {
  readonly findings: Finding[] = [];

  constructor(readonly file: string) {}

  report(
    name: string,
    severity: Severity,
    message: string,
    bound: Bound,
    span: Span,
    instead: readonly string[] = [],
    file = this.file,
  ): void {
    this.findings.push({
      name,
      severity,
      message,
      at: { file, item: bound.item, ...span },
      related: [],
      fixes: instead.map((text) => ({
        title: `Write "${text}"`,
        safe: false,
        edits: [{ at: { file, item: bound.item, ...span }, text }],
      })),
    });
  }

  /** A refrigerant that neither tables nor lists know: what was most likely meant, or why it has no tables. */
  unknownRefrigerant(name: string, bound: Bound, span: Span, file = this.file): void {
    const near = meantRefrigerant(name);
    const message = whyNoRefrigerant(name, shortened(name));
    const instead = near !== undefined && message.includes(`"${near}"`) ? [near] : [];
    this.report('unknown-name', 'error', message, bound, span, instead, file);
  }

  unknownName(
    what: string,
    name: string,
    bound: Bound,
    span: Span,
    candidates: Iterable<string>,
    file = this.file,
  ): void {
    const known = [...candidates];
    const near = nearest(name, known);
    const hint = near
      ? `; the nearest is "${near}"`
      : known.length > 0 && known.length <= 8
        ? `; there are ${known.join(', ')}`
        : '';
    this.report(
      'unknown-name',
      'error',
      `There is no ${what} "${shortened(name)}"${hint}.`,
      bound,
      span,
      near ? [near] : [],
      file,
    );
  }
}

export const wordSpan = (bound: Bound): Span => {
  const token = bound.item.word;
  return token ? { from: token.at, to: token.at + token.text.length } : { from: 0, to: Math.min(1, bound.item.length) };
};

/** A term's fault as a finding at its place. */
export function faultFinding(fault: TermFault, bound: Bound, file: string): Finding {
  const at = { file, item: bound.item, from: fault.from, to: fault.to };
  return {
    name: fault.name,
    severity: 'error',
    message: fault.message,
    at,
    related: [],
    fixes: fault.instead.map((text) => ({ title: `Write "${text}"`, safe: false, edits: [{ at, text }] })),
  };
}

/** A stated quantity at the site's atmosphere (Pa); null where it is missing or cannot be. */
export function stated(bound: Bound | undefined, slot: string, atmosphere: number, gather?: Gather): Stated | null {
  const amount = bound?.values[slot] as Amount | undefined;
  if (!bound || !amount?.literal) return null;
  const quantity = toQuantity(amount.literal, amount.kind, atmosphere);
  const span = { from: amount.from, to: amount.to };
  if (isProblem(quantity)) {
    gather?.report(quantity.problem, 'error', quantity.message, bound, span, quantity.suggestions);
    return null;
  }
  return { quantity, amount, bound, span, per: (bound.values['per'] as string | undefined) ?? null };
}
