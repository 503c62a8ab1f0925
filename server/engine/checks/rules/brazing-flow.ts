import { brazingFlow, brazingPressureOpenEnd } from '../../reference/nitrogen-practice';
import { defineCheck } from '../define';
import { edits, inOwn, shown } from '../support';

/** More or less nitrogen through a joint than the trade uses. */
export const brazingFlowRange = defineCheck({
  name: 'brazing-flow',
  severity: 'warning',
  title: 'Nitrogen flow while brazing out of the usual range',
  acceptable: true,
  reads: 'figure',
  ground: 'practice',
  meaning:
    'The nitrogen stated for brazing lies outside 2 to 10 cfh, or outside 1 to 2 psig at an open end. A cited sheet stands in place of the range.',
  why: 'Too little lets air in and scale form; too much cools the joint, draws air in at a loose hose and blows the alloy out.',
  source: `${brazingFlow.source}; ${brazingPressureOpenEnd.source} (handbook 6.3; some manuals allow more)`,
  wrong: {
    base: 'split',
    instead: [
      ['install filter-drier with nitrogen at 5 cfh', 'install filter-drier with nitrogen at 40 cfh # <- here'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    if (here.per) return;
    for (const event of here.events('joins')) {
      const { nitrogen } = event;
      if (!event.torch || !nitrogen) continue;
      const flow = nitrogen.kind === 'volume-flow';
      const usual = flow ? brazingFlow.quantity : brazingPressureOpenEnd.quantity;
      const base = flow ? 0 : here.before.atmosphere;
      const [low, high] = [nitrogen.low - base, nitrogen.high - base];
      if (low >= usual.low * 0.99 && high <= usual.high * 1.01) continue;
      const right = flow ? inOwn(here.plan, '5 cfh', '2.5 L/min') : inOwn(here.plan, '1.5 psig', '10 kPa gauge');
      here.report({
        message: `Nitrogen at ${shown(here.plan, nitrogen, flow ? { as: 'cfh' } : {})} is out of the usual ${flow ? inOwn(here.plan, '2 to 10 cfh', '1 to 5 L/min') : `${inOwn(here.plan, '1 to 2 psig', '7 to 14 kPa gauge')} at an open end`} while brazing (${(flow ? brazingFlow : brazingPressureOpenEnd).source}): ${high > usual.high ? 'it cools the joint and draws air in' : 'scale forms in the tube'}.`,
        slot: 'nitrogen',
        fixes: [
          {
            title: flow ? `Let ${right} flow` : `Let ${right} stand`,
            edits: (mend) => edits(mend.replace(here.step, 'nitrogen', `with nitrogen at ${right}`)),
          },
        ],
      });
      return;
    }
  },
});
