import { kindNamed } from '../../circuit/kinds';
import { oilFamilies } from '../../plan/assemble';
import { cylinderNames } from '../../plan/cylinders';
import { isRefrigerant } from '../../plan/refrigerants';
import type { Selector } from '../../plan/selection';
import { shortened } from '../../plan/shortened';
import type { Name } from '../../plan/term';
import type { Slot } from '../../plan/vocabulary';
import { isSlip, nearest } from '../../quantity';
import { membersOf, phraseIn } from '../../walk/targets';
import { defineCheck, type Said, type WayOut } from '../define';
import { namesIn } from '../support';

/** A step names something that is not there. It reads names: a name has no other state than to be known or not. */
export const unknownName = defineCheck({
  name: 'unknown-name',
  severity: 'error',
  title: 'A name that nothing bears',
  acceptable: false,
  reads: 'words',
  ground: 'practice',
  meaning:
    'A part, a cylinder, a solvent, an oil, a refrigerant, a standard or a labelled step is named that neither this file nor a file that it uses declares.',
  why: 'The step would be done to nothing, or to something that somebody guesses at on the job.',
  source: 'how plans are read',
  wrong: { base: 'split', instead: [['cut-out filter-drier', 'cut-out filter-dryer # <- here']] },
  right: { base: 'split' },
  words(here) {
    const { step, plan } = here;
    for (const [slot, description] of Object.entries(step.word.form)) {
      const { term } = description as Slot;
      const value = step.values[slot];
      if (term?.type !== 'selection' || !Array.isArray(value) || plan.graph.parts.length === 0) continue;
      // What stands in a recovery cylinder is told on it, by its name.
      const cylinders = step.word.word === 'label' ? (cylinderNames(plan) ?? []) : [];
      const choices = [...(term.choices ?? []), ...cylinders];
      for (const selector of value as readonly Selector[])
        checkSelector(here, slot, selector, choices, term.free === true);
    }
    for (const [slot, name] of namesIn(step.values)) {
      const known = candidates(here, slot, name);
      if (known === null || known.includes(name.text)) continue;
      if (name.refers === 'refrigerant' && isRefrigerant(name.text)) continue;
      say(here, slot, words[name.refers] ?? 'name', name.text, known, name);
    }
  },
});

const words: Readonly<Record<string, string>> = {
  refrigerant: 'refrigerant',
  oil: 'oil',
  solvent: 'solvent',
  stock: 'cylinder in "bring" called',
  part: 'part called',
  parameter: 'parameter of the plan called',
};

/** The names that may stand there; null where anything may. */
function candidates(here: Said, slot: string, { refers, text }: Name): readonly string[] | null {
  const { plan, step } = here;
  switch (refers) {
    case 'refrigerant':
      return [plan.system.refrigerant.before, plan.system.refrigerant.after].flatMap((each) => each ?? []);
    case 'oil':
      return [...oilFamilies, ...plan.scope.names('oil')];
    case 'solvent':
      return plan.scope.names('solvent');
    case 'part':
      // A part is called by its kind as well: `into receiver`, whatever the receiver's label.
      return plan.graph.parts.length > 0
        ? [...new Set([...plan.graph.named.keys(), ...plan.graph.parts.map((part) => part.kind.kind)])]
        : null;
    case 'parameter':
      return ['test-pressure'];
    case 'stock':
      if (slot === 'into' && step.word.word === 'recover') return cylinderNames(plan);
      // Anything catches what a flush brings along; only a slip in the usual word is told.
      return isSlip(text, 'container') ? ['container', ...(cylinderNames(plan) ?? [])] : null;
    default:
      return null;
  }
}

function checkSelector(here: Said, slot: string, selector: Selector, choices: readonly string[], free: boolean): void {
  const { graph } = here.plan;
  for (const owner of selector.of) checkSelector(here, slot, owner, [], false);
  if (selector.of.length > 0 || choices.includes(selector.text) || choices.includes(selector.noun)) return;
  if (membersOf(graph, selector.noun) !== null) return;
  const names = [...graph.named.keys()];
  // Verbs that take any thing are only doubted where a part was most likely meant.
  if (free && !slip(selector.noun, names)) return;
  const own = selector.noun.includes(' ')
    ? choices.find((choice) => ` ${selector.noun} `.includes(` ${choice} `))
    : undefined;
  const phrase = own === undefined ? phraseIn(graph, selector.noun) : null;
  if (own !== undefined || phrase) {
    const strange =
      own === undefined ? phrase!.strange.join(' ') : ` ${selector.noun} `.replace(` ${own} `, ' ').trim();
    const right = own ?? [phrase!.standing, phrase!.nouns.join(', ')].filter(Boolean).join(' ');
    here.report({
      message:
        strange === ''
          ? `"${shortened(selector.noun)}" is no name: between two parts stands a comma, "${right}".`
          : `"${shortened(strange)}" cannot stand here: "${right}" is understood. What nobody needs to check stands behind # or in a note.`,
      slot,
      fixes: writeInstead(here, selector, selector.noun, right),
    });
    return;
  }
  // A standard is written over roles: a job without such a part leaves the step without effect, which is no mistake.
  if (kindNamed(selector.noun) && here.step.file !== here.plan.file) return;
  say(
    here,
    slot,
    kindNamed(selector.noun) ? 'part of the kind' : 'part, line or section',
    selector.noun,
    [...names, ...choices, ...(free ? [] : ['system'])],
    selector,
  );
}

const slip = (noun: string, names: readonly string[]): boolean => {
  const near = nearest(noun, names);
  return near !== undefined && isSlip(noun, near);
};

function say(
  here: Said,
  slot: string,
  what: string,
  name: string,
  known: readonly string[],
  at: { readonly text: string; readonly from: number; readonly to: number },
): void {
  const near = nearest(name, known);
  const list = known.length > 0 && known.length <= 8 ? `; there is ${known.join(', ')}` : '';
  here.report({
    message: `There is no ${what} "${shortened(name)}"${near ? `; the nearest is "${near}"` : list}.`,
    slot,
    // A part that the circuit lacks is missing at each step that names it.
    root: `${what} ${name}`,
    ...(near && { fixes: writeInstead(here, at, name, near) }),
  });
}

const writeInstead = (
  here: Said,
  at: { readonly text: string; readonly from: number },
  name: string,
  by: string,
): readonly WayOut[] => [
  {
    title: `Write "${by}"`,
    edits: (mend) =>
      mend.write(here.step, at.from + at.text.lastIndexOf(name), at.from + at.text.lastIndexOf(name) + name.length, by),
  },
];
