import type { Entry } from '../../walk/walk';
import { firstStart, markedAfter, statedTime, visitOf } from '../course';
import { defineCheck, type WayOut } from '../define';
import { isDrier, touched } from '../plant';
import { inOwn } from '../support';
import { insertAfter, insertBefore } from '../ways-out';

/** Nobody comes back after a burnout or an oil conversion. */
export const followUpMissing = defineCheck({
  name: 'follow-up-missing',
  severity: 'warning',
  title: 'No follow-up after a burnout or a conversion',
  acceptable: true,
  reads: 'state',
  ground: 'published',
  yieldsTo: ['compressor-without-refrigerant'],
  meaning:
    'After the start of a burnout clean-up no step tests the oil for acid, or reads the pressure drop of the suction drier; after a conversion with another oil no step looks at strainers, oil or drier.',
  why: 'Acid that comes back, and dirt that the new oil loosens, stop the machine weeks later; both show in the first days.',
  source: 'public service manuals (handbook 4.5, 13.3, 13.4)',
  wrong: {
    base: 'rack',
    instead: [
      ['start system', 'start system # <- here'],
      [
        '    visit "Drier and oil" within 2 days {\n      read pressure-drop of liquid-drier, at most 4 psi\n      clean strainers\n    }\n',
        '',
      ],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const { plan, entries } = whole;
    const at = firstStart(entries);
    const start = entries[at];
    if (!start) return;
    const missing: string[] = [];
    const steps: string[] = [];
    if (plan.kinds.includes('burnout')) {
      if (!markedAfter(entries, at, /^(acid-test|sample)/)) {
        missing.push('an acid test of the oil');
        steps.push('acid-test system, at most 0.05 mgKOH/g');
      }
      const drier = plan.graph.parts.find(
        (part) => isDrier(part) && !part.highSide && touched(plan.graph, part.index) && part.standing !== 'removed',
      );
      if (drier && !markedAfter(entries, at, /^read pressure-drop/)) {
        missing.push(`the pressure drop of ${drier.name}`);
        steps.push(`read pressure-drop of ${drier.name}, at most ${inOwn(plan, '3 psi', '20 kPa')}`);
      }
    } else if (
      plan.kinds.includes('conversion') &&
      plan.system.oil.before !== plan.system.oil.after &&
      plan.system.smallAppliance === null &&
      !markedAfter(entries, at, /^(acid-test|sample|clean|inspect|change-oil|replace-cores|renew|read pressure-drop)/)
    ) {
      missing.push('a look at strainers, oil and drier');
      steps.push('clean strainers', 'sample oil');
    }
    if (missing.length === 0) return;
    whole.report(start, {
      message: `After this start no step asks for ${missing.join(' and ')}: plan a visit in the first days.`,
      slot: 'what',
      fixes: visitFor(entries, at, steps),
    });
  },
});

/** One more visit two days after the start, before any that is due later, else behind all that the plan holds. */
function visitFor(entries: readonly Entry[], at: number, steps: readonly string[]): readonly WayOut[] {
  const last = entries.at(-1);
  if (!last) return [];
  const own = entries[at] && visitOf(entries[at]);
  const day = 86400;
  const days = Math.ceil((own ? statedTime(own, 'within') : 0) / day) + 2;
  const lines = [`visit "Follow-up" within ${days} days {`, ...steps.map((step) => `  ${step}`), '}'];
  const title = `Plan a visit within ${days} days`;
  const later = entries
    .slice(at)
    .map(visitOf)
    .find((visit) => visit && visit !== own && statedTime(visit, 'within') > days * day);
  return [
    later ? insertBefore(title, later, ...lines) : insertAfter(title, last.slot.within[0] ?? last.slot.step, ...lines),
  ];
}
