import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Option } from 'commander';
import { format as layout, type TextEdit } from '../../../grammar';
import { theGrammar } from '../../engine/workspace';
import { askedFor, standardInput } from '../asked';
import type { CommandDescription } from '../description';
import { whyNot } from '../folder';
import { formatOption, wantsJson } from '../options';
import { jsonText } from '../report/json';
import type { FormatReport } from '../shapes/format';
import { fine, found, notDone } from '../trouble';

export const format: CommandDescription = {
  about:
    'Only blanks and line ends change; a statement with a fault in it stays as it is. Standard input is written to ' +
    'standard output.',
  takes: [['[path...]', 'files and folders; "-" reads standard input; the current folder if left out']],
  options: [
    new Option('--check', 'write nothing; the exit status is 1 where something is laid out otherwise'),
    formatOption('text', 'json'),
  ],
  examples: ['jobplan format', 'jobplan format jobs --check', 'jobplan format - < plan.jobplan'],
  run: async (host, words) => {
    const checking = words.option<boolean>('check') === true;
    const files: FormatReport['files'] = [];
    const troubles: string[] = [];
    let typed: string | null = null;
    for (const asked of await askedFor(host, words.several(0))) {
      for (const path of asked.files) {
        const file = asked.shown(path);
        const read = asked.read(path);
        if ('why' in read) {
          troubles.push(`${file} ${read.why}.`);
          continue;
        }
        if (!read.faithful) {
          troubles.push(`${file} is no UTF-8 text, or too long; it is left as it is.`);
          continue;
        }
        const text = applied(read.text, layout(theGrammar().parse(read.text)));
        const changed = text !== read.text;
        if (path === standardInput) typed = text;
        else if (changed && !checking) {
          try {
            writeFileSync(join(asked.root, path), text);
          } catch (error) {
            troubles.push(`${file} ${whyNot(error)}.`);
            continue;
          }
        }
        files.push({ file, changed });
      }
    }
    if (typed !== null && !checking && !wantsJson(words)) host.out(typed);
    if (wantsJson(words)) host.out(jsonText({ version: 1, files } satisfies FormatReport));
    else {
      const others = files.filter(({ file, changed }) => changed && (checking || file !== standardInput));
      for (const { file } of others) host.out(`${file}${checking ? ' is laid out otherwise' : ''}\n`);
    }
    for (const sentence of troubles) host.say(`jobplan: ${sentence}\n`);
    if (troubles.length > 0) return notDone;
    return checking && files.some(({ changed }) => changed) ? found : fine;
  },
};

/** A text with edits in order, none touching another. */
function applied(text: string, edits: readonly TextEdit[]): string {
  let result = '';
  let done = 0;
  for (const { from, to, text: inserted } of edits) {
    result += text.slice(done, from) + inserted;
    done = to;
  }
  return result + text.slice(done);
}
