import { bounded, quantity } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { clause, first } from '../../plan/vocabulary';
import { heldIn } from '../acts';
import { forTime, tail } from '../slots';
import { closedOnly } from '../tests';
import { verb } from '../verb';

/** Shuts the pump off and watches the vacuum: the proof of tightness and dryness together. */
export const decayTest = verb({
  word: 'decay-test',
  roles: ['state', 'figure', 'check'],
  minutes: [2, 5],
  form: {
    what: first(selection(['system', 'each open part']), 'parts, sections, or "each open part"'),
    time: forTime,
    rise: clause('rise at most', bounded(quantity('pressure-difference'), { least: '0 micron' }), 'what is allowed'),
  },
  meaning: 'Valves the pump off and watches the vacuum rise: the proof that it is tight and dry.',
  example: 'decay-test each open part for 15 min, rise at most 300 micron',
  perform(values, act) {
    const rise = act.quantity(values.rise)?.high ?? null;
    const { spaces } = closedOnly(act, values.what);
    const under = spaces.filter((space) => heldIn(act, space).gas === 'vacuum');
    for (const space of under) {
      const held = heldIn(act, space);
      for (const index of space.parts) act.draft.setPart(index, { decayTested: { level: held.high, by: act.cause } });
      // Readers of a state after the test must not take the level of the pump for that of the test.
      if (rise !== null) act.draft.fill(space.cells, { ...held, high: held.low + rise });
    }
    act.emit({ type: 'stands', spaces: under, time: act.quantity(values.time), rise });
    // A gauge of microns on pressure is a broken gauge, and a test of nothing is believed.
    if (under.length === 0)
      act.emit({
        type: 'no-effect',
        why: 'nothing that it reaches stands under vacuum',
        grave: true,
        parts: act.parts(values.what),
      });
  },
  say: (values, speech) => ({
    sentence: `Valve the pump off and watch the vacuum: ${speech.parts(values.what)}`,
    aside: [values.time ? speech.amount(values.time) : '', tail(speech, 'rise at most', values.rise)]
      .filter(Boolean)
      .join(', '),
  }),
});
