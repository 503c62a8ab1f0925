import { sentence } from '../../sentence';
import { acidIn, closedRoom } from '../hazards';
import { type Caution, when } from './caution';

/** Solvent and nitrogen through open lines. Oxygen: 29 CFR 1910.146, deficient below 19.5 %. */
export const flowing: readonly Caution[] = [
  (here) => {
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
  (here) =>
    when(
      here.events('flows').some((event) => event.medium === 'nitrogen'),
      'What is loose comes out with force: nobody in line with the far end; hose tied into the container.',
    ),
  (here) => {
    const indoors = here.events('flows').some((event) => event.medium === 'nitrogen' && !event.outdoors);
    const room = closedRoom(here.plan);
    return when(
      indoors && room !== null,
      `Nitrogen takes the air’s place in ${room}: vent it outdoors, or work by an oxygen meter (leave below 19.5 %).`,
    );
  },
  (here) =>
    when(
      here.events('flows').some((event) => acidIn(here, event.reached)),
      'What comes out is acid: rubber gloves, face shield.',
    ),
];
