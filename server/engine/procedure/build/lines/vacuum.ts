import { contentsOfCell } from '../../../circuit/settle';
import { exactly } from '../../../quantity';
import { reading, textLine } from '../../construct';
import type { StepLine } from '../../document';
import { sentence } from '../../sentence';
import type { Here } from '../here';

/** A pump-down that is shorter tells nobody anything: water and the gauge's own lag take longer, s. */
const worthSaying = 300;

/** The level, with the gauge where the pump is not. */
export function evacuateLines(here: Here): readonly StepLine[] {
  const level = here.stated('level');
  if (!level) return [];
  const lines: StepLine[] = [
    reading(
      'Gauge at the far end',
      here.ruler.unit('pressure', level),
      sentence('at most ', here.ruler.authored(level)),
    ),
  ];
  const time = here.figures('pump-down-time').flatMap((figure) => here.ruler.figure(figure) ?? []);
  if (time[0] && (here.figures('pump-down-time')[0]?.quantity?.high ?? 0) >= worthSaying)
    lines.push(textLine('Expect', sentence('about ', time[0], ' if it is dry; much longer means water or a leak.')));
  return lines;
}

/** Start and end of the watch; the end is judged by the level that the pump left and the rise that is allowed. */
export function decayLines(here: Here): readonly StepLine[] {
  const rise = here.stated('rise');
  const event = here.events('stands')[0];
  const levels = (event?.spaces ?? []).flatMap((space) =>
    space.cells.map((cell) => contentsOfCell(here.before, cell).high),
  );
  const start = levels.length > 0 ? Math.max(...levels) : null;
  const unit = rise ? here.ruler.unit('pressure-difference', rise) : here.ruler.vacuum;
  const lines: StepLine[] = [
    reading(
      'Start',
      unit,
      start === null
        ? sentence('pump valved off')
        : sentence('at most ', here.ruler.fact(exactly('pressure', start), unit)),
    ),
  ];
  if (event?.rise != null && start !== null && rise)
    lines.push(
      reading('End', unit, [
        ...sentence('at most ', here.ruler.computed(exactly('pressure', start + event.rise), unit)),
        ...sentence(', and at most ', here.ruler.authored(rise), ' over the start'),
      ]),
      textLine('', sentence('A rise that comes to rest is water; one that goes on is a leak.')),
    );
  else lines.push(reading('End', unit, []));
  return lines;
}
