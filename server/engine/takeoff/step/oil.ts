import { child } from '../../plan/bind';
import type { Plan } from '../../plan/plan';
import type { Amount, Name } from '../../plan/term';
import { between, exactly, type Quantity } from '../../quantity';
import { leftByDrain as usualLeft } from '../../reference/oil-limits';
import type { Figure } from '../figure';
import { oilLeft, oilRounds, oldOilShare } from '../figures';
import { type Given, input } from '../given';
import { filmOf, keepsOldOil } from '../line-run';
import { linesOf } from '../lines';
import { noted } from '../noted';
import { factOf } from '../stock-data';
import { type Context, quantityOf } from './context';

/** Oil that goes in, and as much used oil that comes out where it is changed. */
export function oiled(context: Context): void {
  const { plan, entry, options, figures, draws } = context;
  const { step, round } = entry.slot;
  const changes = step.word.word === 'change-oil';
  if (!changes && step.word.word !== 'add-oil') return;
  const to = step.values[changes ? 'to' : 'with'] as { readonly a: Name; readonly b?: Amount } | undefined;
  const volume = quantityOf(plan, to?.b);
  if (to && volume) {
    draws.push({ of: 'oil', oil: to.a.text, volume });
    if (changes) draws.push({ of: 'used-oil', oil: plan.system.oil.before ?? 'old', volume });
  }
  if (!changes) return;
  const leaving = step.values['leaving'] as Amount | undefined;
  const share = quantityOf(plan, leaving);
  const leftByDrain = share && leaving ? input(share, 'plan', leaving.literal.text) : undefined;
  const subject = plan.system.oil.before ?? 'old oil';
  figures.push(
    oilLeft.figure(subject, { leftByDrain, rounds: input(exactly('count', round ?? 1), 'plan') }, options),
    oilRounds.figure(subject, { leftByDrain, target: accepted(plan) }, options),
    ...byParts(context, share),
  );
}

/**
 * The old oil of the whole circuit after a round, part by part: what each compressor keeps, and the film on the walls of the
 * lines that stay, as thin as the rounds before have made it. It is one oil only after the run that follows; the film is taken
 * to come along with it.
 */
function byParts({ plan, entry, options }: Context, leaving: Quantity | null): readonly Figure[] {
  const { before } = plan.system.oil;
  if (before === null) return [];
  const machines = plan.graph.parts.filter(
    (part) => part.kind.kind === 'compressor' && entry.after.parts[part.index]!.mounted !== 'none',
  );
  // A machine whose oil nobody states leaves the share open.
  if (machines.length === 0 || machines.some((part) => part.properties.oil === undefined)) return [];
  const kept = machines.map((part) => {
    const { residue } = entry.after.parts[part.index]!;
    const volume = part.properties.oil!.volume;
    return { name: part.name, volume, old: residue.oil === null ? 0 : volume * residue.share };
  });
  const thin = (leaving?.high ?? usualLeft.quantity.high) ** Math.max(0, (entry.slot.round ?? 1) - 1);
  const films = linesOf(plan)
    .filter((part) => keepsOldOil(plan, part) && entry.after.parts[part.index]!.residue.oil !== null)
    .flatMap((part) => {
      const film = filmOf(part, options);
      if (!film.quantity) return [];
      const old = between('volume', film.quantity.low * thin, film.quantity.high * thin);
      return [
        input(old, 'computed', undefined, `film in ${part.name}${thin < 1 ? ', thinned by the rounds before' : ''}`),
      ];
    });
  const fresh = kept.reduce((sum, each) => sum + each.volume - each.old, 0);
  const share = oldOilShare.figure(
    `${before} in the circuit`,
    {
      residues: [...kept.map(({ name, old }) => input(exactly('volume', old), 'computed', undefined, name)), ...films],
      fresh: input(exactly('volume', fresh), 'computed'),
    },
    options,
  );
  return [
    noted(share, [
      'Once the machine has run: until then each compressor has its own share, and the film stays on the walls.',
    ]),
  ];
}

/** What the house rules accept of old oil. */
function accepted(plan: Plan): Given | undefined {
  for (const rules of plan.rules) {
    const bound = child(rules.bound.block, 'oil');
    if (!bound || (bound.values['oil'] as Name | undefined)?.text !== plan.system.oil.before) continue;
    const found = factOf(bound, 'most', plan);
    if (found) return found;
  }
  return undefined;
}
