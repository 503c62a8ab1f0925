import { defineCheck } from '../define';
import { takeOffFirst } from '../ways-out';

/** A part in the flush path that solvent must never go through. */
export const neverFlush = defineCheck({
  name: 'never-flush',
  severity: 'error',
  title: 'A part that must never be flushed lies in the flush path',
  acceptable: false,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['line-not-disconnected', 'flush-before-recovery'],
  meaning:
    'As joints and valves stand at this step, the solvent gets to a compressor, a metering device, a drier, a valve or another part that it must not go through.',
  why: 'Solvent strips bearings, swells seals, loads driers and wedges dirt in seats; what it leaves behind destroys the new machine.',
  source: 'common practice; compressor, drier and metering device confirmed by public service manuals (handbook 5.1)',
  wrong: {
    base: 'split',
    instead: [
      ['cut-out filter-drier\n', ''],
      [
        'disconnect each kept line at both ends',
        'disconnect suction-line at both ends\n  disconnect liquid-line at near end',
      ],
      ['remove old equipment\n', ''],
      ['flush each kept line into container', 'flush each kept line into container # <- here'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const { graph } = here.before;
    for (const flow of here.events('flows')) {
      if (flow.medium !== 'solvent') continue;
      const bad = flow.reached.filter((index) => index !== flow.line && graph.parts[index]!.kind.neverFlush);
      const chained = flow.outlets
        .map((outlet) => outlet.chain)
        .find((chain) => bad.some((part) => chain.includes(part)));
      const target = graph.parts[flow.line]!.kind.neverFlush;
      if (bad.length === 0 && !target) continue;
      const worst = bad[0] ?? flow.line;
      here.report({
        message: (say) =>
          `The solvent goes ${chained ? `by ${chained.map((part) => say.part(part)).join(' -> ')}` : `into ${say.parts(flow.reached)}`} and so into ${say.part(worst)}, which must never be flushed: ${graph.parts[worst]!.kind.neverFlush}.`,
        slot: 'what',
        root: `${flow.line}`,
        concerns: [flow.line, ...bad],
        fixes: [takeOffFirst(here, flow.line)],
        related: bad.map((part) => ({ part, message: 'this part lies in the way' })),
      });
    }
  },
});
