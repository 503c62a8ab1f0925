import type { Part } from '../../circuit/graph';
import { defineCheck } from '../define';
import { perHead } from '../per-head';

/** What a machine has one of in a row: lines come in pieces, valves stand beside valves, and coils beside coils are told apart. */
const oneInARow: ReadonlySet<string> = new Set([
  'compressor',
  'condenser',
  'reversing-valve',
  'accumulator',
  'receiver',
  'oil-separator',
  'filter-drier',
  'expansion-valve',
  'electronic-expansion-valve',
  'cap-tube',
  'fixed-orifice',
  'sight-glass',
  'branch-box',
]);

/** One new part that stands in the circuit under two names. */
export const partStatedTwice = defineCheck({
  name: 'part-stated-twice',
  severity: 'warning',
  title: 'A new part stands in the circuit twice',
  acceptable: true,
  noFix: 'Whether there are two of them, and what tells them apart, is for whoever knows the machine.',
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['part-not-as-stated', 'circuit-out-of-order', 'circuit-incomplete'],
  meaning:
    'Two new parts of one kind follow each other in the order of flow with nothing between them, nothing in their blocks tells them apart, and every step treats both alike. Two that are meant differ in what they hold, bear or are called for, or have something between them.',
  why: 'The crew looks for a part that nobody bought, and the drawing, the list of parts and the order of flow show a machine that there is not.',
  source: 'common practice, no source',
  wrong: {
    base: 'split',
    instead: [['    compressor new\n', '    compressor new\n    compressor-2: compressor new # <- here\n']],
  },
  right: { base: 'split' },
  plan(whole) {
    for (const [first, second] of alikeInARow(whole.plan)) {
      const apart = whole.entries.some(
        ({ after }) => after.parts[first.index]!.mounted !== after.parts[second.index]!.mounted,
      );
      if (apart) continue;
      whole.reportPart(second.index, {
        message: `${second.name} follows ${first.name} with nothing between them, and nothing tells the two apart: take one out, or state what stands between them.`,
        concerns: [second.index],
        related: [{ part: first.index, message: 'the same kind of part stands here' }],
      });
    }
  },
});

const alikeInARow = perHead(({ graph }) => {
  const { parts, ends, joints, circuits } = graph;
  return parts.flatMap((first): (readonly [Part, Part])[] => {
    if (!isNew(first) || !oneInARow.has(first.kind.kind) || circuits[first.circuit]?.untouched) return [];
    const outlet = first.ends[1]!;
    const meeting = joints[ends[outlet]!.joint]?.ends ?? [];
    if (meeting.length !== 2) return [];
    const other = ends[meeting[0] === outlet ? meeting[1]! : meeting[0]!]!;
    const second = parts[other.part]!;
    const alike = second !== first && second.kind === first.kind && second.standing === first.standing;
    // What a block says of one and not of the other tells them apart.
    const bare = Object.keys(first.properties).length === 0 || Object.keys(second.properties).length === 0;
    return alike && bare && other.side === 'inlet' ? [[first, second]] : [];
  });
});

const isNew = ({ standing }: Part): boolean => standing === 'new' || standing === 'added';
