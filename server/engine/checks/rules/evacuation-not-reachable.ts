import type { Plan } from '../../plan/plan';
import type { Step } from '../../plan/step';
import type { Amount, Name } from '../../plan/term';
import { exactly, isProblem, toQuantity } from '../../quantity';
import { pumpUltimate } from '../../reference/evacuation';
import { reachableLevel } from '../../takeoff/figures/reachable-level';
import { input } from '../../takeoff/given';
import { defineCheck, type WayOut } from '../define';
import { bringing } from '../example-stock';
import { brought, figureOf } from '../stock';
import { inOwn, shown, vacuum } from '../support';
import { writeAt } from '../ways-out';

/** A level that the pump and the hoses do not reach, or not in the time that the step gives. */
export const evacuationNotReachable = defineCheck({
  name: 'evacuation-not-reachable',
  severity: 'warning',
  title: 'Pump and hoses do not reach the level',
  acceptable: true,
  reads: 'figure',
  ground: 'published',
  meaning:
    'The target lies below what the pump that is brought reaches through its hoses, even in a dry and tight circuit, or takes longer than the step allows. Where no pump is brought, it lies below what a usual pump reaches blanked off.',
  why: 'The crew waits for hours, looks for a leak that is not there, and goes on with whatever it got.',
  source:
    'steady state of pump and hose conductance; the data of the shop’s pump and hose; a usual pump blanked off: common practice, no source (handbook 8.5)',
  wrong: {
    base: 'split',
    plan: bringing('pump vp-8 with 2 x vac-3-4'),
    instead: [['evacuate each open part to 500 micron', 'evacuate each open part to 15 micron # <- here']],
  },
  right: { base: 'split', plan: bringing('pump vp-8 with 2 x vac-3-4') },
  plan(whole) {
    const { plan } = whole;
    const [pump] = brought(plan, 'pump');
    const hoseName = pump?.bound.values['hose'] as Name | undefined;
    const hose = hoseName ? (plan.scope.find('hose', hoseName.text) ?? null) : null;
    const flow = pump && figureOf(plan, pump.declaration, 'flow', 'flow');
    const ultimate = pump && figureOf(plan, pump.declaration, 'ultimate', 'level');
    const bore = figureOf(plan, hose, 'bore', 'diameter');
    const length = figureOf(plan, hose, 'length', 'length');
    whole.entries.forEach((entry, at) => {
      for (const event of entry.events) {
        if (event.type !== 'evacuates') continue;
        if (!pump) {
          if (event.level < pumpUltimate.quantity.high * 0.99 && entry.slot.step.values['per'] === undefined)
            whole.report(entry, {
              message: `${vacuum(plan, event.level)} is lower than a usual pump reaches with nothing but a gauge on it (${pumpUltimate.source}), and no pump is stated: set a level such as ${inOwn(plan, '250 or 500 micron', '35 or 65 Pa absolute')}, or bring a pump and hoses that reach it.`,
              slot: 'level',
              fixes: usualLevel(plan, entry.slot.step, pumpUltimate.quantity.high),
            });
          continue;
        }
        const reaches =
          flow && bore && length
            ? (reachableLevel.figure(pump.name, {
                pump: input(flow),
                bore: input(bore),
                length: input(length),
                hoses: input(exactly('count', pump.number)),
                ...(ultimate && { ultimate: input(ultimate) }),
              }).quantity?.low ?? null)
            : (ultimate?.low ?? null);
        if (reaches !== null && event.level < reaches * 0.99) {
          whole.report(entry, {
            message: `${pump.name} with its hoses reaches ${vacuum(plan, reaches)} at best (from its flow, its ultimate level and the bore and length of the hoses), and the step asks for ${vacuum(plan, event.level)}: bring another pump or shorter and wider hoses, or set a level that can be reached.`,
            slot: 'level',
            fixes: usualLevel(plan, entry.slot.step, reaches),
            related: [{ bound: pump.bound, message: 'the pump' }],
          });
          continue;
        }
        const allowed = quantityIn(entry.slot.step.values['within'], entry.slot.step.values['time']);
        const takes = (whole.view.takeOff.steps[at] ?? []).find((figure) => figure.name === 'pump-down-time')?.quantity;
        if (allowed !== null && takes && takes.low > allowed * 1.05)
          whole.report(entry, {
            message: `Pumping down takes ${shown(plan, takes)} with this pump and these hoses even when all is dry, and the step allows ${shown(plan, exactly('time', allowed))}.`,
            slot: 'within' in entry.slot.step.values ? 'within' : 'time',
            related: [{ bound: pump.bound, message: 'the pump' }],
          });
      }
    });
  },
});

/** The usual level, where the pump gets there. */
const usualLevel = (plan: Plan, step: Step, reaches: number): readonly WayOut[] =>
  reaches <= usual ? writeAt(step, step.values['level'], inOwn(plan, '500 micron', '65 Pa absolute')) : [];

/** 65 Pa is a little under 500 micron, Pa absolute (the level that most guides ask for, handbook 8.1). */
const usual = 65;

/** The longer end of the time that a step gives, s. */
function quantityIn(...values: readonly unknown[]): number | null {
  for (const value of values) {
    const amount = value as Amount | undefined;
    if (!amount?.literal) continue;
    const quantity = toQuantity(amount.literal, 'time', 101325);
    if (!isProblem(quantity)) return quantity.high;
  }
  return null;
}
