import { farEnd } from '../../circuit/graph';
import { defineCheck } from '../define';
import { moveDown, takeOffFirst } from '../ways-out';

/** A coil that solvent is sent through where it stands. */
export const coilFlushedInPlace = defineCheck({
  name: 'coil-flushed-in-place',
  severity: 'error',
  title: 'A coil is flushed in place',
  acceptable: false,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['line-not-disconnected', 'flush-before-recovery', 'never-flush'],
  meaning:
    'The solvent gets to a coil that stands in the circuit. On the bench, or shut off and flushed backwards by itself, it is fine, as long as it is off when the bench is spoken of; a plate exchanger or a coil of flat tube cannot be cleared even there (a warning).',
  why: 'A coil has parallel passes: the dirtiest gets the least flow, keeps solvent and oil, and gives both back to the new machine.',
  source: 'common practice (handbook 5.1)',
  wrong: {
    base: 'split',
    instead: [
      [
        'disconnect each kept line at both ends',
        'disconnect liquid-line at both ends\n    disconnect suction-line at far end',
      ],
      ['remove old equipment', 'remove compressor, condenser, expansion-valve'],
      ['crimp each kept line', 'crimp liquid-line'],
      [
        'flush each kept line into container',
        'flush liquid-line into container\n      flush suction-line from far end into container # <- here',
      ],
      ['trim each kept line', 'trim liquid-line'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const { graph } = here.before;
    for (const flow of here.events('flows')) {
      if (flow.medium !== 'solvent') continue;
      const line = graph.parts[flow.line]!;
      const alone = line.kind.group === 'coil' && flow.reached.every((index) => index === flow.line);
      if (alone && flow.inlet === farEnd(line) && !line.kind.neverFlush) continue;
      const coils = flow.reached.filter((index) => graph.parts[index]!.kind.group === 'coil');
      if (coils.length === 0) continue;
      here.report({
        message: (say) =>
          `The solvent goes through ${say.parts(coils)} in place: flush ${coils.length > 1 ? 'them' : 'it'} on the bench, or shut off and backwards.`,
        slot: 'what',
        root: `${flow.line}`,
        concerns: [flow.line, ...coils],
        fixes: [takeOffFirst(here, flow.line)],
        related: coils.map((part) => ({ part, message: 'this coil lies in the way' })),
      });
    }
    for (const event of here.events('cleans')) {
      const hung = event.parts.filter((part) => here.before.parts[part]!.mounted !== 'none');
      if (hung.length > 0) {
        here.report({
          message: (say) =>
            `${say.parts(hung)} ${hung.length > 1 ? 'stand' : 'stands'} in the circuit here, not on the bench: what is flushed runs into what it hangs on; take it out first.`,
          slot: 'what',
          concerns: hung,
          related: hung.flatMap((part) => {
            const cause = here.before.parts[part]!.setBy;
            return cause ? [{ cause, message: 'it was set in place here' }] : [];
          }),
          fixes: [
            moveDown('Do it when it is off', here.entry, 'after', (later) =>
              hung.every((part) => later.after.parts[part]!.mounted === 'none'),
            ),
          ],
        });
        continue;
      }
      const bad = event.parts.filter((part) => graph.parts[part]!.kind.neverFlush);
      if (bad.length === 0) continue;
      here.report({
        message: (say) =>
          `${say.parts(bad)} cannot be cleared even on the bench: ${graph.parts[bad[0]!]!.kind.neverFlush}.`,
        slot: 'what',
        severity: 'warning',
      });
    }
  },
});
