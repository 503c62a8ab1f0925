import { isUnread } from '../../plan/step';
import { defineCheck } from '../define';
import { edits, inOwn } from '../support';

/** A decay test that cannot fail. */
export const decayLimitMissing = defineCheck({
  name: 'decay-limit-missing',
  severity: 'warning',
  title: 'A decay test without time or limit',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning: 'The decay test states no time, or no rise that is still allowed, so that nobody can say whether it passed.',
  why: 'Every vacuum rises a little; without a limit a wet or leaking circuit is waved through.',
  source: 'common practice: 15 minutes and a limit between 200 and 500 micron (handbook 8.1)',
  wrong: {
    base: 'split',
    instead: [
      [
        'decay-test each open part for 15 min, rise at most 300 micron',
        'decay-test each open part for 15 min # <- here',
      ],
    ],
  },
  right: { base: 'split' },
  step(here) {
    if (here.per) return;
    for (const event of here.events('stands')) {
      const missing = [
        ...(event.time || isUnread(here.step, 'time') ? [] : ['a time']),
        ...(event.rise === null && !isUnread(here.step, 'rise') ? ['a limit'] : []),
      ];
      if (missing.length === 0) continue;
      here.report({
        message: `This decay test has no ${missing.join(' and no ').replace(/a /g, '')}: state ${missing.join(' and ')}, so that it can fail.`,
        fixes: [
          {
            title: 'State the usual time and limit',
            edits: (mend) =>
              edits(
                mend.append(
                  here.step,
                  `${event.time ? '' : ' for 15 min'}${event.rise === null ? `, rise at most ${inOwn(here.plan, '300 micron', '40 Pa')}` : ''}`,
                ),
              ),
          },
        ],
      });
    }
  },
});
