import type { Space } from '../../circuit/spaces';
import { isLawStated, lawOf } from '../../plan/law';
import { statedEquipment } from '../../plan/own-equipment';
import type { Plan } from '../../plan/plan';
import { dewTemperature, refrigerantNamed } from '../../properties';
import { exactly } from '../../quantity';
import type { Entry } from '../../walk/walk';
import { lineContent, receiverCapacity, recoveryLevel, recoveryLevelByLaw, safeFill } from '../figures';
import { computed, input, named } from '../given';
import { noted } from '../noted';
import { usualRecoveryCylinder } from '../recovery-run';
import { brought, dateOf, fact, houseFill } from '../stock-data';
import { volumeOfSpaces } from '../volumes';
import { type Context, type Of, stated, subjectOf } from './context';

/** Refrigerant that comes out into a cylinder. How much it is, the run over the whole plan knows. */
export function recovered({ plan, entry, options, figures, draws }: Context, event: Of<'recovers'>): void {
  const refrigerant = event.held[0]?.refrigerant;
  if (!refrigerant) return;
  const { recoverCharge } = plan.system;
  const most = plan.graph.parts.length / 2;
  const whole = holdsCharge(plan, entry, event.spaces) && event.spaces.some((space) => space.parts.length > most);
  const old = refrigerant === plan.system.refrigerant.before;
  const made = dateOf(brought(plan, 'recovery-machine')[0]?.declaration, 'made', 'year');
  // The table is of appliances; a vehicle has its own rule (40 CFR 82 subpart B).
  if (statedEquipment(plan) !== 'vehicle' && event.spaces.some((space) => space.parts.length > most)) {
    const law = lawOf(plan);
    const level =
      law === 'US'
        ? recoveryLevel.figure(
            refrigerant,
            {
              refrigerant: named(refrigerant),
              charge: stated(old ? recoverCharge : plan.system.charge),
              machineMade: made ? named(made) : undefined,
            },
            options,
          )
        : recoveryLevelByLaw.figure(refrigerant, { law: named(law) }, options);
    figures.push(isLawStated(plan) ? level : noted(level, [`The site states no law; that of the ${law} is taken.`]));
  }
  const stock = brought(plan, 'recovery');
  const cylinder =
    (event.into ? stock.find((each) => each.label === event.into) : stock[0])?.declaration ??
    usualRecoveryCylinder(plan, refrigerant, old ? (recoverCharge?.quantity.high ?? 0) : 0);
  figures.push(
    safeFill.figure(
      cylinder?.name ?? 'recovery cylinder',
      {
        refrigerant: named(refrigerant),
        waterCapacity: fact(cylinder, 'water-capacity', 'mass', plan),
        fillShare: houseFill(plan),
      },
      options,
    ),
  );
  // After a pump-down only vapour near the atmosphere is left where the charge is not.
  const rest =
    !whole && isPumpedDown(entry) && !holdsCharge(plan, entry, event.spaces)
      ? vapourIn({ plan, options }, refrigerant, event.spaces)
      : null;
  if (rest) figures.push(rest);
  draws.push({ of: 'recovery', refrigerant, whole, mass: rest?.quantity ?? null, into: event.into });
}

const isPumpedDown = (entry: Entry): boolean => entry.before.marks.has('pump-down');

/** What holds the charge when it was pumped down: the receiver, or without one the condenser. */
const holders = ['receiver', 'condenser'];

/** Whether the spaces hold the charge itself: after a pump-down it stands in the receiver or the condenser alone. */
function holdsCharge(plan: Plan, entry: Entry, spaces: readonly Space[]): boolean {
  if (!isPumpedDown(entry)) return true;
  const kind = holders.find((each) => plan.graph.parts.some((part) => part.kind.kind === each));
  return spaces.some((space) => space.parts.some((index) => plan.graph.parts[index]!.kind.kind === kind));
}

/** Vapour at the atmosphere that a pump-down leaves behind. */
function vapourIn({ plan, options }: Pick<Context, 'plan' | 'options'>, refrigerant: string, spaces: readonly Space[]) {
  const gas = refrigerantNamed(refrigerant);
  const dew = gas && dewTemperature(gas, options.atmosphere);
  const subject = subjectOf(plan, spaces);
  const volume = volumeOfSpaces(plan, subject, spaces);
  const content = lineContent.figure(
    subject,
    {
      refrigerant: named(refrigerant),
      volume: computed(volume),
      temperature: dew == null ? undefined : input(exactly('temperature', dew), 'computed'),
      phase: named('vapour', 'computed'),
    },
    options,
  );
  return noted(content, ['The charge was pumped down: vapour at the atmosphere is left here.', ...volume.notes]);
}

/** Whether the receiver, or the condenser, holds what is pumped down into it. */
export function pumpedDown({ plan, entry, options, figures }: Context): void {
  const { step } = entry.slot;
  if (step.word.word !== 'pump-down') return;
  const into = (step.values['into'] as { readonly text: string } | undefined)?.text;
  const kind = holders.find((each) => plan.graph.parts.some((part) => part.kind.kind === each));
  const part =
    plan.graph.parts.find((each) => each.name === into) ?? plan.graph.parts.find((each) => each.kind.kind === kind);
  const refrigerant = plan.system.refrigerant.before;
  if (!part || !refrigerant) return;
  figures.push(
    receiverCapacity.figure(
      part.name,
      {
        refrigerant: named(refrigerant),
        volume:
          part.properties.volume === undefined ? undefined : input(exactly('volume', part.properties.volume), 'plan'),
        temperature: stated(plan.system.condensing ?? plan.site.outdoors),
        charge: stated(plan.system.recoverCharge),
      },
      options,
    ),
  );
}
