import type { Part } from '../../circuit/graph';
import { wordSpan } from '../../plan/gather';
import { statement } from '../course';
import { defineCheck } from '../define';
import { isCompressor, standsNow, touched } from '../plant';

/** A machine that lacks what no machine works without. */
export const circuitIncomplete = defineCheck({
  name: 'circuit-incomplete',
  severity: 'warning',
  title: 'The circuit ends without a metering device',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['part-not-as-stated', 'joint-left-open'],
  meaning:
    'A circuit with a compressor and a coil has no expansion valve, orifice or capillary tube in place when the plan ends: none is stated, or it was taken off for good.',
  why: 'Nothing lets the liquid down: either the plan forgets a part, and its drawing, its checks and its list of parts with it, or the machine does not cool.',
  source: 'common practice',
  wrong: {
    base: 'split',
    instead: [['expansion-valve new\n', 'expansion-valve removed # <- here\n']],
  },
  right: { base: 'split' },
  plan(whole) {
    const last = whole.entries.at(-1);
    if (!last) return;
    const { graph } = whole.plan;
    graph.circuits.forEach((circuit, at) => {
      if (circuit.untouched) return;
      const parts = graph.parts.filter((part) => part.circuit === at);
      const there = (is: (part: Part) => boolean): boolean =>
        parts.some((part) => is(part) && standsNow(last.after, part.index));
      const metered = there((part) => part.kind.group === 'metering');
      if (metered || !there(isCompressor) || !there((part) => part.kind.group === 'coil')) return;
      const gone = parts.find((part) => part.kind.group === 'metering');
      const message = 'lets the liquid down when the plan ends: state the expansion valve, orifice or capillary tube';
      if (gone) {
        whole.reportPart(gone.index, {
          message: `With ${gone.name} off, nothing ${message} that takes its place.`,
          concerns: [gone.index],
        });
        return;
      }
      const block = statement(whole.plan, 'circuit');
      const [first] = parts;
      const report = { message: `Nothing in this circuit ${message}.`, root: `circuit ${at}` };
      if (block) whole.reportAt(block, wordSpan(block), { ...report, concerns: [] });
      else if (first && touched(graph, first.index)) whole.reportPart(first.index, { ...report, concerns: [] });
    });
  },
});
