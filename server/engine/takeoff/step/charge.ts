import {
  firstCharge,
  liquidLineTarget,
  mostCharge,
  saturationBubblePressure,
  saturationDewPressure,
  suctionLineTarget,
  targetSuperheat,
  totalCharge,
} from '../figures';
import { computed, input, named } from '../given';
import { lineCharge } from '../line-charge';
import { type Context, type Of, stated } from './context';

/** Refrigerant that goes in by weight. */
export function charged({ plan, options, figures, draws }: Context, event: Of<'charges'>): void {
  const { system } = plan;
  if (event.purpose === 'adjust') return;
  if (plan.kinds.includes('conversion')) {
    if (event.mass) draws.push({ of: 'refrigerant', refrigerant: event.refrigerant, mass: event.mass });
    const oldCharge = stated(system.recoverCharge);
    figures.push(
      firstCharge.figure(
        'system',
        {
          oldCharge,
          from: system.refrigerant.before ? named(system.refrigerant.before) : undefined,
          to: named(event.refrigerant),
        },
        options,
      ),
      mostCharge.figure('system', { oldCharge }, options),
    );
    return;
  }
  const lines = lineCharge(plan, event.refrigerant, options);
  const allowance = lines[0];
  if (allowance) {
    figures.push(...lines);
  }
  const total = totalCharge.figure(
    'system',
    { plate: stated(system.charge), additions: allowance ? [computed(allowance)] : [] },
    options,
  );
  figures.push(total);
  // An emptied machine takes all of it from the cylinder; one that came with its charge, or kept it, the allowance alone.
  const mass = event.mass ?? (fillsCompressor(plan, event) ? total.quantity : allowance?.quantity);
  if (mass) draws.push({ of: 'refrigerant', refrigerant: event.refrigerant, mass });
}

/** Whether the compressor stands under the vacuum that refrigerant is let into. */
const fillsCompressor = (plan: Context['plan'], event: Of<'charges'>): boolean =>
  event.spaces.some(
    (space, k) =>
      event.held[k]?.gas === 'vacuum' && space.parts.some((part) => plan.graph.parts[part]!.kind.kind === 'compressor'),
  );

/** Metering devices that do not follow the load: the charge is set by the superheat that the weather asks. */
const fixed = new Set(['fixed-orifice', 'cap-tube']);

/** What the thermometer must read where the charge or a valve is trimmed, at the temperatures that the plan states. */
export function adjusted({ plan, options, figures }: Context, event: Of<'adjusts'>): void {
  const { condensing, evaporating, subcooling, superheat, refrigerant } = plan.system;
  if (!refrigerant.after) return;
  const gas = named(refrigerant.after);
  if (event.what === 'charge' && plan.graph.parts.some((part) => fixed.has(part.kind.kind))) {
    figures.push(
      targetSuperheat.figure(
        'system',
        { outdoors: stated(plan.site.outdoors), wetBulb: stated(plan.site.wetBulb) },
        options,
      ),
    );
    return;
  }
  if (event.what === 'charge' && condensing && typeof event.to !== 'string') {
    const at = saturationBubblePressure.figure(
      refrigerant.after,
      { refrigerant: gas, temperature: stated(condensing) },
      options,
    );
    const target = event.to ? input(event.to, 'plan') : stated(subcooling);
    figures.push(
      liquidLineTarget.figure('liquid line', { refrigerant: gas, pressure: computed(at), subcooling: target }, options),
      at,
    );
  }
  if (event.what === 'superheat' && evaporating) {
    const at = saturationDewPressure.figure(
      refrigerant.after,
      { refrigerant: gas, temperature: stated(evaporating) },
      options,
    );
    const target = event.to && typeof event.to !== 'string' ? input(event.to, 'plan') : stated(superheat);
    figures.push(
      suctionLineTarget.figure(
        'suction line',
        { refrigerant: gas, pressure: computed(at), superheat: target },
        options,
      ),
      at,
    );
  }
}
