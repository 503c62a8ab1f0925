import { hasGap } from '../../circuit/spaces';
import { selection } from '../../plan/selection';
import { first } from '../../plan/vocabulary';
import { endsOf, mark, markAll } from '../acts';
import { atEnds } from '../slots';
import { verb } from '../verb';

/** Cuts the old flares off and makes new ones. */
export const flare = verb({
  word: 'flare',
  roles: ['state', 'check'],
  minutes: [5, 10],
  form: { what: first(selection(), 'lines'), ends: atEnds },
  meaning: 'Cuts the old flares off, deburrs and makes new ones; an old flare is not used again.',
  example: 'flare each kept line at both ends',
  perform(values, act) {
    markAll(act, act.targets(values.what));
    // The end counts, not only the line: the other end may keep its old flare.
    const plant = act.draft.now();
    const { graph } = act.draft;
    const isMade = (end: number): boolean => {
      const { joint } = graph.ends[end]!;
      return joint >= 0 && plant.ends[end]!.attached && !hasGap(plant, joint);
    };
    const ends = act.parts(values.what).flatMap((index) => endsOf(act, index, values.ends));
    // A made joint has no flare to cut: the old one is still there when it is taken apart.
    for (const end of ends) mark(act, isMade(end) ? `flare made end ${end}` : `flare end ${end}`);
    if (ends.length === 0 || !ends.every(isMade)) return;
    const late = ends.some((end) => plant.parts[graph.ends[end]!.part]!.opened !== null);
    act.emit({ type: 'no-effect', why: 'its joints are made', ...(late && { grave: true }) });
  },
  say: (values, speech) => ({
    sentence: `Cut off the old flares and make new ones: ${speech.parts(values.what)}, ${values.ends ?? 'both ends'}`,
  }),
});
