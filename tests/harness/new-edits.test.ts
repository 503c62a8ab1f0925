import { expect, test } from 'vitest';
import { editsOf } from './edits';
import { ruled } from './measure';
import { filesOf, folders, sound } from './plans';

/** Every operator of the new set, over all sound plans; no check is run. */
const operators = new Set(
  folders.flatMap((folder) => {
    const files = filesOf(folder);
    return sound(files).flatMap((plan) => [...editsOf(plan, plan, files[plan]!, 'new')].map((edit) => edit.operator));
  }),
);

test.each([
  ['steps left out together', /^delete [234] steps$/],
  ['steps moved together', /^move [23] steps (up|down) [123]$/],
  ['blocks moved and cut', /^(phase|visit|repeat)( past a step|: (last|first|next) .*)$/],
  ['steps copied from elsewhere', /^copied (up|down)$/],
  ['pairs inverted', /^pair inverted$/],
  ['verbs taken for relatives', /^[a-z-]+ to [a-z-]+$/],
  ['gases, refrigerants and oils taken for others', /^(gas|refrigerant|oil): /],
  ['units mixed', /^(unit|head): .* to /],
  ['the same in other words', /^(same in another unit|list turned|list split|label renamed)$/],
  ['figures exchanged', /^figures exchanged$/],
  ['parts of the circuit exchanged', /^(parts|tubes) exchanged$/],
  ['stock and kind of job', /^(stock|kind|certificate)/],
  ['departures turned', /^departure/],
])('the new set has %s', (_, operator) => {
  expect([...operators].some((each) => operator.test(each))).toBe(true);
});

test('three edits in four of the new set are ruled', () => {
  const outcomes = [...ruled(folders.slice(0, 1), 8, 0, 'new')];
  expect(outcomes.length).toBeGreaterThan(60);
  const clear = outcomes.filter((each) => each.ruling.verdict !== 'unclear');
  expect(clear.length / outcomes.length).toBeGreaterThan(0.75);
  expect(outcomes.every((each) => each.ruling.why.length > 8)).toBe(true);
});
