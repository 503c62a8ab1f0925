import type { Part } from '../circuit/graph';
import type { Plan } from '../plan/plan';
import { between, exactly, type Quantity, show } from '../quantity';
import { includedLength } from '../reference/charging';
import type { Figure } from './figure';
import { lineAllowance, lineAllowanceInAll } from './figures';
import { computed, type Given, input, named } from './given';
import { noted } from './noted';
import type { FigureOptions } from './relation';

/**
 * What the liquid lines ask beyond the length that the charge includes, the sum first, each line by its own bore behind it.
 * The included length is used up by the longest line first, as makers count the main line before the branches. Empty where
 * the circuit has no liquid line, and where the charge is that of a machine which stays.
 */
export function lineCharge(plan: Plan, refrigerant: string, options: FigureOptions): readonly Figure[] {
  const { chargeCovers, lineAllowance: maker } = plan.system;
  // The charge of a machine that is repaired is that of the whole of it, its lines included, where nothing else is said.
  const stays = plan.kinds.length > 0 && plan.kinds.every((kind) => kind === 'repair' || kind === 'burnout');
  if (stays && !chargeCovers && !maker) return [];
  const lines = plan.graph.parts
    .filter((part) => part.kind.kind === 'liquid-line' && part.standing !== 'removed')
    .sort((a, b) => (b.properties.length ?? 0) - (a.properties.length ?? 0));
  const perLength = maker ? input(maker.quantity, 'plan', maker.amount.literal.text) : undefined;
  const [only] = lines;
  if (!only) return [];
  if (lines.length === 1) {
    const included = chargeCovers ? input(chargeCovers.quantity, 'plan', chargeCovers.amount.literal.text) : undefined;
    return [ofLine(only, refrigerant, included, perLength, options)];
  }
  let open = chargeCovers?.quantity ?? includedLength.quantity;
  const each = lines.map((line) => {
    const length = line.properties.length ?? 0;
    const part: Quantity = between('length', Math.min(open.low, length), Math.min(open.high, length));
    open = between('length', open.low - part.low, open.high - part.high);
    return ofLine(line, refrigerant, input(part, 'computed'), perLength, options);
  });
  const all = lineAllowanceInAll.figure('liquid lines', { lines: each.map((one) => computed(one)) }, options);
  const covered = chargeCovers
    ? `The ${chargeCovers.amount.literal.text} that the charge includes`
    : `The length that the charge includes is not stated; ${show(exactly('length', includedLength.quantity.low), options)} (${includedLength.source})`;
  const names = lines.map((line) => line.name).join(', ');
  return [noted(all, [`${covered}: used up by the longest line first, in the order ${names}.`]), ...each];
}

function ofLine(
  line: Part,
  refrigerant: string,
  included: Given | undefined,
  perLength: Given | undefined,
  options: FigureOptions,
): Figure {
  const { tube, length } = line.properties;
  return lineAllowance.figure(
    line.name,
    {
      refrigerant: named(refrigerant),
      bore: tube ? input(exactly('length', tube.bore), 'reference', tube.shown) : undefined,
      length: length === undefined ? undefined : input(exactly('length', length), 'plan'),
      included,
      perLength,
    },
    options,
  );
}
