import { isRefrigerant } from '../../plan/refrigerants';
import type { Declaration } from '../../plan/scope';
import { defineCheck, type Whole } from '../define';
import { bringing } from '../example-stock';
import { brought, listOf, spotOf, statementOf } from '../stock';
import { underLaw } from '../support';
import { bringInstead, shopHas } from '../ways-out';

/** Gas is recovered with a machine that is not certified for it. */
export const recoveryMachineDoesNotSuit = defineCheck({
  name: 'recovery-machine-does-not-suit',
  severity: 'error',
  title: 'The recovery machine is not made for this refrigerant',
  acceptable: false,
  reads: 'state',
  ground: 'law',
  meaning:
    'A step recovers a refrigerant that stands in the circuit, and the machine that is brought does not list it.',
  why: 'It is not certified to reach the level, and with a gas that burns its relay or its fan may light it.',
  source: '40 CFR 82.158 (certified recovery equipment, handbook 2.2)',
  wrong: {
    base: 'split',
    plan: bringing('recovery 1 x rc-30 empty', 'recovery-machine rm-old # <- here'),
    file: 'recovery-machine rm-old {\n  made 2009\n  suits R-134a, R-404A\n}',
  },
  right: { base: 'split', plan: bringing('recovery 1 x rc-30 empty', 'recovery-machine rm-2') },
  plan(whole) {
    const { plan } = whole;
    const machines = brought(plan, 'recovery-machine').filter((each) =>
      listOf(each.declaration, 'suits', 'refrigerants'),
    );
    if (machines.length === 0) return;
    for (const entry of whole.entries) {
      for (const event of entry.events) {
        if (event.type !== 'recovers') continue;
        for (const { refrigerant } of event.held) {
          if (
            refrigerant === null ||
            !isRefrigerant(refrigerant) ||
            machines.some((each) => listOf(each.declaration, 'suits', 'refrigerants')!.includes(refrigerant))
          )
            continue;
          const machine = machines[0]!;
          const suits = statementOf(machine.declaration, 'suits');
          whole.reportAt(machine.bound, spotOf(machine), {
            message: (say) =>
              `${machine.name} does not list ${refrigerant}, which ${say.step(entry.cause)} recovers: bring a machine that is certified for it${underLaw(plan, 'machine', refrigerant)}.`,
            root: refrigerant,
            fixes: bringInstead(
              machine,
              shopHas(plan, 'recovery-machine', (each) => suitsAll(whole, each)),
            ),
            related: [
              { cause: entry.cause, message: `${refrigerant} is recovered here` },
              ...(suits && machine.declaration
                ? [{ bound: suits, file: machine.declaration.file, message: 'what it is made for' }]
                : []),
            ],
          });
        }
      }
    }
  },
});

/** Whether a machine lists every refrigerant that the steps recover. */
const suitsAll = (whole: Whole, machine: Declaration): boolean => {
  const suits = listOf(machine, 'suits', 'refrigerants');
  return whole.entries.every((entry) =>
    entry.events.every(
      (event) =>
        event.type !== 'recovers' ||
        event.held.every(({ refrigerant }) => refrigerant === null || suits?.includes(refrigerant)),
    ),
  );
};
