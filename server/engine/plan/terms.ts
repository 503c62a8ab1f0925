import { nearest } from '../quantity';
import { shortened } from './shortened';
import { end, expected, fault, type Name, type Reading, type Reference, type Term } from './term';

/** More than this of anything that a job counts one by one is a slip of the hand. */
const mostCounted = 1000;

/** A bare whole number: how many, how often, a revision. */
export function count({ least = 0, most = mostCounted } = {}): Term<number> {
  return {
    shape: 'number',
    type: 'number',
    example: '3',
    starts: (token) => token.kind === 'number',
    read(cursor) {
      const token = cursor.peek();
      if (token?.kind !== 'number') return expected('a number', token, '3');
      cursor.next();
      const value = /^\d+$/.test(token.text) ? Number(token.text) : Number.NaN;
      if (value >= least && value <= most) return { value };
      return fault(
        'impossible',
        `"${shortened(token.text)}" cannot stand here: a whole number${most > mostCounted ? '' : ` from ${least} to ${most}`} belongs here.`,
        token,
      );
    },
  };
}

/** How often something is done: rounds of a repeat, ways back after a failed test. */
export const rounds = (): Term<number> => count({ least: 1, most: 100 });

/** One of a few words; several words may make one choice ("long-radius"). */
export function choice<const C extends readonly string[]>(...choices: C): Term<C[number]> {
  return {
    shape: choices.length > 4 ? `${choices.slice(0, 4).join(' | ')} | …` : choices.join(' | '),
    type: 'choice',
    choices,
    starts: (token) => token.kind === 'word' && choices.some((each) => each.split(' ')[0] === token.text),
    read(cursor) {
      const longest = [...choices].sort((a, b) => b.length - a.length);
      for (const each of longest) {
        const words = each.split(' ');
        if (words.every((word, k) => cursor.peek(k)?.text === word)) {
          cursor.index += words.length;
          return { value: each };
        }
      }
      const token = cursor.peek();
      if (!token) return expected(`one of ${choices.join(', ')}`, token);
      cursor.next();
      const near = nearest(token.text, choices);
      return fault(
        'wrong-term',
        `"${shortened(token.text)}" cannot stand here; ${near ? `the nearest is "${near}"` : `it takes one of ${choices.join(', ')}`}.`,
        token,
        near ? [near] : [],
      );
    },
  };
}

/** A name of something declared elsewhere; found, or not, when the plan is put together. */
export function name(refers: Reference): Term<Name> {
  return {
    shape: refers.toUpperCase(),
    type: 'name',
    refers,
    starts: (token) => token.kind === 'word',
    read(cursor) {
      const token = cursor.peek();
      if (token?.kind !== 'word') return expected(`the name of a ${refers.replaceAll('-', ' ')}`, token);
      cursor.next();
      return { value: { text: token.text, refers, from: token.at, to: end(token) } };
    },
  };
}

/** A text in quotes, given without them. */
export function text(): Term<string> {
  return {
    shape: '"TEXT"',
    type: 'text',
    example: '"maker\'s sheet, page 4"',
    starts: (token) => token.kind === 'string',
    read(cursor) {
      const token = cursor.peek();
      if (token?.kind !== 'string') return expected('a text in quotes', token);
      cursor.next();
      return { value: token.text.replace(/^"/, '').replace(/"$/, '') };
    },
  };
}

/** A day, `2027-05-18`, or a month, `2029-06`. */
export function date(): Term<string> {
  return {
    shape: 'DATE',
    type: 'date',
    example: '2027-05-18',
    starts: (token) => token.kind === 'date',
    read(cursor) {
      const token = cursor.peek();
      // A year alone is a number to the parser; where a date is meant it is a year.
      if (token?.kind === 'number' && /^\d{4}$/.test(token.text)) {
        cursor.next();
        return { value: token.text };
      }
      if (token?.kind !== 'date') return expected('a date', token, '2027-05-18');
      cursor.next();
      const [year, month, day] = token.text.split('-').map(Number) as [number, number, number | undefined];
      const days = new Date(Date.UTC(year, month, 0)).getUTCDate();
      if (month < 1 || month > 12 || (day !== undefined && (day < 1 || day > days))) {
        return fault('impossible', `There is no day ${token.text} in the calendar.`, token);
      }
      return { value: token.text };
    },
  };
}

/** A time of day, `08:05`. */
export function clock(): Term<string> {
  return {
    shape: 'TIME',
    type: 'time',
    example: '08:05',
    starts: (token) => token.kind === 'time',
    read(cursor) {
      const token = cursor.peek();
      if (token?.kind !== 'time') return expected('a time of day', token, '08:05');
      cursor.next();
      const [hour, minute] = token.text.split(':').map(Number) as [number, number];
      if (hour > 23 || minute > 59) return fault('impossible', `There is no time of day ${token.text}.`, token);
      return { value: token.text };
    },
  };
}

/** Several of the same, separated by commas, up to the next clause. */
export function list<T>(term: Term<T>): Term<readonly T[]> {
  return {
    ...term,
    shape: `${term.shape}, …`,
    read(cursor) {
      const values: T[] = [];
      for (;;) {
        const reading = term.read(cursor);
        if ('fault' in reading) return reading;
        values.push(reading.value);
        const following = cursor.peek(1);
        if (cursor.peek()?.kind !== 'comma' || !following || cursor.stops(cursor.index + 1) || !term.starts(following))
          break;
        cursor.next();
      }
      return { value: values };
    },
  };
}

/** The first of several terms that can begin with the token that stands there. */
export function either<A, B>(a: Term<A>, b: Term<B>): Term<A | B> {
  const choices = [...(a.choices ?? []), ...(b.choices ?? [])];
  const refers = a.refers ?? b.refers;
  return {
    shape: `${a.shape} | ${b.shape}`,
    type: a.type,
    ...((a.kind ?? b.kind) ? { kind: (a.kind ?? b.kind)! } : {}),
    ...(choices.length ? { choices } : {}),
    ...(refers ? { refers } : {}),
    starts: (token) => a.starts(token) || b.starts(token),
    read(cursor): Reading<A | B> {
      const token = cursor.peek();
      return token && !a.starts(token) && b.starts(token) ? b.read(cursor) : a.read(cursor);
    },
  };
}

/** Two terms, one behind the other, the second optional: `600 psig for 24 h` has clauses, `95 lb R-22` this. */
export function pair<A, B>(a: Term<A>, b: Term<B>): Term<{ readonly a: A; readonly b?: B }> {
  return {
    ...a,
    shape: `${a.shape} [${b.shape}]`,
    read(cursor): Reading<{ a: A; b?: B }> {
      const one = a.read(cursor);
      if ('fault' in one) return one;
      const token = cursor.peek();
      if (!token || cursor.atStop || !b.starts(token)) return { value: { a: one.value } };
      const two = b.read(cursor);
      return 'fault' in two ? two : { value: { a: one.value, b: two.value } };
    },
  };
}

/** Any word or words up to the next comma or clause: a thing that only people know (`door-alarms`, `new-gaskets`). */
export function thing(shape = 'THING', usual: readonly string[] = []): Term<string> {
  return {
    shape,
    type: 'choice',
    usual,
    starts: (token) => token.kind === 'word',
    read(cursor) {
      const words: string[] = [];
      if (cursor.peek()?.kind !== 'word') return expected('a word or two', cursor.peek());
      do words.push(cursor.next()!.text);
      while (!cursor.atStop && cursor.peek()?.kind === 'word');
      return { value: words.join(' ') };
    },
  };
}
