import { psig } from '../../reference/table-units';
import { freelyVented as carbonDioxide } from '../../reference/venting-exempt';
import { defineCheck } from '../define';
import { gauge, inOwn } from '../support';
import { writeAt } from '../ways-out';

/** Above this nobody breaks a vacuum: two to five psig are usual (handbook 8.2); the border is common practice, no source. Pa absolute. */
const most = psig(100);

/** Nitrogen at the pressure of a test, where a few psig were meant. */
export const vacuumBrokenTooHigh = defineCheck({
  name: 'vacuum-broken-too-high',
  severity: 'warning',
  title: 'A vacuum is broken to the pressure of a test',
  acceptable: true,
  reads: 'figure',
  ground: 'practice',
  yieldsTo: ['pressure-above-rating', 'left-unattended'],
  meaning:
    'Nitrogen is let into a vacuum up to more than 100 psig (700 kPa). A few psig do. Carbon dioxide is let in as vapour to well above its triple point before any liquid, and a sheet may ask for more: neither is meant.',
  why: 'It is a slip of the figure or of its unit: the next step puts a pump on it, or somebody opens what he takes for nearly empty.',
  source: '2 to 5 psig: common practice (handbook 8.2); the border is common practice, no source',
  wrong: {
    base: 'split',
    instead: [
      [
        'evacuate each open part to 500 micron\n',
        'evacuate each open part to 1500 micron\n    break-vacuum with nitrogen to 1 MPa gauge # <- here\n    release nitrogen outdoors\n    evacuate each open part to 500 micron\n',
      ],
    ],
  },
  right: {
    base: 'split',
    instead: [
      [
        'evacuate each open part to 500 micron\n',
        'evacuate each open part to 1500 micron\n    break-vacuum with nitrogen to 2 psig\n    evacuate each open part to 500 micron\n',
      ],
    ],
  },
  step(here) {
    if (here.per) return;
    for (const event of here.events('pressurises')) {
      if (event.purpose !== 'break' || event.spaces.length === 0 || event.level <= most * 1.01) continue;
      // Liquid carbon dioxide turns to dry ice below 4.2 bar gauge, so its vapour stands well above that first (handbook 8.1, 13.6).
      if (event.medium === 'refrigerant' && here.plan.system.refrigerant.after === carbonDioxide) continue;
      const usual = inOwn(here.plan, '2 psig', '15 kPa gauge');
      here.report({
        message: `${gauge(here.plan, event.level)} is the pressure of a test; to break a vacuum ${usual} or so do (common practice, no source): read figure and unit again.`,
        slot: 'level',
        concerns: event.spaces.flatMap((space) => space.parts),
        fixes: writeAt(here.step, here.step.values['level'], usual),
      });
    }
  },
});
