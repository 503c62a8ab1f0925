import type { Bound } from '../../plan/bind';
import { eachStep, firstLine, type Departure as PlanDeparture, type Step } from '../../plan/step';
import type { Departure } from '../document';
import { sentence } from '../sentence';
import { isWork, type Sheet } from './sheet';
import { unhyphened } from './words';

/** Where the job leaves its standard, where a maker's sheet stands for a built-in limit, and what was accepted. */
export function notByTheBook(sheet: Sheet): readonly Departure[] {
  return [...departures(sheet), ...makersLimits(sheet), ...accepted(sheet)];
}

function departures(sheet: Sheet): readonly Departure[] {
  return sheet.plan.departures.map((departure) => ({
    kind: 'departure',
    what: sentence(departureText(departure)),
    because: departure.reason ?? 'no reason given',
    signer: 'lead',
    step: stepsBy(sheet, departure),
  }));
}

function departureText({ kind, label, bound, of }: PlanDeparture): string {
  const added = bound.block.filter((each) => each.item.word).map(firstLine);
  switch (kind) {
    case 'skip':
      return `Left out: ${of ? withoutLabel(of.text) : label}`;
    case 'change':
      return `${label}: ${added.join(', ')}; the standard says: ${of ? withoutLabel(of.text) : 'nothing'}`;
    case 'replace':
      return `In place of "${of ? withoutLabel(of.text) : label}": ${added.map(withoutLabel).join('; ')}`;
    case 'before':
    case 'after':
      return `Added ${kind} ${label}: ${added.map(withoutLabel).join('; ')}`;
  }
}

const withoutLabel = (text: string): string => text.replace(/^[\w-]+:\s*/, '');

/** The numbers of the steps that a departure brought in or changed: "17" or "17, 18". */
function stepsBy(sheet: Sheet, departure: PlanDeparture): string | null {
  const touched = [...eachStep(sheet.plan.steps)].filter((step) => step.departure === departure);
  return numbersOf(
    sheet,
    touched.flatMap((step) => (isWork(step) ? [step] : [...eachStep(step.children)].filter(isWork))),
  );
}

function numbersOf(sheet: Sheet, steps: readonly Step[]): string | null {
  const numbers = [...new Set(steps.flatMap((step) => sheet.numberOf(step) ?? []))];
  const [first] = numbers;
  if (first === undefined) return null;
  const run = numbers.every((each, k) => Number(each) === Number(first) + k);
  return numbers.length > 2 && run ? `${first}–${numbers.at(-1)}` : numbers.join(', ');
}

/** Every `per` of the plan's own statements and of its steps. */
function makersLimits(sheet: Sheet): readonly Departure[] {
  const found: Departure[] = [];
  const add = (text: string, per: unknown, step: Step | null): void => {
    if (typeof per !== 'string') return;
    found.push({
      kind: 'maker',
      what: sentence(text.replace(/\s*per "[^"]*"/, '')),
      because: per,
      signer: null,
      step: step ? numbersOf(sheet, [step]) : null,
    });
  };
  const visit = (bounds: readonly Bound[], owner: string): void => {
    for (const bound of bounds) {
      const word = bound.word?.word ?? '';
      if (['steps', 'change', 'before', 'after', 'replace', 'skip'].includes(word)) continue;
      add(owner ? `${owner}: ${firstLine(bound)}` : firstLine(bound), bound.values['per'], null);
      const isPart = bound.place === 'circuit' && word !== 'unit' && word !== 'parallel';
      visit(bound.block, isPart ? (bound.label?.text ?? word) : owner);
    }
  };
  visit(sheet.plan.declaration.bound.block, '');
  for (const step of eachStep(sheet.plan.steps)) {
    add(withoutLabel(step.text), step.values['per'], step);
    for (const each of step.bound.block.filter((bound) => bound.place === 'step'))
      add(`${withoutLabel(step.text)}: ${firstLine(each)}`, each.values['per'], step);
  }
  return found;
}

function accepted(sheet: Sheet): readonly Departure[] {
  return sheet.plan.acceptances.map((acceptance) => ({
    kind: 'accepted',
    what: sentence(`Finding "${unhyphened(acceptance.check, sheet.isName)}"`),
    because: acceptance.reason ?? 'no reason given',
    signer: 'lead',
    step: acceptance.step ? numbersOf(sheet, [acceptance.step]) : null,
  }));
}
