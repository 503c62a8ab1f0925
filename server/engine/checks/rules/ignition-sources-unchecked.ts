import { defineCheck } from '../define';
import { burns, newFacts, unfit } from '../plant-facts';
import { authority, edits } from '../support';

/** A flammable refrigerant is let in or charged, and nobody has looked for what could light it. */
export const ignitionSourcesUnchecked = defineCheck({
  name: 'ignition-sources-unchecked',
  severity: 'error',
  title: 'Ignition sources not looked for before flammable gas comes in',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'A refrigerant that burns is charged, or a new unit lets its own charge in, before a step checks the ignition sources around.',
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
    if (
      unfit(here.plan) !== null ||
      burns(newFacts(here.plan)) === 0 ||
      here.before.marks.has('check ignition-sources')
    )
      return;
    const lets = here.events('lets-in').some((event) => event.parts.some((part) => here.before.parts[part]?.ownCharge));
    const charges = here.events('charges').some((event) => event.purpose === 'charge');
    if (!lets && !charges) return;
    here.report({
      message: `${here.plan.system.refrigerant.after} burns (${newFacts(here.plan)?.safetyClass}), and no step before this one looks for ignition sources around the work; ${authority}.`,
      root: 'ignition-sources',
      fixes: [
        {
          title: 'Check ignition sources before this step',
          edits: (mend) => edits(mend.insertBefore(here.step, 'check ignition-sources within 10 ft')),
        },
      ],
    });
  },
});
