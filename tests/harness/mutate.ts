import { locate } from '../../grammar';
import { eachStep, type Step } from '../../server/engine/plan/step';
import { Workspace } from '../../server/engine/workspace';
import { classifyClause, classifyDeletion, classifySwap, type Verdict } from './classify';
import type { ClauseEdit } from './clause-edit';

/** One edit of a sound plan, with what a practitioner says of it. The verdict comes from `classify.ts`, never from the checks. */
export interface Mutant {
  readonly plan: string;
  readonly kind: 'delete' | 'swap' | 'clause' | 'joint';
  readonly what: string;
  readonly verdict: Verdict;
  /** The file that is edited, and its text then. */
  readonly file: string;
  readonly text: string;
}

export type Files = Readonly<Record<string, string>>;

export function workspaceOf(files: Files): Workspace {
  const workspace = new Workspace();
  for (const [path, text] of Object.entries(files)) workspace.setFile(path, text);
  return workspace;
}

/** All mutants of one plan file. */
export function mutants(files: Files, path: string): readonly Mutant[] {
  const snapshot = workspaceOf(files).snapshot();
  const [view] = snapshot.plans(path);
  if (!view) return [];
  const steps = [...eachStep(view.plan.steps)];
  const found: Mutant[] = [];
  const make = (kind: Mutant['kind'], what: string, verdict: Verdict, file: string, text: string): void => {
    if (verdict !== 'unclear') found.push({ plan: path, kind, what, verdict, file, text });
  };
  const job = { view, steps };

  for (const step of steps) {
    if (step.word.block === 'steps' || step.departure !== null) continue;
    const { text, from, to } = placeOf(step);
    make('delete', step.text, classifyDeletion(step, job), step.file, text.slice(0, from) + text.slice(to));
    for (const clause of clausesOf(step, text, from)) {
      make(
        'clause',
        `${step.text} => ${clause.by || `without ${clause.was}`}`,
        classifyClause(step, clause, job),
        step.file,
        clause.text,
      );
    }
  }
  for (const siblings of lists(view.plan.steps)) {
    for (let k = 0; k + 1 < siblings.length; k++) {
      const [a, b] = [siblings[k]!, siblings[k + 1]!];
      if (a.file !== b.file || a.departure || b.departure) continue;
      const [one, two] = [placeOf(a), placeOf(b)];
      if (one.to > two.from) continue;
      const { text } = one;
      make(
        'swap',
        `${a.text} <-> ${b.text}`,
        classifySwap(a, b, job),
        a.file,
        text.slice(0, one.from) +
          text.slice(two.from, two.to) +
          text.slice(one.to, two.from) +
          text.slice(one.from, one.to) +
          text.slice(two.to),
      );
    }
  }
  return found;

  function placeOf(step: Step): { text: string; from: number; to: number } {
    const { tree, text } = snapshot.file(step.file)!;
    const from = locate(tree, new Set([step.bound.item])).get(step.bound.item) ?? 0;
    return { text, from, to: from + step.bound.item.length };
  }
}

/** Clauses of a step left out or put differently, one at a time. */
function clausesOf(step: Step, text: string, from: number): readonly ClauseEdit[] {
  const edit = (slot: string, change: (was: string) => string): ClauseEdit[] => {
    const span = step.spans[slot];
    if (!span || step.values !== step.bound.values) return [];
    const was = text.slice(from + span.from, from + span.to);
    const by = change(was);
    return by === was
      ? []
      : [{ slot, was, by, text: text.slice(0, from + span.from) + by + text.slice(from + span.to) }];
  };
  const scaled = (factor: number) => (was: string) =>
    was.replace(/(\d+(?:\.\d+)?)(?!.*\d)/, (number) => String(Math.round(Number(number) * factor * 100) / 100));
  return [
    ...edit('nitrogen', () => ''),
    ...edit('nitrogen', scaled(10)),
    ...edit('into', () => ''),
    ...edit('rise', () => ''),
    ...edit('level', scaled(0.3)),
    ...edit('level', scaled(2)),
    ...edit('time', scaled(0.05)),
  ];
}

function* lists(steps: readonly Step[]): Generator<readonly Step[]> {
  yield steps;
  for (const step of steps) if (step.children.length > 0) yield* lists(step.children);
}

/** The findings above information of a mutant, by name. */
export function caught(files: Files, mutant: Mutant): readonly string[] {
  const workspace = workspaceOf({ ...files, [mutant.file]: mutant.text });
  return workspace
    .snapshot()
    .findings(mutant.plan)
    .filter((finding) => finding.severity !== 'information')
    .map((finding) => finding.name);
}
