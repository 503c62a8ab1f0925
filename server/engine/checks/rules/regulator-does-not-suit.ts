import { wordSpan } from '../../plan/gather';
import type { Amount } from '../../plan/term';
import { isProblem, type Quantity, toQuantity } from '../../quantity';
import { weakest } from '../../takeoff/ratings';
import type { Entry } from '../../walk/walk';
import { statement } from '../course';
import { defineCheck, type Whole } from '../define';
import { gauge } from '../support';
import { bringToo, shopHas } from '../ways-out';

/** Nitrogen with no regulator, or with a relief that cannot be set between the test and the weakest part. */
export const regulatorDoesNotSuit = defineCheck({
  name: 'regulator-does-not-suit',
  severity: 'error',
  title: 'No regulator, or none that protects the weakest part',
  acceptable: false,
  reads: 'figure',
  ground: 'published',
  yieldsTo: ['pressure-above-rating'],
  meaning:
    'The plan states its stock and brings nitrogen without a regulator; or the regulator does not give the pressure that a test asks for; or its relief cannot be set above the test and below the weakest part that the gas reaches.',
  why: 'A full bottle stands above 2,000 psig and bursts anything on the job; the relief is what stands between a slipped hand and a burst coil.',
  source: 'ASHRAE 15: pressure-limiting device, relief and gauge at the outlet (handbook 6.4)',
  wrong: {
    base: 'split',
    plan: 'bring {\n  nitrogen 1 x n2-250\n  solvent 3 x shop-flush\n  recovery 1 x rc-30 empty\n  recovery-machine rm-2\n  pump vp-8 with 2 x vac-3-4\n  leak-detector A2L\n  refrigerant R-454B 10 lb\n}',
    instead: [['  bring {', '  bring { # <- here']],
  },
  right: { base: 'split' },
  plan(whole) {
    const bring = statement(whole.plan, 'bring');
    const items = whole.plan.bring;
    if (!bring || !items?.some((item) => item.word === 'nitrogen')) return;
    const uses = whole.entries.filter((entry) =>
      entry.events.some((event) => event.type === 'pressurises' || event.type === 'flows'),
    );
    if (uses.length === 0) return;
    const regulators = items.filter((item) => item.word === 'regulator');
    if (regulators.length === 0) {
      whole.reportAt(bring, wordSpan(bring), {
        message: 'Nitrogen is brought and no regulator: a full bottle bursts whatever it is joined to.',
        fixes: bringToo(whole.plan, serving(whole, uses)),
      });
      return;
    }
    const known = regulators.flatMap((item) =>
      item.declaration ? [limitsOf(whole, item.declaration.bound.block)] : [],
    );
    if (known.length < regulators.length) return;
    for (const entry of uses) {
      for (const event of entry.events) {
        if (event.type !== 'pressurises' || event.purpose !== 'test') continue;
        const faults = known.map(
          (limits) =>
            event.spaces
              .map((space) =>
                fault(whole, limits, event.level, weakest(whole.plan, entry.before, space.parts)?.limit ?? null),
              )
              .find((each) => each !== null) ?? null,
        );
        const [first] = faults;
        if (!first || faults.includes(null)) continue;
        whole.report(entry, { message: first, slot: 'level', root: 'relief' });
      }
    }
  },
});

/** A regulator of the shop that is good for every test, as a line of the list. */
function serving(whole: Whole, uses: readonly Entry[]): string | null {
  const name = shopHas(whole.plan, 'regulator', (each) => {
    const limits = limitsOf(whole, each.bound.block);
    return uses.every((entry) =>
      entry.events.every(
        (event) =>
          event.type !== 'pressurises' ||
          event.purpose !== 'test' ||
          event.spaces.every(
            (space) =>
              fault(whole, limits, event.level, weakest(whole.plan, entry.before, space.parts)?.limit ?? null) === null,
          ),
      ),
    );
  });
  return name === undefined ? null : `regulator ${name}`;
}

interface Limits {
  readonly outlet: number | null;
  readonly relief: Quantity | null;
}

function limitsOf(
  whole: Whole,
  block: readonly { word: { word: string } | null; values: Readonly<Record<string, unknown>> }[],
): Limits {
  const read = (word: string, slot: string): Quantity | null => {
    const amount = block.find((each) => each.word?.word === word)?.values[slot] as Amount | undefined;
    if (!amount?.literal) return null;
    const quantity = toQuantity(amount.literal, 'pressure', whole.plan.site.atmosphere);
    return isProblem(quantity) ? null : quantity;
  };
  return { outlet: read('outlet', 'pressure')?.high ?? null, relief: read('relief', 'range') };
}

function fault(whole: Whole, { outlet, relief }: Limits, level: number, limit: number | null): string | null {
  const say = (pressure: number): string => gauge(whole.plan, pressure);
  if (outlet !== null && level > outlet * 1.005)
    return `The regulator gives at most ${say(outlet)} and the test asks ${say(level)}.`;
  if (!relief) return null;
  if (relief.high < level)
    return `The relief behind the regulator opens at ${say(relief.high)}, below the test of ${say(level)}.`;
  if (limit !== null && level > limit * 1.005)
    return `Whatever the relief behind the regulator is set to, the test of ${say(level)} passes the ${say(limit)} that the weakest part in reach bears.`;
  if (limit !== null && relief.low > limit * 1.005)
    return `The relief behind the regulator cannot be set below ${say(limit)}, which the weakest part in reach bears: it opens at ${say(relief.low)} at the least.`;
  return null;
}
