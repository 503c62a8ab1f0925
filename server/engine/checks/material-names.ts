import type { Finding } from '../finding';
import { oilFamilies } from '../plan/assemble';
import { Gather } from '../plan/gather';
import { isRefrigerant } from '../plan/refrigerants';
import type { Declaration, Scope } from '../plan/scope';
import { namesIn } from './support';

const shop = new Set(['solvent', 'recovery-machine', 'oil', 'house-rules']);

/** Oils and refrigerants that the shop's own files name and nobody knows: what a sheet "suits" must be something. */
export function materialNames(declarations: readonly Declaration[], scope: Scope): readonly Finding[] {
  const found: Finding[] = [];
  for (const { kind, bound, file } of declarations) {
    if (!shop.has(kind)) continue;
    const gather = new Gather(file);
    const oils = [...oilFamilies, ...scope.names('oil')];
    for (const statement of bound.block) {
      for (const [, name] of namesIn(statement.values)) {
        const at = { from: name.from, to: name.to };
        if (name.refers === 'oil' && !oils.includes(name.text))
          gather.unknownName('oil', name.text, statement, at, oils);
        if (name.refers === 'refrigerant' && !isRefrigerant(name.text))
          gather.unknownRefrigerant(name.text, statement, at);
      }
    }
    found.push(...gather.findings);
  }
  return found;
}
