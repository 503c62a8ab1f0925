import { describe, expect, it } from 'vitest';
import { locate } from '../../../grammar';
import { checks } from '../../../server/engine/checks/all';
import { exampleText } from '../../../server/engine/checks/bases';
import type { Example } from '../../../server/engine/checks/define';
import { Workspace } from '../../../server/engine/workspace';

/** The findings of an example, as "name @ line", with the example's text. */
function findings(example: Example): {
  text: string;
  found: { name: string; line: number; severity: string; message: string; places: readonly string[] }[];
} {
  const text = exampleText(example);
  const workspace = new Workspace();
  workspace.setFile('example.jobplan', text);
  const snapshot = workspace.snapshot();
  const { tree } = snapshot.file('example.jobplan')!;
  const found = snapshot.findings('example.jobplan').map((finding) => {
    const start = locate(tree, new Set([finding.at.item])).get(finding.at.item) ?? 0;
    return {
      name: finding.name,
      line: text.slice(0, start + finding.at.from).split('\n').length,
      severity: finding.severity,
      message: finding.message,
      places: [finding.at, ...finding.related.map(({ at }) => at)].map(
        ({ file, item, from }) => `${file} ${(locate(tree, new Set([item])).get(item) ?? 0) + from}`,
      ),
    };
  });
  return { text, found };
}

const marked = (text: string): number => text.split('\n').findIndex((line) => line.includes('# <- here')) + 1;

describe.each(checks.map((check) => [check.name, check] as const))('%s', (name, check) => {
  it('finds the wrong example at the marked line', () => {
    const { text, found } = findings(check.wrong);
    expect(marked(text), 'the wrong example marks a line').toBeGreaterThan(0);
    expect(found.filter((each) => each.name === name).map((each) => each.line)).toContain(marked(text));
  });
  it('names each place once', () => {
    for (const { places } of findings(check.wrong).found) expect(places).toEqual([...new Set(places)]);
  });
  it('leaves the right example in peace', () => {
    expect(findings(check.right).found.filter((each) => each.severity !== 'information')).toEqual([]);
  });
});
