import { leaves } from '../course';
import { defineCheck } from '../define';
import { heldBy, refrigerantShows, touchedSpaces } from '../plant';
import { moveDown } from '../ways-out';

/** Seals that are renewed while the whole circuit stands under its charge. */
export const renewedUnderCharge = defineCheck({
  name: 'renewed-under-charge',
  severity: 'error',
  title: 'Seals are renewed with the charge still in',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The step renews seals or gaskets, and every part of the circuit holds refrigerant above the atmosphere at that moment. Cores that are changed with a tool under pressure are not meant.',
  why: 'What is unscrewed blows out, with liquid behind it: frostbite, eyes, and the charge is gone.',
  source: 'recover, prove zero, then open: common practice (handbook 13.1)',
  wrong: {
    base: 'rack',
    instead: [
      ['    renew seals, cores\n', ''],
      ['    recover system to 0 inHg\n', '    renew seals # <- here\n    recover system to 0 inHg\n'],
    ],
  },
  right: { base: 'rack' },
  step(here) {
    if (!leaves(here.entry, /^(renew|change) .*(seal|gasket)/)) return;
    const spaces = touchedSpaces(here.before);
    const [first] = spaces;
    if (!first || spaces.some((space) => !refrigerantShows(here.before, heldBy(here.before, space)))) return;
    here.report({
      message: (say) =>
        `${say.parts(first.parts)} still hold refrigerant under pressure when seals are taken out: recover first, and prove zero.`,
      slot: 'what',
      fixes: [
        moveDown('Renew them when the charge is out', here.entry, 'after', (later) =>
          later.events.some((event) => event.type === 'opens'),
        ),
      ],
    });
  },
});
