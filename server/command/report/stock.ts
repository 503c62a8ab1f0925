import { exactly, type Kind, type Quantity, type ShowOptions, show } from '../../engine/quantity';
import type { Shortfall } from '../../engine/takeoff/shortfalls';
import type { SupplyRun } from '../../engine/takeoff/supply-run';
import type { TakeOff } from '../../engine/takeoff/take-off';
import type { Waste } from '../../engine/takeoff/waste';
import type { Entry } from '../../engine/walk/walk';

/** A container of the stock as it comes to the job and as it goes home. */
export interface ContainerLine {
  readonly of: Shortfall['kind'];
  /** What is in it. */
  readonly what: string;
  readonly container: string;
  readonly kind: Kind;
  /** SI: a pressure of nitrogen, a net weight, a volume of oil. */
  readonly start: number;
  readonly end: number;
  /** As people read the two: on the scale with the tare, where the collar's is stated. */
  readonly shown: string;
  /** The step at which the next one is taken. */
  readonly changed: Entry | null;
  readonly price: string | null;
}

/** Every container in the order of use, material by material. */
export function containerLines(takeOff: TakeOff, options: ShowOptions): readonly ContainerLine[] {
  const said = (kind: Kind, value: number): string => liquid(exactly(kind, value), options);
  const nitrogen = takeOff.nitrogen.cylinders.map(
    ({ name, start, left, price }): ContainerLine => ({
      of: 'nitrogen',
      what: 'nitrogen',
      container: name,
      kind: 'pressure',
      start,
      end: left,
      shown: `${said('pressure', start)} to ${said('pressure', left)}`,
      changed: takeOff.nitrogen.changes.find((change) => change.from === name)?.entry ?? null,
      price,
    }),
  );
  const supplies = (of: ContainerLine['of'], runs: readonly SupplyRun[]): readonly ContainerLine[] =>
    runs.flatMap((run) =>
      run.containers.map(
        ({ name, start, left }): ContainerLine => ({
          of,
          what: run.what,
          container: name,
          kind: run.kind,
          start,
          end: left,
          shown: `${said(run.kind, start)} to ${said(run.kind, left)}${run.kind === 'mass' ? ' net' : ''}`,
          changed: run.changes.find((change) => change.from === name)?.entry ?? null,
          price: run.price,
        }),
      ),
    );
  const recovery = takeOff.recovery.cylinders.map((each): ContainerLine => {
    const scale = (net: number): string => said('mass', (each.tare ?? 0) + net);
    const most = each.most === null ? '' : `, at most ${scale(each.most)}`;
    const unknown = each.unknown.length > 0 ? ', and what the plan does not say' : '';
    return {
      of: 'recovery',
      what: each.refrigerant ?? 'refrigerant',
      container: each.name,
      kind: 'mass',
      start: each.start,
      end: each.end,
      shown: `${scale(each.start)} to ${scale(each.end)}${unknown}${most}${each.tare === null ? ' net' : ' on the scale'}`,
      changed: takeOff.recovery.changes.find((change) => change.from === each.name)?.entry ?? null,
      price: null,
    };
  });
  return [
    ...nitrogen,
    ...supplies('solvent', takeOff.solvents),
    ...supplies('refrigerant', takeOff.refrigerants),
    ...supplies('oil', takeOff.oils),
    ...recovery,
  ];
}

/** What goes home in a row of its own: the waste that is not in a cylinder of the stock. */
export const wasteShown = (waste: Waste, options: ShowOptions): string =>
  waste.quantity ? liquid(waste.quantity, options) : 'as much as comes out';

/** Solvent and oil are handled by the fluid ounce. */
const liquid = (quantity: Quantity, options: ShowOptions): string =>
  show(quantity, quantity.kind === 'volume' && options.system !== 'si' ? { ...options, as: 'fl-oz' } : options);
