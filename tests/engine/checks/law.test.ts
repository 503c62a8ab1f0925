import { describe, expect, it } from 'vitest';
import { checks } from '../../../server/engine/checks/all';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

const path = 'example.jobplan';
const found = (text: string) => {
  const workspace = new Workspace();
  workspace.setFile(path, text);
  return workspace.snapshot().findings(path);
};

describe('what rests on the law says whose law, and that the authority comes first', () => {
  it.each(checks.filter((check) => check.ground === 'law').map((check) => [check.name, check] as const))(
    '%s',
    (name, check) => {
      const [finding] = found(exampleText(check.wrong)).filter((each) => each.name === name);
      expect(finding?.message).toMatch(/local code and the authority come first\.$/);
    },
  );
});

describe('the law that a site states', () => {
  const base = (law: string, crew: string, level: string): readonly string[] =>
    found(
      exampleText({
        base: 'split',
        instead: [
          ['altitude 0 ft', `altitude 0 ft\n    ${law}`],
          ['lead certified universal', `lead certified ${crew}`],
          ['recover system to 0 inHg', `recover system to ${level}`],
        ],
      }),
    )
      .filter((each) => each.severity === 'error')
      .map((each) => each.name)
      .sort();

  // 40 CFR 82.156(a) and 82.161 (handbook 2.1, 2.2); EN 378-4 from memory; (EU) 2015/2067 article 3 and (EU) 2024/2215: II and A2 below 3 kg.
  it.each([
    ['law US', 'universal', '0 inHg', []],
    ['law US', 'category-I', '0 inHg', ['certificate-does-not-cover']],
    ['law EU', 'category-I', '40 kPa vacuum', ['recovery-too-shallow']],
    ['law EU', 'category-I', '42 kPa vacuum', []],
    ['law EU', 'universal', '42 kPa vacuum', ['certificate-does-not-cover']],
    // 7 lb are more than the 3 kg that category II covers.
    ['law EU', 'category-II', '42 kPa vacuum', ['certificate-does-not-cover']],
    ['law EU', 'A2', '42 kPa vacuum', ['certificate-does-not-cover']],
    ['law EU', 'A1', '42 kPa vacuum', []],
    ['law US', 'A1', '0 inHg', ['certificate-does-not-cover']],
    ['law elsewhere', 'type-I', '0 inHg', []],
    ['law elsewhere', 'type-I', '20 psig', ['recovery-too-shallow']],
  ] as const)('%s, %s, recovered to %s', (law, crew, level, expected) => {
    expect(base(law, crew, level)).toEqual(expected);
  });

  // (EU) 2024/573 annex IV; 40 CFR 84.54(c)(9), (c)(3), and (c)(8), which names refrigerants and no warming potential.
  it.each([
    ['a split of less than 3 kg in the EU', 'law EU', '', 'R-410A', '5 lb', ['warming-over-limit']],
    ['a split of more than 3 kg in the EU', 'law EU', '', 'R-410A', '8 lb', []],
    ['a cold store in the US', 'law US', 'equipment cold-storage', 'R-448A', '6 lb', ['warming-over-limit']],
    ['a cold store with R-454C', 'law US', 'equipment cold-storage', 'R-454C', '6 lb', []],
    ['a chiller with R-410A', 'law US', 'equipment chiller', 'R-410A', '6 lb', ['warming-over-limit']],
    [
      'road transport with a gas that the rule names',
      'law US',
      'equipment transport',
      'R-404A',
      '6 lb',
      ['warming-over-limit'],
    ],
    ['road transport with one that it does not name', 'law US', 'equipment transport', 'R-452A', '6 lb', []],
    ['a remote condensing unit of 1387', 'law US', 'equipment condensing-unit', 'R-448A', '6 lb', []],
    [
      'a remote condensing unit of 3922',
      'law US',
      'equipment condensing-unit',
      'R-404A',
      '6 lb',
      ['warming-over-limit'],
    ],
    ['no law that is known', 'law elsewhere', 'equipment chiller', 'R-410A', '6 lb', []],
  ] as const)('limits the warming potential of %s', (_what, law, equipment, refrigerant, charge, expected) => {
    const names = found(
      exampleText({
        base: 'split',
        instead: [
          ['altitude 0 ft', `altitude 0 ft\n    ${law}`],
          ['R-22 -> R-454B', `R-22 -> ${refrigerant}`],
          ['oil mineral', equipment === '' ? 'oil mineral' : `${equipment}\n    oil mineral`],
          ['holds R-454B 6 lb', `holds ${refrigerant} ${charge}`],
          ['charge 6 lb', `charge ${charge}`],
        ],
      }),
    ).map((each) => each.name);
    expect(names.filter((name) => name === 'warming-over-limit')).toEqual(expected);
  });

  it('says which law is taken where the site states none, and does not where it does', () => {
    const shallow = (law: string): string =>
      found(
        exampleText({
          base: 'split',
          instead: [
            ['altitude 0 ft', law === '' ? 'altitude 0 ft' : `altitude 0 ft\n    ${law}`],
            ['recover system to 0 inHg', 'recover system to 20 psig'],
          ],
        }),
      ).find((each) => each.name === 'recovery-too-shallow')!.message;
    expect(shallow('')).toContain('law of the US since the site states none');
    expect(shallow('law US')).not.toContain('states none');
  });
});
