import { child } from '../../plan/bind';
import { stated } from '../../plan/gather';
import { exactly } from '../../quantity';
import { minute } from '../../reference/table-units';
import type { Entry } from '../../walk/walk';
import { timeOf, visitOf } from '../course';
import { defineCheck } from '../define';
import { edits, shown, underLaw } from '../support';

/** 29 CFR 1910.252(a)(2)(iii)(B) asks half an hour (newer fire codes an hour); taken where the site asks for a watch and gives no time. */
const usual = exactly('time', 30 * minute);

/** A torch on a site that asks for a watch, and nobody stays. */
export const hotWorkWatchMissing = defineCheck({
  name: 'hot-work-watch-missing',
  severity: 'warning',
  title: 'Nobody watches for fire where the site asks it, or not long enough',
  acceptable: true,
  reads: 'state',
  ground: 'law',
  meaning:
    'The site asks for a watch wherever a torch is used (`hot-work` of the site), and after the last torch no step watches, or not for as long as the site asks; or the plan has a watch of itself, shorter than 30 minutes.',
  why: 'Insulation and dust in a wall glow for an hour before they burn; the permit and the insurance hang on the watch.',
  source: '29 CFR 1910.252(a)(2)(iii)(B): at least 30 minutes; 60 in newer fire codes (these from memory, handbook 11)',
  wrong: {
    base: 'split',
    instead: [
      ['altitude 0 ft', 'altitude 0 ft\n    hot-work watch 60 min'],
      ['install filter-drier with nitrogen at 5 cfh', 'install filter-drier with nitrogen at 5 cfh # <- here'],
    ],
  },
  right: {
    base: 'split',
    instead: [
      ['altitude 0 ft', 'altitude 0 ft\n    hot-work watch 60 min'],
      [
        'install filter-drier with nitrogen at 5 cfh',
        'install filter-drier with nitrogen at 5 cfh\n  watch hot-work for 60 min',
      ],
    ],
  },
  plan(whole) {
    const { plan, entries } = whole;
    const site = child(plan.declaration.bound.block, 'site');
    const asks = child(site?.block ?? [], 'hot-work');
    if (!asks) {
      for (const { watch, time } of shortWatches(entries))
        whole.report(watch, {
          message: `The watch with the torch is ${shown(plan, exactly('time', time))}, and at least ${shown(plan, usual)} are usual${underLaw(plan, 'fireWatch')}.`,
          slot: 'time',
          fixes: [
            {
              title: `Watch for ${shown(plan, usual)}`,
              edits: (mend) => edits(mend.replace(watch.slot.step, 'time', `for ${shown(plan, usual)}`)),
            },
          ],
        });
      return;
    }
    const least = stated(asks, 'watch', plan.site.atmosphere)?.quantity ?? usual;
    const at = entries.map(usesTorch).lastIndexOf(true);
    const torch = entries[at];
    if (!torch) return;
    const watch = entries.slice(at + 1).find((entry) => entry.after.marks.get('watch hot-work') === entry.cause);
    if (watch && timeOf(watch, 'time') >= least.low * 0.99) return;
    const line = `watch hot-work for ${shown(plan, least)}`;
    whole.report(watch ?? torch, {
      message: watch
        ? `The watch is shorter than the ${shown(plan, least)} that the site asks after a torch.`
        : `This is the last torch of the job, and the site asks that somebody watches for ${shown(plan, least)} after it${underLaw(plan, 'fireWatch')}.`,
      slot: watch ? 'time' : 'what',
      related: [{ bound: asks, message: 'the site asks it here' }],
      fixes: [
        watch
          ? {
              title: `Watch for ${shown(plan, least)}`,
              edits: (mend) => edits(mend.replace(watch.slot.step, 'time', `for ${shown(plan, least)}`)),
            }
          : { title: `Then: ${line}`, edits: (mend) => edits(mend.insertAfter(torch.slot.step, line)) },
      ],
    });
  },
});

const usesTorch = (entry: Entry): boolean => entry.events.some((event) => event.type === 'joins' && event.torch);

/** The watches of each visit with a torch that are too short by every rule, where the site asks for none itself. */
function shortWatches(entries: readonly Entry[]): readonly { readonly watch: Entry; readonly time: number }[] {
  return [...new Set(entries.filter(usesTorch).map(visitOf))].flatMap((visit) => {
    const watches = entries.filter(
      (entry) => visitOf(entry) === visit && entry.after.marks.get('watch hot-work') === entry.cause,
    );
    const [watch] = watches.slice(-1);
    const time = watches.reduce((sum, entry) => sum + timeOf(entry, 'time'), 0);
    const isCited = watches.some((entry) => typeof entry.slot.step.values['per'] === 'string');
    // A watch that states no time lasts as long as the permit says.
    return !watch || time === 0 || time >= usual.low * 0.99 || isCited ? [] : [{ watch, time }];
  });
}
