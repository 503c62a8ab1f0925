import { kindNamed } from '../circuit/kinds';
import type { Bound } from '../plan/bind';
import type { JobKind } from '../plan/plan';
import type { Amount } from '../plan/term';
import { isProblem, type Quantity, toQuantity } from '../quantity';
import { vocabulary } from '../vocabulary';
import { perHead } from './per-head';

/** What a house rule speaks about, read from its few words once a rule. */
export type Subject =
  | { readonly of: 'job'; readonly kind: JobKind | null; readonly safetyClass: string | null }
  | { readonly of: 'joint'; readonly torch: boolean | null; readonly joint: string | null }
  | { readonly of: 'line'; readonly flushed: boolean; readonly kept: boolean }
  | { readonly of: 'final purge' }
  | { readonly of: 'step'; readonly verb: string };

/** What must be there: a part, something of the stock, or a step, with who does it and where it stands. */
export interface Need {
  readonly text: string;
  readonly words: readonly string[];
  readonly by: string | null;
  readonly before: string | null;
  readonly after: string | null;
}

export interface HouseRule {
  readonly bound: Bound;
  readonly file: string;
  readonly text: string;
  /** Null where no check can see what the words speak about. */
  readonly subject: Subject | null;
  readonly needs: readonly Need[];
  readonly least: Quantity | null;
  readonly most: Quantity | null;
  readonly unlessPer: boolean;
  readonly severity: 'error' | 'warning' | 'information';
}

const kinds: readonly JobKind[] = ['changeout', 'conversion', 'burnout', 'repair', 'new'];
const jointKinds = ['flare', 'pressed', 'flanged'];

/** The rules that a plan is under, in their order. */
export const houseRules = perHead((plan): readonly HouseRule[] =>
  plan.rules.flatMap((rules) =>
    rules.bound.block
      .filter((bound) => bound.word?.word === 'every')
      .map((bound): HouseRule => {
        const { values } = bound;
        const subject = String(values['subject'] ?? '');
        const limit = (slot: string): Quantity | null => {
          const amount = values[slot] as Amount | undefined;
          const quantity = amount?.literal ? toQuantity(amount.literal, amount.kind, plan.site.atmosphere) : null;
          return quantity === null || isProblem(quantity) ? null : quantity;
        };
        return {
          bound,
          file: rules.file,
          text: textOf(bound),
          subject: subjectOf(subject),
          needs: ((values['needs'] as readonly string[] | undefined) ?? []).map(needOf),
          least: limit('least'),
          most: limit('most'),
          unlessPer: values['unless'] === true,
          severity: (values['severity'] as HouseRule['severity'] | undefined) ?? 'warning',
        };
      }),
  ),
);

function textOf(bound: Bound): string {
  let text = '';
  for (const token of bound.item.head) {
    if (token.kind === 'comment' || token.kind === 'newline') break;
    text += token.kind === 'space' ? ' ' : token.text;
  }
  return text.trim();
}

export function subjectOf(text: string): Subject | null {
  const words = text.split(' ').filter((word) => word !== '');
  const last = words.at(-1) ?? '';
  if (words.join(' ') === 'final purge') return { of: 'final purge' };
  if (last === 'joint') {
    const [how = null] = words.slice(0, -1);
    if (how === null) return { of: 'joint', torch: null, joint: null };
    if (how === 'brazed') return { of: 'joint', torch: true, joint: null };
    return jointKinds.includes(how) ? { of: 'joint', torch: null, joint: how } : null;
  }
  if (last === 'line' || last === 'lines') {
    const before = words.slice(0, -1);
    return before.every((word) => word === 'flushed' || word === 'kept')
      ? { of: 'line', flushed: before.includes('flushed'), kept: before.includes('kept') }
      : null;
  }
  const job = last === 'job' ? words.slice(0, -1) : words;
  if (job.length === 0) return { of: 'job', kind: null, safetyClass: null };
  const [first = ''] = job;
  if (job.length === 1 && kinds.includes(first as JobKind))
    return { of: 'job', kind: first as JobKind, safetyClass: null };
  if (job.length === 1 && /^[AB][1-3]L?$/.test(first)) return { of: 'job', kind: null, safetyClass: first };
  if (words.length === 1 && vocabulary.word('steps', first)) return { of: 'step', verb: first };
  return null;
}

function needOf(text: string): Need {
  const words = text.split(' ');
  const after = (key: string): string | null => {
    const at = words.indexOf(key);
    return at > 0 ? (words[at + 1] ?? null) : null;
  };
  const stop = words.findIndex((word, k) => k > 0 && ['by', 'before', 'after'].includes(word));
  return {
    text,
    words: stop < 0 ? words : words.slice(0, stop),
    by: after('by'),
    before: after('before'),
    after: after('after'),
  };
}

/** Whether a word names a kind of part, or ends like one: `suction-drier` is a drier on the suction side. */
export const isPartWord = (word: string): boolean =>
  kindNamed(word) !== undefined || /-(drier|valve|line|glass|strainer)$/.test(word);
