import { describe, expect, test } from 'vitest';
import { walk } from '../../grammar';
import { complete } from '../../server/editor/completion/complete';
import { theGrammar } from '../../server/engine/workspace';
import { folders, workspaceOf } from '../engine/robust/shop';

/** The files that are cut at each of their tokens; every other file is cut at each `stride`th one. */
const whole = new Set([
  'ash-lane-6.record.jobplan',
  'standard-kept-lines.jobplan',
  'ash-lane-6.jobplan',
  'house.jobplan',
]);
const stride = 41;

/** Where the tokens of a text end. */
function cuts(text: string): number[] {
  const ends: number[] = [];
  walk(theGrammar().parse(text), (item, at) => {
    for (const token of item.head) if (token.kind !== 'space') ends.push(at + token.at + token.text.length);
    return undefined;
  });
  return ends;
}

const restOfLine = (text: string, from: number): number => {
  const end = text.indexOf('\n', from);
  return end < 0 ? text.length : end;
};

describe.each(Object.entries(folders))('%s', (_, texts) => {
  test.each(Object.keys(texts))(
    '%s cut at a token gives findings and completion',
    (path) => {
      const text = texts[path]!;
      const workspace = workspaceOf(texts);
      const ends = cuts(text).filter((_, number) => whole.has(path) || number % stride === path.length % stride);
      expect(ends.length).toBeGreaterThan(0);
      let proposed = 0;
      for (const end of ends) {
        // The text ends there, or somebody has just deleted the rest of the line.
        for (const left of [text.slice(0, end), text.slice(0, end) + text.slice(restOfLine(text, end))]) {
          workspace.setFile(path, left);
          const snapshot = workspace.snapshot();
          const length = snapshot.file(path)!.tree.length;
          for (const finding of snapshot.findings(path)) {
            expect(finding.message).not.toMatch(/undefined|NaN|Infinity|\[object/);
            expect(finding.at.from).toBeGreaterThanOrEqual(0);
            expect(finding.at.to).toBeLessThanOrEqual(length);
          }
          proposed += complete(snapshot, path, snapshot.bound(path)!, left, end).length;
        }
      }
      expect(proposed).toBeGreaterThan(0);
    },
    120_000,
  );
});
