import type { TextDocumentContentChangeEvent } from 'vscode-languageserver';
import type { TextChange } from './engine';
import { LineIndex } from './positions';

/** The text of one file as the editor has it, or as it was read when the editor has not opened it. */
export class Document {
  private index: LineIndex | undefined;

  constructor(
    /** The address as the client writes it, or as the file door gave it. */
    readonly uri: string,
    public text: string,
    /** The editor's version of an open document; undefined for a closed file. */
    public version: number | undefined,
  ) {}

  get lines(): LineIndex {
    this.index ??= LineIndex.of(this.text);
    return this.index;
  }

  /** Takes over one change of the protocol and gives it in offsets; undefined when the whole text was replaced. */
  change(event: TextDocumentContentChangeEvent): TextChange | undefined {
    if (!('range' in event)) {
      this.text = event.text;
      this.index = undefined;
      return undefined;
    }
    const start = this.lines.offsetAt(this.text, event.range.start);
    const end = this.lines.offsetAt(this.text, event.range.end);
    const [from, to] = start <= end ? [start, end] : [end, start];
    this.text = this.text.slice(0, from) + event.text + this.text.slice(to);
    this.lines.change(from, to, event.text.length, this.text);
    return { from, to, text: event.text };
  }
}
