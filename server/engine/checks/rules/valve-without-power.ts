import { defineCheck } from '../define';
import { edits } from '../support';

/** A motor valve, solenoid or regulator told to open with nothing to drive or hold it. */
export const valveWithoutPower = defineCheck({
  name: 'valve-without-power',
  severity: 'warning',
  title: 'A driven valve is to open without power',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'A step opens a valve with a motor or a coil while the power is locked out, or a regulator that pressure opens, and names nothing that drives or holds it: the valve stays as it was.',
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
    const kindOf = (index: number) => here.plan.graph.parts[index]!.kind.shuts;
    const regulators = event.parts.every((index) => kindOf(index) === 'control');
    const by = regulators
      ? 'stem'
      : event.parts.every((index) => kindOf(index) === 'power')
        ? 'magnet'
        : 'service-tool';
    const many = event.parts.length > 1;
    here.report({
      message: (say) =>
        regulators
          ? `${say.parts(event.parts)} ${many ? 'shut' : 'shuts'} with the machine and ${many ? 'stay' : 'stays'} as before: hold open by stem.`
          : `${say.parts(event.parts)} ${many ? 'have' : 'has'} no power since ${say.step(here.before.powerBy)} and ${many ? 'stay' : 'stays'} as before: give the controls power first, or open by ${by}.`,
      slot: 'what',
      concerns: event.parts,
      related: here.before.powerBy ? [{ cause: here.before.powerBy, message: 'the power went off here' }] : [],
      fixes: regulators
        ? [{ title: 'Hold it open by stem', edits: (mend) => edits(mend.append(here.step, ' by stem')) }]
        : [
            {
              title: 'Give the controls power before this step',
              edits: (mend) => edits(mend.insertBefore(here.step, 'energise controls')),
            },
          ],
    });
  },
});
