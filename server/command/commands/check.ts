import { askedFor } from '../asked';
import type { CommandDescription } from '../description';
import { paintFor } from '../host';
import { load } from '../load';
import { dayOf, failOnOption, failsOn, formatOption, todayOption } from '../options';
import { progressOf } from '../progress';
import { annotation } from '../report/annotations';
import { jsonText } from '../report/json';
import { inOrder, type Reported, reported } from '../report/report';
import { sarifLog } from '../report/sarif';
import { findingText, summary } from '../report/text';
import type { CheckReport } from '../shapes/check';
import { fine, found, notDone } from '../trouble';

export const check: CommandDescription = {
  about:
    'A folder is looked through for .jobplan files. What a file uses is read from the folder that was given with it, or ' +
    'else from the current one.',
  takes: [['[path...]', 'files and folders; "-" reads standard input; the current folder if left out']],
  options: [formatOption('text', 'json', 'sarif', 'annotations'), todayOption, failOnOption],
  examples: [
    'jobplan check',
    'jobplan check jobs/alder.jobplan --fail-on warning',
    'jobplan check . --format sarif > findings.sarif',
  ],
  run: async (host, words) => {
    const findings: Reported[] = [];
    const unread: string[] = [];
    let files = 0;
    for (const asked of await askedFor(host, words.several(0))) {
      const loaded = load(asked, dayOf(host, words));
      const snapshot = loaded.workspace.snapshot();
      const progress = progressOf(host, 'Checking', loaded.files.length);
      for (const path of loaded.files) {
        for (const finding of snapshot.findings(path)) findings.push(reported(finding, loaded));
        progress.step();
      }
      progress.end();
      files += loaded.files.length;
      unread.push(...loaded.unread);
    }
    const ordered = inOrder(findings);
    switch (words.option('format')) {
      case 'json': {
        const report: CheckReport = { version: 1, findings: ordered.map(({ line: _, ...finding }) => finding) };
        host.out(jsonText(report));
        break;
      }
      case 'sarif':
        host.out(jsonText(sarifLog(ordered)));
        break;
      case 'annotations':
        for (const finding of ordered) host.out(annotation(finding));
        break;
      default: {
        const paint = paintFor(host);
        for (const finding of ordered) host.out(`${findingText(finding, paint)}\n`);
        host.out(`${summary(ordered, files)}\n`);
      }
    }
    for (const sentence of unread) host.say(`jobplan: ${sentence}\n`);
    if (unread.length > 0) return notDone;
    return ordered.some(failsOn(words)) ? found : fine;
  },
};
