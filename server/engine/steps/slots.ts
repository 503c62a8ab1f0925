import { bounded, quantity } from '../plan/amounts';
import type { Amount } from '../plan/term';
import { choice, name, thing } from '../plan/terms';
import { clause, flag } from '../plan/vocabulary';
import type { Speech } from './verb';

/** Slots that several verbs share. */
export const forTime = clause('for', bounded(quantity('time'), { over: '0 s' }), 'how long');
export const atEnds = clause('at', choice('both ends', 'far end', 'near end'), 'which end; both if nothing is said');
export const atPressure = clause('at', quantity('pressure'), 'regulator setting');
export const toPressure = clause('to', quantity('pressure'), 'the level to reach');
export const withNitrogenAt = clause(
  'with nitrogen at',
  quantity('volume-flow', 'pressure'),
  'nitrogen that flows through while the joint is hot',
);
/** What a joint is made with; any tool that people know. */
export const withWhat = clause(
  'with',
  thing('HOW', ['torque-wrench', 'new-gaskets', 'new-seals', 'press-fittings', 'clamp']),
  'torque-wrench, new-gaskets …',
);
export const into = clause('into', name('stock'), 'container or labelled cylinder');
/** Nitrogen unless another is named; the others are named so that the plan can be told why not. */
export const withGas = clause(
  'with',
  choice('nitrogen', 'air', 'oxygen', 'acetylene', 'argon', 'helium', 'carbon-dioxide', 'tracer'),
  'the gas, if it is not plain dry nitrogen',
);
export const outdoors = flag('outdoors', 'the gas is let go out of doors');

/** ", for 30 s" and the like, where the author said so. */
export const tail = (speech: Speech, before: string, amount: Amount | undefined): string =>
  amount ? `${before} ${speech.amount(amount)}` : '';
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
/** "at 50 psig, for 30 s": whichever of the two the author said. */
export const atAndFor = (speech: Speech, level: Amount | undefined, time: Amount | undefined): string =>
  [tail(speech, 'at', level).trim(), tail(speech, 'for', time).trim()].filter(Boolean).join(', ');
