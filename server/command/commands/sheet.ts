import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { Option } from 'commander';
import { printable } from '../../engine/printable';
import type { Paper, Procedure } from '../../engine/procedure/document';
import { printHtml } from '../../engine/procedure/html/html';
import { printText } from '../../engine/procedure/text/text';
import { chosenPlan, verdict } from '../chosen';
import type { CommandDescription } from '../description';
import { whyNot } from '../folder';
import { failOnOption, planOption, sheetUnitsOption, todayOption, unitsIn } from '../options';
import { Trouble } from '../trouble';

type Form = 'text' | 'html' | 'pdf';

/** Lines of a page of plain text at six to the inch, between margins of 15 mm. */
const linesOn: Readonly<Record<Paper, number>> = { letter: 60, a4: 64 };

export const sheet: CommandDescription = {
  about:
    'A plan with errors is printed too, barred on every page from being worked by. Without --as the ending of --out says ' +
    'what is made, and without --out it is text.',
  takes: [['<file>', 'that holds the plan; "-" reads standard input']],
  options: [
    new Option('--as <form>', 'what is made').choices(['text', 'html', 'pdf']),
    new Option('--paper <size>', 'what it is printed on').choices(['letter', 'a4']).default('letter'),
    new Option('--workings', 'with the pages that show how each figure was found'),
    new Option('--out <file>', 'where it goes; standard output if left out'),
    planOption,
    sheetUnitsOption,
    todayOption,
    failOnOption,
  ],
  examples: [
    'jobplan sheet jobs/alder.jobplan | less',
    'jobplan sheet jobs/alder.jobplan --out alder.pdf --paper a4',
    'jobplan sheet jobs/alder.jobplan --as html --workings --out alder.html',
  ],
  run: async (host, words) => {
    const out = words.option('out');
    const form = words.option<Form>('as') ?? formOf(out);
    const paper = words.option<Paper>('paper') ?? 'letter';
    if (out?.endsWith('.jobplan')) throw new Trouble(`--out ${out}: a sheet is not written over a plan.`);
    if (form === 'pdf' && out === undefined && host.outIsTerminal) {
      throw new Trouble('A PDF is not for the terminal: name a file with --out.');
    }
    const chosen = await chosenPlan(host, words);
    const procedure = printable(chosen.snapshot, chosen.view, {
      units: unitsIn(words),
      workings: words.option<boolean>('workings') === true,
    });
    const printed = await print(procedure, form, paper);
    if (out === undefined) host.out(printed);
    else {
      try {
        writeFileSync(resolve(host.folder, out), printed);
      } catch (error) {
        throw new Trouble(`${out} ${whyNot(error)}.`);
      }
    }
    return verdict(host, words, chosen);
  },
};

function formOf(out: string | undefined): Form {
  const ending = /\.(pdf|html?)$/i.exec(out ?? '')?.[1]?.toLowerCase();
  return ending === undefined ? 'text' : ending === 'pdf' ? 'pdf' : 'html';
}

async function print(procedure: Procedure, form: Form, paper: Paper): Promise<string | Uint8Array> {
  if (form === 'html') return printHtml(procedure, paper);
  if (form === 'text') return printText(procedure, linesOn[paper]);
  const { printedPdf } = await import('../print-pdf');
  return printedPdf(procedure, paper);
}
