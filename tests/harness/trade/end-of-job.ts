import type { Run } from './run';

/** What must not be left behind when the job is done. */
export function endOfJob(run: Run): void {
  const { plant } = run;
  const all = plant.graph.parts.filter((part) => !plant.untouched(part.index));
  for (const part of plant.graph.parts) {
    const now = plant.parts[part.index]!;
    if (part.standing === 'new' && now.mounted !== 'new') run.report('never-in', part.name, [part.index]);
    if (part.standing === 'added' && !plant.done.has(`came ${part.index}`))
      run.report('never-in', part.name, [part.index]);
    if ((part.standing === 'kept' || part.standing === 'reused') && now.mounted === 'none')
      run.report('never-back', part.name, [part.index]);
    if (part.standing === 'removed' && now.mounted !== 'none') run.report('never-off', part.name, [part.index]);
  }
  for (const part of all) {
    const now = plant.parts[part.index]!;
    if (now.wet > 0 && now.mounted !== 'none') run.report('wet-closed', part.name, [part.index]);
    if (part.kind.kind === 'filter-drier' && part.standing === 'kept' && now.opened)
      run.report('drier-old', part.name, [part.index]);
    if (part.kind.kind === 'filter-drier' && part.standing === 'kept' && plant.done.has(`off ${part.index}`))
      run.report('drier-old', part.name, [part.index]);
  }
  for (const space of plant.spaces()) {
    const parts = plant.partsOf(space).filter((part) => !plant.untouched(part));
    const fill = plant.ends[space.ends[0]!]!.fill;
    for (const leak of space.leaks) {
      const part = plant.graph.ends[leak]!.part;
      const met = plant.graph.joints[plant.graph.ends[leak]!.joint]?.ends ?? [];
      run.report('left-open', run.name(part), [part, ...met.map((end) => plant.graph.ends[end]!.part)]);
    }
    if (
      space.leaks.length === 0 &&
      ['vacuum', 'nitrogen', 'air', 'traces', 'old'].includes(fill.gas) &&
      parts.length > 0
    )
      for (const part of parts) run.report('left-empty', run.name(part), [part]);
    if (fill.gas === 'charge') run.needsTest(parts);
  }
  for (const [part, step] of plant.shutBy) run.report('left-shut', run.name(part), [part], [step]);
  for (const [part, step] of plant.heldOpen) run.report('left-held', run.name(part), [part], [step]);
  for (const [name, step] of plant.bypassed) run.report('left-out', name, [], [step]);
  for (const [name, step] of plant.lockedOut) run.report('left-locked', name, [], [step]);
}
