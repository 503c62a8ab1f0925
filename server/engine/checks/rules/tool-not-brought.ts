import type { BringItem, Plan } from '../../plan/plan';
import type { Entry } from '../../walk/walk';
import { has } from '../course';
import { defineCheck, type Whole } from '../define';
import { bringing } from '../example-stock';
import { burns, newFacts, oldFacts } from '../plant-facts';
import { listOf } from '../stock';
import { bringToo, shopHas } from '../ways-out';

/** What steps do that nobody does without a tool, and the words under which such a tool is brought. */
const needs: readonly {
  readonly what: string;
  readonly why: string;
  brings(items: readonly BringItem[]): boolean;
  asks(entry: Entry, whole: Whole): boolean;
  /** One of the shop's that serves, as a line of the list. */
  of(whole: Whole): string | null;
}[] = [
  {
    what: 'a recovery cylinder',
    why: 'refrigerant is recovered here, and its room and its rating cannot be told',
    brings: (items) => items.some((item) => item.word === 'recovery'),
    // A cylinder that is named and not on the list is told as a name that there is not.
    asks: (entry) =>
      entry.events.some((event) => event.type === 'recovers' && event.spaces.length > 0 && event.into === null),
    of: () => null,
  },
  {
    what: 'a recovery machine',
    why: 'refrigerant is recovered here',
    brings: (items) => items.some((item) => item.word === 'recovery-machine'),
    asks: (entry) => entry.events.some((event) => event.type === 'recovers' && event.spaces.length > 0),
    of: machineFor,
  },
  {
    what: 'nitrogen',
    why: 'it presses on the circuit, breaks its vacuum or blows through its lines here',
    brings: (items) => items.some((item) => item.word === 'nitrogen'),
    // How much is needed may not be known; where it is, the stock is told to fall short.
    asks: (entry, { view }) =>
      entry.events.some(
        (event) =>
          (event.type === 'pressurises' && event.medium === 'nitrogen') ||
          (event.type === 'flows' && event.medium === 'nitrogen' && event.gas === 'nitrogen'),
      ) && !view.takeOff.shortfalls.some(({ kind }) => kind === 'nitrogen'),
    of: ({ plan }) => nitrogenFor(plan),
  },
  {
    what: 'swabs',
    why: 'they are pulled through lines here',
    brings: (items) => items.some((item) => item.word === 'swabs'),
    asks: (entry) => has(entry, 'swabs'),
    of: swabsFor,
  },
  {
    what: 'a vacuum pump',
    why: 'the circuit is evacuated here',
    brings: (items) => items.some((item) => item.word === 'pump'),
    asks: (entry) => has(entry, 'evacuates'),
    of: pumpFor,
  },
];

/** A plan that states its stock, and a tool is missing in it. */
export const toolNotBrought = defineCheck({
  name: 'tool-not-brought',
  severity: 'warning',
  title: 'A tool that the work needs is not on the list of what is brought',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The plan states what it brings, and a recovery cylinder, a recovery machine, a pump, nitrogen or swabs are not in it though the steps cannot be done without them; or the refrigerant burns and no leak detector is brought.',
  why: 'Whether the machine is certified for the gas, and whether the pump reaches the level, can only be told of what is stated. The van leaves without it, and a leak of a gas that burns is found when something lights it.',
  source: 'the list of what is brought, held against the steps',
  wrong: {
    base: 'split',
    plan: bringing('recovery 1 x rc-30 empty', 'pump vp-8', 'leak-detector A2L').replace(
      '  recovery-machine rm-2\n',
      '',
    ),
    instead: [['recover system to 0 inHg', 'recover system to 0 inHg # <- here']],
  },
  right: {
    base: 'split',
    plan: bringing('recovery 1 x rc-30 empty', 'recovery-machine rm-2', 'pump vp-8', 'leak-detector A2L'),
  },
  plan(whole) {
    const { bring } = whole.plan;
    // A list of a single material is no list of tools.
    if (bring === null || !bring.some((item) => isTool(item))) return;
    for (const need of needs) {
      if (need.brings(bring)) continue;
      const entry = whole.entries.find((each) => need.asks(each, whole));
      if (entry)
        whole.report(entry, {
          message: `The plan states what it brings and ${need.what} ${need.what.endsWith('s') ? 'are' : 'is'} not in it, though ${need.why}.`,
          slot: 'what',
          root: need.what,
          fixes: bringToo(whole.plan, need.of(whole)),
        });
    }
    const facts = newFacts(whole.plan);
    const charge = whole.entries.find((entry) => has(entry, 'charges') || has(entry, 'lets-in'));
    if (charge && burns(facts) > 0 && !bring.some((item) => item.word === 'leak-detector'))
      whole.report(charge, {
        message: `${facts?.name} burns (${facts?.safetyClass}), and no leak detector for that class is on the list of what is brought.`,
        slot: 'what',
        root: 'detector',
        fixes: bringToo(whole.plan, `leak-detector ${facts?.safetyClass}`),
      });
  },
});

const isTool = (item: BringItem): boolean =>
  item.word === 'recovery-machine' || item.word === 'pump' || item.word === 'leak-detector';

function nitrogenFor(plan: Plan): string | null {
  const name = shopHas(plan, 'nitrogen-cylinder', () => true);
  return name === undefined ? null : `nitrogen 1 x ${name}`;
}

/** As many as the steps count. */
function swabsFor({ entries }: Whole): string {
  const all = entries.reduce(
    (sum, { events, slot }) =>
      sum + events.filter(({ type }) => type === 'swabs').length * ((slot.step.values['number'] as number) ?? 1),
    0,
  );
  return `swabs ${all}`;
}

function machineFor({ plan, entries }: Whole): string | null {
  const gases = entries.flatMap((entry) =>
    entry.events.flatMap((event) =>
      event.type === 'recovers' ? event.held.flatMap((each) => each.refrigerant ?? []) : [],
    ),
  );
  const name = shopHas(plan, 'recovery-machine', (each) => {
    const suits = listOf(each, 'suits', 'refrigerants');
    return gases.every((gas) => suits?.includes(gas));
  });
  return name === undefined ? null : `recovery-machine ${name}`;
}

function pumpFor({ plan }: Whole): string | null {
  const classes = [newFacts(plan), oldFacts(plan)].filter((each) => burns(each) > 0).map((each) => each!.safetyClass!);
  const name = shopHas(plan, 'pump', (each) => {
    const suits = listOf(each, 'suits', 'classes');
    return classes.every((one) => suits?.includes(one));
  });
  return name === undefined ? null : `pump ${name}`;
}
