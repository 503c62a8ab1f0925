import type { Amount as Authored, Name } from '../../../plan/term';
import { textLine } from '../../construct';
import type { StepLine } from '../../document';
import { sentence } from '../../sentence';
import type { Here } from '../here';
import { inBlock } from '../sheet';

/** What the author expects, notes of the author, and the maker's sheet that the step's limits come from. */
export function authorLines(here: Here): readonly StepLine[] {
  const expected = inBlock(here.step, 'expect').flatMap((bound): StepLine[] => {
    const amount = bound.values['amount'] as Authored | undefined;
    const within = bound.values['within'] as Authored | undefined;
    if (!amount) return [];
    const what = (bound.values['what'] as Name).text;
    return [
      textLine('Expected', [
        ...sentence(`${what} `, here.ruler.authored(amount)),
        ...(within ? sentence(', within ', here.ruler.authored(within)) : []),
      ]),
    ];
  });
  const notes = inBlock(here.step, 'note').map((bound) => textLine('Note', String(bound.values['text'] ?? '')));
  const per = here.value<string>('per');
  return [...expected, ...(per ? [textLine('Limit per', per)] : []), ...notes];
}
