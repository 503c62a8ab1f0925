import { defineCheck } from '../define';
import { bringing } from '../example-stock';
import { burns, newFacts, oldFacts } from '../plant-facts';
import { brought, listOf, spotOf } from '../stock';
import { bringInstead, shopHas } from '../ways-out';

/** A vacuum pump that is not made for a gas that burns. */
export const pumpDoesNotSuit = defineCheck({
  name: 'pump-does-not-suit',
  severity: 'error',
  title: 'The vacuum pump is not made for this class',
  acceptable: false,
  reads: 'figure',
  ground: 'practice',
  meaning:
    'The refrigerant that was or will be in the circuit burns, and the pump that is brought does not list its class.',
  why: 'A brush motor or a switch in the pump lights what it draws off or what leaks beside it.',
  source: 'equipment manuals for classes A2L and A3 (common practice)',
  wrong: {
    base: 'split',
    plan: bringing('pump vp-old # <- here'),
    file: 'pump vp-old {\n  flow 6 cfm\n  ultimate 25 micron\n  suits A1\n}',
  },
  right: { base: 'split', plan: bringing('pump vp-8 with 2 x vac-3-4') },
  plan(whole) {
    const { plan } = whole;
    if (!whole.entries.some((entry) => entry.events.some((event) => event.type === 'evacuates'))) return;
    const facts = [newFacts(plan), oldFacts(plan)].find((each) => burns(each) > 0);
    if (!facts?.safetyClass) return;
    const pumps = brought(plan, 'pump').filter((each) => listOf(each.declaration, 'suits', 'classes'));
    if (pumps.some((each) => listOf(each.declaration, 'suits', 'classes')!.includes(facts.safetyClass!))) return;
    const [pump] = pumps;
    if (pump)
      whole.reportAt(pump.bound, spotOf(pump), {
        message: `${pump.name} is made for ${listOf(pump.declaration, 'suits', 'classes')!.join(', ')}, and ${facts.name} is ${facts.safetyClass}: bring a pump that is made for it.`,
        fixes: bringInstead(
          pump,
          shopHas(plan, 'pump', (each) => listOf(each, 'suits', 'classes')?.includes(facts.safetyClass!) ?? false),
        ),
      });
  },
});
