import { child } from '../../plan/bind';
import type { Plan } from '../../plan/plan';
import type { Declaration } from '../../plan/scope';
import type { Name } from '../../plan/term';
import { exactly } from '../../quantity';
import type { Flow } from '../../steps/events';
import type { Entry } from '../../walk/walk';
import {
  fillNitrogen,
  flushShots,
  flushTime,
  purgeFlow,
  purgeNitrogen,
  purgeVolumeChanges,
  solventPerPass,
} from '../figures';
import { computed, input } from '../given';
import { brought, fact } from '../stock-data';
import { volumeOfLine, volumesOfTraps } from '../volumes';
import { type Context, pressure, temperature } from './context';

/** Solvent or nitrogen through an open line. */
export const flowed = (context: Context, event: Flow): void =>
  event.medium === 'solvent' ? solventFlow(context, event) : nitrogenFlow(context, event);

function solventFlow({ plan, entry, options, figures, draws, releases }: Context, event: Flow): void {
  const line = plan.graph.parts[event.line]!;
  const solvent = solventOf(plan, entry);
  const pass = solventPerPass.figure(
    line.name,
    {
      lineVolume: computed(volumeOfLine(plan, line)),
      share: fact(solvent, 'share-of-volume', 'share', plan),
      leastPerPass: fact(solvent, 'least-per-pass', 'volume', plan),
      traps: volumesOfTraps(plan, line).map((trap) => computed(trap)),
    },
    options,
  );
  const delivery = fact(solvent, 'delivers', 'rate', plan);
  figures.push(
    pass,
    flushTime.figure(line.name, { perPass: computed(pass), delivery }, options),
    flushShots.figure(line.name, { perPass: computed(pass), delivery }, options),
  );
  if (pass.quantity)
    draws.push({
      of: 'solvent',
      volume: pass.quantity,
      solvent: solvent?.name ?? 'solvent',
      line: event.line,
      figure: pass,
    });
  // The nitrogen that drives the solvent fills the line once at the pressure that the solvent's sheet names.
  const behind = solvent && child(solvent.bound.block, 'delivers') ? fact(solvent, 'delivers', 'at', plan) : undefined;
  const level = behind?.quantity ?? (event.level === null ? null : exactly('pressure', event.level));
  if (!level) return;
  const push = fillNitrogen.figure(
    line.name,
    { volume: computed(volumeOfLine(plan, line)), pressure: input(level, 'plan'), ...temperature(plan) },
    options,
  );
  figures.push(push);
  if (!push.quantity) return;
  draws.push({ of: 'nitrogen', volume: push.quantity, least: level.high, figure: push });
  if (!event.outdoors) releases.push({ volume: push.quantity, time: null, figure: push });
}

/** The solvent that a flush names, else the plan's, else the only one that the job brings. */
export function solventOf(plan: Plan, entry: Entry): Declaration | null {
  const named = entry.slot.step.values['with'] as Name | undefined;
  const stock = brought(plan, 'solvent');
  return (
    (named && plan.scope.find('solvent', named.text)) ??
    plan.parameters.solvent ??
    (stock.length === 1 ? stock[0]!.declaration : null)
  );
}

function nitrogenFlow({ plan, options, figures, draws, releases }: Context, event: Flow): void {
  const line = plan.graph.parts[event.line]!;
  const { tube, length } = line.properties;
  const diameter = event.outlets[0]?.opening.diameter ?? null;
  const flow = purgeFlow.figure(
    line.name,
    {
      pressure: event.level === null ? undefined : pressure(event.level),
      opening: diameter === null ? undefined : input(exactly('length', diameter), 'computed'),
      bore: tube ? input(exactly('length', tube.bore), 'reference', tube.shown) : undefined,
      length: length === undefined ? undefined : input(exactly('length', length), 'plan'),
      ...temperature(plan),
    },
    options,
  );
  const time = event.time ? input(event.time, 'plan') : undefined;
  const used = purgeNitrogen.figure(line.name, { flow: computed(flow), time }, options);
  figures.push(used);
  if (event.level !== null) {
    figures.push(
      purgeVolumeChanges.figure(
        line.name,
        {
          nitrogen: computed(used),
          lineVolume: computed(volumeOfLine(plan, line)),
          pressure: pressure(event.level),
          ...temperature(plan),
        },
        options,
      ),
    );
  }
  figures.push(flow);
  if (!used.quantity) return;
  draws.push({ of: 'nitrogen', volume: used.quantity, least: event.level, figure: used });
  if (!event.outdoors) releases.push({ volume: used.quantity, time: event.time, figure: used });
}
