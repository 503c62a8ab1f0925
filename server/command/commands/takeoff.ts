import { type Quantity, type ShowOptions, show } from '../../engine/quantity';
import type { Figure } from '../../engine/takeoff/figure';
import type { Shortfall } from '../../engine/takeoff/shortfalls';
import type { Entry } from '../../engine/walk/walk';
import { type Chosen, chosenFile, chosenPlan, handles, verdict } from '../chosen';
import type { CommandDescription } from '../description';
import { type Paint, paintFor } from '../host';
import { failOnOption, formatOption, planOption, todayOption, unitsIn, unitsOption, wantsJson } from '../options';
import { figureReport, unitOf } from '../report/figure';
import { figureRows, textRows } from '../report/figure-rows';
import { jsonText } from '../report/json';
import { ofRecords } from '../report/records';
import { containerLines, wasteShown } from '../report/stock';
import type { TakeoffReport } from '../shapes/takeoff';

/** The figures of one subject at one step. */
interface Taken {
  readonly entry: Entry;
  readonly subject: string;
  readonly figures: readonly Figure[];
}

export const takeoff: CommandDescription = {
  about:
    'What to bring and what to take away, with the step that asks for it. A repeat gives a range from least to most.',
  takes: [['<file>', 'that holds the plan, or a record; "-" reads standard input']],
  options: [planOption, formatOption('text', 'json'), unitsOption, todayOption, failOnOption],
  examples: ['jobplan takeoff jobs/alder.jobplan', 'jobplan takeoff jobs/alder.jobplan --units both'],
  run: async (host, words) => {
    const file = await chosenFile(host, words);
    const records = file.snapshot.records(file.path);
    if (file.snapshot.plans(file.path).length === 0 && records.length > 0) return ofRecords(host, words, file, records);
    const chosen = await chosenPlan(host, words);
    const options: ShowOptions = { system: unitsIn(words), atmosphere: chosen.view.plan.site.atmosphere };
    if (wantsJson(words)) host.out(jsonText(reportOf(chosen, options)));
    else host.out(textOf(chosen, options, paintFor(host)));
    return verdict(host, words, chosen);
  },
};

/** By step, then by subject. The last round of a repeat stands once more only where its figures differ from the first's. */
function taken({ view }: Chosen): readonly Taken[] {
  const result: Taken[] = [];
  view.walk.entries.forEach((entry, at) => {
    const figures = view.takeOff.steps[at] ?? [];
    for (const subject of new Set(figures.map((figure) => figure.subject))) {
      const own = figures.filter((figure) => figure.subject === subject);
      const before = result.find((each) => each.entry.slot.step === entry.slot.step && each.subject === subject);
      if (!before || !sameFigures(before.figures, own)) result.push({ entry, subject, figures: own });
    }
  });
  return result;
}

const sameFigures = (a: readonly Figure[], b: readonly Figure[]): boolean =>
  a.length === b.length &&
  a.every(({ name, quantity }, k) => {
    const other = b[k]!;
    return name === other.name && quantity?.low === other.quantity?.low && quantity?.high === other.quantity?.high;
  });

function reportOf(chosen: Chosen, options: ShowOptions): TakeoffReport {
  const { plan, takeOff } = chosen.view;
  const handleOf = handles(chosen);
  return {
    version: 1,
    plan: plan.name,
    revision: plan.revision,
    steps: taken(chosen).map(({ entry, subject, figures }) => {
      const { step, standing } = handleOf(entry);
      return {
        step,
        subject,
        line: standing.range.start.line,
        figures: figures.map((figure) => figureReport(figure, options)),
      };
    }),
    lines: takeOff.lines.map(({ part, figures }) => ({
      part,
      figures: figures.map((figure) => figureReport(figure, options)),
    })),
    machine: takeOff.machine.map((figure) => figureReport(figure, options)),
    totals: takeOff.totals.map((figure) => figureReport(figure, options)),
    containers: containerLines(takeOff, options).map(
      ({ of, what, container, kind, start, end, shown, changed, price }) => ({
        of,
        what,
        container,
        unit: unitOf[kind],
        start,
        end,
        shown,
        changed: changed && handleOf(changed).step,
        price,
      }),
    ),
    waste: takeOff.waste.map((waste) => ({
      what: waste.what,
      container: waste.container,
      unit: waste.quantity && unitOf[waste.quantity.kind],
      low: waste.quantity?.low ?? null,
      high: waste.quantity?.high ?? null,
      shown: wasteShown(waste, options),
      keep: waste.keep,
    })),
    shortfalls: takeOff.shortfalls.map(({ kind, what, entry, missing }) => ({
      of: kind,
      what,
      step: handleOf(entry).step,
      unit: unitOf[missing.kind],
      missing: missing.high,
      shown: shownMissing(kind, missing, options),
    })),
    defaults: [...takeOff.defaults],
  };
}

function textOf(chosen: Chosen, options: ShowOptions, paint: Paint): string {
  const { plan, takeOff } = chosen.view;
  const handleOf = handles(chosen);
  const lines = [`${plan.title || plan.name}${plan.revision === null ? '' : `, revision ${plan.revision}`}`];
  const all = taken(chosen);
  for (const entry of new Set(all.map((each) => each.entry))) {
    const { step, round } = entry.slot;
    const figures = all.filter((each) => each.entry === entry).flatMap((each) => each.figures);
    lines.push('', paint('bold', `${handleOf(entry).number}  ${step.text}${round === null ? '' : ', each round'}`));
    lines.push(...figureRows(figures, options));
  }
  const own = takeOff.lines.flatMap(({ figures }) => figures);
  if (own.length > 0) lines.push('', paint('bold', 'The lines'), ...figureRows(own, options));
  if (takeOff.machine.length > 0) lines.push('', paint('bold', 'The machine'), ...figureRows(takeOff.machine, options));
  lines.push('', paint('bold', 'In all'), ...figureRows(takeOff.totals, options));
  const section = (title: string, own: readonly string[]): void => {
    if (own.length > 0) lines.push('', paint('bold', title), ...own);
  };
  const told = new Set(takeOff.defaults);
  const notes = [...new Set(takeOff.totals.flatMap((figure) => figure.notes))].filter((note) => !told.has(note));
  if (notes.length > 0) lines.push('', ...notes.map((note) => `    ${note}`));
  section(
    'Container by container, at the most rounds',
    textRows(
      containerLines(takeOff, options).map(({ what, container, shown, changed, price }) => [
        container,
        what,
        `${shown}${changed ? `, changed at step ${handleOf(changed).number}` : ''}${price ? ` (${price})` : ''}`,
      ]),
    ),
  );
  section(
    'Falls short',
    textRows(
      takeOff.shortfalls.map(({ kind, what, entry, missing }) => [
        what,
        `${shownMissing(kind, missing, options)} missing`,
        `from step ${handleOf(entry).number}: ${entry.slot.step.text}`,
      ]),
    ),
  );
  section(
    'To take away',
    textRows(
      takeOff.waste.map((waste) => [waste.what, wasteShown(waste, options), `${waste.container}. ${waste.keep}`]),
    ),
  );
  section(
    'Taken where the plan is silent',
    takeOff.defaults.map((note) => `    ${note}`),
  );
  return `${lines.join('\n')}\n`;
}

const shownMissing = (kind: Shortfall['kind'], missing: Quantity, options: ShowOptions): string =>
  show(
    missing,
    missing.kind === 'volume' && options.system !== 'si'
      ? { ...options, as: kind === 'nitrogen' ? 'scf' : 'fl-oz' }
      : options,
  );
