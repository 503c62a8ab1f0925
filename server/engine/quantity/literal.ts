import { isProblem, type LiteralProblem, problem } from './problem';
import { meantUnit } from './slips';
import { type Unit, unitNamed } from './units';

export { isProblem, type LiteralProblem } from './problem';

/** A number with its unit as somebody wrote it. `low` equals `high` unless it is a range; both are in `unit`. */
export interface Literal {
  readonly text: string;
  /** The unit written last; of a compound (`7 lb 4 oz`) the first, in which `low` and `high` are then given. */
  readonly unit: Unit;
  readonly low: number;
  readonly high: number;
  /** Decimals as written, the most of its numbers; a fraction counts those that it needs, three at most. */
  readonly decimals: number;
  /** Written in two units, as `7 lb 4 oz`. */
  readonly compound: boolean;
}

const numberPattern = String.raw`\d+-\d+/\d+|\d+/\d+|\d+(?:\.\d+)?|\.\d+`;
const startsWithNumber = new RegExp(`^(${numberPattern})`);

interface WrittenNumber {
  readonly value: number;
  readonly decimals: number;
}

function readNumber(text: string): WrittenNumber | null {
  const parts = /^(?:(\d+)-)?(\d+)\/(\d+)$/.exec(text);
  if (!parts) return { value: Number(text), decimals: text.split('.')[1]?.length ?? 0 };
  const whole = Number(parts[1] ?? 0);
  const over = Number(parts[2]);
  const under = Number(parts[3]);
  if (under === 0) return null;
  const value = whole + over / under;
  const shown = value.toFixed(3).replace(/\.?0+$/, '');
  return { value, decimals: shown.split('.')[1]?.length ?? 0 };
}

interface Measure {
  readonly numeral: string;
  readonly number: WrittenNumber;
  readonly unit: string;
}

/** Splits `7 lb 4 oz` into its measures; null where the text is no such list. */
function measures(text: string): Measure[] | null {
  const found: Measure[] = [];
  let rest = text;
  while (rest !== '') {
    const numeral = startsWithNumber.exec(rest)?.[1];
    if (numeral === undefined) return null;
    const number = readNumber(numeral);
    if (!number || !Number.isFinite(number.value)) return null;
    rest = rest.slice(numeral.length);
    // A unit runs to the next number that stands after a blank.
    const next = /\s+(?=\.?\d)/.exec(rest);
    const unit = (next ? rest.slice(0, next.index) : rest).trim();
    if (/^[\d./,–—−-]/.test(unit)) return null;
    found.push({ numeral, number, unit });
    rest = next ? rest.slice(next.index + next[0].length) : '';
  }
  return found.length > 0 ? found : null;
}

const isPlain = (unit: Unit): boolean => unit.offset === undefined && unit.reference === undefined;

interface Side {
  readonly value: number;
  readonly decimals: number;
  readonly unit: Unit;
  readonly compound: boolean;
}

function unknownUnit(text: string, measure: Measure): LiteralProblem {
  const { unit: word, numeral, number } = measure;
  const meant = meantUnit(word);
  if (meant === undefined) {
    const repaired = notANumber(text);
    return repaired.suggestions.length > 0 ? repaired : problem('unknown-unit', `\`${word}\` is not a unit.`);
  }
  const [unit, times] = meant;
  const figure = times === 1 ? numeral : String(Number((number.value * times).toPrecision(6)));
  const mended = text.replace(new RegExp(`${escaped(numeral)}\\s*${escaped(word)}`), () => `${figure} ${unit}`);
  return problem('unknown-unit', `\`${word}\` is not a unit; perhaps \`${unit}\` is meant.`, whole(mended));
}

/** A text as something that can stand there: what is still wrong with it is mended too. Empty where that does not succeed. */
function whole(mended: string): readonly string[] {
  const literal = readLiteral(mended);
  return isProblem(literal) ? literal.suggestions : [mended];
}

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

/** Reads one side of a range, or the whole of what is none. `inherited` is the unit that the other side carries. */
function readSide(whole: string, text: string, inherited?: Unit): Side | LiteralProblem {
  const negative = /^[-−]\s*/.exec(text)?.[0] ?? '';
  const sign = negative === '' ? 1 : -1;
  const parts = measures(text.slice(negative.length));
  if (!parts) return notANumber(whole);
  const read: { value: number; decimals: number; unit: Unit }[] = [];
  for (const part of parts) {
    const unit = part.unit === '' ? inherited : unitNamed(part.unit);
    if (!unit) {
      if (part.unit !== '') return unknownUnit(whole, part);
      return parts.length > 1
        ? notANumber(whole)
        : problem('no-unit', `\`${whole}\` has no unit: every number says what it counts in.`);
    }
    read.push({ value: part.number.value, decimals: part.number.decimals, unit });
  }
  const first = read[0]!;
  if (read.length === 1)
    return { value: sign * first.value, decimals: first.decimals, unit: first.unit, compound: false };
  return joined(whole, sign, read);
}

function joined(
  whole: string,
  sign: number,
  read: readonly { value: number; decimals: number; unit: Unit }[],
): Side | LiteralProblem {
  const first = read[0]!;
  let value = 0;
  for (const [index, part] of read.entries()) {
    const before = read[index - 1];
    if (before) {
      const sameKind = part.unit.kinds[0] === before.unit.kinds[0] && part.unit.system === before.unit.system;
      if (!sameKind || !isPlain(part.unit) || part.unit.factor >= before.unit.factor) {
        return problem(
          'mixed-units',
          `\`${whole}\` puts \`${before.unit.name}\` and \`${part.unit.name}\` together; only a larger and a smaller unit of one kind belong together, as in \`7 lb 4 oz\`.`,
        );
      }
      if (!Number.isInteger(before.value) || part.value * part.unit.factor >= before.unit.factor * (1 - 1e-12)) {
        return problem(
          'mixed-units',
          `In \`${whole}\` the \`${before.unit.name}\` must be a whole number and the \`${part.unit.name}\` less than one of them.`,
        );
      }
    }
    value += part.value * (part.unit.factor / first.unit.factor);
  }
  return {
    value: sign * value,
    decimals: Math.max(...read.map((part) => part.decimals)),
    unit: first.unit,
    compound: true,
  };
}

/** Fractions that have a sign of their own. */
const signs: Readonly<Record<string, string>> = {
  '¼': '1/4',
  '½': '1/2',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

/** Figures above this are never written out for somebody. */
const mostWrittenOut = 1e12;

/** `1e3 micron`, as calculators show it; null where the text is no such figure. */
function withExponent(text: string): LiteralProblem | null {
  const parts = /^([-−]?)(\d+(?:\.\d+)?[eE][-+]?\d+)\s*(.*)$/.exec(text);
  if (!parts) return null;
  const value = Number(parts[2]);
  const written = value > 0 && value <= mostWrittenOut ? String(value) : '';
  const mended = `${parts[1]}${written} ${parts[3]}`.trim();
  const good = written !== '' && !written.includes('e') && !isProblem(readLiteral(mended));
  return problem(
    'not-a-number',
    `\`${text}\` cannot be read as a number with a unit: ${good ? `write \`${mended}\`` : 'numbers are written out in full'}.`,
    good ? [mended] : [],
  );
}

function notANumber(text: string): LiteralProblem {
  const repairs = [
    [/^\s*[+~≈<>≤≥]\s*/, ''], // ~50 ft
    [
      /(\d)?\s*([¼½¾⅛⅜⅝⅞])/g,
      (_: string, before: string | undefined, sign: string) => `${before ? `${before}-` : ''}${signs[sign]}`,
    ],
    [/(\d)⁄(\d)/g, '$1/$2'],
    [/(\d\s*['’′])\s*-\s*(?=\d)/g, '$1 '], // 5'-6"
    [/\s+per\s+/g, '/'], // 0.6 oz per ft
    [/(\d),(\d{3})(?!\d)/g, '$1$2'], // 1,500 micron
    [/(\d),(\d)/g, '$1.$2'], // 0,5 L
    [/(\d)\s+(\d+\/\d+)/g, '$1-$2'], // 1 1/8 in
    [/(\d)\s*(?:…|\.{3,}|–|—|to)\s*(\d)/g, '$1..$2'], // 30 - 90 s
    [/(\d)\s*[-−]\s*(\d)/g, '$1..$2'],
  ] as const;
  for (const [fault, mend] of repairs) {
    const mended = text.replace(fault, mend as string);
    const instead = mended === text ? [] : whole(mended);
    if (instead.length > 0)
      return problem(
        'not-a-number',
        `\`${text}\` cannot be read as a number with a unit; write \`${instead[0]}\`.`,
        instead,
      );
  }
  return problem('not-a-number', `\`${text}\` cannot be read as a number with a unit.`);
}

/**
 * Reads a number with its unit: `7/8 in`, `1-1/8 in`, `7 lb 4 oz`, `30..90 s`, `-15 degF`, `15 %`, `690 kPa gauge`. Only
 * the text is judged here; what the place asks for is judged by `toQuantity`. Never throws.
 */
export function readLiteral(text: string): Literal | LiteralProblem {
  const written = text.trim();
  if (written.length > 200) return problem('not-a-number', 'This is too long for a number with a unit.');
  const exponent = withExponent(written);
  if (exponent !== null) return exponent;
  const at = written.indexOf('..');
  if (at < 0) {
    const side = readSide(written, written);
    if (isProblem(side)) return side;
    return {
      text,
      unit: side.unit,
      low: side.value,
      high: side.value,
      decimals: side.decimals,
      compound: side.compound,
    };
  }
  const high = readSide(written, written.slice(at + 2).trim());
  if (isProblem(high)) return high;
  const low = readSide(written, written.slice(0, at).trim(), high.unit);
  if (isProblem(low)) return low;
  return range(text, low, high);
}

function range(text: string, low: Side, high: Side): Literal | LiteralProblem {
  const same = low.unit === high.unit;
  const comparable = low.unit.kinds[0] === high.unit.kinds[0] && isPlain(low.unit) && isPlain(high.unit);
  if (!same && !comparable) {
    return problem(
      'mixed-units',
      `\`${text.trim()}\` runs from \`${low.unit.name}\` to \`${high.unit.name}\`; write both ends in one unit.`,
    );
  }
  const start = same ? low.value : (low.value * low.unit.factor) / high.unit.factor;
  if (start > high.value) {
    const [from, to] = text.trim().split('..') as [string, string];
    const end = startsWithNumber.exec(to.trim())?.[1];
    const turned =
      same &&
      end !== undefined &&
      !low.compound &&
      !high.compound &&
      startsWithNumber.exec(from.trim())?.[0] === from.trim();
    const suggestion = turned ? [`${end}..${from.trim()} ${to.trim().slice(end.length).trim()}`] : [];
    return problem('backward-range', `\`${text.trim()}\` runs backward: the smaller figure comes first.`, suggestion);
  }
  return {
    text,
    unit: high.unit,
    low: start,
    high: high.value,
    decimals: Math.max(low.decimals, high.decimals),
    compound: low.compound || high.compound,
  };
}
