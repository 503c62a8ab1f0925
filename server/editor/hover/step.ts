import { numberOf } from '../../engine/checks/check';
import type { Bound } from '../../engine/plan/bind';
import type { Figure } from '../../engine/takeoff/figure';
import type { Asked } from '../asking';
import type { PlanView } from '../engine';
import { entriesOf } from '../part-page';
import { jobsOf, planAround } from '../plan-around';
import { figurePage } from './figure';

/** A step's number on the sheet and its computed figures with their workings. */
export function stepPages(asked: Asked, bound: Bound): readonly string[] {
  const view = planAround(asked);
  if (view === undefined) return [];
  const entries = entriesOf(view, bound);
  const [first] = entries;
  if (first === undefined) return [];
  const title = `Step ${numberOf(view, first)} of ${numberOf(view, view.walk.entries.at(-1)!)}`;
  const figures = figuresOf(view, bound);
  return [[title, ...figures.map((figure) => figurePage(figure, view.plan.site.atmosphere))].join('\n\n')];
}

/** The figures of a statement's entries, each once: a repeat's rounds give the same. */
export function figuresOf(view: PlanView, bound: Bound): readonly Figure[] {
  const found = new Map<string, Figure>();
  view.walk.entries.forEach((entry, index) => {
    if (entry.slot.step.bound !== bound) return;
    for (const figure of view.takeOff.steps[index] ?? []) found.set(`${figure.name} ${figure.subject}`, figure);
  });
  return [...found.values()];
}

/** In a standard: which jobs follow it, and for a step at which of their steps it stands. */
export function jobsPage(asked: Asked, bound: Bound): readonly string[] {
  const top = asked.look.chain[0]?.bound;
  if (top?.word?.word !== 'standard' || (bound !== top && bound.place !== 'steps')) return [];
  const jobs = jobsOf(asked.snapshot, asked.path, top);
  if (jobs.length === 0) return ['No job of this folder follows the standard.'];
  const shown = jobs
    .slice(0, mostJobs)
    .map((view) => `- ${view.plan.title} (\`${view.plan.name}\`)${bound === top ? '' : standing(view, bound)}`);
  const more = jobs.length > mostJobs ? [`- and ${jobs.length - mostJobs} more`] : [];
  return [
    [`${jobs.length === 1 ? 'One job follows' : `${jobs.length} jobs follow`} this standard:`, ...shown, ...more].join(
      '\n',
    ),
  ];
}

/** Jobs that a hover lists; the rest is counted. */
const mostJobs = 8;

function standing(view: PlanView, bound: Bound): string {
  const [entry] = entriesOf(view, bound);
  if (entry === undefined) {
    const inside = view.walk.entries.some(({ slot }) => slot.within.some((each) => each.bound === bound));
    return inside ? '' : ': left out';
  }
  return `: step ${numberOf(view, entry)}`;
}
