import { beforeAll, describe, expect, test } from 'vitest';
import type { Step } from '../../../server/engine/procedure/document';
import { plainText, type Sentence } from '../../../server/engine/procedure/sentence';
import { printText } from '../../../server/engine/procedure/text/text';
import { flat, plans, type Sheet, samples, sheetOf } from './sample-sheets';

const sheets = new Map<string, Sheet>();
beforeAll(() => {
  for (const path of plans) sheets.set(path, sheetOf(path));
});
const of = (path: (typeof plans)[number]): Sheet => sheets.get(path)!;
const split = (): Sheet => of('changeout-split.jobplan');
const ductless = (): Sheet => of('ductless-three-zone.jobplan');
const rack = (): Sheet => of('rack-conversion.jobplan');

const stepsOf = ({ procedure }: Sheet): readonly Step[] =>
  flat(procedure.steps).filter((entry): entry is Step => entry.kind === 'step');

/** The step whose sentence begins so; the nth of them. */
function step(sheet: Sheet, begins: string, nth = 0): Step {
  const found = stepsOf(sheet).filter((each) => plainText(each.text).startsWith(begins))[nth];
  if (!found) throw new Error(`no step "${begins}"`);
  return found;
}

const said = (runs: Sentence): string => plainText(runs);
const linesOf = (each: Step): readonly string[] =>
  each.lines.map((line) =>
    line.kind === 'reading'
      ? `${line.label}: ${line.entries.map((entry) => `${entry.lead}[${entry.unit}]`).join(' ')} | ${said(line.limit)}`
      : line.kind === 'checks'
        ? `${line.label}: ${line.items.join(', ')}`
        : `${line.label}: ${said(line.value)}`,
  );
const cautionsOf = (each: Step): string => each.cautions.map(said).join('\n');

describe.each(plans)('%s', (path) => {
  test('every walked step stands once, numbered through', () => {
    const { view, procedure } = of(path);
    const walked = new Set(view.walk.entries.map((entry) => entry.slot.step));
    const numbers = flat(procedure.steps).map((entry) => entry.number);
    expect(numbers).toEqual(Array.from({ length: walked.size }, (_, k) => String(k + 1)));
    expect(new Set(flat(procedure.steps).map((entry) => entry.id)).size).toBe(walked.size);
  });

  test('every limit that a step states is printed with it', () => {
    const { view, procedure } = of(path);
    const entries = flat(procedure.steps);
    const steps = [...new Set(view.walk.entries.map((entry) => entry.slot.step))];
    for (const [k, planned] of steps.entries()) {
      const entry = entries[k]!;
      if (entry.kind !== 'step') continue;
      const printed = [said(entry.text), said(entry.aim), ...linesOf(entry)].join('\n');
      for (const slot of ['level', 'time', 'rise', 'most', 'least', 'nitrogen', 'opening']) {
        const text = (planned.values[slot] as { literal?: { text: string } } | undefined)?.literal?.text;
        if (text !== undefined) expect(printed, `step ${entry.number}`).toContain(text);
      }
    }
  });

  test('no blank stands without its unit and its limit', () => {
    for (const each of stepsOf(of(path)))
      for (const line of each.lines)
        if (line.kind === 'reading') {
          expect(said(line.limit), `step ${each.number}, ${line.label}`).not.toBe('');
          for (const entry of line.entries) expect(entry.unit, `step ${each.number}, ${line.label}`).not.toBe('');
        }
  });

  test('every departure, maker’s limit and acceptance is told with its reason', () => {
    const { view, procedure } = of(path);
    const kinds = (kind: string) => procedure.notByTheBook.filter((one) => one.kind === kind);
    expect(kinds('departure').map((one) => one.because)).toEqual(view.plan.departures.map((one) => one.reason));
    expect(kinds('accepted').map((one) => one.because)).toEqual(view.plan.acceptances.map((one) => one.reason));
  });

  test('what the walk puts out of its place is put back by a step behind it', () => {
    for (const row of of(path).procedure.putBack) {
      if (said(row.what).startsWith('Every port')) continue;
      expect(row.restored, said(row.what)).not.toBeNull();
      const last = (numbers: string): number => Number(numbers.split(', ').at(-1));
      expect(last(row.restored!), said(row.what)).toBeGreaterThanOrEqual(last(row.touched));
    }
  });

  test('prints as text, with no word of the machine in it', () => {
    const text = printText(of(path).procedure);
    for (const each of stepsOf(of(path))) expect(text).toContain(`[ ] ${each.number}`);
    expect(text).not.toMatch(/undefined|NaN|\[object|null|[\uE000-\uF8FF]/);
    // No figure with more digits than anybody reads.
    expect(text).not.toMatch(/\d\.\d{5,}/);
  });
});

describe('the split changeout', () => {
  test('names what selectors stand for when the step comes', () => {
    expect(said(step(split(), 'Disconnect').text)).toBe('Disconnect liquid-line and suction-line at both ends');
    // The new unit stands behind its shut valves: the parts between are what is open (language.md, "each open part").
    expect(said(step(split(), 'Pressure test', 1).text)).toBe(
      'Pressure test with nitrogen: liquid-line, filter-drier, expansion-valve, evaporator and suction-line',
    );
    expect(said(step(split(), 'Take off the old').text)).toBe(
      'Take off the old compressor, condenser, expansion-valve and evaporator',
    );
    expect(said(step(split(), 'Open').text)).toBe('Open the service valves of condenser');
  });

  test('the pressure test has stages, blanks, and how a tight section reads', () => {
    const test = step(split(), 'Pressure test', 1);
    expect(said(test.aim)).toBe('to 450 psig (3,100 kPa gauge), 30 min');
    const lines = linesOf(test);
    // Stages of the trade: 10, 150 and 300 psig on the way (sheet.md, sample step).
    expect(lines).toContain('Reach in stages: 10 psig, 150 psig, 300 psig, 450 psig');
    // By hand: (450 + 14.36) psia / (84 + 459.67) °R = 0.854 psi/°F; the sheet shows two digits.
    expect(lines).toContain(
      'If it is tight: start reading, and 0.85 psi* more for each degF warmer, as much less for each colder.',
    );
    // By hand: 1 psi of the gauge and 1 °F of the thermometer: 1 + 0.854.
    expect(lines.find((line) => line.startsWith('End'))).toContain('loss at most 1.9 psi*');
    // Weakest part 500 psig: 450 + 5 to 0.96 x 500 psig (sheet.md, sample step).
    expect(cautionsOf(test)).toContain('Relief set at 455..480 psig*');
    expect(test.ifFails).toMatchObject({ backTo: { number: step(split(), 'Set the new').number }, most: 3 });
    expect(said(test.ifFails!.first)).toContain('let the nitrogen down');
  });

  test('the vacuum is judged by the level reached and the rise allowed', () => {
    const lines = linesOf(step(split(), 'Valve the pump off'));
    expect(lines).toContain('Start: [micron] | at most 500 micron');
    // 500 + 300 micron (sheet.md: "at most 800 micron").
    expect(lines).toContain('End: [micron] | at most 800 micron*, and at most 300 micron over the start');
  });

  test('holds stand where the standard has them', () => {
    const holds = flat(split().procedure.steps).filter((entry) => entry.kind === 'hold');
    expect(holds.map((entry) => said(entry.see))).toEqual(['Lead sees a clean cloth from each line']);
    expect(holds[0]).toMatchObject({ by: 'lead' });
  });

  test('a departure stands at its steps, with what the standard says', () => {
    const rounds = split().procedure.notByTheBook.find((one) => said(one.what).startsWith('rounds'))!;
    expect(said(rounds.what)).toContain('at most 5; the standard says: repeat until clear, at least 2, at most 4');
    expect(rounds.step).toBe('15, 16');
    expect(split().procedure.notByTheBook.find((one) => one.kind === 'maker')).toMatchObject({
      because: 'rating plate',
    });
  });

  test('rounds keep their bounds, and each line has its own boxes', () => {
    const repeats = split().procedure.steps.flatMap((entry) => (entry.kind === 'phase' ? entry.entries : []));
    expect(repeats.find((entry) => entry.kind === 'repeat')).toMatchObject({ least: 2, most: 5 });
    expect(step(split(), 'Flush').each).toEqual(['liquid-line', 'suction-line']);
  });

  test('spent solvent and used oil never share a container', () => {
    const { waste } = split().procedure;
    const solvent = waste.find((one) => one.contents.startsWith('spent'))!;
    const oil = waste.find((one) => one.container === 'Used-oil can')!;
    expect(solvent.container).not.toBe(oil.container);
    expect(solvent.goesTo).toContain('never the used-oil can');
    expect(oil.label).toContain('No solvent');
  });
});

describe('cautions stand only where the state asks for them', () => {
  test('fire: with R-454B and R-32, not with R-448A', () => {
    const fires = (sheet: Sheet) => stepsOf(sheet).filter((each) => /burns \(A/.test(cautionsOf(each)));
    expect(fires(split()).map((each) => said(each.text))).toEqual([
      'Open the service valves of condenser',
      'Charge the system',
    ]);
    expect(fires(ductless()).length).toBe(2);
    expect(fires(rack())).toEqual([]);
  });

  test('a torch: on brazed joints, not on flares', () => {
    const torch = (sheet: Sheet) => stepsOf(sheet).filter((each) => /Hot work/.test(cautionsOf(each)));
    expect(torch(split()).map((each) => said(each.text))).toEqual([
      'Connect liquid-line and suction-line at both ends',
      'Install filter-drier',
    ]);
    expect(torch(ductless())).toEqual([]);
  });

  test('the charge shut in the new unit is told before the torch is lit', () => {
    expect(cautionsOf(step(split(), 'Connect'))).toContain('R-454B (A2L) stands shut in condenser');
  });

  test('acid: after a burnout only, and no more once the oil was changed and the lines were flushed', () => {
    for (const sheet of [split(), ductless()])
      for (const each of stepsOf(sheet)) expect(cautionsOf(each)).not.toMatch(/[Aa]cid oil|are acid/);
    expect(cautionsOf(step(rack(), 'Disconnect comp-b'))).toContain('Acid oil');
    expect(cautionsOf(step(rack(), 'Connect comp-b'))).not.toContain('Acid oil');
  });

  test('refrigerant in the oil: at the first opening, not once the lines stood open', () => {
    expect(cautionsOf(step(split(), 'Disconnect'))).toContain('gives refrigerant off');
    expect(cautionsOf(step(split(), 'Cap'))).toBe('');
  });

  test('nitrogen in a room: in the attic, not where the purge is let out outdoors', () => {
    expect(cautionsOf(step(split(), 'Purge'))).toContain('in the attic');
    expect(cautionsOf(step(ductless(), 'Purge'))).not.toContain('takes the air');
  });

  test('a compressor under vacuum: where the pump reaches it', () => {
    expect(cautionsOf(step(rack(), 'Evacuate the system'))).toContain('windings');
    // The new unit of the changeout is shut off behind its valves while the lines are evacuated.
    expect(cautionsOf(step(split(), 'Evacuate'))).not.toContain('windings');
  });

  test('the author’s own stand first', () => {
    const workspace = samples((path, text) =>
      path === 'rack-conversion.jobplan'
        ? text.replace('prove-zero comp-b', 'prove-zero comp-b {\n        caution "Hot pipe beside it"\n      }')
        : text,
    );
    const sheet = sheetOf('rack-conversion.jobplan', workspace);
    expect(step(sheet, 'Wait with open gauges').cautions.map(said)[0]).toBe('Hot pipe beside it');
  });
});

describe('the rack', () => {
  const back = (begins: string) => rack().procedure.putBack.find((row) => said(row.what).startsWith(begins));

  test('puts back what it bypassed, held open, shut and locked', () => {
    const number = (begins: string, nth = 0): string => step(rack(), begins, nth).number;
    expect(back('Put out of action: door alarms')).toMatchObject({
      touched: number('Put out of action'),
      restored: number('Restore door alarms'),
    });
    expect(back('Valve sol-1, sol-2 and sol-3')).toMatchObject({
      stands: 'under its control, magnet off',
      restored: number('Return sol-1'),
    });
    expect(back('Valve epr-3')).toMatchObject({ stands: 'under its control, stem back' });
    expect(back('Hand valve valve-as and valve-ad')).toMatchObject({ restored: number('Open valve-as') });
    expect(back('Valves of suction-drier')).toMatchObject({ restored: number('Open the valves') });
    // Locked out twice: on the day of the work and on the visit for the suction cores.
    expect(back('Power')!.touched.split(', ')).toHaveLength(2);
    expect(back('Setting of')).toMatchObject({ stands: 'new value written at it' });
  });

  test('asks of each round what ends the rounds', () => {
    expect(linesOf(step(rack(), 'Take a sample'))).toContain('Mineral oil left: [%] | at most 5 %');
    expect(linesOf(step(rack(), 'Change the oil'))).toContain('New oil in: [fl-oz] | 140 fl-oz (4.14 L)');
  });

  test('reads the limits of its visits', () => {
    expect(linesOf(step(rack(), 'Read pressure drop'))).toEqual([
      'Pressure drop, suction-drier: [psi] | at most 4 psi (27.6 kPa)',
    ]);
    expect(rack().procedure.steps.filter((entry) => entry.kind === 'visit')).toMatchObject([
      { when: 'within 2 days of the start' },
      { when: 'within 3 days of the start' },
      { when: 'within 14 days of the start' },
    ]);
  });

  test('keeps burnt gas, old gas and new gas apart', () => {
    const { waste } = rack().procedure;
    expect(waste.find((one) => one.container.startsWith('burnt'))!.goesTo).toContain('burnt');
    expect(waste.find((one) => one.container.startsWith('old-gas'))!.contents).toBe('recovered R-22');
    expect(waste.find((one) => one.container.startsWith('new-gas'))!.contents).toBe('recovered R-448A');
  });

  test('says the superheat of every valve beside its blank', () => {
    const lines = linesOf(step(rack(), 'Adjust superheat'));
    expect(lines).toEqual(
      ['txv-1', 'txv-2', 'txv-3'].map((valve) => `Superheat, ${valve}: [Δ°F] | 8..12 Δ°F (4.4..6.7 Δ°C)`),
    );
  });

  test('the strip reads bubble and dew apart about the working point', () => {
    const [strip] = rack().procedure.chargeAids.strips;
    expect(strip!.rows.filter((row) => row.note !== null).map((row) => [row.temperature, row.note])).toEqual([
      ['-15', 'evaporating'],
      ['105', 'condensing'],
    ]);
    for (const row of strip!.rows) expect(Number(row.bubble)).toBeGreaterThan(Number(row.dew));
  });
});

describe('the ductless job', () => {
  test('asks the split of every zone', () => {
    expect(linesOf(step(ductless(), 'Read temperature split')).map((line) => line.split(':')[0])).toEqual([
      'Temperature split, den',
      'Temperature split, loft',
      'Temperature split, study',
    ]);
  });

  test('charges nothing where the unit’s own charge covers the lines', () => {
    // The maker's charge covers 110 ft; the liquid lines are 36 + 24 + 28 + 20 = 108 ft.
    expect(ductless().procedure.chargeAids.weighIn).toBeNull();
    expect(linesOf(step(ductless(), 'Charge')).join('\n')).toContain('nothing goes in');
  });

  test('lists the names that are too many for the sentence', () => {
    const named = linesOf(step(ductless(), 'Disconnect')).join('\n');
    for (const line of ['main-liquid', 'vapour-study', 'main-vapour']) expect(named).toContain(line);
  });
});

describe('hash, head and units', () => {
  const hash = (changed?: (path: string, text: string) => string): string =>
    sheetOf('changeout-split.jobplan', samples(changed)).procedure.head.contentHash;

  test('changes with every file that the plan draws in, and with no other', () => {
    const before = hash();
    const remark = (file: string) => (path: string, text: string) => (path === file ? `${text}\n# looked at\n` : text);
    for (const file of [
      'changeout-split.jobplan',
      'standard-line-set-reuse.jobplan',
      'house.jobplan',
      'materials.jobplan',
    ])
      expect(hash(remark(file)), file).not.toBe(before);
    expect(hash(remark('rack-conversion.jobplan'))).toBe(before);
  });

  test('says plan, revision, standard and the line of each own step', () => {
    const { head } = split().procedure;
    expect(head).toMatchObject({ plan: 'tansy-row-14', revision: '2', date: '2027-05-18' });
    expect(head.standard).toEqual({ name: 'Re-use of an existing line set', revision: '4' });
    const workspace = samples();
    const text = workspace.snapshot().file('changeout-split.jobplan')!.text.split('\n');
    expect(text[step(split(), 'Drain').line! - 1]).toContain('drain suction-line at trap');
    expect(step(split(), 'Recover').line).toBeNull();
  });

  test('in SI alone, computed figures and blanks are SI, and the author’s text stays', () => {
    const sheet = sheetOf('changeout-split.jobplan', samples(), { units: 'si' });
    const test = step(sheet, 'Pressure test', 1);
    expect(said(test.aim)).toBe('to 450 psig (3,100 kPa gauge), 30 min');
    expect(linesOf(test).find((line) => line.startsWith('End'))).toContain('kPa*');
    const inchPound = sheetOf('changeout-split.jobplan', samples(), { units: 'inch-pound' });
    expect(printText(inchPound.procedure)).not.toMatch(/kPa|degC|kg\b/);
  });

  test('workings hold every figure of the take-off once', () => {
    const sheet = sheetOf('changeout-split.jobplan', samples(), { workings: true });
    const names = sheet.procedure.workings!.map((one) => one.name);
    expect(names).toContain('Loss allowed in a pressure test');
    expect(names.length).toBeGreaterThan(30);
    for (const one of sheet.procedure.workings!) expect(one.formula).not.toBe('');
  });

  test('a plan that is half written is printed all the same', () => {
    for (const text of [
      'plan p { }',
      'plan p { steps { recover system } }',
      'plan p { follows nothing\n circuit { } }',
    ]) {
      const workspace = samples((path, whole) => (path === 'house.jobplan' ? text : whole));
      const { procedure } = sheetOf('house.jobplan', workspace);
      expect(printText(procedure)).toContain('THE JOB');
    }
  });
});
