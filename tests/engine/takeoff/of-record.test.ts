import { describe, expect, it } from 'vitest';
import type { Figure } from '../../../server/engine/takeoff/figure';
import { figuresOfRecord, type RecordFigure } from '../../../server/engine/takeoff/of-record';
import { Workspace } from '../../../server/engine/workspace';
import { casePlan, endsIn } from './case-plan';
import { line, plainPlan, split } from './plain-plan';

/** What the readings and weights of a record mean; each expectation by the printed formula or the table named beside it. */

const psi = 6894.757293168;
const pound = 0.45359237;
const litreAMinute = 1e-3 / 60;
const day = 86_400;

/** The figures of a record of a plan, by the answers that it writes down. */
function figuresOf(plan: string, answers: string): readonly RecordFigure[] {
  const workspace = new Workspace();
  workspace.setFile('job.jobplan', plan);
  workspace.setFile(
    'done.jobplan',
    `use "job.jobplan"\n\nrecord job-done "As done" {\n  of job revision 1\n${answers}\n}\n`,
  );
  const [record] = workspace.snapshot().records('done.jobplan');
  if (!record?.view) throw new Error('no record of the plan');
  return figuresOfRecord(record.declaration, record.view);
}

const named = (all: readonly RecordFigure[], name: string): readonly Figure[] =>
  all.filter(({ figure }) => figure.name === name).map(({ figure }) => figure);

function one(all: readonly RecordFigure[], name: string): Figure {
  const found = named(all, name);
  if (found.length !== 1) throw new Error(`${found.length} times ${name}`);
  return found[0]!;
}

const off = (found: number, expected: number): number => Math.abs(found / expected - 1);

/** A repair of a machine that keeps its refrigerant, with weights out and in, and visits. */
const repair = (refrigerant = 'R-410A', system = 'recover-charge 100 lb\n    charge 100 lb', kind = 'repair'): string =>
  plainPlan({
    kind,
    refrigerant,
    oil: 'POE',
    system,
    circuit: split(
      line('liquid-line kept', 'tube 3/8 in ACR', 'length 50 ft'),
      line('suction-line kept', 'tube 7/8 in ACR', 'length 50 ft'),
    ),
    steps: `out: recover system to 0 inHg
    more-out: recover system to 0 inHg
    in: charge system
    trim: adjust charge after 15 min
    visit "Leak looked at again" within 30 days {
      leak-check system
    }
    visit "Drier out" within 3 days {
      leak-check system
    }`,
  });

describe('a pressure test', () => {
  const test = (answer: string, altitude = '0 ft') =>
    figuresOf(casePlan({ altitude }), `  done 2027-05-18\n  test {\n    ${answer}\n  }`);

  // Law of Gay-Lussac, absolute: (p + 14.696) x (T2 + 459.67) / (T1 + 459.67) - 14.696. Handbook 7.3: 0.97 psi for a degree
  // at 500 psig, 0.59 at 300.
  it.each([
    [500, 70, 60, 490.3],
    [300, 70, 90, 311.9],
    [450, 61, 60, 449.1],
    [150, 40, 95, 168.1],
    [450, 81, 81, 450],
  ])('%d psig at %d degF and then at %d: %d if it is tight', (pressure, start, end, expected) => {
    const figure = one(
      test(`read start ${pressure} psig at ${start} degF\n    read end 448 psig at ${end} degF`),
      'corrected-test-reading',
    );
    const found = endsIn(figure, psi)[0] - 14.696;
    expect(found).toBeCloseTo(((pressure + 14.696) * (end + 459.67)) / (start + 459.67) - 14.696, 2);
    expect(Math.abs(found - expected)).toBeLessThan(0.06);
    expect(figure.notes).toContain('448 psig was read.');
    expect(figure.subject).toBe('test');
  });

  it('counts by the air of the site', () => {
    // ICAO standard atmosphere: 11.34 psia at 7,000 ft; (450 + 11.34) x 549.67 / 529.67.
    const figure = one(
      test('read start 450 psig at 70 degF\n    read end 467 psig at 90 degF', '7000 ft'),
      'corrected-test-reading',
    );
    expect(endsIn(figure, psi)[0]).toBeCloseTo((461.34 * 549.67) / 529.67, 1);
  });

  it('stands with its answer', () => {
    const found = test('read start 450 psig at 70 degF\n    read end 467 psig at 90 degF').find(
      ({ figure }) => figure.name === 'corrected-test-reading',
    );
    expect(found?.answer?.item.word?.text).toBe('test');
  });

  it('lacks the temperature that was not read', () => {
    const figure = one(test('read start 450 psig at 70 degF\n    read end 467 psig'), 'corrected-test-reading');
    expect(figure.quantity).toBeNull();
    expect(figure.missing).toHaveLength(1);
  });

  it.each(['read start 450 psig at 70 degF', 'read end 450 psig at 70 degF', 'done 09:10 by lead'])(
    '%s alone says nothing',
    (answer) => {
      expect(named(test(answer), 'corrected-test-reading')).toEqual([]);
    },
  );
});

describe('a decay test', () => {
  // The step of the case has no label of its own: it is given one here.
  const plan = casePlan().replace('    decay-test each open part', '    decay: decay-test each open part');
  const decay = (answers: string) => figuresOf(plan, `  done 2027-05-18\n${answers}`);

  // Q = V Δp / t as air at 1 atm (handbook 8.1). Handbook WE-30: 5.506 L in both lines; 15 min; 760,000 micron an atmosphere.
  const leak = (micron: number): number => (5.506 * micron) / 760_000 / 15;

  it.each([
    ['its own start', '  decay {\n    read start 400 micron\n    read end 600 micron\n  }', 200],
    [
      'the level of the evacuation before it',
      '  evacuate {\n    read level 410 micron\n  }\n  decay {\n    read end 530 micron\n  }',
      120,
    ],
    [
      'its own start, though a level was read',
      '  evacuate {\n    read level 410 micron\n  }\n  decay {\n    read start 450 micron\n    read end 530 micron\n  }',
      80,
    ],
  ])('counts from %s', (_, answers, rise) => {
    const figure = one(decay(answers), 'decay-leak-rate');
    expect(off(endsIn(figure, litreAMinute)[0], leak(rise))).toBeLessThan(0.005);
  });

  it('is none where the vacuum got deeper', () => {
    // Definition of the leak rate: nothing came in.
    const answers = '  decay {\n    read start 600 micron\n    read end 500 micron\n  }';
    expect(endsIn(one(decay(answers), 'decay-leak-rate'), 1)).toEqual([0, 0]);
  });

  it.each(['  decay {\n    read end 530 micron\n  }', '  decay {\n    read start 530 micron\n  }'])(
    'says nothing of one reading alone',
    (answers) => {
      expect(named(decay(answers), 'decay-leak-rate')).toEqual([]);
    },
  );
});

describe('what was in it, what came out, what went in', () => {
  const weights = (out: readonly string[], goneIn: readonly string[], plan = repair(), head = '') => {
    const block = (labels: readonly string[], all: readonly string[]): string =>
      all.map((mass, at) => `  ${labels[at]} {\n    weighed ${mass}\n  }`).join('\n');
    return figuresOf(
      plan,
      `  done 2027-05-18\n${head}\n${block(['out', 'more-out'], out)}\n${block(['in', 'trim'], goneIn)}`,
    );
  };

  it('sums the weights of all steps of a kind', () => {
    const all = weights(['60 lb', '25 lb 8 oz'], ['90 lb', '2 lb']);
    // By hand: 25 lb 8 oz are 25.5 lb.
    expect(endsIn(one(all, 'recovery-in-all'), pound)[0]).toBeCloseTo(85.5, 9);
    expect(endsIn(one(all, 'refrigerant-in-all'), pound)[0]).toBeCloseTo(92, 9);
  });

  // Warming potentials of the fourth report, handbook 3.4 and 3.3: the balance is (in it before - recovered) times that.
  it.each([
    ['R-410A', 2088],
    ['R-404A', 3922],
    ['R-407C', 1774],
    ['R-448A', 1387],
    ['R-454B', 466],
    ['R-22', 1810],
    ['R-134a', 1430],
  ])('%s: each pound that is missing is %d lb of carbon dioxide', (gas, warming) => {
    const all = weights(['60 lb', '25 lb 8 oz'], ['90 lb'], repair(gas));
    expect(off(endsIn(one(all, 'carbon-balance'), pound)[0], (100 - 85.5) * warming)).toBeLessThan(0.003);
    const [out, goneIn] = named(all, 'carbon-equivalent');
    expect(off(endsIn(out!, pound)[0], 85.5 * warming)).toBeLessThan(0.003);
    expect(off(endsIn(goneIn!, pound)[0], 90 * warming)).toBeLessThan(0.003);
  });

  it('is nothing where more came out than was stated, and says so', () => {
    const figure = one(weights(['110 lb'], []), 'carbon-balance');
    expect(endsIn(figure, 1)).toEqual([0, 0]);
    expect(figure.notes.join()).toContain('10 lb more came out');
  });

  it('of a change of refrigerant the old one is balanced, and no leak is told', () => {
    // 7 lb of R-22 less 6.5 lb: 0.5 lb x 1810 (handbook 3.3).
    const all = figuresOf(
      casePlan({ weighs: '' }),
      '  done 2027-05-18\n  recover {\n    weighed 6 lb 8 oz into rc\n  }\n  charge {\n    weighed 7 lb 1 oz\n  }',
    );
    expect(one(all, 'recovery-in-all').subject).toBe('R-22');
    expect(one(all, 'refrigerant-in-all').subject).toBe('R-454B');
    expect(off(endsIn(one(all, 'carbon-balance'), pound)[0], 0.5 * 1810)).toBeLessThan(0.003);
    expect(named(all, 'leak-rate')).toEqual([]);
  });

  it('is not drawn up without weights, or without the charge before', () => {
    expect(weights([], []).map(({ figure }) => figure.name)).toEqual(['follow-up-days', 'follow-up-days']);
    const stated = weights(['60 lb'], [], repair('R-410A', 'superheat 10 Δ°F'));
    expect(named(stated, 'recovery-in-all')).toHaveLength(1);
    expect(named(stated, 'carbon-balance')).toEqual([]);
  });
});

describe('the leak rate of a repair', () => {
  const rate = (out: string, goneIn: string, last: string, plan = repair()) =>
    figuresOf(plan, `  done 2027-05-18\n  ${last}\n  out {\n    ${out}\n  }\n  in {\n    ${goneIn}\n  }`);

  // Annualising method of 40 CFR 82.152 (handbook 2.2): added / full charge x 365 / min(days, 365). Days by the calendar to
  // 2027-05-18: 73 from 6 March, 365 from 18 May 2026, 803 from 6 March 2025, 30 from 18 April.
  it.each([
    ['90 lb', '100 lb', '2027-03-06', 50],
    ['90 lb', '100 lb', '2026-05-18', 10],
    ['90 lb', '100 lb', '2025-03-06', 10],
    ['98 lb', '100 lb', '2027-04-18', 24.333],
    ['100 lb', '100 lb', '2027-04-18', 0],
    ['100 lb', '95 lb', '2027-04-18', 0],
  ])('%s out, %s in, last added on %s: %d %% a year', (out, goneIn, last, expected) => {
    const figure = one(rate(`weighed ${out}`, `weighed ${goneIn}`, `last-addition ${last}`), 'leak-rate');
    expect(endsIn(figure, 0.01)[0]).toBeCloseTo(expected, 2);
  });

  it('counts all that went in where nothing was recovered', () => {
    // 20 lb of 100 in 73 days (40 CFR 82.152, as above).
    const all = rate('done 09:10 by lead', 'weighed 20 lb', 'last-addition 2027-03-06');
    expect(endsIn(one(all, 'leak-rate'), 0.01)[0]).toBeCloseTo(100, 6);
  });

  it('takes the charge that was recovered for the full one where the plan states no other', () => {
    const plan = repair('R-410A', 'recover-charge 50 lb');
    // 10 lb of 50 in 365 days.
    const all = rate('weighed 40 lb', 'weighed 50 lb', 'last-addition 2026-05-18', plan);
    expect(endsIn(one(all, 'leak-rate'), 0.01)[0]).toBeCloseTo(20, 6);
  });

  it('goes by the full charge, not by what was left of it', () => {
    const plan = repair('R-410A', 'recover-charge 50 lb\n    charge 100 lb');
    // 10 lb of 100 in 365 days.
    const all = rate('weighed 40 lb', 'weighed 50 lb', 'last-addition 2026-05-18', plan);
    expect(endsIn(one(all, 'leak-rate'), 0.01)[0]).toBeCloseTo(10, 6);
  });

  it.each(['', 'last-addition 2027-05-18', 'last-addition 2027-06-01'])(
    'lacks the time since the last addition with `%s`',
    (last) => {
      const figure = one(rate('weighed 90 lb', 'weighed 100 lb', last), 'leak-rate');
      expect(figure.quantity).toBeNull();
      expect(figure.missing.join()).toContain('last-addition');
    },
  );

  it('is told of a repair alone', () => {
    const plan = repair('R-410A', 'recover-charge 100 lb\n    charge 100 lb', 'changeout');
    expect(named(rate('weighed 90 lb', 'weighed 100 lb', 'last-addition 2027-03-06', plan), 'leak-rate')).toEqual([]);
  });
});

describe('the visits after the work', () => {
  it('are due from the day of the work, not from that of the plan', () => {
    // By the calendar: 30 and 3 days from 30 January 2028 are 29 February, a leap year, and 2 February. 30 days to look at
    // a repaired leak again: 40 CFR 82.157 (handbook 2.2, from memory).
    const found = named(figuresOf(repair(), '  done 2028-01-30'), 'follow-up-days');
    expect(found.map((each) => [each.subject, endsIn(each, day)[0]])).toEqual([
      ['Leak looked at again', 30],
      ['Drier out', 3],
    ]);
    expect(found.map((each) => each.notes.join())).toEqual(['Due on 2028-02-29.', 'Due on 2028-02-02.']);
  });

  it('lack the day where the record has none', () => {
    const found = named(figuresOf(repair(), ''), 'follow-up-days');
    expect(found).toHaveLength(2);
    for (const figure of found) {
      expect(figure.quantity).toBeNull();
      expect(figure.missing.join()).toContain('`done` of the record');
    }
  });
});
