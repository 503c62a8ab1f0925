import { defineCheck } from '../define';
import { standsNow, touched } from '../plant';

/** A saddle valve that was clamped on for the job and stays. */
export const piercingValveLeftOn = defineCheck({
  name: 'piercing-valve-left-on',
  severity: 'warning',
  title: 'A piercing valve stays on the tube',
  acceptable: true,
  noFix:
    'Taking it off means to cut the tube and to join it again, and where the circuit is empty and open for that is for the author.',
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['joint-left-open'],
  meaning: 'A piercing valve that a step clamps on to get at the charge is still there when the plan ends.',
  why: 'Its needle and seal leak within months, and in a small machine that is the whole charge.',
  source: 'common practice (handbook 13.5): it is for access, not for good',
  wrong: {
    base: 'rack',
    instead: [
      ['    condenser kept {', '    tap: piercing-valve added # <- here\n    condenser kept {'],
      [
        'open sol-1, sol-2 by magnet\n    open epr-1',
        'install tap with clamp\n    open sol-1, sol-2 by magnet\n    open epr-1',
      ],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const last = whole.entries.at(-1);
    if (!last) return;
    const { graph } = whole.plan;
    for (const part of graph.parts) {
      if (part.kind.kind !== 'piercing-valve' || part.standing !== 'added' || !touched(graph, part.index)) continue;
      if (!standsNow(last.after, part.index)) continue;
      const { setBy } = last.after.parts[part.index]!;
      whole.reportPart(part.index, {
        message: (say) =>
          `${part.name}, clamped on by ${say.step(setBy)}, is still on when the plan ends: cut that piece of tube out with it.`,
        concerns: [part.index],
        related: setBy ? [{ cause: setBy, message: 'it is clamped on here' }] : [],
      });
    }
  },
});
