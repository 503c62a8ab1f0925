import { adjustsCharge, firstStart, isCharge } from '../course';
import { defineCheck, type WayOut, type Whole } from '../define';
import { changesRefrigerant } from '../plant-facts';
import { amount } from '../support';
import { insertAfter } from '../ways-out';

/** A conversion's first charge, short on purpose, that no step brings up to what the machine takes. */
export const firstChargeNotTrimmed = defineCheck({
  name: 'first-charge-not-trimmed',
  severity: 'warning',
  title: 'The short first charge of a conversion is never trimmed',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The refrigerant of a kept machine changes, less is weighed in than the old charge, and no later step adjusts the charge with the machine running. A charge that a sheet gives by weight (per) is not meant.',
  why: 'The first charge is short so that nothing overfills before anybody has seen it run: left like that the machine starves, and oil stays out in the system.',
  source:
    'trade guides on conversions, from memory (handbook 9.3, 13.3): start short, then trim by the sight glass or superheat',
  wrong: {
    base: 'rack',
    instead: [
      ['charge system with R-448A 50 lb as liquid', 'charge system with R-448A 50 lb as liquid # <- here'],
      ['adjust charge with R-448A to level after 15 min, at most 58 lb\n', ''],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const { plan, entries } = whole;
    const old = plan.system.recoverCharge?.quantity;
    if (!old || old.low <= 0 || !changesRefrigerant(plan) || !plan.kinds.includes('conversion')) return;
    const at = entries.findIndex(isCharge);
    const entry = entries[at];
    if (!entry || typeof entry.slot.step.values['per'] === 'string') return;
    if (entries.slice(at).some(adjustsCharge)) return;
    const [mass, refrigerant] = weighed(entries);
    if (mass === null || refrigerant === null || mass >= old.low) return;
    whole.report(entry, {
      message: `${amount(plan, 'mass', mass)} of ${refrigerant} go in, ${Math.round((100 * mass) / old.high)} % of the old charge of ${amount(plan, 'mass', old.high)}, and no later step trims it: adjust the charge once the machine runs steadily.`,
      slot: 'with',
      root: entry.slot.step,
      fixes: trimmed(whole, refrigerant, amount(plan, 'mass', old.high)),
    });
  },
});

type Entries = Whole['entries'];

/** What all charging steps weigh in together, and of what; null where a step does not say how much. */
function weighed(entries: Entries): readonly [number | null, string | null] {
  const all = entries.flatMap((entry) =>
    entry.events.flatMap((event) => (event.type === 'charges' && event.purpose === 'charge' ? [event] : [])),
  );
  const mass = all.reduce<number | null>(
    (sum, { mass: each }) => (sum === null || each === null ? null : sum + each.high),
    0,
  );
  return [mass, all[0]?.refrigerant ?? null];
}

/** Trimmed after the start, up to the old charge. */
function trimmed({ entries, plan }: Whole, refrigerant: string, most: string): readonly WayOut[] {
  const start = entries[firstStart(entries)];
  const stands = (kind: string): boolean => plan.graph.parts.some((part) => part.kind.kind === kind);
  const by = stands('sight-glass') ? ' to sight-glass clear' : stands('receiver') ? ' to level' : '';
  return start
    ? [
        insertAfter(
          'Trim the charge after the start',
          start.slot.step,
          `adjust charge with ${refrigerant}${by} after 15 min, at most ${most}`,
        ),
      ]
    : [];
}
