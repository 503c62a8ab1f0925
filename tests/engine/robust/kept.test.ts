import { expect, test } from 'vitest';
import { spaces } from '../../../server/engine/circuit/spaces';
import type { Plant } from '../../../server/engine/circuit/state';
import { workspaceOf } from './shop';

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
