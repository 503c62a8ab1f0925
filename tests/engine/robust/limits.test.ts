import { expect, test } from 'vitest';
import { workspaceOf } from './shop';

const lines = (count: number, line: (number: number) => string): string =>
  Array.from({ length: count }, (_, number) => line(number)).join('\n');

const plan = (circuit: string, steps: string, more = ''): string => `plan limits "Limits" {
  kind changeout
  ${more}
  system {
    refrigerant R-22 -> R-454B
    oil mineral -> POE
    recover-charge 7 lb
    charge 6 lb
  }
  circuit {
${circuit}
  }
  steps {
${steps}
  }
}
`;
const split =
  'compressor kept\ncondenser kept\nliquid-line kept {\n tube 3/8 in ACR\n length 40 ft\n}\nevaporator kept';
const soundSteps = 'lock-out power\nrecover system to 0 inHg\nevacuate system to 500 micron';

const nested = (depth: number, branches: number): string =>
  depth === 0
    ? 'evaporator kept'
    : `parallel {\n${lines(branches, (k) => `branch b${depth}-${k} {\n${k === 0 ? nested(depth - 1, branches) : `e${depth}-${k}: evaporator kept`}\n}`)}\n}`;

const repeated = (rounds: string): string =>
  plan(
    split,
    `repeat until clear, ${rounds} {\nflush liquid-line into container\nrepeat ${rounds} {\npurge liquid-line at 50 psig for 15 s\n}\n}`,
  );

const cases: readonly (readonly [what: string, text: string, finding: RegExp])[] = [
  ['5 MB of lines', '    evacuate system to 500 micron\n'.repeat(160_000), /too-large: This text is too large/],
  ['10,000 nested blocks', `plan a "A" {\n${'a {\n'.repeat(10_000)}${'}\n'.repeat(10_000)}}\n`, /too-deep: /],
  ['10,000 nested steps', plan(split, `${'phase "x" {\n'.repeat(10_000)}${'}\n'.repeat(10_000)}`), /too-deep: /],
  ['10,000 blocks left open', 'steps { '.repeat(10_000), /unclosed-brace: /],
  ['10,000 braces too many', '}'.repeat(10_000), /stray-brace: /],
  ['a word of 1 MB', plan(split, 'x'.repeat(1_000_000)), /unknown-word: "x{59}…" is no word/],
  ['a text of 1 MB', plan(split, `note "${'x'.repeat(1_000_000)}`), /unclosed-quote: /],
  [
    'a figure of 1 MB',
    plan(split, `evacuate system to ${'1'.repeat(1_000_000)} micron`),
    /not-a-number: This is too long/,
  ],
  [
    'a line of 100,000 parts',
    plan(split, `inspect ${'x, '.repeat(100_000)}`),
    /unexpected-term: This line is too long/,
  ],
  ['signs of 1 MB', '-'.repeat(1_000_000), /unreadable-text: /],
  [
    '10,000 parts',
    plan(
      lines(10_000, (k) => `l${k}: liquid-line kept`),
      soundSteps,
    ),
    /too-large: .* more than 500 parts/,
  ],
  [
    '10,000 passages',
    plan(`reversing-valve kept\n${'through reversing-valve\n'.repeat(10_000)}`, soundSteps),
    /too-large: /,
  ],
  [
    '500 branches, nested 50 deep',
    plan(`compressor kept\ncondenser kept\n${nested(50, 10)}`, soundSteps),
    /not-made-for-refrigerant: .*others were made/,
  ],
  [
    '1e9 rounds',
    repeated('at most 1000000000'),
    /impossible: "1000000000" cannot stand here: a whole number from 1 to 100/,
  ],
  ['no round', repeated('at most 0'), /impossible: "0" cannot stand here/],
  ['rounds below nothing', repeated('at least -3, at most -1'), /impossible: "-3" cannot stand here/],
  ['half a round', repeated('at most 1.5'), /impossible: "1.5" cannot stand here/],
  ['rounds backward', repeated('at least 5, at most 2'), /backward-range: At least 5 and at most 2/],
  ['a length of 1e309 ft', plan(split.replace('40', '9'.repeat(309)), soundSteps), /not-a-number: /],
  ['a day that is none', plan(split, soundSteps, 'date 0000-00-00'), /impossible: There is no day 0000-00-00/],
  [
    'a number that is none',
    plan(split.replace('40 ft', 'NaN ft'), soundSteps),
    /wrong-term: Expected length.*not "NaN"/,
  ],
  ['a vacuum deeper than any', plan(split, 'evacuate system to 31 inHg'), /impossible: /],
  [
    'a standard that is not there',
    'plan a "A" {\n follows nowhere\n}\n',
    /unknown-name: There is no standard "nowhere"/,
  ],
  [
    'a standard that follows',
    'standard s "S" {\n follows t\n}\nplan a "A" {\n follows s\n}\n',
    /unknown-word: "follows" is no word of a standard block/,
  ],
  ['a standard of itself', 'plan a "A" {\n follows a\n}\n', /unknown-name: There is no standard "a"/],
];

test.each(cases)(
  '%s: a clear finding',
  (_, text, finding) => {
    const workspace = workspaceOf({ 'limits.jobplan': text });
    const told = workspace
      .snapshot()
      .findings('limits.jobplan')
      .map(({ name, message }) => `${name}: ${message}`);
    expect(told.join('\n')).toMatch(finding);
    for (const each of told) expect(each.length).toBeLessThan(1000);
    for (const { takeOff } of workspace.snapshot().plans('limits.jobplan'))
      for (const figure of [...takeOff.totals, ...takeOff.steps.flat()])
        if (figure.quantity) expect(Number.isFinite(figure.quantity.high), figure.name).toBe(true);
    workspace.edit('limits.jobplan', [{ from: 5, to: 5, text: ' ' }]);
    expect(workspace.snapshot().findings('limits.jobplan').length).toBeGreaterThan(0);
  },
  60_000,
);

test('a departure from what another departure brought, changed or left out is told or taken', () => {
  const standard = 'standard s "S" {\n steps {\n a: evacuate system to 500 micron\n }\n}\n';
  const job = (departures: string) => `${standard}plan p "P" {\n follows s\n${departures}\n}\n`;
  const labels = (text: string) =>
    workspaceOf({ 'p.jobplan': text })
      .snapshot()
      .plans('p.jobplan')[0]!
      .plan.steps.map((step) => step.label);
  expect(labels(job('after a add because "x" {\n b: start system\n}'))).toEqual(['a', 'b']);
  expect(labels(job('skip a because "x"\nskip a because "y"\nchange a because "z" {\n to 400 micron\n}'))).toEqual([]);
  const found = workspaceOf({ 'p.jobplan': job('after a add because "x" {\n b: start system\n}\nskip b because "y"') })
    .snapshot()
    .findings('p.jobplan');
  expect(found.map(({ name, message }) => `${name} ${message}`)).toContainEqual(
    expect.stringMatching(/unknown-name There is no labelled step "b"/),
  );
});
