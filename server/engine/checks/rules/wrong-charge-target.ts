import { defineCheck } from '../define';
import { touched } from '../plant';
import { edits } from '../support';

/** Charge judged by a reading that does not tell it with this metering device. */
export const wrongChargeTarget = defineCheck({
  name: 'wrong-charge-target',
  severity: 'warning',
  title: 'The charge is judged by the wrong reading for the metering device',
  acceptable: true,
  reads: 'state',
  ground: 'published',
  meaning:
    'With an expansion valve the charge shows in the subcooling, with a fixed orifice or cap tube in the superheat, with a receiver in a clear glass or the level; a machine with electronically driven valves and no stated target, as most ductless ones, is weighed in. The plan states another target, or none.',
  why: 'An expansion valve holds its superheat at almost any charge: who fills by it overfills or starves the machine.',
  source: 'state energy code, field verification RA3.2 (handbook 9.2); receiver: common practice',
  wrong: {
    base: 'split',
    instead: [
      ['subcooling 10 Δ°F', 'superheat 10 Δ°F'],
      ['adjust charge after 15 min', 'adjust charge after 15 min # <- here'],
    ],
  },
  right: { base: 'split' },
  step(here) {
    if (here.per) return;
    const { graph } = here.after;
    const kinds = graph.parts.filter((part) => touched(graph, part.index)).map((part) => part.kind.kind);
    const receiver = kinds.includes('receiver');
    const valve = kinds.some((kind) => kind === 'expansion-valve' || kind === 'electronic-expansion-valve');
    const driven = !kinds.includes('expansion-valve') && kinds.includes('electronic-expansion-valve');
    const fixed = !valve && kinds.some((kind) => kind === 'fixed-orifice' || kind === 'cap-tube');
    const { subcooling, superheat } = here.plan.system;
    for (const event of here.events('adjusts')) {
      if (event.what !== 'charge' || typeof event.to === 'string') continue;
      const wrong = receiver
        ? 'With a receiver the charge shows in a clear glass or the level'
        : valve && !subcooling && superheat
          ? 'With an expansion valve the charge shows in the subcooling, and the system states superheat'
          : fixed && !superheat && subcooling
            ? 'With a fixed orifice or cap tube the charge shows in the superheat, and the system states subcooling'
            : driven && event.to === null && !subcooling && !superheat
              ? 'Valves that are driven electronically set the flow themselves, and no target is stated: the charge shows in nothing but its weight'
              : null;
      if (!wrong) continue;
      const stated = receiver ? null : (superheat ?? subcooling);
      here.report({
        message: `${wrong}: ${receiver ? 'adjust to sight-glass clear or to level' : 'state the right target, or adjust to weight'}.`,
        slot: here.step.spans['to'] ? 'to' : 'what',
        related: stated ? [{ bound: stated.bound, span: stated.span, message: 'the target is stated here' }] : [],
        fixes: [
          {
            title: receiver ? 'Adjust to a clear glass' : 'Adjust to weight',
            edits: (mend) => {
              const to = receiver ? 'to sight-glass clear' : 'to weight';
              return edits(
                here.step.spans['to'] ? mend.replace(here.step, 'to', to) : mend.append(here.step, ` ${to}`),
              );
            },
          },
        ],
      });
    }
  },
});
