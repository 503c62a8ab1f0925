import { type Bound, child, children } from '../../plan/bind';
import { stated, wordSpan } from '../../plan/gather';
import type { Plan } from '../../plan/plan';
import { eachStep, type Step } from '../../plan/step';
import type { Amount, Name } from '../../plan/term';
import { exactly, isProblem, type Quantity, toQuantity } from '../../quantity';
import { gaugeResolution, temperatureUncertainty } from '../../reference/pressure-test';
import { correctedTestReading } from '../../takeoff/figures/corrected-test-reading';
import { input } from '../../takeoff/given';
import { defineCheck, type RecordSeen } from '../define';
import { roundedLimit } from '../rounding';
import { amount, gauge, shown, vacuum } from '../support';

/** A reading of the record that fails the limit of its step. */
export const readingFails = defineCheck({
  name: 'reading-fails',
  severity: 'warning',
  title: 'A reading in the record fails its limit',
  acceptable: false,
  noFix: 'The reading is what it was: the step is done again until it passes, or the departure is signed.',
  reads: 'figure',
  ground: 'practice',
  meaning:
    'What was read does not keep the limit that the step states: recovery level, test pressure with its temperatures, vacuum, rise in the decay test, or any reading with a limit; or a repeat went on fewer or more times than the plan says.',
  why: 'The step was not passed, whatever the time behind it says.',
  source:
    'the limits of the plan; the pressure test is corrected by the law of Gay-Lussac, within what gauge and thermometer can tell',
  wrong: {
    base: 'split',
    instead: [['  pressure-test each', '  test: pressure-test each']],
    after:
      'record done {\n  of example revision 1\n  test {\n    done 12:00 by lead\n    read start 450 psig at 80 degF\n    read end 441 psig at 80 degF # <- here\n  }\n  signed lead 17:00\n}',
  },
  right: {
    base: 'split',
    instead: [['  pressure-test each', '  test: pressure-test each']],
    after:
      'record done {\n  of example revision 1\n  test {\n    done 12:00 by lead\n    read start 450 psig at 80 degF\n    read end 441.5 psig at 70 degF\n  }\n  signed lead 17:00\n}',
  },
  record(seen) {
    const { view, answers } = seen;
    if (!view) return;
    const { plan } = view;
    const steps = [...eachStep(plan.steps)];
    let vacuumLevel: number | null = null;
    for (const step of steps) {
      const answer = step.label === null ? undefined : answers.get(step.label);
      if (!answer || child(answer.block, 'departed')) continue;
      const all = readings(answer, plan);
      const one = (name: string): Reading | undefined => all.find((each) => each.name === name);
      const level = one('level');
      switch (step.word.word) {
        case 'recover':
        case 'evacuate': {
          const limit =
            amountOf(plan, step.values['level']) ??
            (step.word.word === 'recover' ? exactly('pressure', plan.site.atmosphere) : null);
          if (step.word.word === 'evacuate' && level) vacuumLevel = level.quantity.high;
          // A gauge reads an inch of mercury at best.
          const slack = step.word.word === 'recover' ? 1700 : 0;
          const read = level?.bound.values['value'] as Amount | undefined;
          const most = limit && roundedLimit(limit.high, read, plan.site.atmosphere, 'most');
          if (level && limit && level.quantity.high > Math.max(limit.high * 1.005 + slack, most! * 1.001))
            fails(seen, step, level, `the level was to be ${shown(plan, limit)} or lower`, plan);
          break;
        }
        case 'pressure-test':
          pressureTest(seen, step, plan, one('start'), one('end'));
          break;
        case 'decay-test': {
          const rise = amountOf(plan, step.values['rise']);
          const start = one('start')?.quantity.high ?? vacuumLevel;
          const end = one('end') ?? level;
          if (rise && end && start !== null && end.quantity.high - start > rise.high * 1.005)
            fails(
              seen,
              step,
              end,
              `it rose by ${vacuum(plan, end.quantity.high - start)}, and ${vacuum(plan, rise.high)} are allowed`,
              plan,
            );
          break;
        }
        case 'repeat':
          rounds(seen, step, answer);
          break;
      }
      stepLimits(seen, step, plan, all);
    }
  },
});

interface Reading {
  readonly name: string;
  readonly quantity: Quantity;
  readonly temperature: Quantity | null;
  readonly bound: Bound;
}

const readings = (answer: Bound, plan: Plan): readonly Reading[] =>
  children(answer.block, 'read').flatMap((bound): Reading[] => {
    const name = bound.values['name'] as Name | undefined;
    const quantity = stated(bound, 'value', plan.site.atmosphere)?.quantity;
    return name && quantity
      ? [{ name: name.text, quantity, temperature: stated(bound, 'at', plan.site.atmosphere)?.quantity ?? null, bound }]
      : [];
  });

function amountOf(plan: Plan, value: unknown): Quantity | null {
  const amount = value as Amount | Name | undefined;
  if (!amount) return null;
  if (!('literal' in amount))
    return amount.text === 'test-pressure' ? (plan.parameters.testPressure?.quantity ?? null) : null;
  const quantity = toQuantity(amount.literal, amount.kind, plan.site.atmosphere);
  return isProblem(quantity) ? null : quantity;
}

function fails(seen: RecordSeen, step: Step, reading: Reading, why: string, plan: Plan): void {
  const span = reading.bound.spans['value'] ?? wordSpan(reading.bound);
  seen.report(reading.bound, span, {
    message: `${shown(plan, reading.quantity)} fails "${step.label}": ${why}.`,
    related: [{ at: { file: step.file, item: step.bound.item, ...wordSpan(step.bound) }, message: 'the limit' }],
  });
}

function pressureTest(
  seen: RecordSeen,
  step: Step,
  plan: Plan,
  start: Reading | undefined,
  end: Reading | undefined,
): void {
  const asked = amountOf(plan, step.values['level']);
  const { atmosphere } = plan.site;
  const reached = start ?? end;
  if (asked && reached && reached.quantity.high < asked.low - gaugeResolution.quantity.high)
    fails(seen, step, reached, `the test was to be at ${gauge(plan, asked.low)}`, plan);
  if (!start || !end) return;
  const same = start.temperature ?? exactly('temperature', 294);
  const expected = correctedTestReading.figure(
    step.text,
    { pressure: input(start.quantity), start: input(same), end: input(end.temperature ?? same) },
    { atmosphere },
  ).quantity;
  if (!expected) return;
  // What gauge and thermometer can tell: one division twice, and a degree either way.
  const slack =
    2 * gaugeResolution.quantity.high +
    (2 * temperatureUncertainty.quantity.high * expected.low) / (end.temperature ?? same).low;
  if (end.quantity.high < expected.low - slack)
    fails(
      seen,
      step,
      end,
      `with the temperatures a tight circuit would read ${gauge(plan, expected.low)}, so it has lost ${amount(plan, 'pressure-difference', expected.low - end.quantity.high)}`,
      plan,
    );
}

function rounds(seen: RecordSeen, step: Step, answer: Bound): void {
  const went = child(answer.block, 'went');
  const number = went?.values['number'] as number | undefined;
  const least = step.values['least'] as number | undefined;
  const most = step.values['most'] as number | undefined;
  if (!went || number === undefined) return;
  const span = went.spans['number'] ?? wordSpan(went);
  const related = [{ at: { file: step.file, item: step.bound.item, ...wordSpan(step.bound) }, message: 'the limit' }];
  if (least !== undefined && number < least)
    seen.report(went, span, {
      message: `"${step.label}" went ${number} times, and the plan asks for at least ${least}.`,
      related,
    });
  if (most !== undefined && number > most)
    seen.report(went, span, {
      message: `"${step.label}" went ${number} times, and the plan allows at most ${most}: what did not come clear by then wants a decision of the lead.`,
      related,
    });
}

/** Readings that the step itself, or a line of its block, gives a limit to. */
function stepLimits(seen: RecordSeen, step: Step, plan: Plan, all: readonly Reading[]): void {
  const wanted = new Map<string | null, { readonly most: Quantity | null; readonly least: Quantity | null }>();
  if (step.word.word === 'read' || step.word.word === 'acid-test')
    wanted.set(null, { most: amountOf(plan, step.values['most']), least: amountOf(plan, step.values['least']) });
  for (const line of children(step.bound.block, 'read')) {
    const name = line.values['name'] as Name | undefined;
    if (name)
      wanted.set(name.text, { most: amountOf(plan, line.values['most']), least: amountOf(plan, line.values['least']) });
  }
  for (const [name, { most, least }] of wanted) {
    for (const reading of all) {
      if (name !== null && reading.name !== name) continue;
      if (most && most.kind === reading.quantity.kind && reading.quantity.high > most.high * 1.001)
        fails(seen, step, reading, `it was to be at most ${shown(plan, most)}`, plan);
      if (least && least.kind === reading.quantity.kind && reading.quantity.low < least.low * 0.999)
        fails(seen, step, reading, `it was to be at least ${shown(plan, least)}`, plan);
    }
  }
}
