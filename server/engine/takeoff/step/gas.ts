import { exactly } from '../../quantity';
import { allowedLoss, brazingNitrogen, fillNitrogen, keepAwayDistance, readingChange, storedEnergy } from '../figures';
import { computed, input } from '../given';
import { noted } from '../noted';
import { volumeOfLine, volumeOfSpaces } from '../volumes';
import { type Context, type Of, pressure, standing, stated, subjectOf, temperature } from './context';

/** A section that is filled with nitrogen: for a test, or to break a vacuum. */
export function filled({ plan, entry, options, figures, draws }: Context, event: Of<'pressurises'>): void {
  if (event.medium !== 'nitrogen' || event.spaces.length === 0) return;
  const subject = subjectOf(plan, event.spaces);
  const volume = volumeOfSpaces(plan, subject, event.spaces);
  const start = standing(entry, event.spaces);
  const fill = fillNitrogen.figure(
    subject,
    {
      volume: computed(volume),
      pressure: pressure(event.level),
      ...(start !== null && { start: input(exactly('pressure', Math.min(start, event.level)), 'computed') }),
      ...temperature(plan),
    },
    options,
  );
  const used = noted(fill, volume.notes);
  figures.push(used);
  if (fill.quantity) draws.push({ of: 'nitrogen', volume: fill.quantity, least: event.level, figure: used });
  if (event.purpose === 'test') {
    const tube = { pressure: pressure(event.level), temperature: stated(plan.site.outdoors) };
    const energy = storedEnergy.figure(subject, { volume: computed(volume), pressure: pressure(event.level) }, options);
    figures.push(
      readingChange.figure(subject, { ...tube, ...oneDegree(options) }, options),
      allowedLoss.figure(subject, tube, options),
      energy,
      keepAwayDistance.figure(subject, { energy: computed(energy) }, options),
    );
  }
  figures.push(volume);
}

/** Where the plan is written in SI the slope is told for each degree Celsius. */
const oneDegree = ({ system }: Context['options']) =>
  system === 'si' ? { change: input(exactly('temperature-difference', 1), 'default') } : {};

/** A torch at a joint, with nitrogen that trickles through. */
export function brazed({ plan, options, figures, draws, releases }: Context, event: Of<'joins'>): void {
  if (!event.torch || !event.nitrogen || event.nitrogen.kind !== 'volume-flow') return;
  const part = plan.graph.parts[event.part]!;
  const figure = brazingNitrogen.figure(
    part.name,
    {
      joints: input(exactly('count', event.ends.length), 'plan'),
      flow: input(event.nitrogen, 'plan'),
      volume: part.properties.tube
        ? computed(volumeOfLine(plan, part))
        : input(
            exactly('volume', part.properties.volume ?? 0),
            part.properties.volume === undefined ? 'default' : 'plan',
          ),
    },
    options,
  );
  figures.push(figure);
  if (!figure.quantity) return;
  draws.push({ of: 'nitrogen', volume: figure.quantity, least: null, figure });
  releases.push({ volume: figure.quantity, time: null, figure });
}

/** Nitrogen that is let down where the crew works. */
export function letDown({ plan, entry, options, releases }: Context, event: Of<'lets-down'>): void {
  if (event.outdoors || event.spaces.length === 0) return;
  const volume = volumeOfSpaces(plan, subjectOf(plan, event.spaces), event.spaces);
  const figure = fillNitrogen.figure(
    volume.subject,
    {
      volume: computed(volume),
      pressure: pressure(Math.max(...event.levels)),
      start: pressure(entry.before.atmosphere),
      ...temperature(plan),
    },
    options,
  );
  if (figure.quantity) releases.push({ volume: figure.quantity, time: null, figure });
}
