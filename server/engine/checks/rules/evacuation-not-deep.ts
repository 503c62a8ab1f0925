import type { Amount } from '../../plan/term';
import { finalLevel, shallowestSheet } from '../../reference/evacuation';
import type { Entry } from '../../walk/walk';
import { defineCheck } from '../define';
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
    'No later step pumps these parts lower than this one, and its target is above 500 micron. Rough pulls before it are not meant, nor a target that cites a sheet, unless it lies above what any sheet asks; that is the measure of a vehicle, too.',
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
    const last = new Map<number, { readonly entry: Entry; readonly level: number }>();
    const end = whole.entries.at(-1)?.after;
    for (const entry of whole.entries)
      for (const event of entry.events)
        if (event.type === 'evacuates')
          // What is off at the end of the job was swept before it was taken off, not dried.
          for (const space of event.spaces)
            for (const part of space.parts)
              if (end && standsNow(end, part)) last.set(part, { entry, level: event.level });
    for (const { entry, level } of new Set(last.values())) {
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
