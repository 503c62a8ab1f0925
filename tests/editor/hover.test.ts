import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { Asking, markBehind, samples } from './asking';

let asking: Asking;
beforeAll(async () => {
  asking = await Asking.start();
});
afterAll(() => asking.stop());

const split = 'changeout-split.jobplan';
const standard = 'standard-line-set-reuse.jobplan';

/** What the hover says behind the first place in a sample that reads so. */
async function hoverBehind(name: string, before: string): Promise<string> {
  return asking.hover(name, markBehind(samples[name] ?? '', before));
}

describe('words and clauses', () => {
  test('a word shows its form, its meaning and an example', async () => {
    const said = await hoverBehind(split, 'break-vac');
    expect(said).toContain('break-vacuum');
    expect(said).toContain('Example: `');
  });

  test('a clause says what it is for', async () => {
    expect(await hoverBehind(standard, 'at both ends wi')).toContain(
      'nitrogen that flows through while the joint is hot',
    );
  });

  test('nothing is said of a comment or a blank', async () => {
    expect(await asking.hover('x.jobplan', '# pu|>rge\n')).toBe('');
  });
});

describe('quantities stand as written, then in the other units', () => {
  // 7.25 lb x 0.45359237 = 3.289 kg; 640 ft x 0.3048 = 195 m; 7/8 in x 25.4 = 22.2 mm; 84 degF = (84 - 32) / 1.8 = 28.9 degC (NIST SP 811).
  test.each([
    [split, 'recover-charge 7 lb', '**7 lb 4 oz** is 3.29 kg'],
    [split, 'altitude 64', '**640 ft** is 195 m'],
    [split, 'outdoors 8', '**84 degF** is 28.9 degC'],
    [split, 'tube 7/', '**7/8 in** is 22.2 mm'],
    [split, 'to 1500', '**1500 micron** is 200 Pa absolute'],
  ])('%s %s', async (name, before, said) => {
    expect(await hoverBehind(name, before)).toContain(said);
  });

  test('a time needs no second unit', async () => {
    expect(await hoverBehind(split, 'psig for 20')).not.toContain(' is ');
  });
});

describe('names', () => {
  test('a part at a step: what it is and how it stands, with the step that made it so', async () => {
    const said = await hoverBehind(split, 'drain suction-l');
    expect(said).toContain('7/8 in ACR');
    expect(said).toMatch(/at this step:\n- holds air, since step \d+ \(disconnect each kept line at both ends\)/);
    expect(said).toMatch(/inlet closed by a cap, since step \d+ \(cap each kept line at both ends\)/);
  });

  test('a part in the circuit: at the beginning and at the end', async () => {
    const said = await hoverBehind(split, '    suction-lin');
    expect(said).toMatch(/at the beginning:\n- holds R-22, liquid and vapour,/);
    expect(said).toMatch(/at the end:\n- holds R-454B/);
    expect(said).toMatch(/tested at 450 psig, since step \d+/);
  });

  test('a refrigerant: class, boiling point, glide', async () => {
    const said = await hoverBehind(split, 'R-22 -> R-4');
    expect(said).toContain('safety class A2L');
    expect(said).toMatch(/glide .*Δ°F/);
    expect(said).toMatch(/boils at -\d/);
  });

  test.each([
    [split, 'solvent shop-fl', 'density 1.25 kg/L'],
    [split, 'follows line-s', 'Re-use of an existing line set'],
    [split, 'change roun', 'repeat until clear, at least 2, at most 4'],
  ])('what is declared elsewhere: %s %s', async (name, before, said) => {
    expect(await hoverBehind(name, before)).toContain(said);
  });
});

describe('steps', () => {
  test('a step of a plan shows its number and its figures with workings and source', async () => {
    const said = await hoverBehind(split, '    break-vacuu');
    expect(said).toMatch(/Step \d+ of \d+/);
    expect(said).toContain('**Nitrogen to fill a section**');
    expect(said).toContain('```text');
    expect(said).toContain('Source:');
  });

  test('a step of a standard names the jobs that follow it', async () => {
    expect(await hoverBehind(standard, 'final-purge: purg')).toMatch(
      /One job follows this standard:\n- 14 Tansy Row.*step \d+/,
    );
  });
});
