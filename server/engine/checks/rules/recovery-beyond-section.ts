import { contentsOfCell } from '../../circuit/settle';
import { neighbours, partOfCell, type Space } from '../../circuit/spaces';
import type { Plant } from '../../circuit/state';
import type { Selector } from '../../plan/selection';
import type { Entry } from '../../walk/walk';
import { has } from '../course';
import { defineCheck, type Whole } from '../define';
import { isOrAre } from '../is-are';
import { listed } from '../listed';
import { aboveZero, isCompressor, readyCompressors } from '../plant';
import { chargeInAll } from '../plant-facts';
import { roundTrip } from '../round-trip';
import { edits } from '../support';

/** Less than this share of the charge, weighed in later, is that of a section and not of the machine (common practice, no source). */
const wholeShare = 0.5;

/** The compressor of a rack is opened between its own valves, the charge stays where it is. */
const repair = `kind repair
system {
  refrigerant R-448A
  oil POE
  recover-charge 55 lb
  charge 55 lb
  superheat 8..12 Δ°F
  design-pressure low 250 psig, high 400 psig
}`;
const kept = [
  ['liquid-drier: filter-drier new', 'liquid-drier: filter-drier kept'],
  ['txv-1: expansion-valve new', 'txv-1: expansion-valve kept'],
  ['txv-2: expansion-valve new', 'txv-2: expansion-valve kept'],
] as const;
const steps = (...begin: readonly string[]): string => `survey system
stop system
lock-out power
${begin.join('\n')}
prove-zero comp
disconnect comp at both ends
connect comp at both ends with new-gaskets
pressure-test comp to 10 psig for 10 min, bubbles on every joint
pressure-test comp to 250 psig for 30 min
release nitrogen outdoors
evacuate comp to 500 micron
decay-test comp for 20 min, rise at most 250 micron
open valve-s, valve-d
energise controls for 12 h
restore power
start system
leak-check system
label system
record quantities, readings`;

/** One section is to be recovered while a valve that bounds it stands open: the whole charge comes out. */
export const recoveryBeyondSection = defineCheck({
  name: 'recovery-beyond-section',
  severity: 'error',
  title: 'Recovery of one section draws the whole charge through an open valve',
  acceptable: false,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['refrigerant-not-stated'],
  meaning:
    'The step names a part or a section (to recover it, or to let carbon dioxide off), a hand valve between it and the rest of the machine stands open, and so the charge of compressor, coils or receiver comes out with it. No later step puts that charge back, or a pump-down has just put it away: the valve was meant to be shut before.',
  why: 'The cylinder is sized for the section and is overfilled by the charge, the recovery takes hours instead of minutes, and the machine is started empty.',
  source: 'common practice: shut a section off on both sides, then recover it (handbook 2.1, 13.5)',
  wrong: {
    base: 'rack',
    plan: repair,
    steps: steps('recover comp to 0 inHg # <- here', 'close valve-s, valve-d'),
    instead: kept,
  },
  right: {
    base: 'rack',
    plan: repair,
    steps: steps('close valve-s, valve-d', 'recover comp to 0 inHg'),
    instead: kept,
  },
  plan(whole) {
    whole.entries.forEach((entry, at) => {
      for (const event of entry.events) {
        if (event.type !== 'recovers' && event.type !== 'vents') continue;
        const vented = event.type === 'vents';
        const named = new Set(event.named);
        const beyond = event.spaces.flatMap((space) => chargedBeyond(entry.before, space, named));
        if (!beyond.some((part) => holdsCharge(whole, part))) continue;
        const valves = boundary(entry.before, event.spaces, named);
        if (valves.length === 0 || !runsAfter(whole, at)) continue;
        // What a pump-down has put away was to stay there, also where the plan fills the machine anew.
        const away = vented ? undefined : whole.entries.slice(0, at).find(putsAway);
        if (!away && putBack(whole, at, vented)) continue;
        const names = valves.map((valve) => valveName(whole, valve));
        const several = valves.length > 1 || names[0]!.startsWith('valves');
        const later = valves.flatMap((valve) => shutLater(whole, at, valve) ?? []);
        whole.report(entry, {
          message: (say) =>
            `${listed(names)} ${isOrAre(several ? 2 : 1)} open here, so the charge of the whole machine ${vented ? 'is let off' : 'comes out'} with ${listed((entry.slot.step.values['what'] as readonly Selector[]).map((each) => each.text))}, and ${away ? `${say.step(away.cause)} has put it away for nothing` : 'no later step puts it back'}: shut ${several ? 'them' : 'it'} first.`,
          slot: 'what',
          concerns: whole.plan.graph.parts.map((part) => part.index),
          related: [...new Set(later)].map((step) => ({ cause: step.cause, message: 'shut only here' })),
          fixes: [
            {
              title: `Shut the section off before it is ${vented ? 'let off' : 'recovered'}`,
              edits: (mend) => {
                const [only] = later;
                // A step that shuts these valves and no other is put in front; it is not written twice.
                const same = only && later.every((each) => each === only) && closesOnly(only, valves);
                if (same) return mend.move(only.slot.step, 'before', entry.slot.step);
                return edits(mend.insertBefore(entry.slot.step, `close ${names.join(', ')}`));
              },
            },
          ],
        });
      }
    });
  },
});

/** A pump-down behind a shut valve: without one it puts nothing away, and that is another mistake. */
const putsAway = (entry: Entry): boolean =>
  has(entry, 'pumps-down') &&
  readyCompressors(entry.before).every(({ index }) => !roundTrip(entry.before, index).comesBack);

/** Parts of a reached space that the step does not name, with a charge in them. */
const chargedBeyond = (plant: Plant, space: Space, named: ReadonlySet<number>): readonly number[] =>
  space.cells.flatMap((cell) => {
    const { index } = partOfCell(plant.graph, cell);
    const held = contentsOfCell(plant, cell);
    const charged = held.gas === 'refrigerant' && (held.liquid || aboveZero(plant, held));
    return named.has(index) || !charged ? [] : [index];
  });

function holdsCharge(whole: Whole, index: number): boolean {
  const part = whole.plan.graph.parts[index]!;
  return isCompressor(part) || part.kind.group === 'coil' || part.kind.kind === 'receiver';
}

/** Valves of the hand that stand open between what is named and the rest of the reached spaces: parts, or parts with valves at their own ends. */
function boundary(plant: Plant, spaces: readonly Space[], named: ReadonlySet<number>): readonly number[] {
  const { graph } = plant;
  const byHand = (index: number): boolean => graph.parts[index]!.kind.shuts === 'hand';
  const reached = new Set(spaces.flatMap((space) => space.parts));
  // What a shut valve keeps off is no neighbour here.
  const beside = (end: number): readonly number[] =>
    neighbours(plant, end)
      .map((each) => graph.ends[each]!.part)
      .filter((each) => reached.has(each));
  return [...reached].filter((index) => {
    const { ends } = graph.parts[index]!;
    const outward = ends.filter((end) => beside(end).some((each) => !named.has(each)));
    // Where a valve stands at the joint, that one shuts the section off, not the valves of its neighbours.
    if (!byHand(index))
      return named.has(index) && outward.some((end) => plant.ends[end]!.valve === 'open' && !beside(end).some(byHand));
    if (plant.parts[index]!.position !== 'open' || outward.length === 0) return false;
    return named.has(index) || ends.some((end) => beside(end).some((each) => named.has(each) && !byHand(each)));
  });
}

/** Whether the machine works on or again after the step. */
const runsAfter = (whole: Whole, at: number): boolean =>
  whole.entries.slice(at).some((entry) => entry.after.running || has(entry, 'starts'));

/**
 * Whether a later step lets in about as much as the machine holds, or as much as nobody says. After a section was let off
 * into the air a charge without a weight is that of the section.
 */
function putBack(whole: Whole, at: number, vented: boolean): boolean {
  const all = chargeInAll(whole.plan) ?? whole.plan.system.recoverCharge?.quantity.high ?? null;
  let mass = 0;
  for (const entry of whole.entries.slice(at + 1)) {
    if (has(entry, 'lets-in')) return true;
    for (const event of entry.events) {
      if (event.type !== 'charges') continue;
      // Trimming a running machine to a target is no charging, unless a weight goes with it.
      if (event.mass) mass += event.mass.high;
      else if (event.purpose === 'charge' && (!vented || namesSystem(entry))) return true;
    }
  }
  return mass > 0 && (all === null || mass >= all * wholeShare);
}

const namesSystem = (entry: Entry): boolean =>
  (entry.slot.step.values['what'] as readonly Selector[]).some((each) => each.noun === 'system');

/** The step that shuts a valve before anything is let in. */
function shutLater(whole: Whole, at: number, valve: number): Entry | null {
  for (const entry of whole.entries.slice(at + 1)) {
    if (has(entry, 'charges')) return null;
    if (isShut(entry.after, valve) && !isShut(entry.before, valve)) return entry;
  }
  return null;
}

const isShut = (plant: Plant, index: number): boolean =>
  plant.parts[index]!.position === 'shut' ||
  plant.graph.parts[index]!.ends.some((end) => plant.ends[end]!.valve === 'shut');

const closesOnly = ({ before, after }: Entry, valves: readonly number[]): boolean =>
  after.parts.every((_, index) => isShut(before, index) === isShut(after, index) || valves.includes(index));

function valveName(whole: Whole, index: number): string {
  const part = whole.plan.graph.parts[index]!;
  return part.kind.shuts === 'hand' ? part.name : `valves of ${part.name}`;
}
