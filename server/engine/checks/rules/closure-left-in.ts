import { defineCheck } from '../define';
import { endName, isJoined } from '../plant';
import { edits } from '../support';

const takenOffBy: Readonly<Record<string, (name: string) => string>> = {
  crimp: (name) => `trim ${name}`,
  pinch: (name) => `trim ${name}`,
  choke: () => 'take-off chokes',
  cap: (name) => `uncap ${name} at both ends`,
  plug: (name) => `unplug ${name}`,
  tape: (name) => `unplug ${name}`,
  swab: () => 'take-off swabs',
};

/** A crimp, choke, plug or tape that stays in a joint that is made up. */
export const closureLeftIn = defineCheck({
  name: 'closure-left-in',
  severity: 'warning',
  title: 'A crimp, choke, cap, tape or plug is left in a line that is closed',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['flush-no-outlet'],
  meaning:
    'The joint is made up at this step while a crimp, choke, plug or tape of an earlier step still sits in the end.',
  why: 'It chokes the flow for the life of the machine: flash gas in a liquid line, lost capacity and no oil return in a suction line.',
  source: 'common practice',
  wrong: {
    base: 'split',
    instead: [
      ['trim each kept line at far end\n', ''],
      [
        'connect each kept line at both ends with nitrogen at 5 cfh',
        'connect each kept line at both ends with nitrogen at 5 cfh # <- here',
      ],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const { graph } = here.after;
    for (const end of graph.ends) {
      const { closure } = here.after.ends[end.index]!;
      if (!closure || !isJoined(here.after, end.index) || isJoined(here.before, end.index)) continue;
      const same = graph.ends.filter((each) => here.before.ends[each.index]!.closure?.by === closure.by);
      const names = [...new Set(same.map((each) => graph.parts[each.part]!.name))].join(', ');
      const line = takenOffBy[closure.kind]!(names);
      here.report({
        message: (say) =>
          `${endName(graph, end.index).replace(/^the/, 'The')} is joined with the ${closure.kind} of ${say.step(closure.by)} still in it.`,
        slot: 'what',
        root: closure.by,
        concerns: [end.part],
        related: [{ cause: closure.by, message: 'it was put in here' }],
        fixes: [{ title: `First: ${line}`, edits: (mend) => edits(mend.insertBefore(here.step, line)) }],
      });
    }
  },
});
