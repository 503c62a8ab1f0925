import type { Amount } from '../../plan/term';
import { isProblem, toQuantity } from '../../quantity';
import { defineCheck, type Here } from '../define';
import { burns, newFacts, unfit } from '../plant-facts';
import { amount, authority, edits, inOwn } from '../support';

/** How far round a job with flammable gas is kept clear of what could light it: 10 ft or 3 m, which counts as the same (common practice, equipment manuals). */
const clearZone = 3;

/** A flammable refrigerant is let in or charged, and nobody has looked for what could light it. */
export const ignitionSourcesUnchecked = defineCheck({
  name: 'ignition-sources-unchecked',
  severity: 'error',
  title: 'Ignition sources not looked for before flammable gas comes in',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['valves-opened-early'],
  meaning:
    'A refrigerant that burns is charged or let off, or a new unit lets its own charge in, before a step checks the ignition sources around; or the check goes less than 10 ft (3 m) round, and no sheet is cited for that.',
  why: 'A leaking hose or flare beside a flame, a contactor or a hot wire is enough.',
  source: 'common practice with classes A2L and A3; equipment manuals',
  wrong: {
    base: 'split',
    instead: [
      ['check ignition-sources within 10 ft\n  ', ''],
      ['open service-valves', 'open service-valves # <- here'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    if (unfit(here.plan) !== null || burns(newFacts(here.plan)) === 0) return;
    zoneTooSmall(here);
    if (here.before.marks.has('check ignition-sources')) return;
    const lets = here.events('lets-in').some((event) => event.parts.some((part) => here.before.parts[part]?.ownCharge));
    const charges = here.events('charges').some((event) => event.purpose === 'charge');
    const vents = here
      .events('vents')
      .some(({ held }) => held.some(({ refrigerant }) => refrigerant === here.plan.system.refrigerant.after));
    if (!lets && !charges && !vents) return;
    here.report({
      message: `${here.plan.system.refrigerant.after} burns (${newFacts(here.plan)?.safetyClass}), and no step before this one looks for ignition sources around the work; ${authority}.`,
      root: 'ignition-sources',
      fixes: [
        {
          title: 'Check ignition sources before this step',
          edits: (mend) =>
            edits(mend.insertBefore(here.step, `check ignition-sources within ${inOwn(here.plan, '10 ft', '3 m')}`)),
        },
      ],
    });
  },
});

/** The check itself, where it looks less far round than gas from a hose or a flare drifts. */
function zoneTooSmall(here: Here): void {
  const within = here.step.values['within'] as Amount | undefined;
  if (!within || here.per !== null || here.after.marks.get('check ignition-sources') !== here.entry.cause) return;
  const distance = toQuantity(within.literal, within.kind, here.plan.site.atmosphere);
  // One percent is less than anyone paces out.
  if (isProblem(distance) || distance.high >= clearZone * 0.99) return;
  const clear = inOwn(here.plan, '10 ft', '3 m');
  here.report({
    message: `${here.plan.system.refrigerant.after} burns (${newFacts(here.plan)?.safetyClass}), and ignition sources are looked for only within ${amount(here.plan, 'length', distance.high)}: keep ${clear} clear (common practice, equipment manuals), or cite the sheet; ${authority}.`,
    slot: 'within',
    root: 'zone',
    fixes: [
      { title: `Look within ${clear}`, edits: (mend) => edits(mend.replace(here.step, 'within', `within ${clear}`)) },
    ],
  });
}
