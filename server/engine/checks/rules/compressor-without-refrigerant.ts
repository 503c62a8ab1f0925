import type { Plant } from '../../circuit/state';
import type { Entry } from '../../walk/walk';
import { aroundOf, has, visitOf } from '../course';
import { defineCheck, type Here, type WayOut } from '../define';
import { aboveZero, heldBy, isCharged, readyCompressors, spaceAt } from '../plant';

/** Compressor power, or a start, while the compressor stands in vacuum, gas or air. */
export const compressorWithoutRefrigerant = defineCheck({
  name: 'compressor-without-refrigerant',
  severity: 'error',
  title: 'A compressor gets power without refrigerant in it',
  acceptable: false,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['recovery-beyond-section', 'charge-still-in', 'refrigerant-vented', 'charge-into-gas', 'joint-left-open'],
  meaning:
    'Power comes back, or the system starts, while a compressor stands under vacuum, in nitrogen or in air, or while a new unit is still shut behind its service valves. Control power for heaters and valves is fine.',
  why: 'A compressor that starts in a vacuum arcs at its terminals and burns out; one that pumps against shut valves or compresses air and oil can burst.',
  source: 'common practice (handbook 13.1: power only after the vacuum is broken with refrigerant)',
  wrong: {
    base: 'split',
    instead: [
      ['restore power\n', ''],
      ['check ignition-sources within 10 ft', 'restore power # <- here\n  check ignition-sources within 10 ft'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    const comes = here.events('powers').some((event) => event.to === 'on');
    const runs = here.events('starts').length > 0;
    if (!comes && !(runs && here.before.power === 'on')) return;
    const plant = here.before;
    for (const compressor of readyCompressors(plant)) {
      const space = spaceAt(plant, compressor.index);
      if (!space) continue;
      const held = heldBy(plant, space);
      const open = space.openings.length > 0;
      // A charge of R-123 and its like stands below the atmosphere while the machine rests: liquid tells it from a rest.
      const charged = held.gas === 'refrigerant' && (aboveZero(plant, held) || held.liquid);
      if (!open && charged && !plant.parts[compressor.index]!.ownCharge) continue;
      report(here, compressor.index, open);
      return;
    }
  },
});

function report(here: Here, part: number, open: boolean): void {
  const plant = here.before;
  const state = plant.parts[part]!;
  const [held] = state.contents;
  const how = state.ownCharge
    ? 'is still shut behind its service valves'
    : open
      ? 'is open to the air'
      : held!.gas === 'vacuum'
        ? 'stands under vacuum'
        : held!.gas === 'refrigerant'
          ? 'has only a rest of refrigerant below the atmosphere'
          : `stands in ${held!.gas}`;
  here.report({
    message: (say) =>
      `${say.part(part)} ${how} when it gets power here: let refrigerant in before the power comes back.`,
    slot: 'what',
    // Each visit that gives it power anew shows the same compressor.
    root: part,
    concerns: here.before.graph.parts.map((each) => each.index),
    fixes: [whenFilled(here.entry)],
    related: held?.since ? [{ cause: held.since, message: 'it stands so since here' }] : [],
  });
}

/** Power comes behind the step that lets refrigerant in; where the machine is started before that, the charge goes before the power. */
const whenFilled = (entry: Entry): WayOut => ({
  title: 'Give it power when refrigerant is in',
  edits: (mend) => {
    const { later } = aroundOf(mend.view.walk.entries, entry);
    const at = later.findIndex((each) => visitOf(each) === visitOf(entry) && isReady(each.after));
    const filled = later[at];
    if (!filled) return [];
    const starts = later.slice(0, at).some((each) => has(each, 'starts'));
    return starts
      ? mend.move(filled.slot.step, 'before', entry.slot.step)
      : mend.move(entry.slot.step, 'after', filled.slot.step);
  },
});

/** Whether every compressor that would turn stands in a closed circuit with refrigerant. */
const isReady = (plant: Plant): boolean =>
  readyCompressors(plant).every(({ index }) => {
    const space = spaceAt(plant, index);
    return space && space.openings.length === 0 && isCharged(plant, index) && !plant.parts[index]!.ownCharge;
  });
