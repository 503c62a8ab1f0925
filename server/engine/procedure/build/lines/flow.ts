import type { Figure } from '../../../takeoff/figure';
import { textLine } from '../../construct';
import type { StepLine } from '../../document';
import { name, type Sentence, sentence } from '../../sentence';
import type { Here } from '../here';
import { joined } from '../words';

/** For each line of the step its figures side by side: "suction-line 22 fl-oz in 73 s". */
function perLine(here: Here, label: string, relations: readonly string[], between: string): readonly StepLine[] {
  const byLine = new Map<string, Sentence[]>();
  for (const relation of relations) {
    for (const figure of here.figures(relation)) {
      const shown = here.ruler.figure(figure);
      // In a row of figures the twins would bury what is read.
      const bare = shown && sentence({ ...shown, other: null });
      if (bare) byLine.set(figure.subject, [...(byLine.get(figure.subject) ?? []), bare]);
    }
  }
  if (byLine.size === 0) return [];
  const rows = [...byLine].map(([line, shown]): Sentence => [name(line), ...sentence(' '), ...joined(shown, between)]);
  return [textLine(label, joined(rows))];
}

const total = (here: Here, label: string, figures: readonly Figure[]): readonly StepLine[] => {
  const shown = figures.flatMap((figure) => here.ruler.figure(figure) ?? [])[0];
  return shown ? [textLine(label, sentence(shown))] : [];
};

export const flushLines = (here: Here): readonly StepLine[] => [
  ...perLine(here, 'Solvent, a pass', ['solvent-per-pass', 'flush-time'], ' in '),
  ...total(here, 'All lines, a round', here.figures('solvent-of-step')),
];

export const purgeLines = (here: Here): readonly StepLine[] => {
  const all = here.figures('nitrogen-in-all');
  return [
    ...total(here, 'Nitrogen', all.length > 0 ? all : here.figures('purge-nitrogen')),
    ...perLine(here, 'Times the line’s volume', ['purge-volume-changes'], ', '),
  ];
};
