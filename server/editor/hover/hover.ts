import type { Bound } from '../../engine/plan/bind';
import { formText } from '../../engine/plan/form-text';
import { isPositional } from '../../engine/plan/vocabulary';
import { vocabulary } from '../../engine/vocabulary';
import type { Asked } from '../asking';
import { mentionAt } from '../names';
import { slotPage, wordHead, wordPage, wordRest } from '../words';
import { machinePages } from './machine';
import { namePages } from './name';
import { quantityPage } from './quantity';
import { recordPages } from './record';
import { jobsPage, stepPages } from './step';

export interface Hovered {
  /** Offsets in the file. */
  readonly from: number;
  readonly to: number;
  /** Markdown, one part a page. */
  readonly pages: readonly string[];
}

/** What there is to say about the token that was asked about. */
export function hoverAt(asked: Asked): Hovered | undefined {
  const { token, bound: placed } = asked.look;
  if (token === undefined || placed === undefined) return undefined;
  const { bound, at } = placed;
  const from = token.at;
  const to = token.at + token.token.text.length;
  const within = from - at;
  const pages = pagesOf(asked, bound, within, token.token.kind);
  return pages.length > 0 ? { from, to, pages } : undefined;
}

function pagesOf(asked: Asked, bound: Bound, within: number, kind: string): readonly string[] {
  if (kind === 'quantity' || kind === 'number') {
    const page = quantityPage(asked, bound, within);
    const slot = clauseAt(bound, within);
    return [...(page ? [page] : []), ...(slot ? [slot] : [])];
  }
  if (kind !== 'word' && kind !== 'arrow') return [];
  const isWord = bound.item.word?.at === within;
  const mention = mentionAt(bound, within);
  const named = mention && mention.from <= within ? namePages(asked, bound, mention) : [];
  if (isWord) {
    // The step's own figures stand before the word's manual, which is known after a while.
    const own = [
      ...stepPages(asked, bound),
      ...jobsPage(asked, bound),
      ...machinePages(asked, bound),
      ...recordPages(asked, bound),
    ];
    const { word } = bound;
    if (word === null) return [...named, ...own];
    return own.length > 0 ? [...named, wordHead(word), ...own, wordRest(word)] : [...named, wordPage(word)];
  }
  const label = bound.label?.from === within ? [...stepPages(asked, bound), ...jobsPage(asked, bound)] : [];
  if (named.length + label.length > 0) return [...named, ...label];
  const slot = clauseAt(bound, within);
  return slot ? [slot] : [];
}

/** The page of the slot that covers an offset of the statement. */
function clauseAt(bound: Bound, within: number): string | undefined {
  const name = Object.entries(bound.spans).find(([, span]) => span.from <= within && within < span.to)?.[0];
  if (name === undefined || bound.word === null) return undefined;
  const part = formText(bound.word).parts.find((each) => each.name === name);
  if (part) return slotPage(part);
  const common = vocabulary.common[name];
  if (common === undefined || isPositional(common)) return undefined;
  return `\`${common.key} ${common.term?.shape ?? ''}\`: ${common.meaning}.`;
}
