import { describe, expect, test } from 'vitest';
import type { StepBlock } from '../../../server/engine/procedure/block';
import { forTheRecord, reading, step } from '../../../server/engine/procedure/construct';
import type { Entry } from '../../../server/engine/procedure/document';
import { outline } from '../../../server/engine/procedure/outline';
import { stepBlocks } from '../../../server/engine/procedure/outline-steps';
import { plainText } from '../../../server/engine/procedure/sentence';
import { quillbrook, withWorkings } from './fixture';

const sections = (procedure: typeof quillbrook) =>
  outline(procedure).flatMap((block) => (block.kind === 'heading' && block.level === 1 ? [block.text] : []));

describe('order of the sheet', () => {
  test('sections stand in the order of the sheet’s description', () => {
    expect(sections(withWorkings)).toEqual([
      'The job',
      'Not by the book',
      'Before you leave the shop',
      'Circuit',
      'Steps',
      'Charge aids',
      'Waste and gas going back',
      'Put back',
      'Record and signatures',
      'Workings',
    ]);
  });
  test('workings come only when asked for, and begin a page', () => {
    expect(sections(quillbrook)).not.toContain('Workings');
    const heading = outline(withWorkings).find((block) => block.kind === 'heading' && block.text === 'Workings');
    expect(heading).toMatchObject({ newPage: true });
  });
  test('a plan by the book says so', () => {
    const text = outline({ ...quillbrook, notByTheBook: [] }).flatMap((block) =>
      block.kind === 'paragraph' ? [plainText(block.text)] : [],
    );
    expect(text).toContain('Nothing: the standard and the built-in limits stand.');
  });
  test('a job without charge has no charge aids', () => {
    const none = { strips: [], targets: [], weights: [], weighIn: null };
    expect(sections({ ...quillbrook, chargeAids: none })).not.toContain('Charge aids');
  });
});

const inRounds = (least: number, most: number, inner: Entry): readonly StepBlock[] =>
  stepBlocks([{ kind: 'repeat', id: 'r', line: 1, until: [], least, most, entries: [inner] }]).filter(
    (block) => block.kind === 'step',
  );
const items = (block: StepBlock) =>
  block.lines.flatMap((line) => (line.kind === 'checks' ? [line.items.join(' | ')] : []));

describe('rounds', () => {
  test.each([
    [2, 4, ['round 1 | 2 | if needed 3 | 4']],
    [3, 3, ['round 1 | 2 | 3']],
    [1, 2, ['round 1 | if needed 2']],
    // A most below the least is a slip of the plan that its own check names; print no fewer than the least.
    [3, 2, ['round 1 | 2 | 3']],
    [0, Number.NaN, ['round 1']],
  ])('at least %s, at most %s', (least, most, expected) => {
    expect(items(inRounds(least, most, step('1', 's', 'Flush'))[0]!)).toEqual(expected);
  });
  test('more rounds than a row can show get a blank for the further ones', () => {
    expect(items(inRounds(2, 40, step('1', 's', 'Flush'))[0]!)[0]).toMatch(/\| 12 \| further, up to 40: count ____$/);
  });
  test('each line has its own row, each round its own blank', () => {
    const flush = step('1', 's', 'Flush', { each: ['a', 'b'], lines: [reading('Out', 'L', 'at least 1 L')] });
    const [block] = inRounds(2, 3, flush);
    expect(block!.lines.map((line) => (line.kind === 'text' ? '' : line.label))).toEqual([
      'a',
      'b',
      '1: Out',
      '2: Out',
      '3: Out',
    ]);
  });
});

test('a reading without a limit says that it is for the record', () => {
  expect(reading('Amps', 'A', []).limit).toEqual(forTheRecord);
});

test.each([
  [1, 'back to step 3; at most once, then stop and call.'],
  [3, 'back to step 3; at most 3 times, then stop and call.'],
])('if it fails, at most %i', (most, expected) => {
  const ifFails = { first: [], backTo: { number: '3', id: 'three' }, most };
  const [block] = stepBlocks([step('9', 'nine', 'Test', { ifFails })]) as [StepBlock];
  expect(plainText(block.fails!.text)).toBe(expected);
  expect(block.fails!.anchor).toBe('three');
});
