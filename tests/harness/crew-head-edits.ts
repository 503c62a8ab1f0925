import { closing, codeOf } from './crew-tree';
import { partLine } from './crew-word-edits';
import type { Line } from './scene';
import type { Made } from './step-edits';

type Put = string | ((...found: string[]) => string);
type Change = readonly [operator: string, find: RegExp, put: Put];
const times =
  (factor: number) =>
  (_: string, start: string, number: string): string =>
    `${start}${Math.round(Number(number) * factor * 1000) / 1000}`;

/** Facts of the job, the machine and the stock, each taken for another. */
const changes: readonly Change[] = [
  ['refrigerants turned', /^(\s+refrigerant )(R-\S+) -> (R-\S+)/, '$1$3 -> $2'],
  ['oils turned', /^(\s+oil )(\w+) -> (\w+)/, '$1$3 -> $2'],
  ['design pressures exchanged', /(design-pressure low )(\S+)( .*?high )(\S+)/, '$1$4$3$2'],
  ['superheat for subcooling', /^(\s+)subcooling /, '$1superheat '],
  ['subcooling for superheat', /^(\s+)superheat /, '$1subcooling '],
  ['outdoors in degC', /^(\s+(?:outdoors|indoors) \d+ )degF/, '$1degC'],
  ['condensing in degC', /^(\s+condensing \d+ )degF/, '$1degC'],
  ['capacity in kW', /^(\s+capacity \d+ )Btu\/h/, '$1kW'],
  ['head: psig to kPa gauge', /^(\s+(?:rated|design-pressure|test-pressure|relief) .*?\d) psig/, '$1 kPa gauge'],
  ['head: lb to kg', /^(\s+charge \d+) lb(?! \d)/, '$1 kg'],
  ['head: oz to lb', /^(\s+(?:charge|recover-charge) \d+) oz/, '$1 lb'],
  ['head: oil of another kind', /^(\s+oil (?:\d+ fl-oz )?)(?:POE|PVE)\s*$/, '$1alkylbenzene'],
  ['head: oil in oz', /^(\s+oil \d+) fl-oz/, '$1 oz'],
  ['stock of another gas', /^(\s+refrigerant )R-(?!404A)\S+( \d+ (?:lb|oz|kg))/, '$1R-404A$2'],
  ['stock in oz', /^(\s+refrigerant R-\S+ \d+) lb/, '$1 oz'],
  ['stock in kg', /^(\s+refrigerant R-\S+ \d+) lb\s*$/, '$1 kg'],
  ['stock a third', /^(\s+refrigerant R-\S+ )(\d+)(?= (?:lb|oz|kg))/, times(1 / 3)],
  ['stock one for two', /^(\s+(?:[\w-]+: )?(?:nitrogen|recovery|solvent) )[2-9] x /, '$11 x '],
  ['stock one more', /^(\s+(?:[\w-]+: )?nitrogen )1 x /, '$12 x '],
  ['kind: repair', /^( {2}kind )(?:changeout|conversion|new)\s*$/, '$1repair'],
  ['kind: conversion', /^( {2}kind )(?:repair|changeout)\s*$/, '$1conversion'],
  ['kind: new', /^( {2}kind )(?:repair|changeout|conversion)\s*$/, '$1new'],
  ['certificate of small ones', /^(\s+\w+ certified )(?:universal|type-II)\b(?!I)/, '$1type-I'],
  ['revision before', /^(\s+follows .* revision )(\d+)/, (_, start, n) => `${start}${Number(n) - 1}`],
  ['revision not said', /^(\s+follows .*) revision \d+/, '$1'],
  ['acceptance dropped', /^\s+accept .*/, ''],
  ['acceptance of another', /^(\s+accept )[\w-]+/, '$1no-such-finding'],
  ['departure: skip to change', /^( {2})skip (.*)$/, '$1change $2'],
  ['departure: change to replace', /^( {2})change ([\w-]+ .*\{)/, '$1replace $2'],
  ['departure: before to after', /^( {2})before ([\w-]+ add)/, '$1after $2'],
  ['departure: after to before', /^( {2})after ([\w-]+ add)/, '$1before $2'],
  ['through dropped', /^\s+through [\w-]+\s*$/, ''],
];

/** One fact above the steps, two parts exchanged, a branch or a departure left out. */
export function* crewHeadEdits(lines: readonly string[], steps: readonly Line[]): Generator<Made> {
  const inSteps = (at: number): boolean => steps.some((step) => at >= step.from && at <= step.to);
  for (let at = 0; at < lines.length; at++) {
    if (inSteps(at)) continue;
    const was = lines[at]!;
    const out = (operator: string, to: number): Made => ({
      operator,
      at: -1,
      was: lines
        .slice(at, to + 1)
        .join(' ')
        .replace(/\s+/g, ' '),
      now: '',
      lines: [...lines.slice(0, at), ...lines.slice(to + 1)],
      touched: [at - 1, at],
    });
    for (const [operator, find, put] of changes) {
      const now = typeof put === 'string' ? was.replace(find, put) : was.replace(find, put as (s: string) => string);
      if (now === was) continue;
      if (now.trim() === '') yield { ...out(operator, at), was };
      else yield { operator, at: -1, was, now, lines: lines.map((line, k) => (k === at ? now : line)), touched: [at] };
    }
    if (/^\s+branch [\w-]+ .*\{\s*$/.test(was)) yield out('branch left out', closing(lines, at));
    if (/^ {2}(?:skip|change|replace|before|after) /.test(was)) yield out('departure dropped', closing(lines, at));
    if (partLine.test(was)) yield* ofParts(lines, at);
    if (/^\s+tube /.test(was)) yield* tubes(lines, at);
  }
  yield* renamed(lines, steps);
}

/** A label that is called otherwise wherever it stands. */
function* renamed(lines: readonly string[], steps: readonly Line[]): Generator<Made> {
  for (const [at, { from, label }] of steps.entries()) {
    if (label === null) continue;
    const now = lines.map((line) =>
      line
        .replace(new RegExp(`^(\\s*)${label}: `), `$1${label}-b: `)
        .replace(new RegExp(`back to ${label}\\b(?!-)`), `back to ${label}-b`),
    );
    const touched = now.flatMap((line, k) => (line === lines[k] ? [] : [k]));
    yield { operator: 'label renamed', at, was: lines[from]!, now: now[from]!, lines: now, touched };
  }
}

/** A part exchanged with the next one in the list, and a part told twice. */
function* ofParts(lines: readonly string[], at: number): Generator<Made> {
  const was = lines[at]!;
  const end = /\{\s*$/.test(codeOf(was)) ? closing(lines, at) : at;
  const next = end + 1;
  if (partLine.test(lines[next] ?? '')) {
    const to = /\{\s*$/.test(codeOf(lines[next]!)) ? closing(lines, next) : next;
    yield {
      operator: 'parts exchanged',
      at: -1,
      was,
      now: `behind ${lines[next]!.trim()}`,
      lines: [...lines.slice(0, at), ...lines.slice(next, to + 1), ...lines.slice(at, end + 1), ...lines.slice(to + 1)],
      touched: [at, at + to - next + 1],
    };
  }
  const [, name, kind, standing] = partLine.exec(was)!;
  if (standing !== 'new' && standing !== 'added') return;
  const twin = was.replace(/^(\s+)(?:[\w-]+: )?/, `$1${name ?? kind}-2: `);
  yield {
    operator: 'part told twice',
    at: -1,
    was,
    now: twin,
    lines: [...lines.slice(0, end + 1), twin, ...lines.slice(at + 1, end + 1), ...lines.slice(end + 1)],
    touched: [at, end + 1],
  };
}

/** The tube of this line and that of the next one that has another. */
function* tubes(lines: readonly string[], at: number): Generator<Made> {
  const other = lines.findIndex((line, k) => k > at && /^\s+tube /.test(line) && line !== lines[at]);
  if (other < 0) return;
  yield {
    operator: 'tubes exchanged',
    at: -1,
    was: lines[at]!,
    now: `${lines[other]!.trim()} | ${lines[at]!.trim()}`,
    lines: lines.map((line, k) => (k === at ? lines[other]! : k === other ? lines[at]! : line)),
    touched: [at, other],
  };
}
