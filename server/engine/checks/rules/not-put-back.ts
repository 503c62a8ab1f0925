import { isWaterValve } from '../../steps/valves';
import { lastBeforeLeaving } from '../course';
import { defineCheck } from '../define';
import { edits } from '../support';

/** What keeps people and machine safe; the names are those that plans give such things. */
const safety = /relief|switch|cut-?out|safety|limit|pressure-control|interlock/;

/** An alarm, switch or instrument put out of action for good. */
export const notPutBack = defineCheck({
  name: 'not-put-back',
  severity: 'warning',
  title: 'Something put out of action is never put back',
  acceptable: false,
  reads: 'state',
  ground: 'practice',
  meaning:
    'An alarm, a transducer, a relief valve or a switch is bypassed or isolated, and no step restores it; or the water is shut off and never turned on. For a relief valve, a pressure switch or another safety the finding is an error.',
  why: 'The machine runs without what keeps it from bursting, or the box warms up with nobody told.',
  source: 'common practice: a list of what must be restored (handbook 13.5)',
  wrong: {
    base: 'rack',
    instead: [
      [
        'close valve-s, valve-d\n    pressure-test each',
        'bypass transducers # <- here\n    close valve-s, valve-d\n    pressure-test each',
      ],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const last = whole.entries.at(-1);
    for (const [name, cause] of last?.after.bypassed ?? []) {
      const entry = whole.entries.find((each) => each.cause === cause);
      if (!entry || !last) continue;
      const grave = safety.test(name);
      const water = isWaterValve(name);
      const way = `${water ? 'open' : 'restore'} ${name}`;
      whole.report(entry, {
        message: water
          ? `${name} ${name.endsWith('s') ? 'are' : 'is'} shut here and never opened again: the machine starts with no water through it.`
          : `${name} ${grave ? 'keeps people and machine safe and' : ''} is put out of action here and never restored.`.replace(
              / {2}/,
              ' ',
            ),
        slot: 'what',
        severity: grave ? 'error' : 'warning',
        root: name,
        fixes: [
          {
            title: `At the end: ${way}`,
            edits: (mend) => edits(mend.insertAfter(lastBeforeLeaving(whole.entries, entry), way)),
          },
        ],
      });
    }
  },
});
