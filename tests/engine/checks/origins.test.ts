import { expect, it } from 'vitest';
import { checks } from '../../../server/engine/checks/all';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

/** Words that stand before a figure which something is held against. */
const limits = /\b(usual|common|at least|at most|limit|rule|accepted|minimum|maximum|outside|less than|no more than)\b/;
/** The figure is the plan's own, or stands in the rule that is quoted. */
const ownFigures: ReadonlySet<string> = new Set(['visits-out-of-order', 'stock-falls-short', 'house-rule-broken']);

// A figure without an origin cannot be looked up: every limit names its source in brackets, or the input that it comes from.
it('a message that holds something against a limit says where the limit comes from', () => {
  const bare = checks.flatMap((check) => {
    const workspace = new Workspace();
    workspace.setFile('a.jobplan', exampleText(check.wrong));
    return workspace
      .snapshot()
      .findings('a.jobplan')
      .filter(({ name }) => name === check.name && !ownFigures.has(name))
      .map(({ message }) => message.replace(/step \d+ \([^)]*\)|R-\d\w*/gi, ''))
      .filter((message) => limits.test(message) && /\d/.test(message))
      .filter((message) => !/\(.+\)|no source|authority/.test(message))
      .map((message) => `${check.name}: ${message}`);
  });
  expect(bare).toEqual([]);
});
