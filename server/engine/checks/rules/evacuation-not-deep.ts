import type { Amount } from '../../plan/term';
import { finalLevel, shallowestSheet } from '../../reference/evacuation';
import type { Entry } from '../../walk/walk';
import { defineCheck, type Whole } from '../define';
import { isVehicle } from '../equipment';
import { standsNow } from '../plant';
import { roundedLimit } from '../rounding';
import { edits, inOwn, vacuum } from '../support';

/** The last evacuation of a part is not deep enough. */
export const evacuationNotDeep = defineCheck({
  name: 'evacuation-not-deep',
  severity: 'warning',
  title: 'The last evacuation is above the usual level',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'No later step pumps these parts lower than this one before refrigerant comes to them, and its target is above 500 micron. Rough pulls before it are not meant, nor a target that cites a sheet, unless it lies above what any sheet asks; that is the measure of a vehicle, too.',
  why: 'Above that level water still stands in the oil; with POE it becomes acid.',
  source: `${finalLevel.source}; whatever is cited: ${shallowestSheet.source}`,
  wrong: {
    base: 'split',
    instead: [['evacuate each open part to 500 micron', 'evacuate each open part to 1500 micron # <- here']],
  },
  right: {
    base: 'split',
    instead: [
      [
        '  evacuate each',
        '  evacuate each open part to 1500 micron\n  break-vacuum with nitrogen to 2 psig\n  evacuate each',
      ],
    ],
  },
  plan(whole) {
    for (const { entry, level } of lastPulls(whole)) {
      const isCited = typeof entry.slot.step.values['per'] === 'string';
      const isWheeled = isVehicle(whole.plan);
      const most = (isCited || isWheeled ? shallowestSheet : finalLevel).quantity.high;
      const { atmosphere } = whole.plan.site;
      const written = roundedLimit(most, entry.slot.step.values['level'] as Amount | undefined, atmosphere, 'most');
      if (level <= Math.max(most * 1.01, written * 1.001) || level >= atmosphere) continue;
      const here = `This is the last evacuation here, and ${vacuum(whole.plan, level)} is above`;
      whole.report(entry, {
        message: isCited
          ? `${here} ${vacuum(whole.plan, most)}, more than any sheet lets stand (${shallowestSheet.source}): read the figure and its unit in the sheet again.`
          : isWheeled
            ? `${here} ${vacuum(whole.plan, most)}, the shallowest that is usual for a vehicle (${shallowestSheet.source}): go lower, or read the figure and its unit again.`
            : `${here} the usual ${vacuum(whole.plan, most)} (common practice; no authority): go lower, or cite the sheet that asks for no more.`,
        slot: 'level',
        root: entry.slot.step,
        fixes: [
          {
            title: `Evacuate to ${inOwn(whole.plan, '500 micron', '65 Pa absolute')}`,
            edits: (mend) =>
              edits(mend.replace(entry.slot.step, 'level', `to ${inOwn(whole.plan, '500 micron', '65 Pa absolute')}`)),
          },
        ],
      });
    }
  },
});

interface Pull {
  readonly entry: Entry;
  readonly level: number;
}

/** The last pull on each part before refrigerant comes to it, each time that it does, and before the job ends. */
function lastPulls({ entries }: Whole): ReadonlySet<Pull> {
  const pulls = new Set<Pull>();
  const last = new Map<number, Pull>();
  const end = entries.at(-1)?.after;
  for (const entry of entries) {
    for (const event of entry.events) {
      if (event.type !== 'evacuates') continue;
      const pull = { entry, level: event.level };
      // What is off at the end of the job was swept before it was taken off, not dried.
      for (const { parts } of event.spaces)
        for (const part of parts) if (end && standsNow(end, part)) last.set(part, pull);
    }
    if (entry.after.parts === entry.before.parts) continue;
    for (const [part, pull] of last) {
      if (entry.after.parts[part]!.contents.every(({ gas }) => gas !== 'refrigerant')) continue;
      pulls.add(pull);
      last.delete(part);
    }
  }
  for (const pull of last.values()) pulls.add(pull);
  return pulls;
}
