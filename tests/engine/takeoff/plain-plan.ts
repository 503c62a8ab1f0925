import type { Figure } from '../../../server/engine/takeoff/figure';
import type { PlanView } from '../../../server/engine/view';

/** The working temperatures of the worked examples of the handbook (WE-26 to WE-28). */
export const working = `evaporating 40 degF
    condensing 105 degF
    superheat 10 Δ°F
    subcooling 10 Δ°F`;

/** What a plan without steps of any weight may say: its lines and its machine are what counts. */
export interface Plain {
  readonly kind?: string;
  readonly refrigerant?: string;
  readonly oil?: string;
  readonly site?: string;
  readonly system?: string;
  readonly circuit: string;
  readonly steps?: string;
}

export const plainPlan = (of: Plain): string => `plan job "Job" {
  revision 1
  date 2027-05-18
  kind ${of.kind ?? 'changeout'}
  site {
    altitude 0 ft
    outdoors 70 degF
    ${of.site ?? ''}
  }
  system {
    refrigerant ${of.refrigerant ?? 'R-22'}
    oil ${of.oil ?? 'mineral'}
    ${of.system ?? `capacity 36000 Btu/h\n    ${working}`}
  }
  circuit {
    ${of.circuit}
  }
  steps {
    survey system
    ${of.steps ?? ''}
  }
}
`;

/** A line as the circuit says it: kind and standing, then its properties. */
export const line = (head: string, ...properties: readonly string[]): string =>
  `${head} {\n      ${properties.join('\n      ')}\n    }`;

/** A machine of one circuit around a liquid and a suction line. */
export const split = (liquid: string, suction: string): string =>
  ['compressor kept', 'condenser kept', liquid, 'expansion-valve kept', 'evaporator kept', suction].join('\n    ');

/** A heat pump around a liquid and a vapour line. */
export const heatPump = (liquid: string, vapour: string): string =>
  [
    'compressor kept',
    'reversing-valve kept',
    'condenser kept',
    liquid,
    'expansion-valve kept',
    'evaporator kept',
    vapour,
    'through reversing-valve',
    'accumulator kept',
  ].join('\n    ');

/** The figures of one relation of one line, in their order. */
export const ofLine = (view: PlanView, part: string, name: string): readonly Figure[] =>
  (view.takeOff.lines.find((each) => each.part === part)?.figures ?? []).filter((each) => each.name === name);

/** The one figure of a relation of a line, of a subject where it has more. */
export function lineFigure(view: PlanView, part: string, name: string, subject?: string): Figure {
  const found = ofLine(view, part, name).filter((each) => subject === undefined || each.subject === subject);
  if (found.length !== 1) throw new Error(`${found.length} times ${name} of ${subject ?? part}`);
  return found[0]!;
}
