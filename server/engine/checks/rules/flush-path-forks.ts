import { isLine } from '../../circuit/kinds';
import { defineCheck } from '../define';
import { takeOffFirst } from '../ways-out';

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
    base: 'split',
    instead: [
      [
        '    suction-line kept {',
        '    hall-line: suction-line kept {\n      tube 7/8 in ACR\n      length 20 ft\n      joint brazed\n    }\n    suction-line kept {',
      ],
      [
        'disconnect each kept line at both ends',
        'disconnect liquid-line, hall-line at near end\n    disconnect liquid-line, suction-line at far end',
      ],
      ['crimp each kept line', 'crimp liquid-line, suction-line'],
      ['blow-out each kept line', 'blow-out liquid-line, hall-line'],
      [
        'flush each kept line into container',
        'flush liquid-line, hall-line into container # <- here\n      flush suction-line from far end into container',
      ],
      ['purge each kept line at 50 psig', 'purge liquid-line, hall-line, suction-line at 50 psig'],
      ['purge each kept line at 100 psig for 60 s', 'purge liquid-line, hall-line, suction-line at 100 psig for 120 s'],
      ['trim each kept line', 'trim liquid-line, suction-line'],
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
        fixes: [takeOffFirst(here, flow.line)],
      });
    }
  },
});
