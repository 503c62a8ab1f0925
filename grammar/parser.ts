/**
 * The six rules of the language, over the balanced row of tokens that `findStructure` prepares. Blanks and comments are
 * not in that row; whoever takes a token takes what stands before it too, so that none is lost.
 */
import { EmbeddedActionsParser, type IToken } from 'chevrotain';
import { makeBlank, makeBlock, makeStatement, makeStray } from './making';
import type { Structure } from './structure';
import { Close, Newline, Open, parserVocabulary, StrayClose, Term } from './tokens';
import type { Block, Item, Statement } from './tree';

class ItemParser extends EmbeddedActionsParser {
  private tokens: readonly IToken[] = [];
  /** Index in `tokens` of the first one that no item holds yet. */
  private next = 0;

  constructor() {
    super(parserVocabulary, { skipValidations: true, maxLookahead: 1, recoveryEnabled: false });
    this.performSelfAnalysis();
  }

  /** All items of a text; what `findStructure` has prepared is always read to its end. */
  read(structure: Structure): Item[] {
    this.tokens = structure.tokens;
    this.next = 0;
    this.input = structure.stream;
    const items = this.file();
    this.tokens = [];
    return items;
  }

  private readonly file = this.RULE('file', (): Item[] => {
    const items: Item[] = [];
    this.MANY(() => items.push(this.SUBRULE(this.item)));
    return items;
  });

  private readonly item = this.RULE(
    'item',
    (): Item =>
      this.OR([
        {
          ALT: () => {
            const newline = this.CONSUME(Newline);
            return this.ACTION(() => makeBlank(this.take(newline)));
          },
        },
        {
          ALT: () => {
            const brace = this.CONSUME(StrayClose);
            const newline = this.SUBRULE(this.end);
            return this.ACTION(() => makeStray([...this.take(brace), ...this.take(newline)]));
          },
        },
        { ALT: () => this.SUBRULE(this.statement) },
      ]),
  );

  private readonly statement = this.RULE('statement', (): Statement => {
    const behindBlock = this.ACTION(() => this.tokens[this.next - 1]?.tokenType === Close);
    return this.OR([
      {
        ALT: () => {
          const last = this.SUBRULE(this.terms);
          const head = this.ACTION(() => this.take(last));
          const block = this.OPTION(() => this.SUBRULE(this.block, { ARGS: [head] })) ?? null;
          const newline = this.SUBRULE(this.end);
          return this.ACTION(() => makeStatement(head, block, this.take(newline), behindBlock));
        },
      },
      {
        ALT: () => {
          const head: IToken[] = [];
          const block = this.SUBRULE1(this.block, { ARGS: [head] });
          const newline = this.SUBRULE1(this.end);
          return this.ACTION(() => makeStatement(head, block, this.take(newline), behindBlock));
        },
      },
    ]);
  });

  /** Gives the last one: those before it are taken with it. */
  private readonly terms = this.RULE('terms', (): IToken => {
    let last: IToken | undefined;
    this.AT_LEAST_ONE(() => {
      last = this.CONSUME(Term);
    });
    return last!;
  });

  /** The opening brace belongs to the head of the statement. */
  private readonly block = this.RULE('block', (head: IToken[]): Block => {
    const open = this.CONSUME(Open);
    this.ACTION(() => head.push(...this.take(open)));
    const items: Item[] = [];
    this.MANY(() => items.push(this.SUBRULE(this.item)));
    const close = this.CONSUME(Close);
    return this.ACTION(() => makeBlock(items, close.image === '' ? [] : this.take(close)));
  });

  /** The line's end, if the block around it does not end before. */
  private readonly end = this.RULE('end', (): IToken | undefined => this.OPTION(() => this.CONSUME(Newline)));

  /** The tokens up to and including this one; all that are left if it is the end of the text. */
  private take(last: IToken | undefined): IToken[] {
    if (last === undefined) return [];
    const from = this.next;
    this.next = last.image === '' ? this.tokens.length : last.payload + 1;
    return this.tokens.slice(from, this.next);
  }
}

let parser: ItemParser | undefined;

/** Reads a prepared row of tokens into items; the parser is made at the first call and kept. */
export function readItems(structure: Structure): Item[] {
  parser ??= new ItemParser();
  return parser.read(structure);
}
