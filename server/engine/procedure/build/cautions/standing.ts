import { type Caution, when } from './caution';

/** Dangers of a step's own kind, whatever the plant holds. */
export const standing: readonly Caution[] = [
  (here) => {
    const names = here
      .value<readonly { noun: string }[]>('what')
      ?.filter((each) => /relief|high-pressure/.test(each.noun));
    return when(
      here.step.word.word === 'bypass' && (names?.length ?? 0) > 0,
      'Nothing protects against over-pressure until it is back: the test’s own relief is set first.',
    );
  },
  (here) =>
    when(
      here.step.word.word === 'change-oil' || here.step.word.word === 'add-oil',
      'POE and PVE oils take water from the air in minutes: open the can last, pump it in.',
    ),
];
