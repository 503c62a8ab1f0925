import { exactly } from '../../quantity';
import { factsOf, highGlide } from '../../reference/refrigerant-facts';
import { type Sentence, sentence } from '../sentence';
import { acidIn, classOf, closedRoom, flammable, heldBefore, names, shutInFlammable } from './hazards';
import type { Here } from './here';
import { reliefWindow } from './lines/pressure';
import { inBlock } from './sheet';
import { joined } from './words';

/** One danger: when the walk shows it, and what is printed with the triangle before the step. */
interface Caution {
  /** Null where the state does not ask for it. */
  readonly say: (here: Here) => Sentence | null;
}

const when = (asks: boolean, text: string): Sentence | null => (asks ? sentence(text) : null);

// The dangers and what is done about them: handbook section 11 (texts there are seeds; these are our own), with
// 29 CFR 1910.147 (lock-out), 1910.252 (hot work), 1910.146 (oxygen), ASHRAE 15 (test) behind them.
const recovering: readonly Caution[] = [
  {
    say: (here) => {
      const event = here.events('recovers')[0];
      return event?.held.some((held) => held.refrigerant !== null)
        ? sentence(
            'Liquid freezes skin: goggles and gloves. Cylinder on the scale, for this one gas, never overfilled.',
          )
        : null;
    },
  },
  {
    say: (here) => {
      const burning = here
        .events('recovers')
        .flatMap((event) => event.held)
        .find((held) => flammable(held.refrigerant));
      return burning ? fireNear(burning.refrigerant!) : null;
    },
  },
  {
    say: (here) =>
      when(
        here.events('recovers').some((event) => event.spaces.some((space) => acidIn(here, space.parts))),
        'Burnt gas and oil are acid: rubber gloves, face shield, air moving. Clean gas does not go into this cylinder.',
      ),
  },
];

const fireNear = (refrigerant: string): Sentence =>
  sentence(
    `${refrigerant} burns (${classOf(refrigerant)}): detector on, air moving, nothing that sparks or glows within 10 ft; machine, hoses and pump made for its class.`,
  );

const powering: readonly Caution[] = [
  {
    say: (here) =>
      when(
        here.step.word.word === 'lock-out',
        'Shock. Capacitors stay charged: discharge them, then measure. A control may start the machine by itself.',
      ),
  },
  {
    say: (here) =>
      when(
        here.events('powers').some((event) => event.to === 'controls'),
        'Live parts at the controls: covers on. The compressor’s own switch stays locked.',
      ),
  },
  {
    say: (here) =>
      when(
        here.events('powers').some((event) => event.to === 'on'),
        'Machines can start at once: covers on, hands and tools clear of fans and belts.',
      ),
  },
  {
    say: (here) => {
      const starts = here.events('starts')[0];
      return when(
        starts !== undefined && !here.before.running,
        'First start: suction and discharge valves open, gauges on, nobody at the terminals. Stop at once if pressure, current or sound is wrong.',
      );
    },
  },
];

const opening: readonly Caution[] = [
  {
    say: (here) => {
      const high = here
        .events('opens')
        .find((event) => event.held.high > here.before.atmosphere * 1.05 && event.held.gas !== 'air');
      return high
        ? sentence(
            `Under pressure: ${high.held.gas === 'refrigerant' ? high.held.refrigerant : high.held.gas} at up to `,
            here.ruler.computed(exactly('pressure', high.held.high)),
            '. Nothing is loosened before it is down.',
          )
        : null;
    },
  },
  {
    say: (here) =>
      when(
        here
          .events('opens')
          .some((event) => event.held.gas !== 'air' && event.held.high < here.before.atmosphere * 0.97),
        'It stands below the air’s pressure: let dry nitrogen in first, or it draws damp air and dirt in.',
      ),
  },
  {
    say: (here) => {
      // Oil keeps refrigerant dissolved; on the first opening it is still in the lines.
      const traces = here.events('opens').filter((event) => event.held.refrigerant !== null);
      return when(
        traces.length > 0,
        'The oil still gives refrigerant off: air moving. No torch on these joints; flame makes acid gas of it and lights the oil.',
      );
    },
  },
  {
    say: (here) =>
      when(
        [
          ...here.events('opens').flatMap((event) => event.space.parts),
          ...(['acid-test', 'drain', 'change-oil', 'sample'].includes(here.step.word.word) ? partsOf(here) : []),
        ].some((index) => acidIn(here, [index])),
        'Acid oil burns skin and eyes: rubber gloves, face shield; wash off at once.',
      ),
  },
  {
    say: (here) => {
      const heavy = [...here.events('mounts'), ...here.events('unmounts')]
        .flatMap((event) => event.parts)
        .filter((index) => ['compressor', 'condenser'].includes(here.plan.graph.parts[index]!.kind.kind));
      return when(heavy.length > 0, `Heavy: ${names(here, heavy)}. Hoist or two people; ends capped on the way.`);
    },
  },
];

/** The parts that the step names. */
const partsOf = (here: Here): readonly number[] => {
  const what = here.value<readonly { noun: string }[]>('what') ?? [];
  return what.flatMap((selector) =>
    selector.noun === 'system'
      ? here.plan.graph.parts.map((part) => part.index)
      : (here.plan.graph.named.get(selector.noun) ?? []),
  );
};

const flowing: readonly Caution[] = [
  {
    say: (here) => {
      if (!here.events('flows').some((event) => event.medium === 'solvent')) return null;
      const burns = here.plan.parameters.solvent?.bound.block.some((each) => each.word?.word === 'flammable') ?? false;
      const room = closedRoom(here.plan);
      const outdoors = here.events('flows').every((event) => event.outdoors);
      return sentence(
        burns
          ? 'The solvent burns: no flame, no spark. '
          : 'No flame or glowing surface near: the vapour turns to acid gas. ',
        room && !outdoors
          ? `The vapour sinks and fills ${room}: fan on. `
          : 'The vapour sinks: keep the wind behind you. ',
        'Gloves and goggles by its data sheet.',
      );
    },
  },
  {
    say: (here) =>
      when(
        here.events('flows').some((event) => event.medium === 'nitrogen'),
        'What is loose comes out with force: nobody in line with the far end; hose tied into the container.',
      ),
  },
  {
    say: (here) => {
      const indoors = here.events('flows').some((event) => event.medium === 'nitrogen' && !event.outdoors);
      const room = closedRoom(here.plan);
      return when(
        indoors && room !== null,
        `Nitrogen takes the air’s place in ${room}: vent it outdoors, or work by an oxygen meter (leave below 19.5 %).`,
      );
    },
  },
  {
    say: (here) =>
      when(
        here.events('flows').some((event) => acidIn(here, event.reached)),
        'What comes out is acid: rubber gloves, face shield.',
      ),
  },
];

const heating: readonly Caution[] = [
  {
    say: (here) =>
      when(
        here.events('joins').some((event) => event.torch),
        'Hot work: what burns is out of the way or shielded, extinguisher at hand, fire watch for 30 min after. Nitrogen flows before the flame and until the joint is cool.',
      ),
  },
  {
    say: (here) => {
      if (!here.events('joins').some((event) => event.torch)) return null;
      const [shut] = shutInFlammable(here);
      return shut
        ? sentence(
            `${shut.refrigerant} (${classOf(shut.refrigerant)}) stands shut in ${shut.part}: its valves stay closed, the detector is on before the torch is lit.`,
          )
        : null;
    },
  },
];

/** Up to here nitrogen is at the strength of a tyre; above, a burst throws parts. Pa over the atmosphere. */
const storedEnergyFrom = 150e3;

const pressurising: readonly Caution[] = [
  {
    say: (here) => {
      const event = here.events('pressurises').find((each) => each.purpose === 'test');
      if (!event) return null;
      if (event.level - here.ruler.atmosphere <= storedEnergyFrom)
        return sentence('Dry nitrogen through a regulator only; never oxygen or air, oil explodes in it.');
      const distance = here.figures('keep-away-distance').flatMap((figure) => here.ruler.figure(figure) ?? [])[0];
      const relief = reliefWindow(here);
      const window = relief ? here.ruler.figure(relief) : null;
      return joined(
        [
          sentence('Stored energy. Stand aside of caps and hose ends'),
          ...(distance ? [sentence('others at least ', distance, ' away')] : []),
        ],
        ', ',
      ).concat(
        sentence('. '),
        window
          ? sentence('Relief set at ', window, '. ')
          : sentence('Relief set above the test and below the weakest part. '),
        sentence('Never oxygen or air. No repair under pressure.'),
      );
    },
  },
  {
    say: (here) =>
      when(
        here.events('pressurises').some((event) => event.purpose === 'break' && event.medium === 'nitrogen'),
        'Regulator on, valve a crack open: a full cylinder bursts anything on the job.',
      ),
  },
  {
    say: (here) => {
      const downs = here.events('lets-down').filter((event) => event.spaces.length > 0);
      if (downs.length === 0) return null;
      const room = closedRoom(here.plan);
      const outdoors = downs.every((event) => event.outdoors);
      const oxygen = here.figures('oxygen-left').flatMap((figure) => here.ruler.figure(figure) ?? [])[0];
      const lead = sentence('Slowly, away from people, hose end tied. ');
      if (outdoors || room === null) return lead;
      return [
        ...lead,
        ...(oxygen
          ? sentence(`All of it at once in ${room} leaves `, oxygen, ' oxygen (19.5 % is the least): lead it outdoors.')
          : sentence(`It takes the air’s place in ${room}: lead it outdoors.`)),
      ];
    },
  },
];

const pumping: readonly Caution[] = [
  {
    say: (here) => {
      const spaces = here.events('evacuates').flatMap((event) => event.spaces);
      const machine = spaces.some((space) =>
        space.parts.some((index) => here.plan.graph.parts[index]!.kind.kind === 'compressor'),
      );
      return when(machine, 'The compressor stays off: its windings burn out under vacuum. Pump exhaust outdoors.');
    },
  },
  {
    say: (here) => {
      const held = here
        .events('evacuates')
        .flatMap((event) => event.spaces.flatMap((space) => heldBefore(here, space)));
      const burning = held.find((each) => flammable(each.refrigerant));
      return burning ? fireNear(burning.refrigerant!) : null;
    },
  },
];

const charging: readonly Caution[] = [
  {
    say: (here) => {
      const event = here.events('charges')[0];
      if (!event || event.purpose === 'adjust') return null;
      const facts = factsOf(event.refrigerant);
      return sentence(
        'Liquid freezes skin: goggles and gloves. Read the cylinder’s label before the valve is opened.',
        (facts?.glide ?? 0) >= highGlide
          ? ` ${event.refrigerant} is a blend with glide: out of the cylinder as liquid.`
          : '',
      );
    },
  },
  {
    say: (here) => {
      const gas =
        here.events('charges')[0]?.refrigerant ??
        here.events('lets-in').flatMap((event) => event.parts.flatMap((index) => unitCharge(here, index) ?? []))[0] ??
        null;
      return gas !== null && flammable(gas) ? fireNear(gas) : null;
    },
  },
  {
    say: (here) =>
      when(
        here.events('charges').some((event) => event.purpose === 'adjust'),
        'The machine runs: hot discharge line, turning fans. A little at a time, then wait.',
      ),
  },
];

const unitCharge = (here: Here, index: number): string | null => {
  const part = here.plan.graph.parts[index]!;
  return (part.unit !== null ? here.plan.graph.parts[part.unit]! : part).properties.holds?.refrigerant ?? null;
};

const standing: readonly Caution[] = [
  {
    say: (here) => {
      const names = here
        .value<readonly { noun: string }[]>('what')
        ?.filter((each) => /relief|high-pressure/.test(each.noun));
      return when(
        here.step.word.word === 'bypass' && (names?.length ?? 0) > 0,
        'Nothing protects against over-pressure until it is back: the test’s own relief is set first.',
      );
    },
  },
  {
    say: (here) =>
      when(
        here.step.word.word === 'change-oil' || here.step.word.word === 'add-oil',
        'POE and PVE oils take water from the air in minutes: open the can last, pump it in.',
      ),
  },
];

const table: readonly Caution[] = [
  ...powering,
  ...recovering,
  ...opening,
  ...flowing,
  ...heating,
  ...pressurising,
  ...pumping,
  ...charging,
  ...standing,
];

/** The author's own warnings first, then what the walk knows of this step. */
export function cautionsOf(here: Here, ofBlock: readonly string[]): readonly Sentence[] {
  const authors = [...ofBlock, ...inBlock(here.step, 'caution').map((bound) => String(bound.values['text'] ?? ''))];
  const known = table.flatMap((caution) => {
    const said = caution.say(here);
    return said === null ? [] : [said];
  });
  return [...authors.map((text) => sentence(text)), ...known];
}
