import { itemAt, type PlacedItem } from '../../../grammar';
import type { Statement, Token } from '../../../grammar/tree';
import { expect } from '../../engine/plan/expect';
import type { Place, Word } from '../../engine/plan/vocabulary';
import { vocabulary } from '../../engine/vocabulary';
import type { BoundFile, Snapshot } from '../engine';
import { chainOf } from '../look';
import { verbWordOf } from './departure';
import { usePaths } from './paths';
import type { Proposal, Setting } from './proposal';
import { slotProposals } from './slots';
import { answerProposals, wordProposals } from './words';

/** What could stand at an offset of a file, the likeliest first; broken lines and empty ones alike. */
export function complete(
  snapshot: Snapshot,
  path: string,
  file: BoundFile,
  text: string,
  offset: number,
): readonly Proposal[] {
  const here = settingOf(snapshot, path, file, text, offset);
  if (here === undefined) return [];
  const { statement, before } = here;
  const inText = before.at(-1);
  if (
    statement &&
    inText?.kind === 'string' &&
    offset <= here.start + inText.at + inText.text.length &&
    isOpenOrInside(inText, offset - here.start)
  ) {
    return statement.word?.text === 'use' ? usePaths(here, inText) : [];
  }
  if (
    statement === undefined ||
    statement.word === null ||
    here.start + statement.word.at + statement.word.text.length >= offset
  )
    return words(here);
  const word = here.place === undefined ? undefined : wordOf(here, statement);
  if (word === undefined) return [];
  const terms = before.filter((token) => token.at > statement.word!.at && isTerm(token));
  // In a `change` the line is clauses from its first word on.
  const clauses = here.place === 'change' ? [statement.word, ...terms] : terms;
  return slotProposals(here, word, expect(word.form, vocabulary.common, clauses), clauses);
}

const isTerm = (token: Token): boolean =>
  token.kind !== 'space' && token.kind !== 'newline' && token.kind !== 'comment' && token.kind !== 'open';

/** Whether an offset lies behind a text's opening quote and not behind its closing one. */
const isOpenOrInside = (token: Token, within: number): boolean =>
  within > token.at && (within < token.at + token.text.length || !/^".*"$/.test(token.text));

function words(here: Setting): readonly Proposal[] {
  if (here.place === undefined) return [];
  if (here.place === 'record') return [...wordProposals(here, here.place), ...answerProposals(here)];
  if (here.place === 'change') {
    const step = verbWordOf(here);
    return step ? slotProposals(here, step, expect(step.form, vocabulary.common, []), []) : [];
  }
  return wordProposals(here, here.place);
}

function wordOf(here: Setting, statement: Statement): Word | undefined {
  if (here.place === 'change') return verbWordOf(here);
  return statement.word && here.place ? vocabulary.word(here.place, statement.word.text) : undefined;
}

/** Where the cursor is: the statement of its line, the block around it, what stands before it on the line. */
function settingOf(
  snapshot: Snapshot,
  path: string,
  file: BoundFile,
  text: string,
  offset: number,
): Setting | undefined {
  const lineStart = Math.max(text.lastIndexOf('\n', offset - 1), text.lastIndexOf('\r', offset - 1)) + 1;
  if (/^[^"#]*("[^"]*"[^"#]*)*#/.test(text.slice(lineStart, offset))) return undefined;
  const found = itemAt(file.tree, offset);
  let items: readonly PlacedItem[] = found.path;
  // At a line's end the cursor belongs to what stands before it, not to the next line.
  const own = items.at(-1);
  if (offset > lineStart && (own === undefined || own.at >= offset)) items = itemAt(file.tree, offset - 1).path;
  const last = items.at(-1);
  const chain = chainOf(file, items);
  let statement = last?.item.kind === 'statement' ? last.item : undefined;
  let start = last?.at ?? offset;
  let around: readonly PlacedItem[] = items.slice(0, -1);
  // Behind the opening brace the cursor is in the block, not in the statement that opens it.
  if (statement?.block) {
    const brace = statement.head.find((token) => token.kind === 'open');
    if (brace && offset > start + brace.at) {
      const close = statement.block.close.at(-1);
      const end = start + statement.length - statement.tail.reduce((sum, token) => sum + token.text.length, 0);
      if (!close || offset < end) {
        around = items;
        statement = undefined;
        start = offset;
      }
    }
  }
  const blocks = chain.slice(0, around.length).map((each) => each.bound);
  const place: Place | undefined =
    around.length === 0 ? 'file' : blocks.length === around.length ? blocks.at(-1)?.word?.block : undefined;
  const partial = /[\p{L}\p{N}\p{M}_-]*$/u.exec(text.slice(lineStart, offset))?.[0] ?? '';
  const word = /^[\p{L}]/u.test(partial) ? partial : '';
  const from = offset - word.length;
  const before = statement === undefined ? [] : tokensBefore(statement.head, from - start, offset - start);
  return {
    snapshot,
    path,
    file,
    text,
    offset,
    place,
    blocks,
    statement,
    start,
    before,
    from,
    lineStart,
  };
}

/**
 * The tokens that end before what is being typed, and a text that is still open. Of a quantity whose unit is being typed
 * (`30 m` on the way to `30 min`) the number stays.
 */
function tokensBefore(head: readonly Token[], from: number, offset: number): readonly Token[] {
  return head.flatMap((token): Token[] => {
    const end = token.at + token.text.length;
    if (end <= from || (token.kind === 'string' && token.at < offset)) return [token];
    const number = token.kind === 'quantity' && token.at < from ? token.text.slice(0, from - token.at).trimEnd() : '';
    return number === '' ? [] : [{ kind: 'number', text: number, at: token.at }];
  });
}
