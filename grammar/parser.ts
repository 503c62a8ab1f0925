/**
 * The six rules of the language, over the balanced row of tokens that `findStructure` prepares. Blanks and comments are
 * not in that row; whoever takes a token takes what stands before it too, so that none is lost.
 */
import { EmbeddedActionsParser, type IOrAlt, type IToken } from 'chevrotain';
import { endOf, lengthOfAll, makeBlank, makeBlock, makeStatement, makeStray } from './making';
import type { Structure } from './structure';
import { Close, kindOf, Newline, Open, parserVocabulary, StrayClose, Term } from './tokens';
import type { Block, Item, Statement, Token } from './tree';

class ItemParser extends EmbeddedActionsParser {
  private tokens: readonly IToken[] = [];
  /** Index in `tokens` of the first one that no item holds yet. */
  private next = 0;
  // The alternatives are made once: to make them for each line would cost more than to read it.
  private itemKinds: IOrAlt<Item>[] | undefined;
  private statementKinds: IOrAlt<Statement>[] | undefined;

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

  private readonly item = this.RULE('item', (): Item => {
    this.itemKinds ??= [
      {
        ALT: () => {
          const newline = this.CONSUME(Newline);
          return this.ACTION(() => makeBlank(this.take(newline, 0)));
        },
      },
      {
        ALT: () => {
          let last: IToken | undefined;
          this.AT_LEAST_ONE(() => {
            last = this.CONSUME(StrayClose);
          });
          last = this.SUBRULE(this.end) ?? last;
          return this.ACTION(() => makeStray(this.take(last, 0)));
        },
      },
      { ALT: () => this.SUBRULE(this.statement) },
    ];
    return this.OR(this.itemKinds);
  });

  private readonly statement = this.RULE('statement', (): Statement => {
    this.statementKinds ??= [
      {
        ALT: () => {
          const behindBlock = this.ACTION(() => this.isBehindBlock());
          const last = this.SUBRULE(this.terms);
          const head = this.ACTION(() => this.take(last, 0));
          const block = this.OPTION(() => this.SUBRULE(this.block, { ARGS: [head] })) ?? null;
          const newline = this.SUBRULE(this.end);
          return this.ACTION(() => this.made(head, block, newline, behindBlock));
        },
      },
      {
        ALT: () => {
          const behindBlock = this.ACTION(() => this.isBehindBlock());
          const head: Token[] = [];
          const block = this.SUBRULE1(this.block, { ARGS: [head] });
          const newline = this.SUBRULE1(this.end);
          return this.ACTION(() => this.made(head, block, newline, behindBlock));
        },
      },
    ];
    return this.OR(this.statementKinds);
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
  private readonly block = this.RULE('block', (head: Token[]): Block => {
    const open = this.CONSUME(Open);
    this.ACTION(() => this.takeInto(head, open, endOf(head)));
    const items: Item[] = [];
    this.MANY(() => items.push(this.SUBRULE(this.item)));
    const close = this.CONSUME(Close);
    return this.ACTION(() => {
      const length = lengthOfAll(items);
      return makeBlock(items, length, close.image === '' ? [] : this.take(close, length));
    });
  });

  /** The line's end, if the block around it does not end before. */
  private readonly end = this.RULE('end', (): IToken | undefined => this.OPTION(() => this.CONSUME(Newline)));

  private isBehindBlock(): boolean {
    return this.tokens[this.next - 1]?.tokenType === Close;
  }

  private made(head: Token[], block: Block | null, newline: IToken | undefined, behindBlock: boolean): Statement {
    if (block !== null) return makeStatement(head, block, this.take(newline, endOf(head) + block.length), behindBlock);
    if (newline !== undefined) this.takeInto(head, newline, endOf(head));
    return makeStatement(head, null, [], behindBlock);
  }

  /** The tokens up to and including this one, placed from `at` on; all that are left if it is the end of the text. */
  private take(last: IToken | undefined, at: number): Token[] {
    const taken: Token[] = [];
    if (last !== undefined) this.takeInto(taken, last, at);
    return taken;
  }

  private takeInto(taken: Token[], last: IToken, from: number): void {
    const { tokens } = this;
    let at = from;
    while (this.next < tokens.length) {
      const token = tokens[this.next++]!;
      taken.push({ kind: kindOf(token), text: token.image, at });
      at += token.image.length;
      if (token === last) return;
    }
  }
}

export type Reader = (structure: Structure) => Item[];

/**
 * A reader of prepared rows of tokens. Its parser is made at the first call and kept; it knows the token types that
 * exist by then, so that each grammar has its own.
 */
export function createReader(): Reader {
  let parser: ItemParser | undefined;
  return (structure) => {
    parser ??= new ItemParser();
    return parser.read(structure);
  };
}
