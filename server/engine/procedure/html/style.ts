import type { Paper } from '../document';

/**
 * On screen the sheet takes the editor's colours where it stands in an editor, and black on white elsewhere; printed it
 * is always black on white. Sizes: 10.5 pt body, 9 pt notes, nothing smaller. Blanks are 8 mm high for handwriting.
 */
export const sheetStyle = `
:root { --ink: var(--vscode-editor-foreground, #000); --sheet: var(--vscode-editor-background, #fff); }
* { box-sizing: border-box; }
body.sheet { margin: 0; padding: 0 12px; color: var(--ink); background: var(--sheet); font: 10.5pt/1.32 "DejaVu Sans Condensed", "Segoe UI", "Helvetica Neue", Arial, sans-serif; }
.frame { width: 100%; max-width: 186mm; margin: 0 auto; border-collapse: collapse; table-layout: fixed; }
.frame > thead > tr > td, .frame > tbody > tr > td, .frame > tfoot > tr > td { padding: 0; }
.frame > thead > tr > td { padding-bottom: 8px; }
.small { font-size: 9pt; }
.head { display: flex; justify-content: space-between; gap: 12px; border-bottom: 1.5pt solid var(--ink); padding: 6px 0 4px; font-size: 9pt; }
.head .job { font-size: 12pt; font-weight: 700; line-height: 1.2; max-height: 3.6em; overflow: hidden; overflow-wrap: anywhere; }
.head .right { text-align: right; flex: none; max-width: 45%; overflow-wrap: anywhere; }
.foot { border-top: 0.75pt solid var(--ink); margin-top: 8px; padding: 3px 0 6px; font-size: 9pt; }
.draft { background: var(--ink); color: var(--sheet); border: 1.5pt solid var(--ink); font-weight: 700; font-size: 12pt; letter-spacing: .06em; text-align: center; padding: 2px 0; margin: 4px 0 0; }
h1 { font-size: 14pt; margin: 16px 0 5px; padding-bottom: 1px; border-bottom: 0.75pt solid var(--ink); line-height: 1.2; }
h2 { font-size: 11pt; margin: 11px 0 4px; line-height: 1.25; }
p { margin: 2px 0 4px; }
p.indent { padding-left: 14px; }
table.list { width: 100%; border-collapse: collapse; margin: 2px 0 6px; table-layout: fixed; }
table.list th { text-align: left; font-size: 9pt; font-weight: 700; border-bottom: 0.75pt solid var(--ink); padding: 1px 6px 2px 0; vertical-align: bottom; }
table.list td { border-bottom: 0.4pt solid var(--ink); padding: 2.5px 6px 2.5px 0; vertical-align: top; overflow-wrap: anywhere; }
table.list .right { text-align: right; }
table.list .tick { width: 22px; }
table.list td.write { height: 8mm; border-left: 0.4pt solid var(--ink); vertical-align: bottom; text-align: right; }
.box { display: inline-block; width: 10pt; height: 10pt; border: 1.1pt solid var(--ink); vertical-align: -1.5pt; }
.solid { white-space: nowrap; }
.step, .hold, .bar { position: relative; scroll-margin: 30vh; }
.step { padding: 5px 0 6px; border-top: 0.4pt solid var(--ink); display: grid; grid-template-columns: 20px 34px minmax(0, 1fr); }
.step > .number { font-weight: 700; }
.step .line { display: flex; justify-content: space-between; gap: 16px; font-weight: 700; }
.step .line .by { font-weight: 400; }
.step .line .aim { text-align: right; flex: 0 1 auto; max-width: 45%; }
.caution { display: grid; grid-template-columns: 20px minmax(0, 1fr); margin-top: 3px; font-weight: 700; }
.caution svg { width: 14px; height: 13px; margin-top: 1px; }
.detail { margin-top: 3px; }
.detail > b { margin-right: 4px; }
.checks > span { display: inline-block; margin-right: 16px; white-space: nowrap; }
.checks > b { margin-right: 8px; }
.checks .box { margin-left: 5px; }
table.readings { border-collapse: collapse; margin-top: 2px; width: 100%; }
table.readings td { height: 8mm; padding: 0 8px 0 0; vertical-align: bottom; white-space: nowrap; }
table.readings td.limit { font-size: 9pt; white-space: normal; width: 99%; }
table.readings td.wide { width: 99%; }
table.readings tr:has(> .wide) > td { vertical-align: baseline; }
h1 + .step { border-top: 0; }
table.readings .below { font-size: 9pt; white-space: normal; padding-left: 4px; }
table.readings td.long { white-space: normal; min-width: 120px; }
.rule { display: inline-block; width: 62pt; height: 7mm; border-bottom: 0.9pt solid var(--ink); vertical-align: baseline; margin: 0 4px; }
.rule.short { width: 44pt; }
.fails a { color: inherit; }
.depth { border-left: 2.2pt solid var(--ink); padding-left: 9px; }
.bar { border: 0.9pt solid var(--ink); border-left-width: 2.2pt; padding: 3px 8px; margin: 6px 0 0; }
.bar.repeat-end { border-width: 0 0 0.9pt 2.2pt; margin: 0 0 6px; font-size: 9pt; }
.bar.visit { display: flex; justify-content: space-between; align-items: flex-end; min-height: 9mm; border: 1.5pt solid var(--ink); border-left: 0; border-right: 0; margin: 10px 0 4px; padding: 3px 0; }
.hold { border: 2.2pt solid var(--ink); padding: 4px 8px 6px; margin: 7px 0; }
.hold .line { font-weight: 700; }
.signs { display: flex; align-items: flex-end; gap: 8px; height: 9mm; margin-top: 2px; }
.signs .rule { flex: 1; margin: 0; }
.signs .rule.date { flex: 0 0 30mm; }
.ruled { height: 9mm; border-bottom: 0.75pt solid var(--ink); }
.circuit { display: block; width: 100%; height: auto; max-width: 185mm; color: var(--ink); overflow: visible; }
.circuit text { fill: var(--ink); font-family: "DejaVu Sans Condensed", "Arial Narrow", Arial, sans-serif; }
.circuit polyline, .circuit polygon, .circuit circle { stroke: var(--ink); stroke-linejoin: round; }
.circuit .fill-none { fill: none; } .circuit .fill-white { fill: var(--sheet); } .circuit .fill-black { fill: var(--ink); }
.step, .hold, .bar, table.list tr, table.readings tr, .signs, .circuit { break-inside: avoid; }
h1, h2, .bar.repeat, .bar.visit { break-after: avoid; }
.bar.repeat-end { break-before: avoid; }
.new-page { break-before: page; }
@media screen { .step:target, .step.current { outline: 2px solid var(--vscode-focusBorder, var(--ink)); outline-offset: 2px; } }
@media screen and (max-width: 659px) {
  .head, .step .line { flex-wrap: wrap; gap: 2px 12px; }
  .head .right { text-align: left; flex: 1 1 100%; max-width: none; }
  .step { grid-template-columns: 18px 26px minmax(0, 1fr); }
  .step .line .aim { text-align: left; max-width: none; }
  .checks > span { white-space: normal; }
  table.readings, table.readings tbody, table.readings tr { display: block; }
  table.readings tr { padding-bottom: 4px; }
  table.readings td, table.readings td.limit, table.readings td.wide { display: inline-block; width: auto; height: auto; padding-top: 6px; vertical-align: baseline; white-space: normal; }
  .signs { flex-wrap: wrap; height: auto; } .signs .rule { flex: 1 1 60px; }
  table.list { table-layout: auto; }
  table.list th, table.list td { overflow-wrap: break-word; padding-right: 4px; }
  table.list .solid { white-space: normal; }
  table.list:has(th:nth-child(5)) { font-size: 9pt; }
  table.list:has(th:nth-child(6)) :is(th, td) { overflow-wrap: anywhere; }
  .drawing { overflow-x: auto; } .drawing > .circuit { min-width: 520px; }
}
@media print {
  :root { --ink: #000; --sheet: #fff; }
  body.sheet { padding: 0; print-color-adjust: exact; -webkit-print-color-adjust: exact; }
  .frame { max-width: none; }
}
`;

/** The page size belongs to the paper asked for; page numbers stand in the margin where the printer knows them. */
export const pageStyle = (paper: Paper): string =>
  `@page { size: ${paper === 'a4' ? 'A4' : 'letter'} portrait; margin: 15mm; @bottom-right { content: "Page " counter(page) " of " counter(pages); font: 9pt "DejaVu Sans Condensed", Arial, sans-serif; vertical-align: top; } }`;
