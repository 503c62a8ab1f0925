import { describe, expect, it } from 'vitest';
import { locate } from '../../../grammar';
import { checks } from '../../../server/engine/checks/all';
import { exampleText } from '../../../server/engine/checks/bases';
import type { Example } from '../../../server/engine/checks/define';
import type { Finding, Fix } from '../../../server/engine/finding';
import { Workspace } from '../../../server/engine/workspace';

const path = 'example.jobplan';

function open(text: string): { readonly workspace: Workspace; readonly found: readonly Finding[] } {
  const workspace = new Workspace();
  workspace.setFile(path, text);
  return { workspace, found: workspace.snapshot().findings(path) };
}

/** The text with a fix applied: its edits from the last to the first. */
function applied(text: string, workspace: Workspace, fix: Fix): string {
  const { tree } = workspace.snapshot().file(path)!;
  const places = locate(tree, new Set(fix.edits.map((edit) => edit.at.item)));
  return fix.edits
    .map((edit) => ({
      start: (places.get(edit.at.item) ?? 0) + edit.at.from,
      end: (places.get(edit.at.item) ?? 0) + edit.at.to,
      text: edit.text,
    }))
    .sort((a, b) => b.start - a.start)
    .reduce((result, edit) => result.slice(0, edit.start) + edit.text + result.slice(edit.end), text);
}

const counted = (found: readonly Finding[]): Map<string, number> => {
  const count = new Map<string, number>();
  for (const { name, severity } of found) if (severity !== 'information') count.set(name, (count.get(name) ?? 0) + 1);
  return count;
};

const fixesOf = (
  example: Example,
  name: string,
): readonly { readonly title: string; readonly of: number; readonly fix: number }[] =>
  open(exampleText(example)).found.flatMap((finding, of) =>
    finding.name === name ? finding.fixes.map(({ title }, fix) => ({ title, of, fix })) : [],
  );

const mending = checks.flatMap((check) =>
  fixesOf(check.wrong, check.name).map((each) => ({ ...each, name: check.name, example: check.wrong })),
);

describe('each way out mends what it is offered for and brings nothing new', () => {
  it.each(mending.map((each) => [each.name, each.title, each] as const))(
    '%s: %s',
    (name, _title, { example, of, fix }) => {
      const text = exampleText(example);
      const { workspace, found } = open(text);
      const after = open(applied(text, workspace, found[of]!.fixes[fix]!)).found;
      const [before, left] = [counted(found), counted(after)];
      expect(left.get(name) ?? 0, 'the finding is gone').toBeLessThan(before.get(name) ?? 1);
      for (const [each, count] of left)
        expect(count, `no new finding: ${each}`).toBeLessThanOrEqual(before.get(each) ?? 0);
    },
  );
});
