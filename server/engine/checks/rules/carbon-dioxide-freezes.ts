import type { Graph, Part } from '../../circuit/graph';
import type { Plant } from '../../circuit/state';
import { bar } from '../../reference/table-units';
import { defineCheck, type Here } from '../define';
import { heldBy, isCompressor, sectionsLetIn, spaceAt } from '../plant';
import { edits, gauge } from '../support';

/** Triple point of carbon dioxide, Pa absolute: below it there is no liquid, what comes in turns to snow (handbook 13.6). */
const triplePoint = 5.18 * bar;
const refrigerant = 'R-744';

/** One case of a carbon dioxide plant is emptied and filled again. */
const plan = `kind repair
site {
  altitude 0 ft
  outdoors 50 degF
  work-space sales-floor 90000 ft3, ventilation 3000 cfm
}
system {
  refrigerant R-744
  oil POE
  recover-charge 300 lb
  charge 300 lb
  design-pressure low 650 psig, high 1300 psig
}
circuit {
  compressor kept
  condenser kept
  receiver kept
  liquid-line kept
  parallel {
    branch one {
      inlet-1: ball-valve kept
      port-1: access-valve kept
      valve-1: electronic-expansion-valve new
      coil-1: evaporator kept {
        rated 900 psig
      }
      outlet-1: ball-valve kept
    }
    branch two {
      inlet-2: ball-valve kept
      valve-2: electronic-expansion-valve kept
      coil-2: evaporator kept
      outlet-2: ball-valve kept
    }
  }
  suction-line kept
}`;
const steps = (filling: string): string => `survey coil-1
close inlet-1
run system for 10 min
close outlet-1
lock-out valve-1
release coil-1 to 0 psig outdoors
prove-zero coil-1
remove valve-1
install valve-1 with nitrogen at 5 cfh
open valve-1 by service-tool
pressure-test coil-1 to 650 psig for 60 min, bubbles on every joint
release nitrogen outdoors
evacuate coil-1 to 500 micron
decay-test coil-1 for 20 min, rise at most 300 micron
${filling}
open outlet-1, inlet-1
return valve-1 to control
restore valve-1
leak-check coil-1
read superheat
record quantities, readings`;

/** Liquid carbon dioxide that comes into a vacuum. */
export const carbonDioxideFreezes = defineCheck({
  name: 'carbon-dioxide-freezes',
  severity: 'error',
  title: 'Liquid carbon dioxide goes into a vacuum, where it turns to dry ice',
  acceptable: false,
  reads: 'state',
  ground: 'published',
  yieldsTo: ['valves-opened-early', 'section-not-evacuated'],
  meaning:
    'Carbon dioxide is charged as liquid, or let in from the liquid side by a valve, where less than 75.1 psia (5.18 bar absolute) stands.',
  why: 'Below that pressure there is no liquid: it turns to dry ice, which plugs valves and strainers, and the steel grows so cold that it breaks; the plug lets go later, all at once.',
  source: 'triple point of carbon dioxide; vapour first, then liquid (handbook 13.6)',
  wrong: { base: 'rack', plan, steps: steps('charge coil-1 with R-744 as liquid # <- here') },
  right: { base: 'rack', plan, steps: steps('charge coil-1 with R-744 as vapour') },
  step(here) {
    for (const event of here.events('charges')) {
      const low = event.held.find((held) => held.high < triplePoint);
      if (event.refrigerant !== refrigerant || event.phase !== 'liquid' || !low) continue;
      here.report({
        message: `Liquid ${refrigerant} turns to dry ice below ${gauge(here.plan, triplePoint)} (its triple point), and ${low.gas === 'refrigerant' ? 'less' : low.gas} stands here: charge vapour until it is above that, and liquid only then.`,
        slot: 'phase',
        fixes: [
          { title: 'Charge vapour first', edits: (mend) => edits(mend.replace(here.step, 'phase', 'as vapour')) },
        ],
      });
    }
    letIn(here);
  },
});

/** A valve behind the condenser is opened onto a section with next to nothing in it. */
function letIn(here: Here): void {
  const liquid = openedLiquidValves(here.before, here.after);
  if (liquid.length === 0) return;
  for (const section of sectionsLetIn(here.before, here.after)) {
    const [first] = section.parts;
    if (first === undefined || heldBy(here.before, section).high >= triplePoint) continue;
    const now = heldBy(here.after, spaceAt(here.after, first) ?? section);
    if (now.refrigerant !== refrigerant) continue;
    const { parts } = here.before.graph;
    const named = section.parts.find((part) => parts[part]!.kind.group === 'coil') ?? first;
    const line = `charge ${parts[named]!.name} with ${refrigerant} as vapour`;
    here.report({
      message: (say) =>
        `Liquid ${refrigerant} comes through ${say.parts(liquid)} into ${say.parts(section.parts)}, where it turns to dry ice below ${gauge(here.plan, triplePoint)} (its triple point): let vapour in first.`,
      slot: 'what',
      concerns: section.parts,
      fixes: [{ title: `First: ${line}`, edits: (mend) => edits(mend.insertBefore(here.step, line)) }],
    });
  }
}

/**
 * Hand valves on the way from the condenser to the coils that this step opens: behind a flash tank's own valve the liquid stands
 * lower than the high side, and it is liquid all the same.
 */
const openedLiquidValves = (before: Plant, after: Plant): readonly number[] =>
  before === after
    ? []
    : before.graph.parts
        .filter(
          (part) =>
            before.parts[part.index]!.position === 'shut' &&
            after.parts[part.index]!.position === 'open' &&
            before.graph.parts.some(
              (each) => each.circuit === part.circuit && each.kind.kind === 'condenser' && each.index < part.index,
            ) &&
            leadsToCoil(before.graph, part),
        )
        .map((part) => part.index);

/** Whether the flow that leaves a part comes to a coil that takes up heat before it comes to a compressor. */
function leadsToCoil(graph: Graph, from: Part): boolean {
  const seen = new Set<number>();
  const ahead = [from];
  for (const part of ahead) {
    for (const end of part.ends) {
      if (graph.ends[end]!.side !== 'outlet') continue;
      for (const other of graph.joints[graph.ends[end]!.joint]?.ends ?? []) {
        const next = graph.parts[graph.ends[other]!.part]!;
        if (graph.ends[other]!.side !== 'inlet' || seen.has(next.index)) continue;
        seen.add(next.index);
        if (next.kind.group === 'coil' && next.kind.kind !== 'condenser') return true;
        if (!isCompressor(next)) ahead.push(next);
      }
    }
  }
  return false;
}
