import { Vocabulary } from '../plan/vocabulary';
import { blockWords } from '../steps/block-words';
import { verbs } from '../steps/verbs';
import { bringWords } from './bring';
import { circuitWords } from './circuit';
import { common, fileWords } from './file';
import { houseRuleWords } from './house-rules';
import { answerWord, materialWords, recordWords } from './materials';
import { planWords } from './plan';
import { siteWords } from './site';
import { partWords, systemWords } from './system';

/** All words of the language. */
export const vocabulary = new Vocabulary(
  [
    ...fileWords,
    ...planWords,
    ...siteWords,
    ...bringWords,
    ...houseRuleWords,
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
