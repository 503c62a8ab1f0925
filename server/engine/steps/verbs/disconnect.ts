import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { endsOf, part, undo } from '../acts';
import { atEnds } from '../slots';
import { verb } from '../verb';

/** Undoes the joints at a part's ends; both sides are then open to the air. */
export const disconnect = verb({
  word: 'disconnect',
  roles: ['state', 'check'],
  minutes: [5, 15],
  form: { what: first(selection(), 'lines or parts'), ends: atEnds },
  meaning: 'Undoes the joints at the ends of a part. Both sides of each joint are then open to the air.',
  example: 'disconnect each kept line at both ends',
  perform(values, act) {
    let done = 0;
    for (const index of act.parts(values.what)) {
      if (act.draft.part(index).mounted === 'none') continue;
      const ends = endsOf(act, index, values.ends).filter(
        (end) => act.draft.end(end).attached && part(act, index).ends.includes(end),
      );
      done += ends.length;
      undo(act, index, ends, 'undone');
    }
    if (done > 0) return;
    // What was flushed or closed at its ends was apart for that: whoever takes it apart only now was to do it before.
    const late = act.parts(values.what).some((index) => {
      const { wet, finalPurge } = act.draft.part(index);
      return wet || finalPurge || endsOf(act, index, values.ends).some((end) => act.draft.end(end).closure);
    });
    act.emit({
      type: 'no-effect',
      why: late ? 'the joints were undone before the ends were worked on' : 'the joints are undone already',
      ...(late && { grave: true }),
    });
  },
  say: (values, speech) => ({ sentence: `Disconnect ${speech.parts(values.what)} at ${values.ends ?? 'both ends'}` }),
});
