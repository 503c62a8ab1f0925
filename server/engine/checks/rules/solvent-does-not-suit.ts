import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import type { Plan } from '../../plan/plan';
import { isRefrigerant } from '../../plan/refrigerants';
import type { Declaration } from '../../plan/scope';
import type { Name } from '../../plan/term';
import type { Entry } from '../../walk/walk';
import { defineCheck, type WayOut, type Whole } from '../define';
import { oilFamily } from '../plant-facts';
import { isPast, listOf, statementOf } from '../stock';
import { shopHas, writeAt } from '../ways-out';

/** Another solvent on the shop's shelf, which suits the examples. */
export const secondSolvent = `solvent line-flush {
  density 1.3 kg/L
  boils 110 degF
  removes mineral, alkylbenzene, POE
  suits R-22, R-454B
  container 12 lb, upright
}`;

/** A solvent that does not take the oil away, or must not meet the refrigerant. */
export const solventDoesNotSuit = defineCheck({
  name: 'solvent-does-not-suit',
  severity: 'warning',
  title: 'The solvent does not suit the oil or the refrigerant',
  acceptable: true,
  reads: 'figure',
  ground: 'published',
  meaning:
    'The sheet of the solvent does not list the oil that is to be washed out, or a refrigerant that it will meet.',
  why: 'The oil stays in the line however often it is flushed, or traces of solvent react with the new charge.',
  source: 'the data sheet of the solvent, as the shop declares it',
  wrong: {
    base: 'split',
    file: secondSolvent,
    instead: [
      ['removes mineral, alkylbenzene, POE, PVE, PAG', 'removes POE, PVE'],
      ['  solvent shop-flush\n', '  solvent shop-flush # <- here\n'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const { plan } = whole;
    for (const { solvent, entry } of solventsUsed(whole)) {
      const wrong = unlisted(plan, solvent);
      if (wrong.length > 0)
        reportSolvent(
          whole,
          entry,
          `${solvent.name} ${[...new Set(wrong)].join(' and ')}: take a solvent whose sheet does.`,
        );
    }
  },
});

/** What the sheet of a solvent does not list of what the job asks. */
function unlisted(plan: Plan, solvent: Declaration): readonly string[] {
  const oils = listOf(solvent, 'removes', 'oils');
  const gases = listOf(solvent, 'suits', 'refrigerants');
  const old = oilFamily(plan, plan.system.oil.before);
  return [
    ...(oils && old && !oils.includes(old) && !oils.includes(plan.system.oil.before ?? '')
      ? [`does not list ${old} oil among what it removes`]
      : []),
    ...[plan.system.refrigerant.before, plan.system.refrigerant.after].flatMap((each) =>
      gases && each && isRefrigerant(each) && !gases.includes(each) ? [`does not list ${each}`] : [],
    ),
  ];
}

/** Another solvent of the shop, whose sheet lists all that the job asks, that is fresh, and that does not burn. */
function anotherSolvent(whole: Whole, entry: Entry): readonly WayOut[] {
  const { plan } = whole;
  const name = shopHas(
    plan,
    'solvent',
    (each) =>
      listOf(each, 'removes', 'oils') !== null &&
      unlisted(plan, each).length === 0 &&
      !statementOf(each, 'flammable') &&
      !isPast(statementOf(each, 'use-by')?.values['day'] as string | undefined, plan.day),
  );
  if (name === undefined) return [];
  const { step } = entry.slot;
  if (step.values['with']) return writeAt(step, step.values['with'], name, `Flush with ${name}`);
  const line = child(plan.declaration.bound.block, 'solvent');
  const span = line?.spans['solvent'];
  return line && span ? [{ title: `Flush with ${name}`, edits: (mend) => [mend.change(line, span, name)] }] : [];
}

/** The solvents that flushes use, each once, with the first step that does. */
export function solventsUsed(whole: Whole): readonly { readonly solvent: Declaration; readonly entry: Entry }[] {
  const found = new Map<Declaration, Entry>();
  for (const entry of whole.entries) {
    // On the bench, too, the solvent has to take the oil away, and traces of it meet the charge.
    const isUsed = entry.events.some(
      (event) =>
        (event.type === 'flows' && event.medium === 'solvent') || (event.type === 'cleans' && event.parts.length > 0),
    );
    if (!isUsed) continue;
    const name = entry.slot.step.values['with'] as Name | undefined;
    const solvent = name ? whole.plan.scope.find('solvent', name.text) : whole.plan.parameters.solvent;
    if (solvent && !found.has(solvent)) found.set(solvent, entry);
  }
  return [...found].map(([solvent, entry]) => ({ solvent, entry }));
}

/** At the step that names the solvent, or at the plan's own line. */
export function reportSolvent(
  whole: Whole,
  entry: Entry,
  message: string,
  fixes: readonly WayOut[] = anotherSolvent(whole, entry),
): void {
  const line = child(whole.plan.declaration.bound.block, 'solvent');
  if (entry.slot.step.values['with'] || !line) whole.report(entry, { message, slot: 'with', fixes });
  else
    whole.reportAt(line, line.spans['solvent'] ?? wordSpan(line), {
      message,
      related: [{ cause: entry.cause, message: 'used here' }],
      fixes,
    });
}
