import { wordSpan } from '../../plan/gather';
import type { Event } from '../../steps/events';
import { defineCheck, type WayOut, type Whole } from '../define';

/** What happens to refrigerant, of whatever kind. */
const handled: readonly Event['type'][] = ['recovers', 'pumps-down', 'evacuates', 'charges', 'adjusts', 'starts'];

/** Refrigerant is recovered, let in or run, and the plan does not say which. */
export const refrigerantNotStated = defineCheck({
  name: 'refrigerant-not-stated',
  severity: 'error',
  title: 'The plan does not say what runs in the system',
  acceptable: false,
  reads: 'state',
  ground: 'published',
  meaning:
    'A step recovers, pumps down, evacuates, charges, adjusts or starts, and `system` states no refrigerant. Level of recovery, cylinders, certificate, pressures, ventilation, oil and charge all hang on it, and nothing can be held against anything without it.',
  why: 'Somebody guesses on the roof, and every check that needs the refrigerant is silent.',
  source: 'handbook 2.1, 2.2 and 7.2: levels, certificates and pressures are by refrigerant',
  wrong: {
    base: 'split',
    instead: [['system {\n    refrigerant R-22 -> R-454B\n', 'system { # <- here\n']],
  },
  right: { base: 'split' },
  plan(whole) {
    const { before, after } = whole.plan.system.refrigerant;
    if (before !== null || after !== null) return;
    const entry = whole.entries.find(({ events }) => events.some(({ type }) => handled.includes(type)));
    if (!entry) return;
    const at = whole.plan.system.bound ?? whole.plan.declaration.bound;
    whole.reportAt(at, wordSpan(at), {
      message: (say) =>
        `${say.step(entry.cause)} handles refrigerant, and the plan does not say which: write "refrigerant" with its name in "system"; levels, cylinders, pressures and charge hang on it.`,
      fixes: named(whole),
      related: [{ cause: entry.cause, message: 'refrigerant is handled here' }],
    });
  },
});

/** The refrigerant that a new unit holds or a step charges, where all of them name one. */
function named({ plan, entries }: Whole): readonly WayOut[] {
  const names = new Set([
    ...plan.graph.parts.flatMap((part) => part.properties.holds?.refrigerant ?? []),
    ...entries.flatMap((entry) =>
      entry.events.flatMap((event) => (event.type === 'charges' && event.refrigerant !== '' ? event.refrigerant : [])),
    ),
  ]);
  const { bound } = plan.system;
  const [name] = names;
  if (name === undefined || names.size > 1 || !bound) return [];
  return [{ title: `State ${name}`, edits: (mend) => [mend.addTo(bound, `refrigerant ${name}`)] }];
}
