import type { Space } from '../../circuit/spaces';
import { defineCheck } from '../define';
import { edits, underLaw } from '../support';

/** A stretch between shut valves that recovery does not reach. */
export const sectionNotRecovered = defineCheck({
  name: 'section-not-recovered',
  severity: 'error',
  title: 'Recovery does not reach a section between shut valves',
  acceptable: false,
  reads: 'state',
  ground: 'law',
  meaning:
    'A solenoid, expansion valve, regulator or check valve that is shut leaves a section with no port of its own full of refrigerant, and no later step recovers it.',
  why: 'Liquid shut in bursts the tube when it warms, or sprays out when somebody cuts a section that the gauges show empty.',
  source: '40 CFR 82.156 (handbook 2.1); trapped liquid: common practice (handbook 13.5)',
  wrong: {
    base: 'rack',
    instead: [
      ['open epr-1 by stem\n', ''],
      ['open sol-1, sol-2 by magnet\n', ''],
      ['recover system to 0 inHg', 'recover system to 0 inHg # <- here'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    whole.entries.forEach((entry, at) => {
      for (const event of entry.events) {
        if (event.type !== 'recovers') continue;
        const left = event.missed.filter(
          (space) =>
            !whole.entries
              .slice(at + 1)
              .some((later) => later.events.some((each) => each.type === 'recovers' && covers(each.spaces, space))),
        );
        for (const space of left) {
          const shut = shutAround(space);
          whole.report(entry, {
            message: (say) =>
              `Recovery does not reach ${say.parts(space.parts)}${shut.length > 0 ? `, shut off by ${say.parts(shut)}` : ''}: hold the valves open, or recover that section by a port of its own${underLaw(whole.plan, 'opening')}.`,
            slot: 'what',
            concerns: space.parts,
            related: shut.map((part) => ({ part, message: 'this is shut then' })),
            fixes:
              shut.length > 0
                ? [
                    {
                      title: 'Hold these valves open before recovery',
                      edits: (mend) =>
                        edits(mend.insertBefore(entry.slot.step, ...openLines(shut.map((part) => kindOf(part))))),
                    },
                  ]
                : [],
          });
        }

        function kindOf(part: number): { name: string; kind: string } {
          const it = entry.before.graph.parts[part]!;
          return { name: it.name, kind: it.kind.kind };
        }
        /** The shut valves at the section's ends, in it or next to it. */
        function shutAround(space: Space): readonly number[] {
          const { graph } = entry.before;
          const near = space.cells.flatMap((cell) =>
            [cell * 2, cell * 2 + 1].flatMap((end) => {
              const joint = graph.joints[graph.ends[end]!.joint];
              return (joint?.ends ?? []).map((each) => graph.ends[each]!.part);
            }),
          );
          return [...new Set([...space.parts, ...near])]
            .filter((part) => {
              const { shuts } = graph.parts[part]!.kind;
              const { position } = entry.before.parts[part]!;
              return shuts !== undefined && (position === 'shut' || (position === 'control' && shuts !== 'hand'));
            })
            .sort((a, b) => a - b);
        }
      }
    });
  },
});

const covers = (spaces: readonly Space[], missed: Space): boolean =>
  missed.parts.every((part) => spaces.some((space) => space.parts.includes(part)));

/** How each kind is held open. */
function openLines(valves: readonly { name: string; kind: string }[]): readonly string[] {
  const of = (...kinds: string[]) => valves.filter((valve) => kinds.includes(valve.kind)).map((valve) => valve.name);
  const line = (names: readonly string[], how: string): string[] =>
    names.length > 0 ? [`open ${names.join(', ')}${how}`] : [];
  return [
    ...line(of('solenoid'), ' by magnet'),
    ...line(of('evaporator-pressure-regulator'), ' by stem'),
    ...line(of('electronic-expansion-valve'), ' by service-tool'),
    ...line(of('ball-valve', 'service-valve'), ''),
  ];
}
