import { harmless, type LineEdit, type Ruling, type Scene, unclear } from './scene';
import { keyOf, type Rule } from './trade/fault';

/** A step of a standard that the job skips or does otherwise: what it says is not done here, where it stands may count. */
export function notDone({ edit, before, faultsBefore, faultsAfter }: Scene): Ruling | null {
  if (edit.at < 0) return null;
  const labels = [edit.steps[edit.at]!.label, ...around(edit)];
  // Names and words that nobody knows, and labels that are gone, are wrong in the standard all the same.
  if (edit.file === edit.plan || /^(delete|duplicate|drop label|misspell|back to)/.test(edit.operator)) return null;
  if (/^(psig to psi|gauge dropped)/.test(edit.operator)) return null;
  const departure = before.plan.departures.find(
    (each) => (each.kind === 'skip' || each.kind === 'replace') && labels.includes(each.label),
  );
  if (!departure) return null;
  if (edit.past.length === 0 || departure.kind === 'skip')
    return harmless(
      'The one job that follows the standard skips this step or does another in its place (language: departures).',
    );
  return faultsAfter.length > faultsBefore.length
    ? null
    : unclear('What the job does in its place moves with it, and is not of the standard (language: departures).');
}

/** The labels of the phases, repeats and visits that the edited step stands in. */
function around(edit: LineEdit): readonly string[] {
  const lines = edit.source.split('\n');
  const depth = (line: string): number => /^\s*/.exec(line)![0].length;
  const found: string[] = [];
  let from = edit.steps[edit.at]!.from;
  let own = depth(lines[from]!);
  for (from--; from >= 0 && own > 0; from--) {
    const line = lines[from]!;
    if (line.trim() === '' || depth(line) >= own) continue;
    own = depth(line);
    const label = /^\s*([a-z][\w-]*): /.exec(line)?.[1];
    if (label) found.push(label);
  }
  return found;
}

/** What the model sees and the trade does not decide. */
const doubtful: ReadonlySet<string> = new Set<Rule>(['standing-pressure', 'blown-back', 'read-resumed']);

/** What the plan breaks after the edit that it did not break before; null if nothing. */
export function brokenBy(scene: Scene): Ruling | null {
  const before = new Set(scene.faultsBefore.map(keyOf));
  const all = scene.faultsAfter.filter((fault) => !before.has(keyOf(fault)));
  const fresh = all.filter((fault) => !doubtful.has(fault.rule));
  const [first] = fresh;
  if (!first) return all[0] ? unclear(all[0].why) : null;
  const { steps, at, group } = scene.edit;
  const proves = [steps[at], ...(group ?? [])].some((each) =>
    /^(pressure-test|evacuate|decay-test)$/.test(each?.verb ?? ''),
  );
  return {
    verdict: 'harmful',
    why: first.why,
    steps: fresh.flatMap((fault) => fault.steps),
    parts: fresh.flatMap((fault) => fault.parts),
    // What goes on without the proof relies on it.
    lines: proves ? /^\s*([\w-]+: )?(evacuate|decay-test|open|charge)\b/ : null,
  };
}
