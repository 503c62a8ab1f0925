import type { Amount as Authored } from '../../../plan/term';
import { checks, reading, textLine } from '../../construct';
import type { StepLine } from '../../document';
import { type Sentence, sentence } from '../../sentence';
import type { Here } from '../here';
import { isWhole } from '../recovered';

/** "4 inHg of vacuum, or deeper": a vacuum reading grows the other way. */
export function levelToReach(here: Here, level: Authored): Sentence {
  const shown = here.ruler.authored(level);
  return level.literal.unit.reference === 'vacuum'
    ? sentence(shown, level.literal.high === 0 ? ' or below' : ' or deeper')
    : sentence('at most ', shown);
}

/** The level, and the cylinder on the scale before and after. */
export function recoverLines(here: Here): readonly StepLine[] {
  const event = here.events('recovers')[0];
  const level = here.stated('level');
  const mass = here.ruler.unit('mass');
  const lines: StepLine[] = [];
  if (level) lines.push(reading('Gauge, machine off', here.ruler.unit('pressure', level), levelToReach(here, level)));
  const fill = here.figures('safe-fill').flatMap((figure) => here.ruler.figure(figure) ?? [])[0];
  lines.push(
    reading(
      `Cylinder${event?.into ? ` ${event.into}` : ''}`,
      [
        { lead: 'before', unit: mass },
        { lead: 'after', unit: mass },
      ],
      fill ? sentence('at most ', fill, ' of refrigerant in it') : sentence('at most 80 % full by volume'),
    ),
  );
  const plate = here.plan.system.recoverCharge;
  if (plate && event && isWhole(here.plan, event.spaces))
    lines.push(reading('Taken out', mass, sentence('the plate says ', here.ruler.stated(plate)), false));
  const missed = here.partNames(event?.missed ?? []);
  if (missed.length > 0)
    lines.push(textLine('Not reached', sentence(`${missed.join(', ')}: shut off, without a port.`)));
  return lines;
}

export const proveZeroLines = (here: Here): readonly StepLine[] => {
  const unit = here.ruler.unit('pressure');
  return [
    reading(
      'Gauge',
      [
        { lead: 'at once', unit },
        { lead: 'later', unit },
      ],
      sentence('does not climb'),
    ),
  ];
};

export const lockOutLines = (_here: Here): readonly StepLine[] => [
  checks('Done', 'switch off', 'lock and tag on', 'tester proven live'),
  reading('Voltage left', 'V', sentence('none between any two wires or to earth')),
];
