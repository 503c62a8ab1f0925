import type { Figure } from '../../takeoff/figure';
import { relationNamed } from '../../takeoff/figures';
import type { Working } from '../document';
import type { Sheet } from './sheet';

const confidenceWords: Record<Figure['confidence'], string> = {
  published: 'published figure',
  computed: 'computed',
  practice: 'common practice',
  memory: 'from memory, to be checked',
};

/** Every figure of the job, each once, in the order of the work and the totals behind. */
export function workingsOf(sheet: Sheet): readonly Working[] {
  const seen = new Set<string>();
  const workings: Working[] = [];
  const add = (figure: Figure, step: string | null): void => {
    const key = JSON.stringify([figure.name, figure.subject, figure.quantity, figure.missing]);
    if (seen.has(key)) return;
    seen.add(key);
    const title = relationNamed(figure.name)?.title ?? figure.name;
    workings.push({
      subject: step === null ? figure.subject : `${figure.subject}, step ${step}`,
      name: title,
      value: sheet.ruler.figure(figure),
      formula: figure.formula,
      inputs: Object.entries(figure.inputs).map(([name, input]) => ({
        name,
        shown: input.shown,
        from: input.from,
      })),
      lines: figure.workings,
      sources: [...new Set(figure.sources)],
      confidence: confidenceWords[figure.confidence],
      notes: [...figure.notes, ...(figure.missing.length > 0 ? [`Needs ${figure.missing.join(', ')}.`] : [])],
    });
  };
  sheet.walk.entries.forEach((entry, at) => {
    for (const figure of sheet.view.takeOff.steps[at] ?? []) add(figure, sheet.numberOf(entry.slot.step));
  });
  for (const figure of sheet.view.takeOff.totals) add(figure, null);
  return workings;
}
