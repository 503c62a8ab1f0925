import { isLine } from '../../circuit/kinds';
import { defineCheck } from '../define';

/** Solvent that can take more than one way, or goes through two lines one behind the other. */
export const flushPathForks = defineCheck({
  name: 'flush-path-forks',
  severity: 'warning',
  title: 'The flush path forks, or goes through two lines in series',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['never-flush', 'coil-flushed-in-place', 'line-not-disconnected', 'flush-before-recovery'],
  meaning:
    'As joints stand at this step the solvent reaches more than one open end, a branch that nobody flushes, or a second line behind the first.',
  why: 'The flow takes the easy way; the other branch is only wetted, and keeps its oil and now solvent too. In series the first line’s dirt goes through the second.',
  source: 'common practice: each line by itself, never in series (handbook 5.2)',
  wrong: {
    base: 'rack',
    instead: [
      [
        'renew seals, cores\n',
        'renew seals, cores\n  disconnect discharge-line at both ends\n  inspect discharge-line for low-spots\n  disconnect suction-main at both ends\n  inspect suction-main for low-spots\n',
      ],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const { graph } = here.before;
    for (const flow of here.events('flows')) {
      if (flow.medium !== 'solvent') continue;
      const others = flow.reached.filter((index) => index !== flow.line && isLine(graph.parts[index]!.kind));
      const ways = flow.outlets.length;
      if (ways < 2 && others.length === 0) continue;
      here.report({
        message: (say) =>
          ways > 1
            ? `The solvent let into ${say.part(flow.line)} has ${ways} ways out: ${flow.outlets.map((outlet) => outlet.chain.map((part) => say.part(part)).join(' -> ')).join('; ')}.`
            : `The solvent let into ${say.part(flow.line)} also gets to ${say.parts(others)}: flush each line by itself.`,
        slot: 'what',
        root: `${flow.line}`,
        concerns: flow.reached,
      });
    }
  },
});
