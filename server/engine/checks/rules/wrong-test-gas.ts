import { defineCheck } from '../define';
import { edits } from '../support';

const dangerous: Readonly<Record<string, string>> = {
  oxygen: 'oxygen and oil explode',
  air: 'air with oil or refrigerant under pressure can burn, and it is wet',
  acetylene: 'a fuel gas explodes',
};

/** Oxygen, air or a fuel gas as pressurising gas. */
export const wrongTestGas = defineCheck({
  name: 'wrong-test-gas',
  severity: 'error',
  title: 'Oxygen, air or a fuel gas is used as pressurising gas',
  acceptable: false,
  reads: 'state',
  ground: 'published',
  meaning:
    'A pressure test, purge, blow-out or vacuum break is to be made with oxygen, air or a fuel gas. Dry nitrogen or another inert gas is what belongs there.',
  why: 'Oil under oxygen explodes without a flame; air carries water and makes some refrigerants burn under pressure.',
  source: 'ASHRAE 15: oxygen, air and mixtures that hold them shall not be used (handbook 6.4)',
  wrong: {
    base: 'split',
    instead: [
      [
        'pressure-test each open part to 450 psig for 30 min',
        'pressure-test each open part to 450 psig with oxygen for 30 min # <- here',
      ],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const gases = [
      ...here.events('pressurises').map((event) => event.medium),
      ...here.events('flows').map((event) => event.gas),
    ];
    const gas = gases.find((each) => dangerous[each]);
    if (
      !gas ||
      (gas === 'air' &&
        here.events('pressurises').every((event) => event.purpose === 'break') &&
        here.events('flows').length === 0)
    )
      return;
    here.report({
      message: `Never ${gas} here: ${dangerous[gas]}. Dry nitrogen belongs there.`,
      slot: 'gas',
      fixes: [{ title: 'With nitrogen', edits: (mend) => edits(mend.replace(here.step, 'gas', 'with nitrogen')) }],
    });
  },
});
