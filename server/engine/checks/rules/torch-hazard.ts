import { contentsOfCell } from '../../circuit/settle';
import { cellOf, endPasses } from '../../circuit/spaces';
import type { Contents } from '../../circuit/state';
import { ventedWhereListed } from '../../reference/venting-exempt';
import type { Event } from '../../steps/events';
import { defineCheck, type Here, type WayOut, type Whole } from '../define';
import { liquidSections } from '../left-behind';
import { endName, underPressure } from '../plant';
import { edits, gauge, inOwn } from '../support';
import { insertAfter, moveDown } from '../ways-out';

/** A flame at a part that holds refrigerant, solvent or pressure. */
export const torchHazard = defineCheck({
  name: 'torch-hazard',
  severity: 'error',
  title: 'A torch at a part that holds refrigerant, solvent or pressure',
  acceptable: false,
  reads: 'state',
  ground: 'published',
  yieldsTo: [
    'final-purge-weak',
    'final-purge-short',
    'wet-with-solvent',
    'open-under-pressure',
    'charge-still-in',
    'section-not-recovered',
  ],
  meaning:
    'At this step a joint is brazed while the part at one side of it holds refrigerant or gas under pressure, or is wet with solvent; or a shut valve at the joint shuts in a line or a drier full of liquid; or gas that burns was let off, and what stays in was not drawn out or swept out since.',
  why: 'Refrigerant and solvent make acid and poison gas in a flame, oil mist burns like a blow-lamp, and a joint under pressure blows molten metal at the brazer.',
  source:
    '29 CFR 1910.252 and fire code practice (handbook 11, cut and braze); solvent: common practice (handbook 5.3)',
  wrong: {
    base: 'split',
    instead: [
      [
        'release nitrogen outdoors\n',
        'connect suction-line at far end with nitrogen at 5 cfh # <- here\n    release nitrogen outdoors\n',
      ],
    ],
  },
  right: { base: 'split' },
  plan: afterLettingOff,
  step(here) {
    const plant = here.before;
    const { graph } = plant;
    for (const event of here.events('joins')) {
      if (!event.torch) continue;
      // What a step opens itself has let its gas out by the time of the torch; pressure then is told at the opening.
      if (here.events('opens').some((opened) => opened.part === event.part)) continue;
      const near: ReadonlySet<number> = new Set(
        event.ends.flatMap((end) => graph.joints[graph.ends[end]!.joint]?.ends ?? [end]),
      );
      besideLiquid(here, near);
      for (const end of near) {
        const { part } = graph.ends[end]!;
        const state = plant.parts[part]!;
        // Behind a shut valve or a shut seat the flame does not meet what the part holds.
        if (state.mounted === 'none' || !endPasses(plant, graph.ends[end]!)) continue;
        const held = contentsOfCell(plant, cellOf(end));
        const what =
          held.gas === 'refrigerant' && !state.ownCharge
            ? `holds ${held.refrigerant ?? 'refrigerant'}`
            : underPressure(plant, held)
              ? `holds ${held.gas} at ${gauge(here.plan, held.high)}`
              : null;
        if (!what) continue;
        here.report({
          message: (say) =>
            `A torch comes to ${endName(graph, end)} while ${say.part(part)} ${what}: ${held.gas === 'refrigerant' ? 'recover it' : 'let it down'} first.`,
          slot: 'what',
          root: held.since ?? graph,
          concerns: [part],
          fixes: [another(here, end, held)],
          related: held.since ? [{ cause: held.since, message: 'it holds this since here' }] : [],
        });
      }
    }
  },
});

/** Gas that burns and was let off still fills the machine at the pressure of the air: it is drawn or swept out before a flame comes. */
function afterLettingOff({ entries, plan, report }: Whole): void {
  for (const [at, entry] of entries.entries()) {
    for (const event of entry.events) {
      if (event.type !== 'vents') continue;
      const gas = event.held.find(({ refrigerant }) => refrigerant !== null && ventedWhereListed.includes(refrigerant));
      if (!gas) continue;
      const parts = new Set(event.spaces.flatMap((space) => space.parts));
      const later = entries.slice(at + 1);
      const swept = new Set<number>();
      const next = later.find(({ events }) => {
        const torch = events.some(
          (each) => each.type === 'joins' && each.torch && parts.has(each.part) && !swept.has(each.part),
        );
        for (const part of events.flatMap(sweeps)) swept.add(part);
        return torch;
      });
      if (!next) continue;
      report(next, {
        message: (say) =>
          `A torch comes here to what ${gas.refrigerant} was only let off of, at ${say.step(entry.cause)}: the rest of it stands there at the pressure of the air and burns; draw it out and let nitrogen in first.`,
        slot: 'what',
        root: entry.cause,
        concerns: [...parts],
        related: [{ cause: entry.cause, message: 'it is let off here' }],
        fixes: [
          insertAfter(
            'Draw the rest out and let nitrogen in',
            entry.slot.step,
            `evacuate system to ${inOwn(plan, '10000 micron', '1300 Pa absolute')}`,
            `break-vacuum system with nitrogen to ${inOwn(plan, '0 psig', '0 kPa gauge')}`,
          ),
        ],
      });
    }
  }
}

/** The parts that a step draws out, or sends gas through. */
const sweeps = (event: Event): readonly number[] =>
  event.type === 'flows'
    ? event.reached
    : event.type === 'evacuates' || event.type === 'recovers'
      ? event.spaces.flatMap((space) => space.parts)
      : [];

/** A flame by a valve behind which liquid is shut in: the valve, and the liquid with it, grows hot. */
function besideLiquid(here: Here, near: ReadonlySet<number>): void {
  const { graph } = here.before;
  const parts = new Map([...near].map((end) => [graph.ends[end]!.part, end]));
  for (const { space, body, refrigerant } of liquidSections(here.before)) {
    const valve = space.parts.find((part) => parts.has(part));
    if (valve === undefined || endPasses(here.before, graph.ends[parts.get(valve)!]!)) continue;
    here.report({
      message: (say) =>
        `A torch comes to ${endName(graph, parts.get(valve)!)} while ${say.part(body)} behind it is shut in full of liquid ${refrigerant}, with no room to grow: recover it first.`,
      slot: 'what',
      root: `liquid ${body}`,
      concerns: space.parts,
      related: [{ part: body, message: 'the liquid stands here' }],
      fixes: [recoverToo(here, valve, near)],
    });
  }
}

/** The valve is held open when the other side of the joint is recovered, so that the liquid comes out, too. */
const recoverToo = (here: Here, valve: number, near: ReadonlySet<number>): WayOut => {
  const { graph } = here.before;
  const { name, kind } = graph.parts[valve]!;
  const what = kind.shuts === undefined ? `valves of ${name}` : name;
  const by = kind.shuts === 'power' ? ' by magnet' : kind.shuts === 'control' ? ' by stem' : '';
  const beside = [...near].map((end) => graph.ends[end]!.part).filter((part) => part !== valve);
  return {
    title: `Open ${what} before the recovery`,
    edits: (mend) => {
      const { entries } = mend.view.walk;
      const recovery = entries
        .slice(0, entries.indexOf(here.entry))
        .reverse()
        .find(({ events }) =>
          events.some(
            (event) =>
              event.type === 'recovers' &&
              event.spaces.some((space) => beside.some((part) => space.parts.includes(part))),
          ),
        );
      return recovery ? edits(mend.insertBefore(recovery.slot.step, `open ${what}${by}`)) : [];
    },
  };
};

/** Brazed before the gas of a test comes in, or when the refrigerant is out. */
const another = (here: Here, end: number, held: Contents): WayOut =>
  held.gas === 'refrigerant'
    ? moveDown('Braze it when the refrigerant is out', here.entry, 'after', ({ after }) => {
        const then = contentsOfCell(after, cellOf(end));
        return then.gas !== 'refrigerant' && !underPressure(after, then);
      })
    : {
        title: 'Braze it before the gas comes in',
        edits: (mend) => {
          const by = mend.view.walk.entries.find((entry) => entry.cause === held.since);
          return by ? mend.move(here.step, 'before', by.slot.step) : [];
        },
      };
