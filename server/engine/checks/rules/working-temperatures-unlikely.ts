import type { Plan, Stated } from '../../plan/plan';
import { refrigerantNamed } from '../../properties';
import { fahrenheit, fahrenheitDifference } from '../../reference/table-units';
import { defineCheck } from '../define';
import { statedEquipment } from '../equipment';
import { systemSpot } from '../plant-facts';
import { amount, shown } from '../support';

/** No machine works with less between its two coils: the metering device would not feed (common practice, no source). */
const leastBetween = 30 * fahrenheitDifference;

/** Warmer than this nothing is kept cool: rooms ask some 45 °F, stored goods far less (common practice, no source). */
const evaporatingMost = { stored: fahrenheit(50), any: fahrenheit(65) };
const storing: ReadonlySet<string> = new Set(['cold-storage', 'supermarket', 'condensing-unit', 'transport']);

/** No air and no cooling water that a machine gives its heat to asks more; what heats water goes highest (common practice, no source). */
const condensingMost = { stored: fahrenheit(150), any: fahrenheit(185) };

/** Evaporating and condensing temperatures between which no machine works. */
export const workingTemperaturesUnlikely = defineCheck({
  name: 'working-temperatures-unlikely',
  severity: 'warning',
  title: 'Working temperatures that no such machine has',
  acceptable: true,
  noFix: 'The temperature is that of the machine, and only whoever reads its sheet again knows it.',
  reads: 'figure',
  ground: 'practice',
  meaning:
    'The condensing temperature of the `system` lies less than 30 °F above the evaporating temperature, or below it; or the machine is to evaporate above 65 °F, or above 50 °F where it is stated to keep goods cold; or to condense above 185 °F, above 150 °F where it keeps goods cold, or above the critical temperature of its refrigerant. Silent where the sheet is cited with `per`.',
  why: 'Velocities, pressure drops and the return of the oil are reckoned between the two: with a slip in either of them, or in its unit, every figure of the lines is wrong.',
  source: 'limits: common practice, no source; usual temperatures of the two sides in handbook 9.2',
  wrong: {
    base: 'split',
    instead: [['subcooling 10 Δ°F', 'subcooling 10 Δ°F\n    evaporating 45 degF\n    condensing 10 degF # <- here']],
  },
  right: {
    base: 'split',
    instead: [['subcooling 10 Δ°F', 'subcooling 10 Δ°F\n    evaporating 45 degF\n    condensing 110 degF']],
  },
  plan(whole) {
    const { plan } = whole;
    const { evaporating, condensing } = plan.system;
    if (evaporating?.per != null || condensing?.per != null) return;
    const critical = condensing && (overCritical(plan, condensing) ?? tooHot(plan, condensing));
    if (critical) {
      whole.reportAt(condensing.bound, condensing.span, { message: critical });
      return;
    }
    const warm = evaporating && tooWarm(plan, evaporating);
    if (warm) whole.reportAt(evaporating.bound, evaporating.span, { message: warm });
    // With a slip in the one, the distance to the other says nothing more.
    else if (evaporating && condensing && condensing.quantity.high - evaporating.quantity.low < leastBetween * 0.999) {
      const below = condensing.quantity.high <= evaporating.quantity.low;
      const [bound, span] = systemSpot(plan, 'evaporating');
      whole.reportAt(condensing.bound, condensing.span, {
        message: `It is to condense at ${shown(plan, condensing.quantity)} and to evaporate at ${shown(plan, evaporating.quantity)}: ${below ? 'heat does not go that way' : `less than ${amount(plan, 'temperature-difference', leastBetween)} between the two drives no metering device`} (common practice, no source); read both again, unit and sign too.`,
        related: [{ bound, span, message: 'the evaporating temperature' }],
      });
    }
  },
});

/** What is said of a machine that is to condense where its refrigerant has no liquid; carbon dioxide is cooled as gas there. */
function overCritical(plan: Plan, { quantity }: Stated): string | null {
  const tables = refrigerantNamed(plan.system.refrigerant.after ?? '');
  if (!tables || tables.name === 'R-744' || quantity.high <= tables.critical.temperature) return null;
  return `It is to condense at ${shown(plan, quantity)}, and above ${amount(plan, 'temperature', tables.critical.temperature)} ${plan.system.refrigerant.after} has no liquid (its critical temperature): read figure and unit again.`;
}

/** What is said of a machine that is to condense hotter than any of its kind; null where it is not. */
function tooHot(plan: Plan, { quantity }: Stated): string | null {
  const stores = storesGoods(plan);
  const most = stores ? condensingMost.stored : condensingMost.any;
  if (quantity.high <= most * 1.0001) return null;
  return `It is to condense at ${shown(plan, quantity)}: ${stores ? 'a machine that keeps goods cold does not go above' : 'no such machine goes above'} ${amount(plan, 'temperature', most)} (common practice, no source); read figure and unit again.`;
}

function storesGoods(plan: Plan): boolean {
  const equipment = statedEquipment(plan);
  return equipment !== null && storing.has(equipment);
}

/** What is said of a machine that is to evaporate warmer than any of its kind; null where it is not. */
function tooWarm(plan: Plan, { quantity }: Stated): string | null {
  const stores = storesGoods(plan);
  const most = stores ? evaporatingMost.stored : evaporatingMost.any;
  if (quantity.high <= most * 1.0001) return null;
  return `It is to evaporate at ${shown(plan, quantity)}: ${stores ? 'a machine that keeps goods cold' : 'no machine that cools'}${stores ? ' does not go above' : ' goes above'} ${amount(plan, 'temperature', most)} (common practice, no source); read figure, sign and unit again.`;
}
