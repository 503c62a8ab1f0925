import { hasGap } from '../../circuit/spaces';
import { selection } from '../../plan/selection';
import { count } from '../../plan/terms';
import { clause, first, flag } from '../../plan/vocabulary';
import { mark, part } from '../acts';
import { verb } from '../verb';

/** Pulls swabs through a line instead of solvent. As many come out as went in. */
export const pullSwab = verb({
  word: 'pull-swab',
  roles: ['state', 'check', 'sheet'],
  minutes: [5, 15],
  form: {
    what: first(selection(), 'lines'),
    until: flag('until clean', 'until a swab comes out clean'),
    number: clause('with', count(), 'swabs for each line'),
  },
  meaning: 'Pulls lint-free swabs through each line until one comes out clean; as many come out as went in.',
  example: 'pull-swab each kept line until clean',
  perform(values, act) {
    for (const index of act.parts(values.what)) {
      act.draft.setPart(index, { residue: { oil: null, share: 0, acid: act.draft.part(index).residue.acid } });
      const now = act.draft.now();
      const blocked = part(act, index).ends.filter((end) => {
        const { joint } = act.draft.graph.ends[end]!;
        return now.ends[end]!.closure?.opening === null || (joint >= 0 && !hasGap(now, joint));
      });
      act.emit({ type: 'swabs', line: index, blocked });
      mark(act, `pull-swab ${act.draft.graph.parts[index]!.name}`);
    }
  },
  say: (values, speech) => ({
    sentence: `Pull swabs through ${speech.parts(values.what)}${values.until ? ' until one comes out clean' : ''}; count them in and out`,
  }),
});
