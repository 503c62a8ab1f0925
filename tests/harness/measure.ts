import { locate } from '../../grammar';
import type { Finding } from '../../server/engine/finding';
import type { Step } from '../../server/engine/plan/step';
import type { Snapshot } from '../../server/engine/snapshot';
import type { PlanView } from '../../server/engine/view';
import { editsOf } from './edits';
import { type Files, filesOf, heldOut, numberOf, sound, workspaceOf } from './plans';
import { rulingOf } from './rulings';
import type { EditSet, LineEdit, Ruling } from './scene';
import { runOf } from './trade/go-through';

/** What the checks said of one edit: the names of findings above information, and whether one stands at the right place. */
export interface Outcome {
  readonly edit: LineEdit;
  readonly ruling: Ruling;
  readonly heldOut: boolean;
  readonly names: readonly string[];
  readonly rightPlace: boolean;
}

/** An edit with its ruling, and the workspace as it then stands; the checks have not run on it yet. */
interface Ruled {
  readonly edit: LineEdit;
  readonly ruling: Ruling;
  readonly snapshot: Snapshot;
  readonly after: PlanView | undefined;
}

/** Rules one edit in every `share`, chosen by its text; `part` says which of the shares. */
export function* ruled(folders: readonly string[], share: number, part = 0, set: EditSet = 'first'): Generator<Ruled> {
  for (const folder of folders) {
    const files = filesOf(folder);
    for (const plan of sound(files)) yield* ofPlan(files, plan, share, part, set);
  }
}

function* ofPlan(files: Files, plan: string, share: number, part: number, set: EditSet): Generator<Ruled> {
  const workspace = workspaceOf(files);
  const [before] = workspace.snapshot().plans(plan);
  if (!before) return;
  const faultsBefore = runOf(before.plan);
  const standard = before.plan.standard?.file;
  for (const file of standard ? [plan, standard] : [plan]) {
    const source = files[file]!;
    for (const edit of editsOf(plan, file, source, set)) {
      if (numberOf(`${plan} ${edit.operator} ${edit.text}`) % share !== part) continue;
      workspace.setFile(file, edit.text);
      for (const missing of workspace.wanted()) workspace.setFile(missing, null);
      const snapshot = workspace.snapshot();
      const [after] = snapshot.plans(plan);
      const plain = { ...edit, operator: edit.operator.replace('standard: ', '') };
      const faultsAfter = after ? runOf(after.plan) : [];
      const ruling = rulingOf({ edit: plain, before, after: after ?? null, faultsBefore, faultsAfter });
      yield { edit, ruling, snapshot, after };
    }
    workspace.setFile(file, source);
  }
}

/** Runs the checks on what is judged harmful or harmless. */
export function* measure(
  folders: readonly string[],
  share: number,
  part = 0,
  set: EditSet = 'first',
): Generator<Outcome> {
  for (const each of ruled(folders, share, part, set)) {
    const { edit, ruling, snapshot } = each;
    const files = ruling.verdict === 'unclear' ? [] : [...new Set([edit.plan, edit.file])];
    const found = files
      .flatMap((file) => snapshot.findings(file))
      .filter((finding) => finding.severity !== 'information');
    const names = found.map((finding) => finding.name);
    yield { edit, ruling, heldOut: heldOut(edit.plan), names, rightPlace: standsRight(found, each) };
  }
}

/** Whether a finding, or a place that it names, is at the touched line, at a step that the ruling names, or at its part. */
function standsRight(found: readonly Finding[], { edit, ruling, snapshot, after }: Ruled): boolean {
  const lines = edit.text.split('\n');
  const right = new Set(edit.touched.map((line) => `${edit.file}:${line}`));
  const span = (file: string, item: Step['bound']['item'], whole: boolean): void => {
    const tree = snapshot.file(file)?.tree;
    const start = tree && locate(tree, new Set([item])).get(item);
    if (start === undefined) return;
    const text = snapshot.file(file)!.text;
    const from = text.slice(0, start).split('\n').length - 1;
    const to = whole ? text.slice(0, start + item.length).split('\n').length - 1 : from;
    for (let line = from; line <= to; line++) right.add(`${file}:${line}`);
  };
  for (const step of new Set(ruling.steps)) span(step.file, step.bound.item, step.children.length === 0);
  if (after)
    for (const part of new Set(ruling.parts)) {
      const bound = after.plan.partStatements[part];
      if (bound) span(after.plan.file, bound.item, true);
    }
  for (const [k, line] of lines.entries()) if (ruling.lines?.test(line)) right.add(`${edit.file}:${k}`);
  // What a standard no longer gives may be told in the job that asks for it.
  if (edit.plan !== edit.file)
    for (const [k, line] of (snapshot.file(edit.plan)?.text ?? '').split('\n').entries())
      if (ruling.lines?.test(line)) right.add(`${edit.plan}:${k}`);
  return found.some((finding) =>
    [finding.at, ...finding.related.map((related) => related.at)].some((place) => {
      const tree = snapshot.file(place.file)?.tree;
      const start = tree && locate(tree, new Set([place.item])).get(place.item);
      if (start === undefined) return false;
      const line =
        snapshot
          .file(place.file)!
          .text.slice(0, start + place.from)
          .split('\n').length - 1;
      return right.has(`${place.file}:${line}`);
    }),
  );
}
