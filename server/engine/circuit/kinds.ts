/**
 * The kinds of part that a circuit may have, as data: what shuts and how, what must never be flushed and why, where
 * a recovery machine finds a port. Source of the never-flush list: handbook section 5.1 (common practice; compressor,
 * drier and metering device confirmed there by public service manuals).
 */

/** How a part can shut the way through it. */
export type Shutting =
  | 'hand' // open or shut as it was left
  | 'power' // shut without power, unless held open
  | 'driven' // comes shut, stays where it was last driven
  | 'control' // opens and shuts by pressure; shut once the machine stands, unless held open
  | 'direction'; // passes one way only

export interface Kind {
  readonly kind: string;
  readonly group: 'line' | 'unit' | 'coil' | 'metering' | 'drier' | 'valve' | 'fitting';
  /** More than one, as steps speak of them: `open service-valves`. */
  readonly plural: string;
  readonly meaning: string;
  readonly shuts?: Shutting;
  /** Why solvent must not go through it; null where it may. */
  readonly neverFlush: string | null;
  /** Part of what `old equipment` and `new equipment` mean. */
  readonly equipment: boolean;
  /** Whether a recovery machine or a pump finds a port at it. */
  readonly port: boolean;
  /** The flow goes through it twice, by passages that do not join. */
  readonly passages?: 2;
}

const kind = (
  name: string,
  group: Kind['group'],
  meaning: string,
  neverFlush: string | null,
  more: Partial<Pick<Kind, 'shuts' | 'equipment' | 'port' | 'passages' | 'plural'>> = {},
): Kind => ({ kind: name, group, meaning, neverFlush, plural: `${name}s`, equipment: false, port: false, ...more });

const seats = 'its seat, seals and dirt pockets keep solvent and dirt';

export const kinds: readonly Kind[] = [
  kind('compressor', 'unit', 'compresses the vapour', 'solvent thins its bearing oil and attacks the motor', {
    equipment: true,
    port: true,
  }),
  kind('condenser', 'coil', 'coil that gives heat off in cooling', null, { equipment: true, port: true }),
  kind('evaporator', 'coil', 'coil that takes heat up in cooling', null, { equipment: true }),
  kind('coaxial-coil', 'coil', 'tube in tube, water or brine on the other side', null, { equipment: true }),
  kind('plate-exchanger', 'coil', 'plate heat exchanger', 'its parallel channels cannot be proven clear', {
    equipment: true,
  }),
  kind('microchannel-coil', 'coil', 'coil of flat multi-port tube', 'only its clean passes get flow', {
    equipment: true,
  }),
  kind('reversing-valve', 'unit', 'turns a heat pump round', 'its pilot passages and slide seals', {
    equipment: true,
    passages: 2,
  }),
  kind(
    'accumulator',
    'unit',
    'holds liquid back from the compressor',
    'its oil hole plugs and it holds litres of solvent',
    { equipment: true, port: true },
  ),
  kind('receiver', 'unit', 'holds liquid behind the condenser', 'solvent stays in it', { equipment: true, port: true }),
  kind('oil-separator', 'unit', 'sends oil back to the compressor', 'its float and element', { equipment: true }),
  kind('liquid-line', 'line', 'tube that carries liquid', null),
  kind('suction-line', 'line', 'tube that carries vapour to the compressor', null),
  kind('vapour-line', 'line', 'vapour tube of a heat pump: high side in heating', null),
  kind('discharge-line', 'line', 'tube that carries hot gas to the condenser', null),
  kind('hot-gas-line', 'line', 'tube that carries hot gas for defrost or capacity control', null),
  kind('filter-drier', 'drier', 'takes up water, acid and dirt', 'its core takes up solvent and gives dirt back'),
  kind('expansion-valve', 'metering', 'thermostatic expansion valve', 'dirt wedges its seat and its screen', {
    equipment: true,
  }),
  kind('electronic-expansion-valve', 'metering', 'expansion valve with a motor', 'dirt wedges its seat and its motor', {
    shuts: 'driven',
    equipment: true,
  }),
  kind('cap-tube', 'metering', 'capillary tube', 'its bore is under 0.1 in and plugs', { equipment: true }),
  kind('fixed-orifice', 'metering', 'piston or orifice', 'dirt plugs the orifice', { equipment: true }),
  kind('solenoid', 'valve', 'valve opened by a coil', seats, { shuts: 'power' }),
  kind('evaporator-pressure-regulator', 'valve', 'holds an evaporator above a pressure', seats, { shuts: 'control' }),
  kind(
    'check-valve',
    'valve',
    'lets the flow through one way only',
    'it blocks one direction, and its seat keeps dirt',
    { shuts: 'direction' },
  ),
  kind('ball-valve', 'valve', 'hand valve of full bore', seats, { shuts: 'hand' }),
  kind('service-valve', 'valve', 'hand valve with a port', 'solvent stays behind its stem', {
    shuts: 'hand',
    port: true,
  }),
  kind('access-valve', 'valve', 'port with a core', 'its core blocks the flow and its seal swells', { port: true }),
  kind('piercing-valve', 'valve', 'port clamped on a tube', 'its needle and seal', { port: true }),
  kind('process-tube', 'fitting', 'stub of a factory-sealed machine, to fill it by and pinch it off', null, {
    port: true,
  }),
  kind('sight-glass', 'fitting', 'shows liquid and moisture', 'its seals, and its dye leaches'),
  kind('strainer', 'fitting', 'catches dirt', 'it holds what is flushed into it'),
  kind('branch-box', 'unit', 'splits one pair of pipes to several rooms', 'its valves and strainers', {
    equipment: true,
    passages: 2,
    plural: 'branch-boxes',
  }),
  kind('distributor', 'fitting', 'feeds the circuits of a coil', 'its nozzle', { equipment: true }),
];

const byName = new Map(kinds.map((each) => [each.kind, each]));
const byPlural = new Map(kinds.map((each) => [each.plural, each]));

export const kindNamed = (name: string): Kind | undefined => byName.get(name);
export const kindOfPlural = (name: string): Kind | undefined => byPlural.get(name);
export const isLine = (kind: Kind): boolean => kind.group === 'line';
/** A line that vapour goes back to the compressor in; of a heat pump in cooling. */
export const isVapourLine = ({ kind }: Kind): boolean => kind === 'suction-line' || kind === 'vapour-line';
/** What stands in one casing with a new unit's compressor, on the unit's side of its valves. */
export const inUnit = (kind: Kind): boolean =>
  (kind.group === 'unit' && kind.kind !== 'branch-box') || kind.kind === 'condenser' || kind.kind === 'coaxial-coil';
