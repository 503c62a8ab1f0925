import { quantity } from '../../plan/amounts';
import { selection } from '../../plan/selection';
import { either, name } from '../../plan/terms';
import { clause, first, flag, needed } from '../../plan/vocabulary';
import { forTime, withGas } from '../slots';
import { closedOnly, levelOf, nothingLeft } from '../tests';
import { type Act, verb } from '../verb';

/** Nitrogen under pressure, to prove that what was opened is tight. */
export const pressureTest = verb({
  word: 'pressure-test',
  roles: ['state', 'figure', 'check'],
  minutes: [15, 30],
  form: {
    what: first(selection(['system', 'each open part']), 'parts, sections, or "each open part"'),
    level: needed(clause('to', either(quantity('pressure'), name('parameter')), 'the test pressure')),
    gas: withGas,
    time: forTime,
    bubbles: flag('bubbles on every joint', 'soap each joint'),
  },
  meaning:
    'Puts dry nitrogen on the spaces that the parts hang in and watches the gauge. A space that is open proves nothing.',
  example: 'pressure-test each open part to 450 psig for 30 min',
  perform(values, act) {
    const stated = levelOf(act, values.level);
    const unread = act.step.bound.faults.length > 0 || (values.level !== undefined && 'text' in values.level);
    // A pressure that cannot be read is told where it stands; what follows is judged as if the design pressure stood there.
    if (stated === null && !unread) return;
    const level = stated ?? designOf(act);
    const { spaces, open, charged } = closedOnly(act, values.what);
    for (const space of spaces) {
      act.draft.fill(space.cells, {
        gas: 'nitrogen',
        refrigerant: null,
        low: level,
        high: level,
        liquid: false,
        since: act.cause,
      });
      for (const index of space.parts) {
        const before = act.draft.part(index).tested;
        if (!before || before.level < level) act.draft.setPart(index, { tested: { level, by: act.cause } });
      }
    }
    if (stated !== null)
      act.emit({
        type: 'pressurises',
        medium: values.gas ?? 'nitrogen',
        level: stated,
        spaces: [...spaces, ...open, ...charged],
        time: act.quantity(values.time),
        purpose: 'test',
      });
    if (spaces.length + open.length + charged.length === 0)
      act.emit(nothingLeft(act, values.what, 'nothing that it reaches is left to test'));
  },
  say: (values, speech) => ({
    sentence: `Pressure test with ${values.gas ?? 'nitrogen'}: ${speech.parts(values.what)}${values.bubbles ? '; bubbles on every joint' : ''}`,
    aside: [
      values.level
        ? `to ${'literal' in values.level ? speech.amount(values.level) : speech.parameter(values.level.text)}`
        : '',
      values.time ? speech.amount(values.time) : '',
    ]
      .filter(Boolean)
      .join(', '),
  }),
});

/** What the plan's design pressures ask a test to reach, Pa absolute; ten atmospheres where it states none. */
const designOf = ({ plan }: Act): number =>
  Math.max(
    plan.site.atmosphere * 10,
    plan.system.designHigh?.quantity.low ?? 0,
    plan.system.designLow?.quantity.low ?? 0,
  );
