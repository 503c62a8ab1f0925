import { child } from '../../plan/bind';
import { stated } from '../../plan/gather';
import { exactly } from '../../quantity';
import { minute } from '../../reference/table-units';
import { timeOf } from '../course';
import { defineCheck } from '../define';
import { edits, shown, underLaw } from '../support';

/** 29 CFR 1910.252 asks half an hour (newer fire codes an hour); taken where the site asks for a watch and gives no time. */
const usual = exactly('time', 30 * minute);

/** A torch on a site that asks for a watch, and nobody stays. */
export const hotWorkWatchMissing = defineCheck({
  name: 'hot-work-watch-missing',
  severity: 'information',
  title: 'Nobody watches for fire where the site asks it',
  acceptable: true,
  reads: 'state',
  ground: 'law',
  meaning:
    'The site asks for a watch wherever a torch is used (`hot-work` of the site), and after the last torch no step watches, or not for as long as the site asks.',
  why: 'Insulation and dust in a wall glow for an hour before they burn; the permit and the insurance hang on the watch.',
  source: '29 CFR 1910.252: at least 30 minutes; 60 in newer fire codes (from memory, handbook 11)',
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
    if (!asks) return;
    const least = stated(asks, 'watch', plan.site.atmosphere)?.quantity ?? usual;
    const at = entries
      .map((entry) => entry.events.some((event) => event.type === 'joins' && event.torch))
      .lastIndexOf(true);
    const torch = entries[at];
    if (!torch) return;
    const watch = entries.slice(at + 1).find((entry) => entry.after.marks.get('watch hot-work') === entry.cause);
    if (watch && timeOf(watch, 'time') >= least.low * 0.99) return;
    const line = `watch hot-work for ${shown(least)}`;
    whole.report(watch ?? torch, {
      message: watch
        ? `The watch is shorter than the ${shown(least)} that the site asks after a torch.`
        : `This is the last torch of the job, and the site asks that somebody watches for ${shown(least)} after it${underLaw(plan, 'fireWatch')}.`,
      slot: watch ? 'time' : 'what',
      related: [{ bound: asks, message: 'the site asks it here' }],
      fixes: watch ? [] : [{ title: `Then: ${line}`, edits: (mend) => edits(mend.insertAfter(torch.slot.step, line)) }],
    });
  },
});
