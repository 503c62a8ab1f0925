import { child } from '../../plan/bind';
import { stated } from '../../plan/gather';
import { isLawStated, lawOf } from '../../plan/law';
import { eachStep, type Step } from '../../plan/step';
import type { Amount as Authored } from '../../plan/term';
import type { Fact } from '../document';
import { type Sentence, sentence } from '../sentence';
import { classOf, flammable } from './hazards';
import { recoversWhole } from './recovered';
import type { Sheet } from './sheet';
import { uncountedToFill } from './uncounted';
import { capital, counted, joined, listed } from './words';

/** The job in ten lines; a line of which the plan says nothing is left out. */
export function jobOf(sheet: Sheet): readonly Fact[] {
  const facts: readonly (readonly [string, Sentence])[] = [
    ['Place', placeOf(sheet)],
    ['Kind of job', sentence(capital(listed(sheet.plan.kinds)))],
    ['Refrigerant', changeOf(sheet)],
    ['Oil', oilOf(sheet)],
    ['Amounts', amountsOf(sheet)],
    ['Pressure test', testsOf(sheet)],
    ['Vacuum', vacuumOf(sheet)],
    ['Charge', chargeOf(sheet)],
    ['Targets', targetsOf(sheet)],
    ['People', peopleOf(sheet)],
    ['Stop the job', stopsOf(sheet)],
    ...notesOf(sheet).map((note): readonly [string, Sentence] => ['Note', sentence(note)]),
  ];
  return facts.filter(([, value]) => value.length > 0).map(([label, value]) => ({ label, value }));
}

function placeOf({ plan, ruler }: Sheet): Sentence {
  const { site } = plan;
  const of = (label: string, value: Parameters<typeof ruler.stated>[0] | null): Sentence =>
    value ? sentence(`${label} `, ruler.stated(value)) : [];
  const room = site.workSpace;
  const hotWork = child(child(plan.declaration.bound.block, 'site')?.block ?? [], 'hot-work');
  const watch = hotWork ? stated(hotWork, 'watch', site.atmosphere) : null;
  return joined([
    room
      ? joined(
          [
            sentence(room.where.replaceAll('-', ' ')),
            room.volume ? sentence(ruler.stated(room.volume)) : [],
            room.ventilation ? sentence('fresh air ', ruler.stated(room.ventilation)) : [],
            room.open ? sentence('open air') : [],
          ],
          ', ',
        )
      : [],
    of('smallest room', site.smallestRoom),
    of('outdoors', site.outdoors),
    joined([of('indoors', site.indoors), of('wet bulb', site.wetBulb)], ', '),
    of('altitude', site.altitude),
    isLawStated(plan) ? sentence(`law ${lawOf(plan) === 'elsewhere' ? 'of the place' : `of the ${lawOf(plan)}`}`) : [],
    hotWork ? sentence('watch for fire after a torch', ...(watch ? [' ', ruler.stated(watch)] : [])) : [],
  ]);
}

const withClass = (refrigerant: string): string =>
  `${refrigerant} (${classOf(refrigerant)}${flammable(refrigerant) ? ', burns' : ''})`;

function changeOf({ plan }: Sheet): Sentence {
  const { before, after } = plan.system.refrigerant;
  if (after === null) return before === null ? [] : sentence(withClass(before));
  if (before === null || before === after)
    return sentence(withClass(after), before === after ? ', stays the same' : '');
  return sentence(`${withClass(before)} → ${withClass(after)}`);
}

function oilOf({ plan }: Sheet): Sentence {
  const { before, after } = plan.system.oil;
  if (before === null && after === null) return [];
  return sentence(
    before === after || before === null || after === null
      ? `${after ?? before}, stays the same`
      : `${before} → ${after}`,
  );
}

function amountsOf(sheet: Sheet): Sentence {
  const { plan, ruler } = sheet;
  const total = (name: string, label: string): Sentence[] =>
    sheet.totals(name).flatMap((figure) => {
      const shown = ruler.figure(figure);
      return shown ? [sentence(`${label} `, shown)] : [];
    });
  return joined([
    plan.system.recoverCharge && recoversWhole(sheet)
      ? sentence('recover ', ruler.stated(plan.system.recoverCharge))
      : [],
    ...total('solvent-in-job', 'solvent'),
    ...total('nitrogen-in-all', 'nitrogen').map((needed) =>
      uncountedToFill(sheet).length > 0 ? sentence(...needed, ' without coils and vessels') : needed,
    ),
    ...total('oil-in-all', 'oil'),
  ]);
}

const stepsOf = (sheet: Sheet, ...words: readonly string[]): readonly Step[] =>
  [...eachStep(sheet.plan.steps)].filter((step) => words.includes(step.word.word));

/** The same said once: a test that is done at two places of the plan stands here only once. */
const distinct = (pieces: readonly Sentence[]): readonly Sentence[] => {
  const seen = new Set<string>();
  return pieces.filter((piece) => {
    const key = JSON.stringify(piece);
    return seen.has(key) ? false : seen.add(key);
  });
};

const amountOf = (step: Step, slot: string): Authored | null => {
  const value = step.values[slot] as Authored | { readonly text: string } | undefined;
  return value && 'literal' in value ? value : null;
};

function testsOf(sheet: Sheet): Sentence {
  const { plan, ruler } = sheet;
  return joined(
    distinct(
      stepsOf(sheet, 'pressure-test').map((step) => {
        const level = amountOf(step, 'level') ?? plan.parameters.testPressure?.amount ?? null;
        const time = amountOf(step, 'time');
        return level
          ? joined([sentence(ruler.authored(level)), time ? sentence('for ', ruler.authored(time)) : []], ' ')
          : [];
      }),
    ),
    ', then ',
  );
}

function vacuumOf(sheet: Sheet): Sentence {
  const { ruler } = sheet;
  const levels = distinct(
    stepsOf(sheet, 'evacuate').flatMap((step) => {
      const level = amountOf(step, 'level');
      return level ? [sentence(ruler.authored(level))] : [];
    }),
  );
  const decays = distinct(
    stepsOf(sheet, 'decay-test').map((step) => {
      const time = amountOf(step, 'time');
      const rise = amountOf(step, 'rise');
      return joined(
        [time ? sentence(ruler.authored(time)) : [], rise ? sentence('rise at most ', ruler.authored(rise)) : []],
        ', ',
      );
    }),
  );
  return joined([
    levels.length > 0 ? [...sentence('to '), ...joined(levels, ', ')] : [],
    ...decays.map((decay): Sentence => [...sentence('then pump off for '), ...decay]),
  ]);
}

function chargeOf(sheet: Sheet): Sentence {
  const { plan, ruler } = sheet;
  const { charge, chargeCovers } = plan.system;
  const weighed = stepsOf(sheet, 'charge').flatMap((step): Sentence[] => {
    const mass = (step.values['with'] as { b?: Authored } | undefined)?.b;
    return mass ? [sentence('weigh in ', ruler.authored(mass))] : [];
  });
  const figure = (name: string, label: string): Sentence => {
    const found = stepsOf(sheet, 'charge')
      .flatMap((step) => sheet.figuresOf(step, name))
      .filter((each) => each.quantity?.high !== 0)
      .flatMap((each) => ruler.figure(each) ?? [])[0];
    return found ? sentence(`${label} `, found) : [];
  };
  return joined([
    charge
      ? joined(
          [
            sentence(ruler.stated(charge)),
            chargeCovers ? sentence('for ', ruler.stated(chargeCovers), ' of line') : [],
          ],
          ' ',
        )
      : [],
    figure('line-allowance', 'for the lines'),
    figure('total-charge', 'in all'),
    ...weighed,
    ...stepsOf(sheet, 'adjust').flatMap((step): Sentence[] => {
      const most = amountOf(step, 'most');
      return most ? [sentence('at most ', ruler.authored(most), ' in all')] : [];
    }),
  ]);
}

function targetsOf({ plan, ruler }: Sheet): Sentence {
  const { superheat, subcooling, evaporating, condensing } = plan.system;
  const of = (label: string, stated: typeof superheat): Sentence =>
    stated ? sentence(`${label} `, ruler.stated(stated)) : [];
  return joined([
    of('subcooling', subcooling),
    of('superheat', superheat),
    of('evaporating', evaporating),
    of('condensing', condensing),
  ]);
}

function peopleOf({ plan }: Sheet): Sentence {
  return joined(
    plan.crew.map((member) => {
      const who = member.number === 1 ? member.role : counted(member.number, member.role);
      const held = listed(member.certificates.map((each) => each.replaceAll('-', ' ')));
      return sentence(held ? `${who}, certified ${held}` : who);
    }),
  );
}

/** What is not there stops the job before it begins; what cannot be proven stops it on the way. */
function stopsOf(sheet: Sheet): Sentence {
  const { plan, walk } = sheet;
  const events = walk.entries.flatMap((entry) => entry.events);
  const opened = events.some((event) => event.type === 'opens');
  const old = plan.system.refrigerant.before;
  const fresh = plan.system.refrigerant.after;
  const stops = [
    opened && plan.site.outdoors ? 'rain on open lines' : '',
    events.some((event) => event.type === 'recovers') ? `no cylinder with room for the ${old ?? 'old gas'}` : '',
    events.some((event) => event.type === 'pressurises' && event.medium === 'nitrogen') ? 'nitrogen short' : '',
    fresh !== null && flammable(fresh) ? `no detector for ${fresh}` : '',
    stepsOf(sheet, 'hold').length > 0 ? 'a hold that is not signed' : '',
    stepsOf(sheet, 'pressure-test', 'decay-test').length > 0 ? 'a test that fails at its last try' : '',
  ].filter(Boolean);
  return stops.length > 0 ? sentence(`${capital(listed(stops, 'or'))}.`) : [];
}

/** Notes of the author that stand with no step. */
function notesOf({ plan }: Sheet): readonly string[] {
  const blocks = plan.declaration.bound.block.filter((bound) =>
    ['site', 'system', 'bring'].includes(bound.word?.word ?? ''),
  );
  const own = blocks.flatMap((bound) => bound.block.filter((each) => each.word?.word === 'note'));
  const parts = plan.partStatements.flatMap((bound, index) =>
    bound.block
      .filter((each) => each.word?.word === 'note')
      .map((each) => `${plan.graph.parts[index]?.name ?? ''}: ${String(each.values['text'])}`),
  );
  const standard = (plan.standard?.bound.block ?? []).filter((each) => each.word?.word === 'note');
  return [...plan.notes, ...[...own, ...standard].map((each) => String(each.values['text'])), ...parts];
}
