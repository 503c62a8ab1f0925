import { pageNamed, pages } from '../../engine/checks/pages';
import { nearest } from '../../engine/quantity';
import { relationNamed, relations } from '../../engine/takeoff/figures';
import { vocabulary } from '../../engine/vocabulary';
import type { CommandDescription } from '../description';
import { paintFor } from '../host';
import { checkPage, figurePage, wordPage } from '../manual';
import { formatOption, wantsJson } from '../options';
import { jsonText } from '../report/json';
import type { ExplainReport, ManualPage } from '../shapes/explain';
import { fine, Trouble } from '../trouble';

export const explain: CommandDescription = {
  about: 'The same text as in the editor and in the manual.',
  takes: [['<name>', 'of a check, a word of the language or a figure']],
  options: [formatOption('text', 'json')],
  examples: ['jobplan explain open-under-pressure', 'jobplan explain purge', 'jobplan explain line-volume'],
  run: async (host, words) => {
    const name = words.one(0);
    const pages = pagesOf(name);
    if (pages.length === 0) {
      const near = nearest(name, everyName());
      throw new Trouble(`There is nothing called "${name}"${near ? `; perhaps "${near}" is meant` : ''}.`);
    }
    if (wantsJson(words)) {
      host.out(jsonText({ version: 1, name, pages } satisfies ExplainReport));
      return fine;
    }
    const paint = paintFor(host);
    for (const [index, { kind, title, sections }] of pages.entries()) {
      if (index > 0) host.out('\n');
      host.out(`${paint('bold', `${name} (${kind})`)}\n${title}\n`);
      for (const { heading, text } of sections) host.out(`\n${paint('bold', heading)}\n${indented(text)}\n`);
    }
    return fine;
  },
};

/** A name may stand for several things: a word in two places of a plan, a word and a figure. */
const pagesOf = (name: string): ManualPage[] => {
  const page = pageNamed(name);
  const relation = relationNamed(name);
  return [
    ...(page ? [checkPage(page)] : []),
    ...vocabulary.anywhere(name).map(wordPage),
    ...(relation ? [figurePage(relation)] : []),
  ];
};

function* everyName(): Generator<string> {
  for (const { name } of pages) yield name;
  for (const { word } of vocabulary.words) yield word;
  for (const { name } of relations) yield name;
}

const indented = (text: string): string =>
  text
    .split('\n')
    .map((line) => (line === '' ? '' : `  ${line}`))
    .join('\n');
