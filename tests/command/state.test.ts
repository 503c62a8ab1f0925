import { describe, expect, test } from 'vitest';
import type { StateReport } from '../../server/command/shapes/state';
import { json, Shop } from './shop';

const shop = Shop.withSamples();
const split = 'changeout-split.jobplan';

async function stepsAfter(step: string, file = split): Promise<StateReport['steps']> {
  return (json(await shop.type('state', file, '--after', step, '--format', 'json')) as StateReport).steps;
}

describe('as JSON', () => {
  test('one state for each step walked, with its label or number, its text and its place', async () => {
    const { steps } = json(await shop.type('state', split, '--format', 'json')) as StateReport;
    expect(steps[0]).toMatchObject({ step: 'survey', text: 'survey: survey system' });
    expect(steps[1]).toMatchObject({ step: 2, text: 'lock-out power' });
    for (const { file, line, text } of steps) expect(shop.read(file).split('\n')[line]).toContain(text);
  });

  test('a charged circuit is one space under the saturation pressure of the site', async () => {
    const [{ parts }] = (await stepsAfter('1')) as [StateReport['steps'][number]];
    // Saturation of R-22 between 75 degF (133 psig) and 84 degF (154 psig), plus 14.3 psi of air at 640 ft.
    // Source: handbook, pressure-temperature table of R-22.
    const { low, high, ...rest } = parts['liquid-line']!;
    expect(low! / 6894.76).toBeGreaterThan(146);
    expect(high! / 6894.76).toBeLessThan(169.5);
    expect(rest).toEqual({
      mounted: true,
      holds: 'R-22',
      openEnds: [],
      sharesWith: ['compressor', 'condenser', 'filter-drier', 'expansion-valve', 'evaporator', 'suction-line'],
      wet: false,
      tested: false,
      decayTested: false,
    });
  });

  test('after the lines are undone they stand open, each by itself', async () => {
    const [{ parts }] = (await stepsAfter('6')) as [StateReport['steps'][number]];
    // Bores of 3/8 in and 7/8 in ACR tube: 0.311 in and 0.785 in. Source: ASTM B280, table 1.
    expect(parts['liquid-line']).toMatchObject({
      holds: 'air',
      sharesWith: [],
      openEnds: [
        { end: 'inlet', opening: expect.closeTo(0.311 * 0.0254, 6) },
        { end: 'outlet', opening: expect.closeTo(0.311 * 0.0254, 6) },
      ],
    });
    expect(parts['suction-line']!.openEnds.map(({ opening }) => opening)).toEqual([
      expect.closeTo(0.785 * 0.0254, 6),
      expect.closeTo(0.785 * 0.0254, 6),
    ]);
  });

  test('a part that is off is not mounted', async () => {
    const [{ parts }] = (await stepsAfter('8')) as [StateReport['steps'][number]];
    expect(parts['compressor']!.mounted).toBe(false);
    expect(parts['liquid-line']!.mounted).toBe(true);
  });

  test('a repeat has its first and its last round', async () => {
    const { steps } = json(await shop.type('state', split, '--format', 'json')) as StateReport;
    const flushes = steps.filter(({ text }) => text.startsWith('flush each'));
    expect(flushes.map(({ round }) => round)).toEqual([1, 2]);
    for (const { parts } of flushes) expect(parts['liquid-line']!.wet).toBe(true);
  });

  test('tests are remembered, the level of the vacuum is in pascals', async () => {
    const [{ parts }] = (await stepsAfter('evacuate')) as [StateReport['steps'][number]];
    // 500 micron of mercury = 500 x 0.133322 Pa. Source: NIST SP 811, appendix B.8.
    expect(parts['liquid-line']).toMatchObject({
      holds: 'vacuum',
      pressure: expect.closeTo(66.66, 1),
      tested: true,
      decayTested: false,
    });
    expect(parts['compressor']).toMatchObject({ holds: 'R-454B', tested: false });
  });
});

describe('as text', () => {
  test('shows the beginning in full, then what each step changes', async () => {
    const { out, status } = await shop.type('state', split);
    expect(
      out.startsWith('At the beginning\n    part             holds  at             space\n    compressor       R-22 '),
    ).toBe(true);
    expect(out).toContain('2  lock-out power\n    nothing changes in the circuit\n');
    expect(status).toBe(0);
  });
  test('in SI where that is asked', async () => {
    const { out } = await shop.type('state', split, '--after', 'evacuate', '--units', 'si');
    expect(out).toMatch(/liquid-line +vacuum +66\.7 Pa absolute/);
  });
});

test.each([
  [[split, '--after', 'evacute'], 'has no step "evacute"; perhaps "evacuate" is meant'],
  [[split, '--after', '999'], 'steps are numbered from 1 to '],
  [['house.jobplan'], 'house.jobplan holds no plan.'],
  [['.'], '. is a folder; name the file of one plan.'],
  [['gone.jobplan'], 'gone.jobplan is not there.'],
  [[split, '--plan', 'tansy-row-41'], 'perhaps "tansy-row-14" is meant'],
])('wrong usage: %j', async (words, message) => {
  const ended = await shop.type('state', ...words);
  expect(ended).toMatchObject({ status: 2, out: '' });
  expect(ended.said).toContain(message);
});

test('of several plans in a file one is chosen', async () => {
  const two = new Shop({ 'two.jobplan': 'plan one "One" {\n}\nplan two "Two" {\n}\n' });
  const ended = await two.type('state', 'two.jobplan', '--format', 'json');
  expect(ended).toMatchObject({
    status: 2,
    said: 'jobplan: two.jobplan holds several plans; choose one with --plan: one, two.\n',
  });
  expect(json(await two.type('state', 'two.jobplan', '--plan', 'two', '--format', 'json'))).toEqual({
    version: 1,
    steps: [],
  });
});
