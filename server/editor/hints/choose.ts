import type { Bound } from '../../engine/plan/bind';
import type { Figure } from '../../engine/takeoff/figure';
import type { PlanView } from '../engine';
import { firstName } from './first-name';

/** How a figure reads as a hint: what stands before and behind it. Those further up are shown first. */
interface Wording {
  readonly before: string;
  readonly behind: string;
}

const of = (behind: string, before = '= '): Wording => ({ before, behind: behind === '' ? '' : ` ${behind}` });

/** Figures that make a hint at a step, the most wanted first. */
const atStep: ReadonlyMap<string, Wording> = new Map([
  ['solvent-of-step', of('solvent')],
  ['solvent-per-pass', of('solvent')],
  ['nitrogen-in-all', of('nitrogen')],
  ['purge-nitrogen', of('nitrogen')],
  ['fill-nitrogen', of('nitrogen')],
  ['brazing-nitrogen', of('nitrogen')],
  ['recovery-level', of('', 'rule: ')],
  ['recovery-level-by-law', of('', 'rule: ')],
  ['safe-fill', of('', 'at most ')],
  ['allowed-loss', of('', 'loss at most ')],
  ['keep-away-distance', of('away', 'keep ')],
  ['water-boiling', of('', 'water boils at ')],
  ['oil-left', of('left')],
  ['total-charge', of('in all')],
  ['line-allowance', of('for the line')],
  ['flush-time', of('')],
]);

/** Figures of the whole job, at the line that brings the steps in. */
const atJob: ReadonlyMap<string, Wording> = new Map([
  ['solvent-in-job', of('solvent')],
  ['nitrogen-in-all', of('nitrogen')],
]);

/** Figures of the stock, at the line that brings it. */
const atStock: ReadonlyMap<string, Wording> = new Map([
  ['solvent-containers', of('needed')],
  ['cylinders-to-bring', of('needed')],
  ['recovery-cylinders-needed', of('needed')],
  ['refrigerant-in-all', of('to weigh in')],
  ['oil-in-all', of('to fill in')],
]);

/** Figures of a line, at the height that it climbs. */
const atRise: ReadonlyMap<string, Wording> = new Map([
  ['double-riser-number', of('', 'oil return ')],
  ['riser-flooding-number', of('', 'oil return ')],
  ['subcooling-left', of('subcooling left')],
]);

export interface Hint extends Wording {
  readonly figure: Figure;
}

/** Hints that one line takes. */
const mostHints = 2;

const byStatement = new WeakMap<PlanView, ReadonlyMap<Bound, readonly Figure[]>>();

/** The figures of a plan's steps by the statement that the step stands in; found once a plan. */
function figuresByStatement(view: PlanView): ReadonlyMap<Bound, readonly Figure[]> {
  let known = byStatement.get(view);
  if (!known) {
    const found = new Map<Bound, Figure[]>();
    view.takeOff.steps.forEach((figures, index) => {
      if (figures.length === 0) return;
      const { bound } = view.walk.entries[index]!.slot.step;
      const before = found.get(bound);
      if (before === undefined) found.set(bound, [...figures]);
      // The last round of a repeat says the same as its first, or what has come of it by then.
      else
        for (const figure of figures) {
          const at = before.findIndex((each) => each.name === figure.name && each.subject === figure.subject);
          if (at < 0) before.push(figure);
          else before[at] = figure;
        }
    });
    byStatement.set(view, (known = found));
  }
  return known;
}

/** The figures that one statement shows at its line's end. */
export function hintsOf(view: PlanView, bound: Bound): readonly Hint[] {
  if (bound.place === 'steps') return chosen(figuresByStatement(view).get(bound) ?? [], atStep);
  if (bound.place === 'bring') {
    const name = firstName(bound.values);
    if (name === undefined) return [];
    const steps = bound.word?.word === 'recovery' ? [...figuresByStatement(view).values()].flat() : [];
    return chosen(
      [...view.takeOff.totals, ...steps].filter((figure) => figure.subject === name),
      atStock,
    ).slice(0, 1);
  }
  if (bound.place === 'part' && bound.word?.word === 'rise') {
    const part = view.plan.partStatements.findIndex((each) => each.block.includes(bound));
    // Of a double riser the small pipe alone comes first: it is what works at the least load.
    const figures = view.takeOff.lines.find((line) => line.part === view.plan.graph.parts[part]?.name)?.figures ?? [];
    const first = figures.find((figure) => atRise.has(figure.name));
    return first ? chosen([first], atRise) : [];
  }
  const bringsSteps = bound.place === 'plan' && (bound.word?.word === 'follows' || bound.word?.word === 'steps');
  return bringsSteps ? chosen(view.takeOff.totals, atJob) : [];
}

function chosen(figures: readonly Figure[], wordings: ReadonlyMap<string, Wording>): readonly Hint[] {
  const found: Hint[] = [];
  const said = new Set<string>();
  for (const [name, wording] of wordings) {
    const own = figures.filter((figure) => figure.name === name && figure.quantity !== null);
    // One of several is not the line's figure; the step's sum has a name of its own.
    const [figure] = own;
    if (figure === undefined || own.length > 1 || said.has(wording.behind)) continue;
    if (wording.behind !== '') said.add(wording.behind);
    found.push({ ...wording, figure });
    if (found.length === mostHints) break;
  }
  return found;
}
