import { expect, it } from 'vitest';
import { filesOf, workspaceOf } from '../../harness/plans';

const path = 'ductless-line-moved.jobplan';
const files = filesOf('tests/fixtures/good');
const added = '    install liquid-more, vapour-more with torque-wrench\n';

/** What is found above information when the added pieces of line come in only before a later step. */
function found(later: string): readonly string[] {
  const text = files[path]!;
  expect(text).toContain(added);
  expect(text).toContain(later);
  const moved = text.replace(added, '').replace(later, () => added.trimStart() + later.replace(/^/, '    '));
  return workspaceOf({ ...files, [path]: moved })
    .snapshot()
    .findings(path)
    .filter((finding) => finding.severity !== 'information')
    .map(({ name }) => name);
}

// A piece that is added is cut into what was proved without it: test, vacuum and charge do not count for it (handbook 13.1:
// any opening after the test loses test and vacuum; nothing is opened under pressure).
it.each([
  ['pressure-test indoors to 10 psig', []],
  ['release nitrogen outdoors', ['open-under-pressure', 'not-pressure-tested']],
  ['evacuate: evacuate indoors', ['not-pressure-tested']],
  ['decay-test indoors', ['not-pressure-tested', 'charge-into-gas']],
  ['restore power', ['open-under-pressure']],
] as const)('pieces of line that are added before "%s"', (later, expected) => {
  expect(found(later)).toEqual(expect.arrayContaining([...expected]));
  if (expected.length === 0) expect(found(later)).toEqual([]);
});
