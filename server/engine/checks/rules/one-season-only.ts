import { has } from '../course';
import { defineCheck } from '../define';
import { touched } from '../plant';
import { insertAfter } from '../ways-out';

/** A new reversing valve that is never turned. */
export const oneSeasonOnly = defineCheck({
  name: 'one-season-only',
  severity: 'information',
  title: 'A machine with a new reversing valve is run in one season only',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The reversing valve is new, alone or with its unit, the plan starts the machine in cooling or in heating, and never in the other one, nor in a later visit. A start that names neither is not meant.',
  why: 'A slide that sticks, a coil that is wired the wrong way and a check valve set backwards show only when the machine turns, in the first cold night.',
  source: 'run it both ways before leaving: common practice, no source',
  wrong: {
    base: 'heat-pump',
    instead: [['start system\n', 'start system in cooling # <- here\n']],
  },
  right: {
    base: 'heat-pump',
    instead: [['start system\n', 'start system in heating\n    read temperature-split\n    start system in cooling\n']],
  },
  plan(whole) {
    const { graph } = whole.plan;
    const last = whole.entries.at(-1);
    if (!last) return;
    const valve = graph.parts.find(
      (part) =>
        part.kind.kind === 'reversing-valve' &&
        touched(graph, part.index) &&
        last.after.parts[part.index]!.renewed !== null,
    );
    if (!valve) return;
    const started = whole.entries.filter((entry) => has(entry, 'starts'));
    const modes = new Set(
      started.flatMap((entry) => entry.events.flatMap((event) => (event.type === 'starts' ? [event.mode] : []))),
    );
    const cools = modes.has('cooling');
    const at = started.at(-1);
    if (!at || modes.has(null) || cools === modes.has('heating')) return;
    const [runs, other] = cools ? ['cooling', 'heating'] : ['heating', 'cooling'];
    whole.report(at, {
      message: `${valve.name} is new, and the machine is run in ${runs} only: turn it to ${other} as well before leaving, or plan the visit that does.`,
      slot: 'what',
      concerns: [valve.index],
      related: [{ part: valve.index, message: 'the new valve' }],
      fixes: [insertAfter(`Run it in ${other} as well`, last.slot.step, `start system in ${other}`)],
    });
  },
});
