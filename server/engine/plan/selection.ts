import type { Token } from '../../../grammar/tree';
import { isSlip } from '../quantity';
import { shortened } from './shortened';
import type { Reading, Term } from './term';

/** Words before a noun that narrow it down. */
export const standings = ['kept', 'new', 'old', 'open', 'added', 'reused', 'removed'] as const;
export type Standing = (typeof standings)[number];

/** One thing that a step speaks of, as written: `each kept line`, `txv-1`, `valves of suction-drier`, `system`. */
export interface Selector {
  readonly text: string;
  readonly each: boolean;
  readonly standing: Standing | null;
  readonly noun: string;
  /** The thing of the verb's own that the noun is, or is a slip of the keys for; of a verb that takes any thing, the noun. */
  readonly own: string | null;
  /** What the noun belongs to: `superheat of txv-1, txv-2`. */
  readonly of: readonly Selector[];
  readonly from: number;
  readonly to: number;
}

const end = (token: Token): number => token.at + token.text.length;

/**
 * Reads a list of selectors, up to the next clause. Which names there are is not known here; the plan resolves them.
 * `nouns`: words that this verb understands beside the parts of the circuit; `free`: it takes any other thing, too.
 */
export function selection(nouns: readonly string[] = [], free = false): Term<readonly Selector[]> {
  return {
    shape: 'PARTS',
    type: 'selection',
    free,
    refers: 'place-in-circuit',
    ...(nouns.length ? { choices: nouns } : {}),
    starts: (token) => token.kind === 'word',
    read(cursor): Reading<readonly Selector[]> {
      const selectors: Selector[] = [];
      for (;;) {
        const one = readSelector();
        if ('fault' in one) return one;
        selectors.push(one.value);
        const following = cursor.peek(1);
        if (cursor.peek()?.kind !== 'comma' || following?.kind !== 'word' || cursor.stops(cursor.index + 1)) break;
        cursor.next();
      }
      return { value: fold(selectors) };

      function readSelector(): Reading<Selector> {
        const start = cursor.peek();
        const words: string[] = [];
        let each = false;
        let standing: Standing | null = null;
        if (cursor.peek()?.text === 'each') {
          each = true;
          words.push(cursor.next()!.text);
        }
        const following = cursor.peek(1);
        if (
          isStanding(cursor.peek()?.text) &&
          following?.kind === 'word' &&
          !cursor.stops(cursor.index + 1) &&
          following.text !== 'of'
        ) {
          standing = cursor.peek()!.text as Standing;
          words.push(cursor.next()!.text);
        }
        const noun = cursor.peek();
        if (noun?.kind !== 'word' || cursor.atStop) {
          return {
            fault: {
              name: noun && !cursor.atStop ? 'wrong-term' : 'missing-term',
              message:
                noun && !cursor.atStop
                  ? `Expected a part or a line of the circuit, not "${shortened(noun.text)}".`
                  : 'Expected what it is done to: a part, a line, a section or "system".',
              from: (noun ?? start)?.at ?? -1,
              to: noun ? end(noun) : start ? end(start) : -1,
              instead: [],
            },
          };
        }
        cursor.next();
        words.push(noun.text);
        const of: Selector[] = [];
        let last = noun;
        if (cursor.peek()?.text === 'of' && cursor.peek(1)?.kind === 'word') {
          words.push('of');
          cursor.next();
          const owner = readSelector();
          if ('fault' in owner) return owner;
          of.push(owner.value);
          words.push(owner.value.text);
          return {
            value: {
              text: words.join(' '),
              each,
              standing,
              noun: noun.text,
              own: ownOf(noun.text),
              of,
              from: start!.at,
              to: owner.value.to,
            },
          };
        }
        // A thing may have more than one word ("old pump oil"); the last is the noun.
        while (!cursor.atStop && cursor.peek()?.kind === 'word') {
          last = cursor.next()!;
          words.push(last.text);
        }
        const name = last === noun ? noun.text : words.slice(each || standing ? words.indexOf(noun.text) : 0).join(' ');
        const text = words.join(' ');
        return {
          value: { text, each, standing, noun: name, own: ownOf(name), of, from: start!.at, to: end(last) },
        };
      }

      function ownOf(noun: string): string | null {
        if (free || nouns.includes(noun)) return noun;
        // `power at the panel` is `power` with words too many.
        const inIt = noun.includes(' ') ? nouns.find((own) => ` ${noun} `.includes(` ${own} `)) : undefined;
        return nouns.find((own) => isSlip(noun, own)) ?? inIt ?? null;
      }

      /** In `superheat of txv-1, txv-2` the names behind the first belong to the same `of`. */
      function fold(all: readonly Selector[]): readonly Selector[] {
        const [head, ...rest] = all;
        if (!head || head.of.length === 0 || rest.some((each) => each.of.length > 0)) return all;
        const to = rest.at(-1)?.to ?? head.to;
        return [
          { ...head, of: [...head.of, ...rest], to, text: [head.text, ...rest.map((each) => each.text)].join(', ') },
        ];
      }
    },
  };
}

const isStanding = (text: string | undefined): boolean => standings.includes(text as Standing);
