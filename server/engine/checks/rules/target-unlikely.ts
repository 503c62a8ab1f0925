import type { Plan } from '../../plan/plan';
import type { Quantity } from '../../quantity';
import { orificeSuperheat, subcoolingDefault, valveSuperheat, valveSuperheatVerifier } from '../../reference/charging';
import { fahrenheitDifference } from '../../reference/table-units';
import { defineCheck } from '../define';
import { hasExpansionValve, judgedBy } from '../plant';
import { amount, shown } from '../support';

/** Plates ask between a few degrees and a large subcooler's twenty or so; beyond these a figure slipped (common practice, no source). */
const subcoolingLeast = 2 * fahrenheitDifference;
const subcoolingMost = 30 * fahrenheitDifference;

/** Superheat or subcooling that no machine is set to. */
export const targetUnlikely = defineCheck({
  name: 'target-unlikely',
  severity: 'warning',
  title: 'A superheat or subcooling that no machine is set to',
  acceptable: true,
  noFix: 'The target stands on the plate or the sheet, and only whoever reads that again knows it.',
  reads: 'figure',
  ground: 'published',
  meaning:
    'The superheat of an expansion valve is to lie outside 3 to 26 °F, that at a fixed orifice outside 5 to 45 °F, or a subcooling outside 2 to 30 °F, in the `system` or at the step that adjusts. Silent where the sheet is cited with `per`.',
  why: 'The crew charges or turns the valve until the gauge shows it: liquid comes back to the compressor, or the condenser fills up and the machine is overcharged.',
  source: `${valveSuperheatVerifier.source}; ${orificeSuperheat.source} (handbook 9.2); ends of the subcooling: common practice, no source`,
  wrong: {
    base: 'rack',
    instead: [
      [
        'adjust superheat of txv-1, txv-2 after 15 min',
        'adjust superheat of txv-1, txv-2 to 60 Δ°F, after 15 min # <- here',
      ],
    ],
  },
  right: {
    base: 'rack',
    instead: [
      ['adjust superheat of txv-1, txv-2 after 15 min', 'adjust superheat of txv-1, txv-2 to 8 Δ°F, after 15 min'],
    ],
  },
  plan(whole) {
    const { superheat, subcooling } = whole.plan.system;
    for (const [what, stated] of [
      ['superheat', superheat],
      ['subcooling', subcooling],
    ] as const) {
      const wrong = stated && stated.per === null ? offOf(whole.plan, what, stated.quantity) : null;
      if (wrong) whole.reportAt(stated!.bound, stated!.span, { message: wrong });
    }
  },
  step(here) {
    if (here.per !== null) return;
    for (const event of here.events('adjusts')) {
      if (event.to === null || typeof event.to === 'string') continue;
      const what = judgedBy(here.plan, event.what);
      const wrong = offOf(here.plan, what, event.to);
      if (wrong) here.report({ message: wrong, slot: 'to' });
    }
  },
});

/** What speaks against a target; null where nothing does. */
function offOf(plan: Plan, what: 'superheat' | 'subcooling', target: Quantity): string | null {
  const { least, most, usual, source } = bandOf(plan, what);
  if (target.low >= least * 0.999 && target.high <= most * 1.001) return null;
  const end = target.high > most ? `more than ${degrees(plan, most)}` : `less than ${degrees(plan, least)}`;
  return `A ${what} of ${shown(plan, target)} is no target of a machine: ${end} is a slip, usual is ${shown(plan, usual)} (${source}); read the plate again, or cite the sheet.`;
}

interface Band {
  readonly least: number;
  readonly most: number;
  readonly usual: Quantity;
  readonly source: string;
}

function bandOf(plan: Plan, what: 'superheat' | 'subcooling'): Band {
  const [least, most, usual] =
    what === 'subcooling'
      ? [subcoolingLeast, subcoolingMost, subcoolingDefault]
      : hasExpansionValve(plan)
        ? [valveSuperheatVerifier.quantity.low, valveSuperheatVerifier.quantity.high, valveSuperheat]
        : [orificeSuperheat.quantity.low, orificeSuperheat.quantity.high, orificeSuperheat];
  return { least, most, usual: usual.quantity, source: usual.source };
}

const degrees = (plan: Plan, difference: number): string => amount(plan, 'temperature-difference', difference);
