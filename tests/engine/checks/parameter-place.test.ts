import { expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

it('a test at the pressure of the plan points to where that is stated', () => {
  const workspace = new Workspace();
  const text = exampleText({
    base: 'split',
    instead: [
      ['  test-pressure 450 psig', '  test-pressure 900 psig'],
      ['open part to 450 psig for 30 min', 'open part to test-pressure for 30 min'],
    ],
  });
  workspace.setFile('pressure.jobplan', text);
  const found = workspace
    .snapshot()
    .findings('pressure.jobplan')
    .filter(({ severity }) => severity !== 'information');
  expect(found.length).toBeGreaterThan(0);
  for (const { name, related } of found)
    expect([
      name,
      related.map(
        ({ at, message }) =>
          `${at.item.head
            .map((token) => token.text)
            .join('')
            .trim()}: ${message}`,
      ),
    ]).toEqual([name, expect.arrayContaining(['test-pressure 900 psig: the pressure is stated here'])]);
});
