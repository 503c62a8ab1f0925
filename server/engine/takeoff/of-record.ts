import { type Bound, child, children } from '../plan/bind';
import { stated } from '../plan/gather';
import type { Plan } from '../plan/plan';
import type { Declaration } from '../plan/scope';
import { eachStep, type Step } from '../plan/step';
import type { Name } from '../plan/term';
import { between, exactly, type Quantity } from '../quantity';
import type { Walk } from '../walk/walk';
import type { Figure } from './figure';
import {
  carbonBalance,
  carbonEquivalent,
  correctedTestReading,
  decayLeakRate,
  followUpDays,
  leakRate,
  recoveryInAll,
  refrigerantInAll,
} from './figures';
import { type Given, input, named } from './given';
import { noted } from './noted';
import { optionsOf } from './options';
import type { FigureOptions } from './relation';
import type { TakeOff } from './take-off';
import { visitsOf } from './visits';

/** Figures that a record gives rise to: of one of its answers, or (null) of the record as a whole. */
export interface RecordFigure {
  readonly answer: Bound | null;
  readonly figure: Figure;
}

interface Seen {
  readonly plan: Plan;
  readonly declaration: Declaration;
  readonly options: FigureOptions;
  /** The answers to steps of the plan, in the order of the record. */
  readonly answers: readonly { readonly step: Step; readonly answer: Bound }[];
  /** The day of the work, as `2027-05-18`; null where the record does not say. */
  readonly day: string | null;
}

/** What the readings and weights of a record mean: balance of refrigerant, leaks, days to the follow-ups. */
export function figuresOfRecord(
  declaration: Declaration,
  view: { readonly plan: Plan; readonly walk: Walk; readonly takeOff: TakeOff },
): readonly RecordFigure[] {
  const { plan } = view;
  const byLabel = new Map(
    [...eachStep(plan.steps)].flatMap((step) => (step.label ? [[step.label, step] as const] : [])),
  );
  const answers = declaration.bound.block.flatMap((answer) => {
    const step = answer.place === 'record' ? byLabel.get(answer.item.word?.text ?? '') : undefined;
    return step && answer.block.length > 0 ? [{ step, answer }] : [];
  });
  const day = (child(declaration.bound.block, 'done')?.values['day'] as string | undefined) ?? null;
  const seen: Seen = { plan, declaration, options: optionsOf(plan), answers, day };
  return [...tests(seen), ...decays(seen, view), ...balance(seen), ...followUps(seen)];
}

/** A reading by its name; what the gauge showed at which temperature. */
function reading(answer: Bound, name: string, plan: Plan): { value?: Given; at?: Given } {
  const bound = children(answer.block, 'read').find((each) => (each.values['name'] as Name | undefined)?.text === name);
  const of = (slot: string): Given | undefined => {
    const found = stated(bound, slot, plan.site.atmosphere);
    return found ? input(found.quantity, 'plan', found.amount.literal.text) : undefined;
  };
  const [value, at] = [of('value'), of('at')];
  return { ...(value && { value }), ...(at && { at }) };
}

/** What a tight section would have read at the end of its test, beside what was read. */
const tests = ({ plan, options, answers }: Seen): readonly RecordFigure[] =>
  answers.flatMap(({ step, answer }): readonly RecordFigure[] => {
    if (step.word.word !== 'pressure-test') return [];
    const start = reading(answer, 'start', plan);
    const end = reading(answer, 'end', plan);
    if (!start.value || !end.value) return [];
    const figure = correctedTestReading.figure(
      step.label ?? step.text,
      { pressure: start.value, start: start.at, end: end.at },
      options,
    );
    return [{ answer, figure: noted(figure, [`${end.value.shown} was read.`]) }];
  });

/** The leak that the rise of a decay test means, if it went on in a straight line. */
function decays({ plan, options, answers }: Seen, { walk, takeOff }: { walk: Walk; takeOff: TakeOff }) {
  let level: Quantity | null = null;
  return answers.flatMap(({ step, answer }): readonly RecordFigure[] => {
    if (step.word.word === 'evacuate') level = reading(answer, 'level', plan).value?.quantity ?? level;
    if (step.word.word !== 'decay-test') return [];
    const start: Quantity | null = reading(answer, 'start', plan).value?.quantity ?? level;
    const end = reading(answer, 'end', plan).value?.quantity;
    const at = walk.entries.findIndex((entry) => entry.slot.step === step);
    const planned = takeOff.steps[at]?.find((figure) => figure.name === 'decay-leak-rate');
    if (!start || !end || !planned) return [];
    const rise = between('pressure-difference', Math.max(0, end.low - start.high), Math.max(0, end.high - start.low));
    const time = planned.inputs['time'];
    const figure = decayLeakRate.figure(
      step.label ?? step.text,
      { volume: planned.inputs['volume'], rise: input(rise, 'computed', undefined, 'as read'), time },
      options,
    );
    return [{ answer, figure: noted(figure, planned.notes) }];
  });
}

/** Recovered against what was in it, charged, and what that is as carbon dioxide; of a leak that was mended, its rate. */
function balance({ plan, declaration, options, answers }: Seen): readonly RecordFigure[] {
  const { before, after } = plan.system.refrigerant;
  const weighed = (words: readonly string[]): readonly Given[] =>
    answers.flatMap(({ step, answer }) =>
      words.includes(step.word.word)
        ? children(answer.block, 'weighed').flatMap((bound) => {
            const found = stated(bound, 'mass', plan.site.atmosphere);
            return found ? [input(found.quantity, 'plan', undefined, step.label ?? step.text)] : [];
          })
        : [],
    );
  const out = weighed(['recover']);
  const goneIn = weighed(['charge', 'adjust']);
  const figures: Figure[] = [];
  const sumOf = (figure: Figure): Given | undefined =>
    figure.quantity ? input(figure.quantity, 'computed') : undefined;
  const recovered = before !== null && out.length > 0 ? recoveryInAll.figure(before, { masses: out }, options) : null;
  const charged =
    after !== null && goneIn.length > 0 ? refrigerantInAll.figure(after, { masses: goneIn }, options) : null;
  const same = before !== null && before === after;
  if (recovered) figures.push(recovered, carbon(recovered, options));
  if (charged) figures.push(charged, carbon(charged, options));
  const { recoverCharge, charge } = plan.system;
  const held = recoverCharge && input(recoverCharge.quantity, 'plan', recoverCharge.amount.literal.text);
  if (recovered && before !== null && held)
    figures.push(
      carbonBalance.figure(before, { refrigerant: named(before), held, recovered: sumOf(recovered) }, options),
    );
  const full = charge ?? recoverCharge;
  if (same && charged && plan.kinds.includes('repair')) {
    // What came out and went in again is no loss: only what is added beyond it makes good a leak.
    const net = Math.max(0, charged.quantity!.high - (recovered?.quantity?.low ?? 0));
    figures.push(
      leakRate.figure(
        after!,
        {
          added: input(exactly('mass', net), 'computed', undefined, 'charged less recovered'),
          fullCharge: full ? input(full.quantity, 'plan', full.amount.literal.text) : undefined,
          since: sinceLast(declaration),
        },
        options,
      ),
    );
  }
  return figures.map((figure) => ({ answer: null, figure }));
}

const carbon = (mass: Figure, options: FigureOptions): Figure =>
  carbonEquivalent.figure(
    mass.subject,
    {
      refrigerant: named(mass.subject),
      mass: mass.quantity ? input(mass.quantity, 'computed') : undefined,
    },
    options,
  );

/** Seconds from the last addition to the day of the work, where the record states both. */
function sinceLast({ bound }: Declaration): Given | undefined {
  const day = (word: string): number => Date.parse(String(child(bound.block, word)?.values['day'] ?? 'none'));
  const seconds = (day('done') - day('last-addition')) / 1000;
  return Number.isFinite(seconds) && seconds > 0 ? input(exactly('time', seconds), 'plan') : undefined;
}

const followUps = ({ plan, options, day }: Seen): readonly RecordFigure[] =>
  visitsOf(plan).flatMap(({ title, within }) => ({
    answer: null,
    figure: followUpDays.figure(
      title,
      { start: day === null ? undefined : named(day), within, today: day === null ? undefined : named(day) },
      options,
    ),
  }));
