import { defineCheck } from '../define';
import { edits } from '../support';

/** A motor valve told to open with nothing to drive it. */
export const valveWithoutPower = defineCheck({
  name: 'valve-without-power',
  severity: 'warning',
  title: 'A driven valve is to open without power',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'A step opens a valve with a motor while the power is locked out, and names no tool that drives it: the valve stays as it was.',
  why: 'What lies behind it is not recovered, not tested and not pumped down, and nobody sees it from outside.',
  source: 'common practice (handbook 13.1, 13.5)',
  wrong: {
    base: 'ductless',
    instead: [
      [
        'energise controls\n    open expansion-valves\n    pressure-test',
        'open expansion-valves # <- here\n    pressure-test',
      ],
    ],
  },
  right: { base: 'ductless' },
  step(here) {
    const [event] = here.events('lacks-power');
    if (!event) return;
    here.report({
      message: (say) =>
        `${say.parts(event.parts)} ${event.parts.length > 1 ? 'have' : 'has'} no power since ${say.step(here.before.powerBy)} and ${event.parts.length > 1 ? 'stay' : 'stays'} as before: give the controls power first, or open by service-tool.`,
      slot: 'what',
      concerns: event.parts,
      related: [{ cause: here.before.powerBy, message: 'the power went off here' }],
      fixes: [
        {
          title: 'Give the controls power before this step',
          edits: (mend) => edits(mend.insertBefore(here.step, 'energise controls')),
        },
      ],
    });
  },
});
