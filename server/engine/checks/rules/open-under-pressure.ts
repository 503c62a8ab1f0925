import { show } from '../../quantity';
import { defineCheck } from '../define';

/** A joint undone while refrigerant stands behind it above the atmosphere. */
export const openUnderPressure = defineCheck({
  name: 'open-under-pressure',
  severity: 'error',
  title: 'A part is opened that holds refrigerant under pressure',
  acceptable: false,
  reads: 'state',
  ground: 'law',
  meaning:
    'At this step a joint is undone, a part cut out or taken off, while it, or what is not shut off from it, holds refrigerant above atmospheric pressure.',
  why: 'Escaping liquid burns skin and eyes, a hose or a part may fly, and letting refrigerant go is against the law.',
  source: '40 CFR 82.154 and 82.156 (handbook 2.1, 2.2); OSHA 1910.147 for the energy',
  wrong: { base: 'split', steps: 'lock-out power\ndisconnect each kept line at both ends # <- here' },
  right: { base: 'split' },
  step(here) {
    for (const event of here.events('opens')) {
      const { held } = event;
      if (held.gas !== 'refrigerant' || held.high <= here.before.atmosphere * 1.02) continue;
      here.report({
        message: (say) =>
          `This opens ${say.parts([event.part])} while ${say.parts(event.space.parts)} ${event.space.parts.length > 1 ? 'hold' : 'holds'} ${held.refrigerant ?? 'refrigerant'} at up to ${show({ kind: 'pressure', low: held.high, high: held.high }, { level: 'gauge', atmosphere: here.before.atmosphere })}: recover it first.`,
        slot: 'what',
        root: event.space,
        related: [{ cause: held.since, message: 'it holds this since here' }],
        fixes: [
          {
            title: 'Recover and prove zero before this step',
            edits: (mend) =>
              [mend.insertBefore(here.step, 'recover system to 0 inHg')].flatMap((each) => (each ? [each] : [])),
          },
        ],
      });
    }
  },
});
