import { Vocabulary } from '../plan/vocabulary';
import { blockWords } from '../steps/block-words';
import { verbs } from '../steps/verbs';
import { circuitWords } from './circuit';
import { common, fileWords } from './file';
import { answerWord, materialWords, recordWords } from './materials';
import { planWords } from './plan';
import { partWords, systemWords } from './system';

/** All words of the language. */
export const vocabulary = new Vocabulary(
  [
    ...fileWords,
    ...planWords,
    ...systemWords,
    ...circuitWords,
    ...partWords,
    ...materialWords,
    ...verbs,
    ...blockWords,
    ...recordWords,
  ],
  common,
  new Map([['record', answerWord]]),
);
