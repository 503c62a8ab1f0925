import type { Name } from '../../plan/term';
import { exactly } from '../../quantity';
import { decayLeakRate, effectivePumpSpeed, pumpDownTime, reachableLevel, waterBoiling } from '../figures';
import { computed, input } from '../given';
import { noted } from '../noted';
import { fact } from '../stock-data';
import { volumeOfSpaces } from '../volumes';
import { type Context, type Of, pressure, standing, subjectOf } from './context';

/** A section under the pump: how long, how deep, and what the hoses leave of the pump. */
export function evacuated({ plan, entry, options, figures }: Context, event: Of<'evacuates'>): void {
  if (event.spaces.length === 0) return;
  const subject = subjectOf(plan, event.spaces);
  const volume = volumeOfSpaces(plan, subject, event.spaces);
  const item = (plan.bring ?? []).find((each) => each.word === 'pump');
  const hose = item && plan.scope.find('hose', (item.bound.values['hose'] as Name | undefined)?.text ?? '');
  const pumped = {
    pump: fact(item?.declaration, 'flow', 'flow', plan),
    bore: fact(hose, 'bore', 'diameter', plan),
    length: fact(hose, 'length', 'length', plan),
    hoses: item ? input(exactly('count', item.number), 'plan') : undefined,
  };
  const ultimate = fact(item?.declaration, 'ultimate', 'level', plan);
  const level = pressure(event.level);
  const start = standing(entry, event.spaces);
  const time = pumpDownTime.figure(
    subject,
    {
      ...pumped,
      volume: computed(volume),
      ultimate,
      level,
      ...(start !== null && { start: input(exactly('pressure', Math.max(start, event.level)), 'computed') }),
    },
    options,
  );
  figures.push(waterBoiling.figure(subject, { level }, options), noted(time, volume.notes));
  if (pumped.pump && pumped.bore && pumped.length)
    figures.push(
      reachableLevel.figure(item!.name, { ...pumped, ultimate }, options),
      effectivePumpSpeed.figure(item!.name, { ...pumped, level }, options),
    );
  figures.push(volume);
}

/** The leak that a decay test still lets pass. */
export function stood({ plan, options, figures }: Context, event: Of<'stands'>): void {
  if (event.spaces.length === 0 || event.rise === null) return;
  const subject = subjectOf(plan, event.spaces);
  const volume = volumeOfSpaces(plan, subject, event.spaces);
  const leak = decayLeakRate.figure(
    subject,
    {
      volume: computed(volume),
      rise: input(exactly('pressure-difference', event.rise), 'plan'),
      time: event.time ? input(event.time, 'plan') : undefined,
    },
    options,
  );
  figures.push(noted(leak, volume.notes));
}
