import type { Part } from '../../circuit/graph';
import { farEnd } from '../../circuit/graph';
import { hasGap } from '../../circuit/spaces';
import type { Flow } from '../../steps/events';
import { defineCheck, type Here, type WayOut } from '../define';
import { isOrAre } from '../is-are';
import { listed } from '../listed';
import { endName } from '../plant';
import { insertBefore } from '../ways-out';

/** Solvent or nitrogen let into a line from which nothing gets out. */
export const flushNoOutlet = defineCheck({
  name: 'flush-no-outlet',
  severity: 'error',
  title: 'A flush or purge has no way out',
  acceptable: false,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['flush-before-recovery', 'line-not-disconnected'],
  meaning:
    'What is let in at one end of the line finds no open end: the far end is capped, plugged or pinched, or the end that it should go in at is shut. Nitrogen for a line that is still joined, or joined again, is a warning.',
  why: 'The line fills to the pressure of the bottle; a cap flies off, or solvent sprays back at whoever takes the hose off.',
  source: 'common practice (handbook 5.2, 5.3)',
  wrong: {
    base: 'split',
    instead: [
      [
        'crimp each kept line at far end, leaving 1/8 in',
        'cap suction-line at far end\n  crimp liquid-line at far end, leaving 1/8 in',
      ],
      ['blow-out each kept line', 'blow-out each kept line # <- here'],
      ['# <- here at 50 psig for 30 s into container', 'at 50 psig for 30 s into container # <- here'],
      ['trim each kept line at far end', 'trim liquid-line at far end'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const plant = here.before;
    const { graph } = plant;
    const joined: Flow[] = [];
    for (const flow of here.events('flows')) {
      const part = graph.parts[flow.line]!;
      const free = part.ends.every((end) => {
        const { joint } = graph.ends[end]!;
        return joint < 0 || hasGap(plant, joint);
      });
      // Nitrogen may go in and out further along, where the line hangs among others: one opening or port for either. What
      // is joined at both ends is blown through by nobody.
      const port = flow.reached.some((index) => index !== flow.line && graph.parts[index]!.kind.port);
      const ways = flow.outlets.length + (flow.inletOpen || port ? 1 : 0);
      const own = flow.inletOpen || flow.outlets.some(({ chain }) => chain.length === 1);
      if (ways > 1 && own && (flow.inletOpen || !free)) continue;
      if (!free) {
        // Solvent in a line that is still joined has a check of its own.
        if (flow.medium === 'nitrogen') joined.push(flow);
        continue;
      }
      const shut = part.ends.filter((end) => plant.ends[end]!.closure?.opening === null);
      const gone = plant.parts[flow.line]!.mounted === 'none';
      here.report({
        message: (say) =>
          gone
            ? `${say.part(flow.line)} is off the circuit at this step: nothing can be sent through it.`
            : `What goes into ${say.part(flow.line)} cannot get out: ${shut.map((end) => `${endName(graph, end)} is shut by a ${plant.ends[end]!.closure!.kind}`).join(' and ') || 'both ends are closed'}: open it, with a container behind it.`,
        slot: 'what',
        root: `${flow.line}`,
        concerns: [flow.line],
        fixes: gone ? [] : openUp(here, part, shut),
        related: shut.map((end) => ({ cause: plant.ends[end]!.closure!.by, message: 'it was shut here' })),
      });
    }
    sayJoined(here, joined);
  },
});

/** Nitrogen for lines that hang in the circuit: it gets in nowhere, or out nowhere. */
function sayJoined(here: Here, flows: readonly Flow[]): void {
  if (flows.length === 0) return;
  const { graph, parts } = here.before;
  const joined = flows.flatMap((flow) =>
    graph.parts[flow.line]!.ends.filter((end) => {
      const { joint } = graph.ends[end]!;
      return joint >= 0 && !hasGap(here.before, joint);
    }),
  );
  const lines = flows.map((flow) => flow.line);
  const set = new Set(joined.flatMap((end) => parts[graph.ends[end]!.part]!.setBy ?? []));
  here.report({
    message: (say) =>
      `${say.parts(lines)} ${isOrAre(lines.length)} joined ${lines.length > 1 ? 'to what stands beside them' : `at ${listed(joined.map((end) => endName(graph, end)))}`}, so that nothing can be blown through ${lines.length > 1 ? 'them' : 'it'} here: do it while both ends are open.`,
    slot: 'what',
    severity: 'warning',
    root: `${lines}`,
    concerns: lines,
    related: [...set].map((by) => ({ cause: by, message: 'it was set here' })),
  });
}

/** What takes each kind of closure off; a pinched end is cut off. */
const opens: Readonly<Record<string, string>> = { cap: 'uncap', plug: 'unplug', tape: 'unplug', pinch: 'trim' };

/** The shut ends are opened; each kind has its own step. */
function openUp(here: Here, part: Part, shut: readonly number[]): readonly WayOut[] {
  const lines = shut.map((end) => {
    const verb = opens[here.before.ends[end]!.closure!.kind];
    return verb === undefined ? null : `${verb} ${part.name} at ${end === farEnd(part) ? 'far' : 'near'} end`;
  });
  if (lines.length === 0 || lines.includes(null)) return [];
  return [insertBefore('Open what is shut first', here.step, ...lines.flatMap((line) => line ?? []))];
}
