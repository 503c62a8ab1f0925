import type { Part } from '../../circuit/graph';
import type { Cause, PartState } from '../../circuit/state';
import type { Severity } from '../../finding';
import type { Plan } from '../../plan/plan';
import { defineCheck, type WayOut, type Whole } from '../define';
import { isCompressor, isDrier } from '../plant';
import { changesRefrigerant } from '../plant-facts';
import { edits } from '../support';
import { said, writeStanding } from '../ways-out';

/** The circuit says that a part is new or gone, and no step makes it so. */
export const partNotAsStated = defineCheck({
  name: 'part-not-as-stated',
  severity: 'warning',
  title: 'A part ends the job otherwise than the circuit states',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['joint-left-open', 'compressor-without-refrigerant', 'refrigerant-vented'],
  meaning:
    'The circuit states a part as new, added, removed or kept, and when the plan ends it is not so: the old one still stands there, the new one was never set in place, what is gone for good is set again, or what stays was changed for new, never put back, or taken off and put back as it was. A circuit that stays as it is has no new parts.',
  why: 'The crew brings the part home again, or has none with it; the old one goes on running in a machine that was counted on without it.',
  source: 'common practice',
  wrong: {
    base: 'rack',
    instead: [
      ['txv-1: expansion-valve new', 'txv-1: expansion-valve new # <- here'],
      ['change txv-1, txv-2', 'change txv-2'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const last = whole.entries.at(-1);
    if (!last) return;
    for (const part of whole.plan.graph.parts) {
      const state = last.after.parts[part.index]!;
      const fault = faultOf(whole, part, state) ?? putBack(whole, part, state);
      if (!fault) continue;
      const { setBy } = state;
      whole.reportPart(part.index, {
        message: (say) => `${part.name} ${fault.is}${fault.by && setBy ? say.step(setBy) : ''}: ${fault.way}.`,
        concerns: [part.index],
        ...(fault.severity && { severity: fault.severity }),
        fixes: [
          ...(part.standing === 'new' && state.mounted === 'old' ? withItsLike(whole, part) : []),
          ...(fault.state && mayBe(whole.plan, part, fault.state) ? writeStanding(whole.plan, part, fault.state) : []),
        ],
        related: fault.by && setBy ? [{ cause: setBy, message: 'it is set here' }] : [],
      });
    }
  },
});

interface Fault {
  readonly is: string;
  readonly way: string;
  /** The word that would be true of it as the steps go. */
  readonly state?: Part['standing'];
  /** Whether the sentence goes on with the step that set the part. */
  readonly by?: true;
  readonly severity?: Severity;
}

function faultOf(whole: Whole, part: Part, { mounted, renewed, setBy }: PartState): Fault | null {
  const untouched = whole.plan.graph.circuits[part.circuit]?.untouched ?? false;
  switch (part.standing) {
    case 'new':
      if (mounted === 'new') return null;
      if (untouched)
        return { is: 'is stated new in a circuit that stays as it is', way: 'state it kept', state: 'kept' };
      return mounted === 'old'
        ? { is: 'is stated new and no step fits it', way: 'add the step, or state it kept', state: 'kept' }
        : { is: 'is stated new and is not in place when the plan ends', way: 'add the step that sets it' };
    case 'added':
      return never(whole, part.index)
        ? { is: 'is stated added and no step fits it', way: 'add the step, or leave it out' }
        : null;
    case 'removed':
      if (mounted === 'old')
        return {
          is: 'is stated removed and no step takes it off',
          way: 'add the step, or state it kept',
          state: 'kept',
        };
      return mounted === 'new'
        ? { is: 'is stated removed and set again by ', by: true, way: 'state it new', state: 'new' }
        : null;
    case 'kept':
    case 'reused':
      if (mounted === 'none')
        return {
          is: `is stated ${part.standing} and never put back`,
          way: 'add the step, or state it removed',
          state: 'removed',
        };
      if (renewed !== setBy && setBy && standsBefore(whole, part.index, setBy))
        return {
          is: `is stated ${part.standing}, and nothing takes it off before `,
          by: true,
          // What is stated reused goes to the bench and comes back: it was to be taken off.
          ...(part.standing === 'reused'
            ? { way: 'take it off first' }
            : { way: 'take it off first, or state it new', state: 'new' as const }),
        };
      return renewed !== null && renewed === setBy
        ? {
            is: `is stated ${part.standing} and changed for a new one by `,
            by: true,
            way: 'state it new',
            state: 'new',
          }
        : null;
  }
}

/** Whether the part still stands where it stood when a step sets it in place: what the step brings is another one. */
const standsBefore = (whole: Whole, part: number, by: Cause): boolean =>
  whole.entries.some((entry) => entry.cause === by && entry.before.parts[part]!.mounted === 'old');

/**
 * A kept part that is taken off and put back as it was: where nothing was flushed or cleaned meanwhile, a new one was most
 * likely meant. What goes to the bench is stated reused.
 */
function putBack({ plan, entries }: Whole, part: Part, { mounted, renewed, setBy }: PartState): Fault | null {
  if (part.standing !== 'kept' || mounted !== 'new' || renewed !== null || !mayBe(plan, part, 'kept')) return null;
  const off = entries.findIndex((entry) => entry.after.parts[part.index]!.mounted === 'none');
  const set = entries.findIndex((entry) => entry.cause === setBy);
  const between = off < 0 || set < off ? [] : entries.slice(off, set + 1);
  const treated = between.some((entry) =>
    entry.events.some((event) => event.type === 'flows' || (event.type === 'cleans' && event.parts.length > 0)),
  );
  const is = 'is stated kept, and taken off and put back as it was by ';
  return treated
    ? { is, by: true, way: 'state it reused', state: 'reused', severity: 'information' }
    : { is, by: true, way: 'state it new, if a new one goes in, or reused', state: 'new' };
}

/** A piercing valve is added for the job and taken off again; what never stood there was forgotten. */
const never = (whole: Whole, part: number): boolean =>
  whole.entries.every((entry) => entry.after.parts[part]!.mounted === 'none');

/** Whether a part may be stated so: an old drier is not to stay, nor a valve that was chosen for another refrigerant, and after a burnout neither is what held the burnt oil. */
const mayBe = (plan: Plan, part: Part, standing: Part['standing']): boolean =>
  standing !== 'kept' ||
  !(
    isDrier(part) ||
    (changesRefrigerant(plan) && part.kind.group === 'metering') ||
    (plan.kinds.includes('burnout') && (isCompressor(part) || part.kind.kind === 'accumulator'))
  );

/** The step that changes another part of the kind changes this one as well. */
function withItsLike({ plan, entries }: Whole, part: Part): readonly WayOut[] {
  const by = entries.find(
    ({ slot, before, after }) =>
      slot.step.word.word === 'change' &&
      plan.graph.parts.some(
        ({ kind, index }) =>
          index !== part.index &&
          kind === part.kind &&
          before.parts[index]!.renewed === null &&
          after.parts[index]!.renewed !== null,
      ),
  );
  if (!by) return [];
  const { step } = by.slot;
  return [
    {
      title: `Change ${part.name} with it`,
      edits: (mend) => edits(mend.replace(step, 'what', `${said(step, 'what')}, ${part.name}`)),
    },
  ];
}
