import type { Figure } from '../../takeoff/figure';
import { relationNamed } from '../../takeoff/figures';
import { inSystem } from '../../takeoff/in-system';
import type { AnyRelation } from '../../takeoff/relation';
import type { Working } from '../document';
import type { Sheet } from './sheet';

const confidenceWords: Record<Figure['confidence'], string> = {
  published: 'published figure',
  computed: 'computed',
  practice: 'common practice',
  memory: 'from memory, to be checked',
};

/** A figure of a step as a whole calls its subject so. */
const wholeStep = 'this step';

const subjectOf = ({ subject }: Figure, step: string | null): string =>
  step === null ? subject : subject === wholeStep ? `Step ${step}` : `${subject}, step ${step}`;

/** An input in the words of its relation; one of several keeps its number. */
function titleOf(relation: AnyRelation | undefined, name: string): string {
  const [key = name, number] = name.split(' ');
  const title = relation?.inputs[key]?.title ?? key;
  return number === undefined ? title : `${title} ${number}`;
}

/** Every figure of the job, each once, in the order of the work and the totals behind. */
export function workingsOf(sheet: Sheet): readonly Working[] {
  const seen = new Set<string>();
  // A default, or how far tables are trusted, is told with the first figure that rests on it, not with every line.
  const told = new Set<string>();
  const found: Working[] = [];
  const add = (figure: Figure, step: string | null): void => {
    const key = JSON.stringify([figure.name, figure.subject, figure.quantity, figure.missing]);
    if (seen.has(key)) return;
    seen.add(key);
    const notes = figure.notes.filter((note) => !told.has(note));
    for (const each of [...figure.defaults, ...(figure.trust ?? [])]) told.add(each);
    const relation = relationNamed(figure.name);
    const { inputs, workings } = inSystem(figure, sheet.ruler.main);
    found.push({
      subject: subjectOf(figure, step),
      name: relation?.title ?? figure.name,
      value: sheet.ruler.figure(figure),
      formula: figure.formula,
      inputs: Object.entries(inputs).map(([name, input]) => ({
        name: titleOf(relation, name),
        shown: input.shown,
        from: input.from,
      })),
      lines: workings,
      sources: [...new Set(figure.sources)],
      confidence: confidenceWords[figure.confidence],
      notes: [...notes, ...(figure.missing.length > 0 ? [`Needs ${figure.missing.join(', ')}.`] : [])],
    });
  };
  sheet.walk.entries.forEach((entry, at) => {
    for (const figure of sheet.view.takeOff.steps[at] ?? []) add(figure, sheet.numberOf(entry.slot.step));
  });
  const { lines, machine, totals } = sheet.view.takeOff;
  for (const figure of [...lines.flatMap(({ figures }) => figures), ...machine, ...totals]) add(figure, null);
  return found;
}
