import { sentence } from '../../sentence';
import { closedRoom } from '../hazards';
import { reliefWindow } from '../lines/pressure';
import { joined } from '../words';
import { type Caution, when } from './caution';

/** Up to here nitrogen is at the strength of a tyre; above, a burst throws parts. Pa over the atmosphere. */
const storedEnergyFrom = 150e3;

/** Air with less oxygen is deficient (29 CFR 1910.146). */
const leastOxygen = 0.195;

/** Nitrogen under pressure. ASHRAE 15: no oxygen, no air; a relief behind the regulator. */
export const pressurising: readonly Caution[] = [
  (here) => {
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
  (here) =>
    when(
      here.events('pressurises').some((event) => event.purpose === 'break' && event.medium === 'nitrogen'),
      'Regulator on, valve a crack open: a full cylinder bursts anything on the job.',
    ),
  (here) => {
    const downs = here.events('lets-down').filter((event) => event.spaces.length > 0);
    if (downs.length === 0) return null;
    const room = closedRoom(here.plan);
    const outdoors = downs.every((event) => event.outdoors);
    const left = here.figures('oxygen-left')[0];
    const lead = sentence('Slowly, away from people, hose end tied.');
    const enough = left?.quantity != null && left.quantity.low >= leastOxygen;
    if (outdoors || room === null || enough) return lead;
    const shown = left ? here.ruler.figure(left) : null;
    return [
      ...lead,
      ...(shown
        ? sentence(` All of it in ${room} leaves `, shown, ' oxygen (19.5 % is the least): lead it outdoors.')
        : sentence(` It takes the air’s place in ${room}: lead it outdoors.`)),
    ];
  },
];
