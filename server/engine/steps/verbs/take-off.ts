import type { Closure } from '../../circuit/state';
import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { uncover } from '../acts';
import { verb } from '../verb';

const closures: Readonly<Record<string, Closure['kind']>> = {
  chokes: 'choke',
  caps: 'cap',
  plugs: 'plug',
  tapes: 'tape',
  swabs: 'swab',
};

/** Takes chokes and the like off, wherever they are. */
export const takeOffClosures = verb({
  word: 'take-off',
  roles: ['state', 'check'],
  minutes: [1, 3],
  form: { what: first(selection(['chokes', 'caps', 'plugs']), '"chokes", "caps", or parts whose closures come off') },
  meaning: 'Takes chokes, caps or plugs off, all of them or those of the named parts.',
  example: 'take-off chokes',
  perform(values, act) {
    let count = 0;
    for (const target of act.targets(values.what)) {
      const kind = closures[target.selector.noun];
      const parts = target.selector.of.length > 0 || !kind ? target.parts : null;
      count += uncover(act, parts, kind ? [kind] : ['choke', 'cap', 'plug', 'tape', 'swab']);
    }
    if (count === 0) act.emit({ type: 'no-effect', why: 'there is nothing of the kind on any end' });
  },
  say: (values, speech) => ({ sentence: `Take off ${speech.parts(values.what)}` }),
});
