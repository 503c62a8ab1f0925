import type { Position, TextDocumentContentChangeEvent } from 'vscode-languageserver';
import type { TextChange } from './engine';
import { LineIndex } from './positions';

/** Changes that may wait before they are put into the text. */
const mostWaiting = 64;

/**
 * The text of one file as the editor has it, or as it was read when the editor has not opened it. A change within a line
 * is put into the text when somebody reads it: copying a long text at every key press would cost more than finding what
 * is wrong with it.
 */
export class Document {
  private index: LineIndex | undefined;
  private waiting: TextChange[] = [];
  private readonly read = (): string => this.text;

  constructor(
    /** The address as the client writes it, or as the file door gave it. */
    readonly uri: string,
    private whole: string,
    /** The editor's version of an open document; undefined for a closed file. */
    public version: number | undefined,
  ) {}

  get text(): string {
    for (const { from, to, text } of this.waiting) this.whole = this.whole.slice(0, from) + text + this.whole.slice(to);
    this.waiting = [];
    return this.whole;
  }

  get lines(): LineIndex {
    this.index ??= LineIndex.of(this.text);
    return this.index;
  }

  offsetAt(position: Position): number {
    return this.lines.offsetAt(this.read, position);
  }

  /** Takes over one change of the protocol and gives it in offsets; undefined when the whole text was replaced. */
  change(event: TextDocumentContentChangeEvent): TextChange | undefined {
    if (!('range' in event)) {
      this.whole = event.text;
      this.waiting = [];
      this.index = undefined;
      return undefined;
    }
    const start = this.offsetAt(event.range.start);
    const end = this.offsetAt(event.range.end);
    const [from, to] = start <= end ? [start, end] : [end, start];
    const change = { from, to, text: event.text };
    this.waiting.push(change);
    const within = !/[\r\n]/.test(event.text) && this.lines.changeWithin(from, to, event.text.length);
    if (!within) this.lines.change(from, to, event.text.length, this.text);
    else if (this.waiting.length > mostWaiting) this.read();
    return change;
  }
}
