import { quantity } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { name, pair } from '../../plan/terms';
import { clause, first } from '../../plan/vocabulary';
import { verb } from '../verb';

/** One oil round on one compressor. */
export const changeOil = verb({
  word: 'change-oil',
  roles: ['state', 'figure', 'check'],
  minutes: [45, 90],
  form: {
    what: first(selection(), 'the compressor'),
    to: clause('to', pair(name('oil'), quantity('volume')), 'the new oil, and how much'),
    leaving: clause('leaving', quantity('share'), 'what a drain leaves behind'),
  },
  meaning:
    'One oil round: shuts that compressor off, locks it out, empties, drains, fills and evacuates it, and opens it again.',
  example: 'change-oil comp-a to POE 140 fl-oz, leaving 30 %',
  perform(values, act) {
    const leaving = act.quantity(values.leaving)?.high ?? 0.5; // A drain leaves 20 to 50 % behind (handbook 4.2, S:42).
    for (const index of act.parts(values.what)) {
      const { residue, contents } = act.draft.part(index);
      act.emit({ type: 'changes-oil', part: index, held: contents[0]! });
      act.draft.setPart(index, {
        residue: { ...residue, share: act.round === null ? residue.share * leaving : leaving ** act.round },
      });
    }
  },
  say: (values, speech) => ({
    sentence: `Change the oil of ${speech.parts(values.what)}: shut off, lock out, empty, drain, fill${values.to ? ` with ${values.to.a.text}` : ''}, evacuate, reopen`,
    ...(values.to?.b ? { aside: speech.amount(values.to.b) } : {}),
  }),
});
