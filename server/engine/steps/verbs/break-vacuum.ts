import type { Contents } from '../../circuit/state';
import { selection } from '../../plan/selection';
import { choice } from '../../plan/terms';
import { clause, maybe } from '../../plan/vocabulary';
import { heldIn } from '../acts';
import { ownChargeIn } from '../gas';
import { forTime, tail, toPressure } from '../slots';
import { verb } from '../verb';

/** Refrigerant that stands at the pressure of the air, neither more nor less: nitrogen sweeps it out before the torch (handbook 13.1). */
const isSwept = ({ gas, high, liquid }: Contents, atmosphere: number): boolean =>
  gas === 'refrigerant' && !liquid && high < atmosphere * 1.02;

/** Lets dry nitrogen (or the new refrigerant) into what stands below atmospheric pressure. */
export const breakVacuum = verb({
  word: 'break-vacuum',
  roles: ['state', 'figure', 'check'],
  minutes: [5, 10],
  form: {
    what: maybe(selection(['system']), 'where; everything under vacuum if nothing is said'),
    with: clause('with', choice('nitrogen', 'refrigerant', 'air'), 'the gas that is let in'),
    level: toPressure,
    time: forTime,
  },
  meaning:
    'Lets gas into what stands below atmospheric pressure, so that opening it draws no air in, or so that nitrogen takes up moisture.',
  example: 'break-vacuum with nitrogen to 2 psig for 20 min',
  perform(values, act) {
    const level = act.quantity(values.level)?.low ?? act.plan.site.atmosphere;
    const gas = values.with ?? 'nitrogen';
    const meant = act.spaces(values.what);
    const under = meant.filter(
      (space) =>
        space.openings.length === 0 &&
        !ownChargeIn(act.draft.now(), space) &&
        (heldIn(act, space).high < act.plan.site.atmosphere * 0.99 ||
          (gas === 'nitrogen' && isSwept(heldIn(act, space), act.plan.site.atmosphere))),
    );
    for (const space of under) {
      const held = heldIn(act, space);
      // What is pumped down after it is a vacuum that nobody has watched yet.
      for (const index of space.parts) act.draft.setPart(index, { decayTested: null });
      act.draft.fill(
        space.cells,
        gas === 'refrigerant'
          ? {
              gas: 'refrigerant',
              refrigerant: act.plan.system.refrigerant.after,
              low: level,
              high: level,
              liquid: false,
              since: act.cause,
            }
          : {
              gas,
              refrigerant: held.gas === 'vacuum' ? null : held.refrigerant,
              low: level,
              high: level,
              liquid: false,
              since: act.cause,
            },
      );
    }
    if (under.length === 0) act.emit({ type: 'no-effect', why: 'nothing that it reaches stands under vacuum' });
    act.emit({
      type: 'pressurises',
      medium: gas,
      level,
      spaces: under,
      meant,
      time: act.quantity(values.time),
      purpose: 'break',
    });
  },
  say: (values, speech) => ({
    sentence: `Break the vacuum${values.what ? ` in ${speech.parts(values.what)}` : ''} with dry ${values.with ?? 'nitrogen'}`,
    aside: [tail(speech, 'to', values.level).trim(), tail(speech, 'for', values.time).trim()]
      .filter(Boolean)
      .join(', '),
  }),
});
