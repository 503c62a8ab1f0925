import { describe, expect, it } from 'vitest';
import { walk } from '../../../grammar';
import { Workspace } from '../../../server/engine/workspace';
import { type Case, casePlan } from '../takeoff/case-plan';

/** What a plan says of itself: findings with the text at which they stand and what they offer, and which figures there are. */
function told(text: string) {
  const workspace = new Workspace();
  workspace.setFile('job.jobplan', text);
  const snapshot = workspace.snapshot();
  const starts = new Map<unknown, number>();
  walk(snapshot.file('job.jobplan')!.tree, (item, at) => void starts.set(item, at));
  const findings = snapshot.findings('job.jobplan').map(({ name, message, at, fixes }) => ({
    name,
    message,
    at: text.slice(starts.get(at.item)! + at.from, starts.get(at.item)! + at.to),
    offers: fixes.flatMap((fix) => (typeof fix.edits === 'object' ? fix.edits.map((edit) => edit.text) : [])),
  }));
  const [view] = snapshot.plans('job.jobplan');
  const all = view ? [...view.takeOff.totals, ...view.takeOff.steps.flat()] : [];
  return {
    findings,
    figures: new Set(all.filter(({ quantity }) => quantity).map(({ name }) => name)),
    without: all.filter(({ quantity }) => !quantity),
    all,
  };
}

const figuresOf = (...names: readonly string[]) => names;
const tubes = figuresOf('solvent-in-job', 'nitrogen-in-all', 'recovery-in-all');
const mostFigures = [...tubes, 'line-allowance', 'fill-nitrogen', 'safe-fill', 'pump-down-time', 'working-time'];

// what stands in the plan | what is written instead | finding | its text | offered, if anything
type Row = readonly [from: string, to: string, name: string, at: string, offer?: string];

const impossible: readonly Row[] = [
  ['altitude 0 ft', 'altitude 40000 ft', 'impossible', '40000 ft'],
  ['altitude 0 ft', 'altitude -3000 ft', 'impossible', '-3000 ft'],
  ['outdoors 70 degF', 'outdoors -500 degF', 'impossible', '-500 degF'],
  ['outdoors 70 degF', 'outdoors -300 degC', 'impossible', '-300 degC'],
  ['outdoors 70 degF', 'outdoors 700 degF', 'impossible', '700 degF'],
  ['wet-bulb 63 degF', 'wet-bulb 90 degF', 'impossible', '90 degF'],
  ['to 500 micron', 'to 31 inHg', 'impossible', '31 inHg'],
  ['to 500 micron', 'to -5 micron', 'impossible', '-5 micron'],
  ['to 500 micron', 'to -16 psig', 'impossible', '-16 psig'],
  ['to 500 micron', 'to 500 psig', 'impossible-level', 'to 500 psig'],
  ['system to 0 inHg', 'system to 40 inHg', 'impossible', '40 inHg'],
  ['system to 0 inHg', 'system to -3 inHg', 'impossible', '-3 inHg'],
  ['line at 50 psig for 30 s', 'line at -1 psig for 30 s', 'impossible-level', 'at -1 psig'],
  ['line at 50 psig for 30 s', 'line at 0 psig for 30 s', 'impossible-level', 'at 0 psig'],
  ['line at 50 psig for 30 s', 'line at 50 psig for 0 s', 'impossible', '0 s'],
  ['line at 50 psig for 30 s', 'line at 50 psig for -30 s', 'impossible', '-30 s'],
  ['test-pressure 450 psig', 'test-pressure -1 psig', 'impossible-level', 'to test-pressure'],
  ['test-pressure 450 psig', 'test-pressure 4500000 psig', 'impossible', '4500000 psig'],
  ['length 50 ft', 'length -50 ft', 'impossible', '-50 ft'],
  ['length 50 ft', 'length 0 ft', 'impossible', '0 ft'],
  ['length 50 ft', 'length 99999999999999999999 ft', 'impossible', '99999999999999999999 ft'],
  ['tube 3/8 in ACR', 'tube 3/8 in\n      wall 0.2 in', 'impossible', '0.2 in'],
  ['tube 3/8 in ACR', 'tube 3/8 in\n      wall 0 in', 'impossible', '0 in'],
  ['tube 3/8 in ACR', 'tube 3/8 in\n      wall -0.03 in', 'impossible', '-0.03 in'],
  ['tube 3/8 in ACR', 'tube 0 in', 'impossible', '0 in'],
  ['recover-charge 7 lb', 'recover-charge -7 lb', 'impossible', '-7 lb'],
  ['capacity 36000 Btu/h', 'capacity 0 Btu/h', 'impossible', '0 Btu/h'],
  ['capacity 36000 Btu/h', 'capacity -36000 Btu/h', 'impossible', '-36000 Btu/h'],
  ['subcooling 10 Δ°F', 'subcooling -10 Δ°F', 'impossible', '-10 Δ°F'],
  ['subcooling 10 Δ°F', 'subcooling 400 Δ°F', 'impossible', '400 Δ°F'],
  ['low 250 psig', 'low 250 inHg', 'impossible', '250 inHg'],
  ['water-capacity 26.2 lb', 'water-capacity 0 lb', 'impossible', '0 lb'],
  ['1 x rc empty', '1 x rc holding R-22 40 lb', 'recovery-cylinder-overfilled', '40 lb'],
  ['1 x rc empty', '-1 x rc empty', 'impossible', '-1'],
  ['water-volume 1.55 ft3', 'water-volume 0 ft3', 'impossible', '0 ft3'],
  ['full 2265 psig', 'full 22650 psig', 'impossible', '22650 psig'],
  ['nitrogen 1 x n2', 'nitrogen 1 x n2 at -1 psig', 'impossible', '-1 psig'],
  ['density 1.25 kg/L', 'density 0 kg/L', 'impossible', '0 kg/L'],
  ['delivers 18 fl-oz/min', 'delivers 0 fl-oz/min', 'impossible', '0 fl-oz/min'],
  ['share-of-volume 15 %', 'share-of-volume -15 %', 'impossible', '-15 %'],
  ['flow 6 cfm', 'flow 0 cfm', 'impossible', '0 cfm'],
  ['bore 0.17 in', 'bore 17 ft', 'impossible', '17 ft'],
  ['rated 500 psig', 'rated -5 psig', 'impossible', '-5 psig'],
  ['leaving 1/8 in', 'leaving 0 in', 'impossible', '0 in'],
  ['rise at most 300 micron', 'rise at most -300 micron', 'impossible', '-300 micron'],
  ['smallest-room 9600 ft3', 'smallest-room 0 ft3', 'impossible', '0 ft3'],
  ['date 2027-05-18', 'date 2027-02-30', 'impossible', '2027-02-30'],
  ['at least 2, at most 4', 'at least 4, at most 2', 'backward-range', 'at most 2'],
];

const wrong: readonly Row[] = [
  ['outdoors 70 degF', 'outdoors 70 Δ°F', 'wrong-kind', '70 Δ°F', '70 degF'],
  ['boils 100 degF', 'boils 100 Δ°F', 'wrong-kind', '100 Δ°F', '100 degF'],
  ['subcooling 10 Δ°F', 'subcooling 10 degF', 'wrong-kind', '10 degF', '10 Δ°F'],
  ['rise at most 300 micron', 'rise at most 300 psig', 'wrong-kind', '300 psig', '300 psi'],
  ['length 50 ft', 'length 50 lb', 'wrong-kind', '50 lb'],
  ['smallest-room 9600 ft3', 'smallest-room 9600 ft2', 'wrong-kind', '9600 ft2'],
  ['density 1.25 kg/L', 'density 1.25 kg', 'wrong-kind', '1.25 kg'],
  ['to 500 micron', 'to 30 s', 'wrong-kind', '30 s'],
  ['test-pressure 450 psig', 'test-pressure 450 psi', 'ambiguous-reference', '450 psi', '450 psig'],
  ['to 0 inHg', 'to 66 kPa', 'ambiguous-reference', '66 kPa', '66 kPa gauge'],
  ['test-pressure 450 psig', 'test-pressure 450 bar', 'ambiguous-reference', '450 bar', '450 bar gauge'],
  ['outdoors 70 degF', 'outdoors 70', 'no-unit', '70'],
  ['outdoors 70 degF', 'outdoors 70 F', 'unknown-unit', '70 F', '70 degF'],
  ['to 500 micron', 'to 500 microm', 'unknown-unit', '500 microm', '500 micron'],
  ['length 50 ft', 'length 50 feet', 'unknown-unit', '50 feet', '50 ft'],
  ['capacity 36000 Btu/h', 'capacity 3 tons', 'unknown-unit', '3 tons', '36000 Btu/h'],
  ['length 50 ft', "length 50'", 'unreadable-text', "50'", '50 ft'],
  ['capacity 36000 Btu/h', 'capacity 36 kBtu/h', 'unreadable-text', '36 kBtu/h', '36000 Btu/h'],
  ['tube 7/8 in ACR', 'tube 7/8" ACR', 'unclosed-quote', '7/8"', '7/8 in'],
  ['to 500 micron', 'to 1,500 micron', 'not-a-number', '1,500 micron', '1500 micron'],
  ['to 500 micron', 'to 1e3 micron', 'not-a-number', '1e3 micron', '1000 micron'],
  ['length 50 ft', 'length 1/0 ft', 'not-a-number', '1/0 ft'],
  ['to 500 micron', 'to NaN micron', 'wrong-term', 'NaN'],
  ['length 50 ft', 'length 50 ft 14 in', 'mixed-units', '50 ft 14 in'],
  ['outdoors 70 degF', 'outdoors 70..60 degF', 'backward-range', '70..60 degF', '60..70 degF'],
  ['R-22 -> R-454B', 'R-22 -> R-454', 'unknown-name', 'R-454', 'R-454A'],
  ['R-22 -> R-454B', 'R22 -> R-454B', 'unknown-name', 'R22', 'R-22'],
  ['R-22 -> R-454B', 'R-22 -> R-403B', 'unknown-name', 'R-403B'],
  ['R-22 -> R-454B', 'R-22 -> freon', 'unknown-name', 'freon'],
  ['tube 3/8 in ACR', 'tube 0.4 in ACR', 'unknown-tube', '0.4 in', '3/8 in'],
  ['tube 3/8 in ACR', 'tube 9 mm EN', 'unknown-tube', '9 mm', '3/8 in'],
  ['tube 3/8 in ACR', 'tube 3/8 in AVR', 'unexpected-term', 'AVR', 'ACR'],
  ['1 x rc empty', '1 x rcc empty', 'unknown-name', 'rcc', 'rc'],
  ['solvent 2 x flush', 'solvent 2 x flsh', 'unknown-name', 'flsh', 'flush'],
];

describe('a figure that cannot be is told where it stands, and the rest of the take-off goes on', () => {
  const sound = casePlan();
  const before = told(sound);
  const known = new Set(before.findings.map(({ name, message }) => name + message));
  it.each([...impossible, ...wrong].map(([from, to, name, at, offer]) => [from, to, name, at, offer ?? null] as const))(
    '%j as %j: %s',
    (from, to, name, at, offer) => {
      expect(sound).toContain(from);
      const after = told(sound.replace(from, to));
      const added = after.findings.filter((each) => !known.has(each.name + each.message));
      const found = added.find((each) => each.name === name && each.at === at);
      expect(added.map((each) => `${each.name} «${each.at}»`)).toContain(`${name} «${at}»`);
      expect(found!.message.length).toBeGreaterThan(10);
      expect(found!.offers).toEqual(offer === null ? expect.anything() : expect.arrayContaining([offer]));
      // Three figures of four stand as before, and what is missing says what it lacks.
      const standing = mostFigures.filter((each) => before.figures.has(each) && after.figures.has(each));
      expect(standing.length).toBeGreaterThanOrEqual(Math.ceil(mostFigures.length * 0.6));
      for (const each of after.without)
        expect([each.name, each.missing.length + each.notes.length > 0]).toEqual([each.name, true]);
      for (const { quantity, name: figure } of after.all)
        if (quantity)
          expect([figure, Number.isFinite(quantity.low) && Number.isFinite(quantity.high)]).toEqual([figure, true]);
    },
  );
});

describe('a vacuum is judged by the air of the site', () => {
  // The air stands at 23.1 inHg at 7,000 ft (US Standard Atmosphere 1976: 78.19 kPa), at 29.9 at the sea.
  it.each<[string, Case, boolean]>([
    ['28 inHg', {}, false],
    ['28 inHg', { altitude: '7000 ft' }, true],
    ['23.5 inHg', { altitude: '7000 ft' }, true],
    ['22.5 inHg', { altitude: '7000 ft' }, false],
    ['24.5 inHg', { altitude: '5000 ft' }, false],
    ['25.5 inHg', { altitude: '5000 ft' }, true],
  ])('%s at %j: impossible %s', (vacuum, of, refused) => {
    const { findings } = told(casePlan({ ...of, vacuum }));
    const found = findings.filter((each) => each.name === 'impossible-level');
    expect(found.map((each) => each.at)).toEqual(refused ? [`to ${vacuum}`] : []);
    if (refused) expect(found[0]!.message).toMatch(/below a perfect vacuum, which here reads 2[34]\.\d inHg/);
  });
});
