import type { Amount } from '../../plan/term';
import { isProblem, toQuantity } from '../../quantity';
import { defineCheck, type Here } from '../define';
import { gauge, inOwn } from '../support';

/** A hair over the atmosphere is a gauge that reads zero, Pa. */
const zero = 700;

/** Gas that is to flow or press from below the atmosphere, and a vacuum above it. */
export const impossibleLevel = defineCheck({
  name: 'impossible-level',
  severity: 'error',
  title: 'A pressure or a level that cannot be what is meant',
  acceptable: false,
  noFix: 'A sign, a unit, or gauge and absolute were mixed up, and only the author knows which pressure was meant.',
  reads: 'figure',
  ground: 'practice',
  meaning:
    'Nitrogen is to flow, or to press on a circuit, at a pressure that is not above the atmosphere of the site; or a pump is to draw down to a level that is not below it, or deeper than a perfect vacuum at the altitude of the site; or a gauge on a machine at rest is to read more than anything in it stands at.',
  why: 'Nothing flows from there, and nothing is tested: a sign, a unit, or gauge and absolute were mixed up.',
  source: 'gas flows from the higher pressure to the lower; the atmosphere follows from the altitude of the site',
  wrong: {
    base: 'split',
    instead: [
      [
        'purge each kept line at 100 psig for 60 s into container',
        'purge each kept line at -100 kPa gauge for 60 s into container # <- here',
      ],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const { atmosphere } = here.plan.site;
    for (const [slot, value] of Object.entries(here.step.values)) {
      const amount = value as Partial<Amount> | undefined;
      if (!amount?.literal || amount.kind !== 'pressure') continue;
      // What cannot be anywhere is told by the figure itself; on a mountain less vacuum can be had than at the sea.
      const found = toQuantity(amount.literal, 'pressure', atmosphere);
      if (!isProblem(found)) continue;
      here.report({ message: found.message, slot, root: here.step });
      return;
    }
    if (readOverAll(here)) return;
    const air = (): string => gauge(here.plan, atmosphere);
    for (const event of [...here.events('flows'), ...here.events('pressurises')]) {
      // A vacuum is broken to 0 psig, or a little below it.
      const broken = event.type === 'pressurises' && event.purpose === 'break';
      if (event.level === null || event.level > atmosphere + (broken ? -zero : zero)) continue;
      here.report({
        message: `${gauge(here.plan, event.level)} is not above the atmosphere (${air()}) and drives nothing: state a pressure above it.`,
        slot: 'level',
        root: here.step,
      });
      return;
    }
    for (const event of here.events('evacuates')) {
      if (event.level < atmosphere - zero) continue;
      here.report({
        message: `${gauge(here.plan, event.level)} is no vacuum: it is not below the atmosphere (${air()}). A level such as ${inOwn(here.plan, '500 micron', '65 Pa absolute')} belongs here.`,
        slot: 'level',
        root: here.step,
      });
      return;
    }
  },
});

/** What a gauge may read over the highest that is known of the plant: warmth, and gauges that differ (common practice, no source). */
const overHeld = 1.5;

/** A gauge that is to read, on a machine at rest, more than stands anywhere in it. */
function readOverAll(here: Here): boolean {
  const { plan, step, before } = here;
  const least = step.values['least'] as Amount | undefined;
  if (step.word.word !== 'read' || least?.kind !== 'pressure' || before.running || here.per !== null) return false;
  const { atmosphere } = plan.site;
  const found = toQuantity(least.literal, 'pressure', atmosphere);
  if (isProblem(found)) return false;
  let held = atmosphere;
  for (const part of before.parts) for (const each of part.contents) held = Math.max(held, each.high);
  if (found.low - atmosphere <= Math.max((held - atmosphere) * overHeld, zero)) return false;
  here.report({
    message: `The gauge is to read ${gauge(plan, found.low)} at the least, and nothing in the machine stands above ${gauge(plan, held)} here: read figure and unit again.`,
    slot: 'least',
    root: step,
  });
  return true;
}
