import type { Plant } from '../../circuit/state';
import { stated } from '../../plan/gather';
import type { BringItem } from '../../plan/plan';
import type { Name } from '../../plan/term';
import { exactly } from '../../quantity';
import { safeFill } from '../../takeoff/figures/safe-fill';
import { input, named } from '../../takeoff/given';
import type { Entry } from '../../walk/walk';
import { defineCheck, type Whole } from '../define';
import { bringing } from '../example-stock';
import { aboveZero } from '../plant';
import { cylinderFor, figureOf, houseLimit } from '../stock';
import { amount } from '../support';
import { bringMore } from '../ways-out';

/** What a cylinder may take, as a message cites it (`netFill`). */
const fillSource = '0.80 of its water capacity times the specific gravity: AHRI Guideline K';

/** More gas than the cylinder may hold. */
export const recoveryCylinderOverfilled = defineCheck({
  name: 'recovery-cylinder-overfilled',
  severity: 'error',
  title: 'The recovery cylinders are too small for the charge',
  acceptable: false,
  reads: 'figure',
  ground: 'published',
  meaning:
    'The charge of the machine, with what the cylinders hold already, is more than their safe fill, or than the fill that the house rules allow.',
  why: 'A cylinder full of liquid bursts when it warms up: there is no gas left in it that could give way.',
  source: 'AHRI Guideline K; 49 CFR 173.304 (handbook 2.3)',
  wrong: {
    base: 'split',
    plan: bringing('recovery 1 x rc-30 holding R-22 20 lb'),
    instead: [['recover system to 0 inHg', 'recover system to 0 inHg # <- here']],
  },
  right: { base: 'split', plan: bringing('recovery 1 x rc-30 empty') },
  plan(whole) {
    const { plan } = whole;
    const overfull = overfullItems(whole);
    const charge = plan.system.recoverCharge?.quantity.high;
    if (charge === undefined) return;
    // The charge goes where the step that reaches most of the circuit puts it; what other steps recover is little.
    let most: {
      readonly entry: Entry;
      readonly item: BringItem;
      readonly refrigerant: string;
      readonly parts: number;
    } | null = null;
    for (const entry of whole.entries) {
      for (const event of entry.events) {
        if (event.type !== 'recovers') continue;
        const item = cylinderFor(plan, event.into);
        const refrigerant = event.held[0]?.refrigerant;
        const parts = event.spaces.reduce((sum, space) => sum + space.parts.length, 0);
        if (item && refrigerant && parts > (most?.parts ?? 0)) most = { entry, item, refrigerant, parts };
      }
    }
    if (!most || most.parts * 2 < plan.graph.parts.length || overfull.has(most.item)) return;
    const { entry, item, refrigerant } = most;
    // What was pumped down, or stands behind a shut valve, stays where it is.
    if (staysIn(entry.after, refrigerant)) return;
    const water = figureOf(plan, item.declaration, 'water-capacity', 'mass');
    if (!water) return;
    const house = houseLimit(plan, 'recovery-cylinder', 'fill');
    const each = safeFill.figure(item.name, {
      refrigerant: named(refrigerant),
      waterCapacity: input(water),
      ...(house && { fillShare: input(exactly('share', house.quantity.high)) }),
    }).quantity?.low;
    if (each === undefined) return;
    const held = stated(item.bound, 'mass', plan.site.atmosphere)?.quantity.high ?? 0;
    const room = each * item.number - held;
    if (charge <= room * 1.005) return;
    whole.report(entry, {
      message: `${amount(plan, 'mass', charge)} of ${refrigerant} come out here, and ${item.number > 1 ? `${item.number} x ` : ''}${item.label ?? item.name} ${held > 0 ? `with ${amount(plan, 'mass', held)} in it ` : ''}may take ${amount(plan, 'mass', Math.max(0, room))}${house ? ` by the house limit of ${amount(plan, 'share', house.quantity.high)}` : ` (${fillSource})`}: bring more or larger cylinders.`,
      slot: 'into',
      fixes: bringMore(item, Math.ceil((charge + held) / each)),
      related: [
        { bound: item.bound, message: 'what is brought' },
        ...(house ? [{ bound: house.bound, file: house.file, message: 'the house limit' }] : []),
      ],
    });
  },
});

/** Whether liquid of the refrigerant is left somewhere once the step is done; a part that is yet to come holds none. */
const staysIn = (plant: Plant, refrigerant: string): boolean =>
  plant.parts.some(
    ({ contents, mounted }) =>
      mounted !== 'none' &&
      contents.some((held) => held.refrigerant === refrigerant && held.liquid && aboveZero(plant, held)),
  );

/** Cylinders that are brought with more in them than they may ever hold: told where it is stated. */
function overfullItems(whole: Whole): ReadonlySet<BringItem> {
  const { plan } = whole;
  const found = new Set<BringItem>();
  for (const item of plan.bring ?? []) {
    const held = item.word === 'recovery' ? stated(item.bound, 'mass', plan.site.atmosphere) : null;
    const holding = item.bound.values['holding'] as Name | undefined;
    const water = figureOf(plan, item.declaration, 'water-capacity', 'mass');
    if (!held || !holding || !water) continue;
    const most = safeFill.figure(item.name, { refrigerant: named(holding.text), waterCapacity: input(water) }).quantity;
    if (!most || held.quantity.high <= most.low * Math.max(1, item.number) * 1.005) continue;
    found.add(item);
    whole.reportAt(item.bound, held.span, {
      message: `${item.number > 1 ? `${item.number} x ` : ''}${item.name} cannot hold ${held.amount.literal.text} of ${holding.text}: at most ${amount(plan, 'mass', most.low)} ${item.number > 1 ? 'each ' : ''}may be in it (${fillSource}).`,
    });
  }
  return found;
}
