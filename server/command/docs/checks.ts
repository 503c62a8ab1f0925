import type { Page } from '../../engine/checks/page';
import { checkPage } from '../manual';

/** One chapter of the manual: a group of pages under a heading. */
export interface Chapter {
  readonly title: string;
  readonly pages: readonly Page[];
}

/** The manual of the checks in Markdown: one entry a finding. `notes` is the hand-written part about what is not caught. */
export function checksReference(chapters: readonly Chapter[], notes: string): string {
  const all = chapters.flatMap((chapter) => chapter.pages);
  const count = (severity: Page['severity']): number => all.filter((page) => page.severity === severity).length;
  return [
    '# What is checked',
    'Made from the checks by `npm run docs`; a test compares the two. What is written by hand stands in `docs/parts/checks-notes.md`.',
    `${all.length} findings have a page: ${count('error')} errors, ${count('warning')} warnings, ${count('information')} for information. An error means that somebody is hurt, a law is broken or equipment is destroyed; a warning that the job will likely fail or cost more. Every wrong and every right example below is run as a test. Local code and the authority come first; a maker's sheet cited with \`per\` stands in place of a rule of thumb.`,
    ...chapters.flatMap(({ title, pages }) => [`## ${title}`, index(pages), ...pages.map(entry)]),
    notes.trim(),
  ]
    .filter((part) => part !== '')
    .join('\n\n')
    .concat('\n');
}

const index = (pages: readonly Page[]): string =>
  [
    '| finding | | what |',
    '| --- | --- | --- |',
    ...pages.map((page) => `| [${page.name}](#${page.name}) | ${page.severity} | ${page.title} |`),
  ].join('\n');

function entry(page: Page): string {
  const { title, sections } = checkPage(page);
  return [
    `### ${page.name}`,
    `**${title}.**`,
    ...sections.map(({ heading, text }) =>
      heading === 'Wrong' || heading === 'Right'
        ? `${heading}:\n\n\`\`\`text\n${text}\n\`\`\``
        : `*${heading}.* ${text}`,
    ),
  ].join('\n\n');
}
