import { kinds } from '../circuit/kinds';
import { choice, name } from '../plan/terms';
import { clause, first, maybe, needed, word } from '../plan/vocabulary';

/** Words of a circuit: the kinds of part, and what joins them. */
export const circuitWords = [
  ...kinds.map((kind) =>
    word({
      word: kind.kind,
      places: ['circuit'],
      label: 'may',
      block: 'part',
      roles: ['state', 'figure', 'check'],
      form: { standing: maybe(choice('new', 'kept', 'reused', 'removed', 'added'), 'what becomes of it') },
      meaning: `A part: ${kind.meaning}.${kind.neverFlush ? ` Never flushed: ${kind.neverFlush}.` : ''}`,
      example: kind.group === 'line' ? `${kind.kind} kept { tube 3/8 in ACR }` : `${kind.kind} new`,
    }),
  ),
  word({
    word: 'parallel',
    places: ['circuit'],
    label: 'may',
    block: 'branches',
    blockNeeded: true,
    meaning: 'The flow splits into branches and joins again.',
    example: 'boxes: parallel { branch one { … } branch two { … } }',
    roles: ['state'],
  }),
  word({
    word: 'branch',
    places: ['branches'],
    block: 'circuit',
    blockNeeded: true,
    form: { name: maybe(name('part'), 'its name') },
    meaning: 'One way through a parallel, in flow order.',
    example: 'branch den { … }',
    roles: ['state'],
  }),
  word({
    word: 'through',
    places: ['circuit'],
    form: { part: first(name('part'), 'a part that was named before') },
    meaning: 'The flow meets a part again, by another passage.',
    example: 'through reversing-valve',
    roles: ['state'],
  }),
  word({
    word: 'section',
    places: ['circuit'],
    roles: ['state'],
    form: {
      name: first(name('part'), 'its name'),
      from: needed(clause('from', name('part'), 'the first part')),
      to: needed(clause('to', name('part'), 'the last part')),
    },
    meaning: 'Names a stretch of the circuit, both ends included, so that a step can speak of it.',
    example: 'section low-side from boxes to suction-drier',
  }),
  word({
    word: 'unit',
    places: ['circuit'],
    block: 'circuit',
    blockNeeded: true,
    form: { name: first(name('part'), 'its name') },
    meaning: 'Parts that come in one casing.',
    example: 'unit outdoor { compressor new … }',
    roles: ['state'],
  }),
];
