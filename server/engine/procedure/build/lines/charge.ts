import type { Amount as Authored, Name } from '../../../plan/term';
import { forTheRecord, reading, textLine } from '../../construct';
import type { StepLine } from '../../document';
import { type Sentence, sentence } from '../../sentence';
import type { Here } from '../here';

/** The cylinder before and after, and what the plan puts in. */
export function chargeLines(here: Here): readonly StepLine[] {
  const mass = here.ruler.unit('mass');
  const given = here.value<{ b?: Authored }>('with')?.b;
  const added = here.figures('line-allowance')[0];
  const allowance = added ? here.ruler.figure(added) : null;
  const nothing = added?.quantity?.high === 0;
  const total = here.figures('total-charge').flatMap((figure) => here.ruler.figure(figure) ?? [])[0];
  const lines: StepLine[] = [];
  const limit: Sentence = given
    ? sentence(here.ruler.authored(given), ' goes in')
    : nothing
      ? sentence('nothing goes in: the unit’s own charge covers the lines')
      : allowance
        ? sentence(allowance, ' goes in for the lines')
        : forTheRecord;
  lines.push(
    reading(
      'Charging cylinder',
      [
        { lead: 'before', unit: mass },
        { lead: 'after', unit: mass },
      ],
      limit,
    ),
  );
  if (!given && total) lines.push(textLine('In all', sentence(total, ' with what the unit brought.')));
  const first = here.figures('first-charge').flatMap((figure) => here.ruler.figure(figure) ?? [])[0];
  if (!given && first)
    lines.push(textLine('By the old charge', sentence('start with ', first, ', the rest by the readings.')));
  return lines;
}

/** What an adjustment is judged by, and the steady running before it. */
export function adjustLines(here: Here): readonly StepLine[] {
  const { system } = here.plan;
  const difference = here.ruler.unit('temperature-difference', (system.superheat ?? system.subcooling)?.amount ?? null);
  const what = here.value<readonly { noun: string; of: readonly { noun: string }[] }[]>('what') ?? [];
  const lines: StepLine[] = [];
  const target = (stated: typeof system.superheat): Sentence =>
    stated ? sentence(here.ruler.stated(stated)) : forTheRecord;
  for (const each of what) {
    if (each.noun === 'superheat') {
      const to = here.stated('to');
      const limit = to ? sentence(here.ruler.authored(to)) : target(system.superheat);
      for (const valve of each.of) lines.push(reading(`Superheat, ${valve.noun}`, difference, limit));
    }
    if (each.noun === 'charge') {
      const pressure = here.ruler.unit('pressure');
      const degrees = here.ruler.unit('temperature');
      lines.push(
        reading(
          'Liquid line',
          [
            { lead: '', unit: pressure },
            { lead: 'at', unit: degrees },
          ],
          forTheRecord,
        ),
        reading('Subcooling', difference, target(system.subcooling)),
      );
      if (system.superheat && !what.some((other) => other.noun === 'superheat'))
        lines.push(reading('Superheat at the compressor', difference, target(system.superheat)));
      const most = here.stated('most');
      lines.push(
        reading(
          'Charge now, in all',
          here.ruler.unit('mass'),
          most ? sentence('at most ', here.ruler.authored(most)) : forTheRecord,
          false,
        ),
      );
    }
  }
  return lines;
}

/** The first readings of a system that runs again. */
export function startLines(here: Here): readonly StepLine[] {
  const unit = here.ruler.unit('pressure');
  return [
    reading(
      'Running',
      [
        { lead: 'suction', unit },
        { lead: 'discharge', unit },
      ],
      here.plan.system.designHigh
        ? sentence('discharge below ', here.ruler.stated(here.plan.system.designHigh))
        : forTheRecord,
    ),
  ];
}

export const labelLines = (here: Here): readonly StepLine[] => {
  const { refrigerant, oil } = here.plan.system;
  return [
    reading(
      `Plate: ${[refrigerant.after, oil.after].filter(Boolean).join(', ')}, the date and the full charge`,
      here.ruler.unit('mass'),
      sentence('as charged'),
      false,
    ),
  ];
};

/** Oil out and in, round by round. */
export function changeOilLines(here: Here): readonly StepLine[] {
  const to = here.value<{ a: Name; b?: Authored }>('to');
  const unit = here.ruler.unit('volume', to?.b ?? null);
  const left = here.sheet
    .entriesOf(here.step)
    .flatMap((entry) => entry.events)
    .some((event) => event.type === 'no-effect');
  const share = here.figures('oil-left').flatMap((figure) => here.ruler.figure(figure) ?? []);
  return [
    reading('Old oil out', unit, forTheRecord, false),
    reading('New oil in', unit, to?.b ? sentence(here.ruler.authored(to.b)) : forTheRecord, false),
    ...(share[0] && !left
      ? [textLine('Old oil left after the first round', sentence('about ', share[0], ' of the filling.'))]
      : []),
  ];
}

export function addOilLines(here: Here): readonly StepLine[] {
  const amount = here.value<{ b?: Authored }>('with')?.b;
  return [
    reading(
      'Oil in',
      here.ruler.unit('volume', amount ?? null),
      amount ? sentence(here.ruler.authored(amount)) : forTheRecord,
      false,
    ),
  ];
}
