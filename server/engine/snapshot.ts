import { print } from '../../grammar';
import type { Tree } from '../../grammar/tree';
import { check, checkSteps, checkWords } from './checks/check';
import { checkRecord } from './checks/check-record';
import { materialNames } from './checks/material-names';
import { syntaxFindings, wordFindings } from './faults';
import type { Finding, Place } from './finding';
import { assemble } from './plan/assemble';
import { type Binder, type Bound, child } from './plan/bind';
import type { Plan } from './plan/plan';
import { type Declaration, declarationsOf, Scope } from './plan/scope';
import type { Departure } from './plan/step';
import type { Name } from './plan/term';
import { type TakeOff, takeOff } from './takeoff/take-off';
import { type Use, useFinding, usesOf } from './uses';
import type { PlanView } from './view';
import { vocabulary } from './vocabulary';
import { type Walk, walk } from './walk/walk';

export interface SourceFile {
  readonly path: string;
  readonly tree: Tree;
  readonly text: string;
}

/** A file with its words bound: what it declares and what it uses. */
export interface BoundFile {
  readonly path: string;
  readonly tree: Tree;
  readonly statements: readonly Bound[];
  readonly declarations: readonly Declaration[];
  readonly uses: readonly Use[];
}

/** A record with the plan that it is of. */
export interface RecordView {
  readonly declaration: Declaration;
  readonly view: PlanView | null;
}

/** What is kept from snapshot to snapshot, so that nothing is done twice for a file that did not change. */
export interface Kept {
  /** For plans that state no date, as `2027-05-18`; null where nobody said. */
  readonly today: string | null;
  readonly binder: Binder;
  readonly files: Map<string, BoundFile>;
  readonly views: Map<string, { readonly trees: readonly Tree[]; readonly view: View }>;
}

/** All files at one moment, and what follows from them. Immutable; everything derived is made once, on demand. */
export class Snapshot {
  private readonly found = new Map<string, readonly Finding[]>();

  constructor(
    private readonly trees: ReadonlyMap<string, Tree>,
    private readonly missing: ReadonlySet<string>,
    private readonly kept: Kept,
  ) {}

  get paths(): readonly string[] {
    return [...this.trees.keys()];
  }

  file(path: string): SourceFile | undefined {
    const tree = this.trees.get(path);
    return (
      tree && {
        path,
        tree,
        get text() {
          return print(tree);
        },
      }
    );
  }

  bound(path: string): BoundFile | undefined {
    const tree = this.trees.get(path);
    if (!tree) return undefined;
    const known = this.kept.files.get(path);
    if (known?.tree === tree) return known;
    const statements = this.kept.binder.statements(tree.items, 'file');
    const bound: BoundFile = {
      path,
      tree,
      statements,
      declarations: declarationsOf(path, statements),
      uses: usesOf(path, statements),
    };
    this.kept.files.set(path, bound);
    return bound;
  }

  /** The file and all that it uses, at any remove, itself first; each once. */
  closure(path: string): readonly BoundFile[] {
    const seen = new Map<string, BoundFile>();
    const visit = (at: string): void => {
      const bound = seen.has(at) ? undefined : this.bound(at);
      if (!bound) return;
      seen.set(at, bound);
      for (const use of bound.uses) if ('path' in use.lead) visit(use.lead.path);
    };
    visit(path);
    return [...seen.values()];
  }

  scope(path: string): Scope {
    return new Scope(this.closure(path).flatMap((each) => each.declarations));
  }

  /** The plans that a file declares. */
  plans(path: string): readonly PlanView[] {
    const bound = this.bound(path);
    if (!bound) return [];
    const declared = bound.declarations.filter((each) => each.kind === 'plan');
    if (declared.length === 0) return [];
    const closure = this.closure(path);
    const trees = closure.map((each) => each.tree);
    let scope: Scope | null = null;
    return declared.map((declaration, number) => {
      // Two plans of one name are told apart by their order, or the second would be taken for the first.
      const again = declared.findIndex((each) => each.name === declaration.name) < number ? number : '';
      const key = `${path}\n${declaration.name}\n${again}`;
      const known = this.kept.views.get(key);
      if (known && known.trees.length === trees.length && known.trees.every((tree, k) => tree === trees[k]))
        return known.view;
      scope ??= new Scope(closure.flatMap((each) => each.declarations));
      const view = new View(assemble(declaration, scope, vocabulary, this.kept.today), known?.view);
      this.kept.views.set(key, { trees, view });
      return view;
    });
  }

  /** The records that a file declares, each with the plan that it is of; null where that is not found. */
  records(path: string): readonly RecordView[] {
    const records = this.bound(path)?.declarations.filter((each) => each.kind === 'record') ?? [];
    if (records.length === 0) return [];
    const scope = this.scope(path);
    return records.map((declaration) => {
      const name = child(declaration.bound.block, 'of')?.values['plan'] as Name | undefined;
      const of = name && scope.find('plan', name.text);
      const view = of && this.plans(of.file).find((each) => each.plan.name === of.name);
      return { declaration, view: view ?? null };
    });
  }

  /** Every finding that stands in a file, the gravest first, then by place. */
  findings(path: string): readonly Finding[] {
    let found = this.found.get(path);
    if (!found) this.found.set(path, (found = this.gather(path)));
    return found;
  }

  /** Those of them that text, words and names give: they are there at once, however long the plan is. */
  firstFindings(path: string): readonly Finding[] {
    return this.partly(path, ofWords);
  }

  /** Those and what single steps give: they are there soon, also in a long plan. */
  plainFindings(path: string): readonly Finding[] {
    return this.partly(path, ofSteps);
  }

  private partly(path: string, findingsOf: (view: PlanView) => readonly Finding[]): readonly Finding[] {
    const bound = this.bound(path);
    if (!bound) return [];
    const views = this.plans(path);
    const all = [...this.textFindings(bound), ...views.flatMap(findingsOf)];
    return all.map((finding) => (finding.at.file === path ? finding : brought(finding, views, findingsOf)));
  }

  private gather(path: string): readonly Finding[] {
    const bound = this.bound(path);
    if (!bound) return [];
    const views = this.plans(path);
    const all = [
      ...this.textFindings(bound),
      ...views.flatMap((view) => view.findings),
      ...this.recordFindings(bound),
      ...materialNames(bound.declarations, this.scope(path)),
    ];
    return all.map((finding) => (finding.at.file === path ? finding : brought(finding, views, ofView)));
  }

  private textFindings(bound: BoundFile): readonly Finding[] {
    const { path } = bound;
    return [
      ...syntaxFindings(bound.tree, path),
      ...wordFindings(bound.statements, path),
      ...this.useFindings(bound),
      ...twice(bound),
    ];
  }

  private recordFindings(bound: BoundFile): readonly Finding[] {
    return this.records(bound.path).flatMap(({ declaration, view }) => checkRecord(declaration, view));
  }

  private useFindings(bound: BoundFile): readonly Finding[] {
    return bound.uses.flatMap((use): Finding[] => {
      if ('why' in use.lead) return [useFinding(bound.path, use, 'unusable-path', use.lead.why)];
      const { path } = use.lead;
      if (path === bound.path || this.closure(path).some((each) => each.path === bound.path)) {
        return [
          useFinding(
            bound.path,
            use,
            'circular-use',
            path === bound.path
              ? 'This file uses itself.'
              : `"${use.written}" uses this file in turn; one of the two must do without the other.`,
          ),
        ];
      }
      if (!this.trees.has(path) && this.missing.has(path))
        return [useFinding(bound.path, use, 'missing-file', `There is no file "${path}" in the workspace folder.`)];
      return [];
    });
  }
}

const ofWords = (view: PlanView): readonly Finding[] => view.wordFindings;
const ofSteps = (view: PlanView): readonly Finding[] => view.stepFindings;
const ofView = (view: PlanView): readonly Finding[] => view.findings;

/**
 * A finding of a plan in a file that it uses is shown where the plan brings that file in: at the `change` that the step is as it
 * is by, else where the plan follows the standard, with the steps that the plan leaves out of it beside it.
 */
function brought(
  finding: Finding,
  views: readonly PlanView[],
  findingsOf: (view: PlanView) => readonly Finding[],
): Finding {
  const view = views.find((each) => findingsOf(each).includes(finding));
  const bound = view?.plan.declaration.bound;
  const follows = bound?.block.find((each) => each.word?.word === 'follows') ?? bound;
  const token = follows?.item.word;
  if (!view || !follows || !token) return finding;
  const own = view.plan.departures.filter(({ file }) => file === view.plan.file);
  const change = own.find(({ kind, of }) => kind === 'change' && of?.bound.item === finding.at.item);
  const span = follows.spans['standard'] ?? { from: token.at, to: token.at + token.text.length };
  const skipped = own
    .filter(({ kind, of }) => kind === 'skip' && of !== null)
    .map((each) => ({ at: spotOf(each), message: 'the plan leaves out this step of the standard' }));
  return {
    ...finding,
    at: change ? spotOf(change) : { file: view.plan.file, item: follows.item, ...span },
    related: [
      { at: finding.at, message: 'the line of the standard' },
      ...(change ? [] : skipped.slice(0, mostSkipped)),
      ...finding.related,
    ],
  };
}

/** Steps left out that are shown beside a finding: a plan that leaves out more follows the standard in name alone. */
const mostSkipped = 4;

/** Where a departure names its step. */
const spotOf = ({ bound, file }: Departure): Place => {
  const word = bound.item.word!;
  const { from, to } = bound.spans['label'] ?? { from: word.at, to: word.at + word.text.length };
  return { file, item: bound.item, from, to };
};

/** Declarations of one kind and name that a file makes twice. */
function twice(bound: BoundFile): readonly Finding[] {
  const seen = new Map<string, Declaration>();
  const found: Finding[] = [];
  for (const each of bound.declarations) {
    const key = `${each.kind} ${each.name}`;
    const before = seen.get(key);
    if (!before) {
      seen.set(key, each);
      continue;
    }
    const span = each.bound.spans['name'] ?? { from: 0, to: 0 };
    const first = before.bound.spans['name'] ?? { from: 0, to: 0 };
    found.push({
      name: 'duplicate-name',
      severity: 'error',
      message: `There are two ${each.kind.replaceAll('-', ' ')} declarations called "${each.name}".`,
      at: { file: bound.path, item: each.bound.item, ...span },
      related: [{ at: { file: bound.path, item: before.bound.item, ...first }, message: 'the first one' }],
      fixes: [],
    });
  }
  return found;
}

/** Makes each part of a plan's view once, with what an earlier view of the same plan had found out. */
class View implements PlanView {
  private earlier: { readonly plan: Plan; readonly walk: Walk } | null;
  private walked: Walk | null = null;
  private taken: TakeOff | null = null;
  private checked: readonly Finding[] | null = null;
  private worded: readonly Finding[] | null = null;
  private stepped: readonly Finding[] | null = null;

  constructor(
    readonly plan: Plan,
    earlier: View | undefined,
  ) {
    // Only what was really made is handed on, and only one step back.
    this.earlier = earlier?.walked ? { plan: earlier.plan, walk: earlier.walked } : (earlier?.earlier ?? null);
  }

  get walk(): Walk {
    if (!this.walked) {
      this.walked = walk(this.plan, this.earlier ?? undefined);
      this.earlier = null;
    }
    return this.walked;
  }
  get takeOff(): TakeOff {
    return (this.taken ??= takeOff(this.plan, this.walk));
  }
  get wordFindings(): readonly Finding[] {
    return (this.worded ??= [...this.plan.findings, ...checkWords(this)]);
  }
  get stepFindings(): readonly Finding[] {
    return (this.stepped ??= [...this.plan.findings, ...checkSteps(this)]);
  }
  get findings(): readonly Finding[] {
    return (this.checked ??= [...this.plan.findings, ...check(this)]);
  }
}
