import type { Plant } from '../../circuit/state';
import { freelyVented } from '../../reference/venting-exempt';
import { isWaterValve } from '../../steps/valves';
import { hasWaterSide } from '../../steps/water';
import { aroundOf, has } from '../course';
import { defineCheck, type Here, type WayOut } from '../define';
import { edits } from '../support';
import { insertBefore } from '../ways-out';

/** A small chiller instead of the coil: water goes through the other side of its plates. */
const chiller = [
  [
    'evaporator new {\n      rated 500 psig\n      leak-sensor built-in',
    'plates: plate-exchanger new {\n      rated 500 psig\n      leak-sensor built-in',
  ],
  ['start system\n', 'check water-flow\n    start system\n'],
] as const;

/** Water that stands in an exchanger while it is taken off, or while refrigerant boils off beside it. */
export const waterSideFull = defineCheck({
  name: 'water-side-full',
  severity: 'warning',
  title: 'Water stands in an exchanger that is taken off, or in which refrigerant boils off',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['no-effect'],
  meaning:
    'An exchanger with water on its other side is taken off, and no step before has shut, checked or drained its water. Or refrigerant is recovered from it while the water valves stand shut and nothing has drained the water that they shut in.',
  why: 'Water runs over floor and electrics and into the open circuit. Water that stands still freezes beside refrigerant that boils off, and the ice splits the plates.',
  source:
    'drain the water, or keep it flowing while refrigerant boils off (handbook 13.6); shut off before the pipes are undone: common practice',
  wrong: {
    base: 'split',
    instead: [...chiller, ['remove old equipment', 'remove old equipment # <- here']],
  },
  right: {
    base: 'split',
    instead: [
      ...chiller,
      ['remove old equipment', 'close water-valves\n    remove old equipment'],
      ['check water-flow', 'open water-valves\n    check water-flow'],
    ],
  },
  step(here) {
    const { before } = here;
    const { parts } = before.graph;
    for (const event of here.events('unmounts')) {
      const wet = event.parts.filter(
        (index) => hasWaterSide(parts[index]!) && before.parts[index]!.mounted !== 'new' && !isWaterSeenTo(before),
      );
      if (wet.length === 0) continue;
      here.report({
        message: (say) =>
          `${say.parts(wet)} ${wet.length > 1 ? 'are' : 'is'} taken off with the water standing in: shut the water valves and drain that side first.`,
        slot: 'what',
        concerns: wet,
        fixes: [shutUntilStart(here)],
      });
    }
    const shut = [...before.bypassed].find(([name]) => isWaterValve(name));
    if (!shut || here.per) return;
    for (const event of here.events('recovers')) {
      const cold = event.spaces
        .flatMap((space) => space.parts)
        .filter(
          (index) =>
            hasWaterSide(parts[index]!) &&
            before.parts[index]!.mounted !== 'none' &&
            !before.marks.has(`drain water-side of ${parts[index]!.name}`),
        );
      if (cold.length === 0 || event.held.some(({ refrigerant }) => refrigerant === freelyVented)) continue;
      here.report({
        message: (say) =>
          `The water that is shut in ${say.parts(cold)} stands still while refrigerant boils off here, freezes and splits ${cold.length > 1 ? 'them' : 'it'}: drain the water side first, or shut the valves when the refrigerant is out.`,
        slot: 'what',
        concerns: cold,
        related: [{ cause: shut[1], message: 'the water is shut in here' }],
        fixes: [
          insertBefore(
            'Drain the water side first',
            here.step,
            `drain ${cold.map((index) => parts[index]!.name).join(', ')} at water-side`,
          ),
        ],
      });
    }
  },
});

/** Whether a step has shut the water off, looked to it, or drained it. */
const isWaterSeenTo = (plant: Plant): boolean =>
  [...plant.bypassed.keys()].some(isWaterValve) ||
  [...plant.marks.keys()].some((mark) => /\bwater-(valves?|side)\b/.test(mark));

/** The valves shut here and open again before the machine starts, or behind the last step. */
const shutUntilStart = ({ entry, step }: Here): WayOut => ({
  title: 'Close water-valves here, and open them before the start',
  edits: (mend) => {
    const { entries } = mend.view.walk;
    const start = aroundOf(entries, entry).later.find((each) => has(each, 'starts'));
    const last = entries.at(-1)!;
    return edits(
      mend.insertBefore(step, 'close water-valves'),
      start
        ? mend.insertBefore(start.slot.step, 'open water-valves')
        : mend.insertAfter(last.slot.step, 'open water-valves'),
    );
  },
});
