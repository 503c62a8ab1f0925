import { expect, test } from 'vitest';
import { spaces } from '../../../server/engine/circuit/spaces';
import type { Plant } from '../../../server/engine/circuit/state';
import { applied } from './edits';
import { closureOf, folders, workspaceOf } from './shop';

/** What is kept from edit to edit, or from step to step, must not be taken for something that only looks alike. */

test('two plans of one name are each walked', () => {
  const plan = (steps: string) => `plan p "P" {\n  steps {\n    ${steps}\n  }\n}\n`;
  const workspace = workspaceOf({ 'p.jobplan': plan('survey system') + plan('start system') });
  const walked = () =>
    workspace
      .snapshot()
      .plans('p.jobplan')
      .map(({ walk }) => walk.entries.map((entry) => entry.slot.step.text).join());
  expect(walked()).toEqual(['survey system', 'start system']);
  workspace.edit('p.jobplan', [{ from: 0, to: 0, text: '# an edit\n' }]);
  expect(walked()).toEqual(['survey system', 'start system']);
});

test('the spaces of a plant with a part off are not those with the part new, at the same ends', () => {
  const circuit = 'compressor kept\ncondenser kept\nevaporator kept';
  const workspace = workspaceOf({ 'p.jobplan': `plan p "P" {\n  circuit {\n${circuit}\n  }\n}\n` });
  const { start } = workspace.snapshot().plans('p.jobplan')[0]!.walk;
  const mounted = (mounted: 'none' | 'new'): Plant => ({
    ...start,
    parts: start.parts.map((part, index) => (index === 1 ? { ...part, mounted } : part)),
  });
  const partsIn = (plant: Plant) => spaces(plant).flatMap((space) => space.parts);
  expect(partsIn(mounted('none'))).not.toContain(1);
  expect(partsIn(mounted('new'))).toContain(1);
});

test('a file that is put in again keeps what did not change, and what was walked of it', () => {
  const texts = closureOf(folders['samples']!, 'changeout-split.jobplan');
  const standard = 'standard-line-set-reuse.jobplan';
  const workspace = workspaceOf(texts);
  const walked = () => workspace.snapshot().plans('changeout-split.jobplan')[0]!.walk.entries;
  const before = walked();
  workspace.setFile(standard, texts[standard]!);
  expect(walked()).toBe(before);
  const at = texts[standard]!.indexOf(' 500 micron') + 1;
  workspace.setFile(standard, applied(texts[standard]!, { from: at, to: at + 3, text: '900' }));
  const after = walked();
  const changed = before.findIndex((entry) => entry.slot.step.text.includes('to 500 micron'));
  expect(changed).toBeGreaterThan(20);
  expect(after.slice(0, changed)).toEqual(before.slice(0, changed));
  expect(after.slice(0, changed).every((entry, k) => entry === before[k])).toBe(true);
  expect(after[changed]!.slot.step.text).toContain('900 micron');
});
