import type { Part } from '../../circuit/graph';
import { wordSpan } from '../../plan/gather';
import type { Entry } from '../../walk/walk';
import { statement } from '../course';
import { defineCheck, type Whole } from '../define';
import { isCompressor, standsNow, touched } from '../plant';
import { setsAllNew, writeStanding } from '../ways-out';

/** A machine that lacks what no machine works without. */
export const circuitIncomplete = defineCheck({
  name: 'circuit-incomplete',
  severity: 'warning',
  title: 'The circuit lacks what no machine works without',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['part-not-as-stated', 'joint-left-open', 'unknown-name'],
  meaning:
    'A circuit with a compressor and a coil has no expansion valve, orifice or capillary tube in place when the plan ends: none is stated, or it was taken off for good. Or a circuit that is charged has no compressor, or not two coils, one that gives heat off and one that takes it up. Or the flow goes only once through a part with two passages, a reversing valve or a branch box.',
  why: 'Nothing lets the liquid down, or nothing moves the heat: either the plan forgets a part, and its drawing, its checks and its list of parts with it, or the machine does not cool.',
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
      const lacks = whole.entries.some((entry) => comesIn(entry, parts)) ? lacking(parts) : null;
      if (lacks !== null) {
        reportLack(
          whole,
          at,
          parts,
          `Refrigerant comes into this circuit, and it has no ${lacks}: state what it runs with.`,
        );
        return;
      }
      const loose = parts.find((part) => part.kind.passages === 2 && part.ends.length === 2);
      if (loose && there(isCompressor)) {
        whole.reportPart(loose.index, {
          message: `The flow goes through ${loose.name} only once, and ${loose.name} has two ways through it: state where the flow comes back, with "through ${loose.name}".`,
          concerns: [loose.index],
        });
        return;
      }
      const metered = there((part) => part.kind.group === 'metering');
      if (metered || !there(isCompressor) || !there((part) => part.kind.group === 'coil')) return;
      const gone = parts.find((part) => part.kind.group === 'metering');
      const message = 'lets the liquid down when the plan ends: state the expansion valve, orifice or capillary tube';
      if (gone) {
        whole.reportPart(gone.index, {
          message: `With ${gone.name} off, nothing ${message} that takes its place.`,
          concerns: [gone.index],
          fixes: gone.standing === 'removed' && setsAllNew(whole.entries) ? writeStanding(whole.plan, gone, 'new') : [],
        });
        return;
      }
      reportLack(whole, at, parts, `Nothing in this circuit ${message}.`);
    });
  },
});

/** Refrigerant is weighed into the parts. A unit that lets its own charge in is no sign: the rest may stand on another drawing. */
const comesIn = (entry: Entry, parts: readonly Part[]): boolean => {
  const own = (index: number): boolean => parts.some((part) => part.index === index);
  return entry.events.some(
    (event) =>
      event.type === 'charges' && event.purpose === 'charge' && event.spaces.some((space) => space.parts.some(own)),
  );
};

/** Coils that can give heat off; any other only takes it up. */
const givesHeatOff: readonly string[] = ['condenser', 'coaxial-coil', 'plate-exchanger', 'microchannel-coil'];

/** What was never drawn, however it stands; null where compressor and two coils are there. */
function lacking(parts: readonly Part[]): string | null {
  if (!parts.some(isCompressor)) return 'compressor';
  const coils = parts.filter((part) => part.kind.group === 'coil');
  if (!coils.some((part) => givesHeatOff.includes(part.kind.kind))) return 'condenser';
  return coils.length < 2 ? 'evaporator' : null;
}

function reportLack(whole: Whole, circuit: number, parts: readonly Part[], message: string): void {
  const report = { message, root: `circuit ${circuit}` };
  const block = statement(whole.plan, 'circuit');
  const [first] = parts;
  if (block) whole.reportAt(block, wordSpan(block), { ...report, concerns: [] });
  else if (first && touched(whole.plan.graph, first.index)) whole.reportPart(first.index, { ...report, concerns: [] });
}
