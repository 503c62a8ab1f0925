import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { createGrammar, type Item, type Tree } from '../../grammar/index';

const folder = join(__dirname, '../fixtures/samples');

/** The sample plans by name. */
export const samples: readonly (readonly [name: string, text: string])[] = readdirSync(folder)
  .filter((name) => name.endsWith('.jobplan'))
  .map((name) => [name, readFileSync(join(folder, name), 'utf8')] as const);

/** Spellings enough for the samples, with the odd ones among them; the grammar is handed its units from outside. */
export const units = [
  ...['in', 'ft', 'ft2', 'ft3', 'lb', 'oz', 'fl-oz', 'fl-oz/min', 'kg', 'kg/L', 'g', 's', 'min', 'h', 'days', 'weeks'],
  ...['psig', 'psia', 'psi', 'kPa', 'kPa gauge', 'inHg', 'micron', 'cfh', 'cfm', '°F', 'degF', 'Δ°F', 'deltaF', '%'],
  ...['Btu/h', 'N·m', 'mgKOH/g'],
];

export const grammar = createGrammar(units);

/** Every fault of a tree as `name@offset`, in the order of the text. */
export function faultsOf(tree: Tree): string[] {
  const found: string[] = [];
  const visit = (items: readonly Item[], start: number) => {
    let at = start;
    for (const item of items) {
      for (const fault of item.faults) found.push(`${fault.name}@${at + fault.from}`);
      if (item.kind === 'statement' && item.block !== null) {
        visit(item.block.items, at + item.head.reduce((sum, token) => sum + token.text.length, 0));
      }
      at += item.length;
    }
  };
  visit(tree.items, tree.mark.length);
  return found;
}
