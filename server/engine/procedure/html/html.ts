import type { Paper, Procedure } from '../document';
import { outline } from '../outline';
import {
  draftBar,
  headDate,
  headHash,
  headPlan,
  headStandard,
  markMeaning,
  orderOfAuthority,
  printAgain,
} from '../wording';
import { blockHtml } from './block';
import { escaped } from './escape';
import { pageStyle, sheetStyle } from './style';

function headHtml({ head, draft }: Procedure): string {
  const bar = draft === null ? '' : `<div class="draft">${escaped(draftBar(draft))}</div>`;
  return `${bar}<div class="head"><div><div class="job">${escaped(head.job)}</div>${escaped(head.shop)}</div>
<div class="right"><b>${escaped(headPlan(head))}</b><br>${escaped(headStandard(head))}<br>${escaped(headDate(head))} · ${escaped(headHash(head))}</div></div>`;
}

/**
 * What stands in the page's body: a table whose head and foot a browser repeats on each printed page. For a host that
 * brings its own page and puts `sheetStyle` into it.
 */
export function sheetBody(procedure: Procedure): string {
  const foot = [`${procedure.units} ${markMeaning}`, printAgain, orderOfAuthority].map(escaped).join('<br>');
  return `<table class="frame" role="presentation">
<thead><tr><td>${headHtml(procedure)}</td></tr></thead>
<tfoot><tr><td><div class="foot">${foot}</div></td></tr></tfoot>
<tbody><tr><td>
${outline(procedure).map(blockHtml).join('\n')}
</td></tr></tbody></table>`;
}

/** The sheet as one self-contained page: no script, nothing fetched. */
export function printHtml(procedure: Procedure, paper: Paper = 'letter'): string {
  const { job, plan, revision } = procedure.head;
  return `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${escaped(`${job}: ${plan}, revision ${revision}`)}</title>
<style>${pageStyle(paper)}${sheetStyle}</style>
</head>
<body class="sheet">
${sheetBody(procedure)}
</body>
</html>
`;
}
