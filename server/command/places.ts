import { walk } from '../../grammar';
import type { Item } from '../../grammar/tree';
import type { Place } from '../engine/finding';
import type { Snapshot } from '../engine/snapshot';
import type { Position, Range } from './shapes/range';

/** Where a place stands in its file, as people and other programs count. */
export interface Standing {
  readonly file: string;
  readonly range: Range;
  /** The line on which it begins, without its end. */
  readonly line: string;
}

interface Lines {
  readonly text: string;
  readonly starts: readonly number[];
  readonly items: ReadonlyMap<Item, number>;
}

/** Makes lines and characters (zero-based, UTF-16) of the engine's places: the one spot of the command line that does. */
export class Places {
  private readonly known = new Map<string, Lines>();

  constructor(
    private readonly snapshot: Snapshot,
    private readonly shown: (path: string) => string,
  ) {}

  standing(place: Place): Standing {
    const lines = this.linesOf(place.file);
    const start = lines.items.get(place.item) ?? 0;
    const range = { start: position(lines, start + place.from), end: position(lines, start + place.to) };
    return { file: this.shown(place.file), range, line: lineText(lines, range.start.line) };
  }

  private linesOf(path: string): Lines {
    let lines = this.known.get(path);
    if (!lines) {
      const file = this.snapshot.file(path);
      const items = new Map<Item, number>();
      if (file) walk(file.tree, (item, at) => void items.set(item, at));
      const text = file?.text ?? '';
      lines = { text, starts: startsOf(text), items };
      this.known.set(path, lines);
    }
    return lines;
  }
}

/** Where lines begin: behind each LF, CRLF or CR. */
function startsOf(text: string): readonly number[] {
  const starts = [0];
  for (const end of text.matchAll(/\r\n|\n|\r/g)) starts.push(end.index + end[0].length);
  return starts;
}

function position({ starts, text }: Lines, offset: number): Position {
  const within = Math.min(Math.max(offset, 0), text.length);
  let low = 0;
  let high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (starts[middle]! <= within) low = middle;
    else high = middle - 1;
  }
  return { line: low, character: within - starts[low]! };
}

const lineText = ({ starts, text }: Lines, line: number): string =>
  text.slice(starts[line], starts[line + 1] ?? text.length).replace(/[\r\n]+$/, '');
