import type { Position, Range } from 'vscode-languageserver';

const lineFeed = 10;
const carriageReturn = 13;

/** Where the lines of a text begin. The one place where offsets become lines and characters (both in UTF-16 units). */
export class LineIndex {
  private constructor(
    private starts: number[],
    private length: number,
  ) {}

  static of(text: string): LineIndex {
    const starts = [0];
    addStarts(text, 0, text.length, starts);
    return new LineIndex(starts, text.length);
  }

  get lineCount(): number {
    return this.starts.length;
  }

  positionAt(offset: number): Position {
    const line = this.lineAt(offset);
    const within = Math.min(Math.max(offset, 0), this.length);
    return { line, character: within - this.startOf(line) };
  }

  range(from: number, to: number): Range {
    return { start: this.positionAt(from), end: this.positionAt(to) };
  }

  /**
   * The offset of a position in `text`, which must be the text that this index is of; past a line's end is its end. The
   * text is only looked at there, and may be given as a function that makes it.
   */
  offsetAt(text: string | (() => string), position: Position): number {
    if (position.line < 0) return 0;
    if (position.line >= this.starts.length) return this.length;
    const start = this.startOf(position.line);
    let end = position.line + 1 < this.starts.length ? this.startOf(position.line + 1) : this.length;
    // The line break takes two characters at the most.
    if (start + position.character < end - 1) return start + Math.max(0, position.character);
    const whole = typeof text === 'string' ? text : text();
    if (end > start && whole.charCodeAt(end - 1) === lineFeed) end -= 1;
    if (end > start && whole.charCodeAt(end - 1) === carriageReturn) end -= 1;
    return Math.min(start + position.character, end);
  }

  /**
   * Follows a change within one line that puts no line break in, without a look at the text; says whether it was one. At
   * a line's very beginning a break before it might join what follows, so that is left to `change`.
   */
  changeWithin(from: number, to: number, inserted: number): boolean {
    const line = this.lineAt(from);
    if (this.lineAt(to) !== line || (line > 0 && from === this.startOf(line))) return false;
    const shift = inserted - (to - from);
    if (shift !== 0) for (let i = line + 1; i < this.starts.length; i++) this.starts[i] = this.startOf(i) + shift;
    this.length += shift;
    return true;
  }

  /** Follows a change: `from` to `to` of the former text became `inserted`; `text` is the text after it. */
  change(from: number, to: number, inserted: number, text: string): void {
    let first = this.lineAt(from);
    // A line feed that arrives behind a carriage return joins the break before it.
    if (first > 0 && from === this.startOf(first) && text.charCodeAt(from - 1) === carriageReturn) first -= 1;
    const last = this.lineAt(to);
    const shift = inserted - (to - from);
    const begin = this.startOf(first);
    const end = last + 1 < this.starts.length ? this.startOf(last + 1) + shift : text.length;
    const found: number[] = [];
    addStarts(text, begin, end, found);
    // The start after the last touched line is found again by the scan when a break ends that line.
    const kept = last + 1 < this.starts.length ? last + 2 : this.starts.length;
    if (shift !== 0) for (let i = kept; i < this.starts.length; i++) this.starts[i] = this.startOf(i) + shift;
    if (found.length === kept - first - 1) {
      for (let i = 0; i < found.length; i++) this.starts[first + 1 + i] = found[i] as number;
    } else this.starts = this.starts.slice(0, first + 1).concat(found, this.starts.slice(kept));
    this.length = text.length;
  }

  private startOf(line: number): number {
    return this.starts[line] as number;
  }

  private lineAt(offset: number): number {
    let low = 0;
    let high = this.starts.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (this.startOf(middle) <= offset) low = middle;
      else high = middle - 1;
    }
    return low;
  }
}

/** Adds the offset after each line break (LF, CRLF or CR) between two offsets. */
function addStarts(text: string, from: number, to: number, starts: number[]): void {
  for (let i = from; i < to; i++) {
    const code = text.charCodeAt(i);
    if (code !== lineFeed && code !== carriageReturn) continue;
    if (code === carriageReturn && text.charCodeAt(i + 1) === lineFeed) i += 1;
    starts.push(i + 1);
  }
}
