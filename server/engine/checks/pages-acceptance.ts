import { faultPage } from './fault-page';
import type { Page } from './page';

const adding = (statement: string): (readonly [string, string])[] => [
  ['  revision 1\n', `  revision 1\n  ${statement}\n`],
];

/** Faults of accepting. */
export const acceptancePages: readonly Page[] = [
  faultPage(
    'acceptance-without-reason',
    'Accepted without a reason',
    '`accept` says why: because "…".',
    'The reason prints; without it nobody can tell a decision from a way to make a finding go away.',
    adding('accept decay-limit-missing # <- here'),
  ),
  faultPage(
    'never-accepted',
    'What cannot be accepted',
    'This finding means that somebody is hurt, a law is broken or equipment is destroyed.',
    'No reason makes that right; the plan must be changed.',
    adding('accept open-under-pressure because "It is only a little" # <- here'),
  ),
  faultPage(
    'idle-acceptance',
    'An acceptance of nothing',
    'There is no such finding here to accept.',
    'It was accepted once and has been put right, or it stands at the wrong step; left there it would hide the next one.',
    adding('accept decay-limit-missing because "By the book" # <- here'),
    { severity: 'warning' },
  ),
];
