import { faultPage } from './fault-page';
import type { Page } from './page';
import { exampleStandard } from './rules/parameter-missing';

/** Faults that come up while files are brought together and a plan is put together. */
export const planPages: readonly Page[] = [
  faultPage(
    'duplicate-name',
    'Two things of one name',
    'Two declarations of a kind, or two parts of the circuit, bear the same name.',
    'A step that names it could mean either.',
    [['evaporator new {', 'filter-drier new # <- here\n    evaporator new {']],
  ),
  faultPage(
    'missing-file',
    'The file is not there',
    'The workspace folder has no file at this path.',
    'Whatever it declares is unknown, and the plan is read without it.',
    [],
    { file: 'use "not-there.jobplan" # <- here' },
  ),
  faultPage(
    'unusable-path',
    'A path that leads nowhere',
    'Paths are relative to the file, written with /, name a .jobplan file and stay inside the workspace folder.',
    'A plan that reads files from elsewhere means something else on the next machine.',
    [],
    { file: 'use "../elsewhere.jobplan" # <- here' },
  ),
  faultPage(
    'circular-use',
    'Files that use each other',
    'The file uses itself, directly or by way of another.',
    'Neither of the two can be read first.',
    [],
    { file: 'use "example.jobplan" # <- here' },
  ),
  faultPage(
    'steps-twice',
    'Steps beside a standard',
    'A plan that follows a standard states how it departs from it, not steps of its own.',
    'Which of the two the crew should work by would not be clear.',
    [['  steps {\n    survey system', '  steps { # <- here\n    survey system']],
    { file: exampleStandard, plan: 'kind repair\nfollows short-way revision 4', steps: 'survey system' },
  ),
  faultPage(
    'no-steps',
    'A plan without steps',
    'The plan neither states steps nor follows a standard.',
    'There is nothing to do, to walk or to check.',
    [
      ['plan example "Example" {', 'plan example "Example" { # <- here'],
      ['  steps {\n    survey system\n  }\n', ''],
    ],
    { severity: 'warning', steps: 'survey system', right: [] },
  ),
];
