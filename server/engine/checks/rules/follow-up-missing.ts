import { firstStart, markedAfter } from '../course';
import { defineCheck } from '../define';
import { isDrier, touched } from '../plant';

/** Nobody comes back after a burnout or an oil conversion. */
export const followUpMissing = defineCheck({
  name: 'follow-up-missing',
  severity: 'warning',
  title: 'No follow-up after a burnout or a conversion',
  acceptable: true,
  reads: 'state',
  ground: 'published',
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
    if (plan.kinds.includes('burnout')) {
      if (!markedAfter(entries, at, /^(acid-test|sample)/)) missing.push('an acid test of the oil');
      const drier = plan.graph.parts.find(
        (part) => isDrier(part) && !part.highSide && touched(plan.graph, part.index) && part.standing !== 'removed',
      );
      if (drier && !markedAfter(entries, at, /^read pressure-drop/)) missing.push(`the pressure drop of ${drier.name}`);
    } else if (
      plan.kinds.includes('conversion') &&
      plan.system.oil.before !== plan.system.oil.after &&
      plan.system.smallAppliance === null &&
      !markedAfter(entries, at, /^(acid-test|sample|clean|inspect|change-oil|replace-cores|renew|read pressure-drop)/)
    )
      missing.push('a look at strainers, oil and drier');
    if (missing.length === 0) return;
    whole.report(start, {
      message: `After this start no step asks for ${missing.join(' and ')}: plan a visit in the first days.`,
      slot: 'what',
    });
  },
});
