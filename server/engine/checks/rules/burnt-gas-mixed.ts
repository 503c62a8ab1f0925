import type { BringItem } from '../../plan/plan';
import type { Entry } from '../../walk/walk';
import { defineCheck } from '../define';
import { bringing } from '../example-stock';
import { cylinderFor } from '../stock';
import { bringMore } from '../ways-out';

/** Gas of a burnout, and gas that is still good, in one cylinder. */
export const burntGasMixed = defineCheck({
  name: 'burnt-gas-mixed',
  severity: 'warning',
  title: 'Burnt gas goes to good gas',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'In a burnout, gas of a part that was shut off with its acid, and the rest of the charge, go into one cylinder.',
  why: 'Acid spoils what could have been cleaned and used again; the whole cylinder must go to be reclaimed.',
  source: 'common practice, no source',
  wrong: {
    base: 'rack',
    plan: `kind conversion, burnout\n${bringing('recovery 1 x rc-125 empty')}`,
    instead: [
      [
        'lock-out power\n',
        'close valve-s, valve-d\n  lock-out comp\n  recover comp to 0 inHg\n  open valve-s, valve-d\n  lock-out power\n',
      ],
      ['recover system to 0 inHg', 'recover system to 0 inHg # <- here'],
    ],
  },
  right: { base: 'rack', plan: bringing('recovery 1 x rc-125 empty') },
  plan(whole) {
    const { plan } = whole;
    if (!plan.kinds.includes('burnout')) return;
    const burnt = new Map<BringItem, Entry>();
    for (const entry of whole.entries) {
      for (const event of entry.events) {
        if (event.type !== 'recovers' || event.spaces.length === 0) continue;
        const item = cylinderFor(plan, event.into);
        if (!item || item.number > 1) continue;
        const parts = event.spaces.flatMap((space) => space.parts);
        // A compressor shut off on its own is the burnt one; a burnout in which all is recovered at once has no good gas.
        const alone =
          parts.length < plan.graph.parts.length / 2 &&
          parts.some((part) => plan.graph.parts[part]!.kind.kind === 'compressor');
        const before = burnt.get(item);
        if (alone) burnt.set(item, before ?? entry);
        else if (before)
          whole.report(entry, {
            message: (say) =>
              `${item.label ?? item.name} holds burnt gas since ${say.step(before.cause)}: recover the rest into another cylinder.`,
            slot: 'into',
            fixes: bringMore(item, 2),
            related: [{ cause: before.cause, message: 'burnt gas goes in here' }],
          });
      }
    }
  },
});
