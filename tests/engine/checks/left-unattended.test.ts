import { expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

/** What is said of the split plan when the crew leaves, or waits, before a step of it. */
function before(step: string, ...lines: readonly string[]): readonly string[] {
  const workspace = new Workspace();
  const visit = lines.includes('visit');
  const put = lines.map((line) => `${line === 'visit' ? 'visit "Second day" within 1 day {' : line}\n`).join('');
  const instead: (readonly [string, string])[] = [[step, `${put}${step}`]];
  if (visit) instead.push(['record quantities, readings', 'record quantities, readings\n}']);
  workspace.setFile('left.jobplan', exampleText({ base: 'split', instead }));
  return workspace
    .snapshot()
    .findings('left.jobplan')
    .filter((finding) => finding.severity !== 'information')
    .map((finding) => finding.name);
}

it.each([
  ['a hold with the lines open while somebody looks at a cloth', before('place new', 'hold "Clean cloth" by lead')],
  ['a stand test over night', before('release nitrogen', 'visit')],
  ['a stand test that somebody looks at', before('release nitrogen', 'hold "No bubbles" by lead')],
  ['a proven vacuum', before('check ignition-sources', 'visit')],
  ['a machine that runs', before('label system', 'visit')],
  ['a holding charge', before('release nitrogen', 'release nitrogen to 10 psig outdoors', 'visit')],
  [
    'capped lines',
    before('crimp each kept', 'cap each kept line at both ends', 'visit', 'uncap each kept line at both ends'),
  ],
  ['a torch, and half an hour of watch', before('pressure-test each', 'watch hot-work for 30 min', 'visit')],
  [
    'a pressure switch off while all is locked out',
    before('check ignition', 'bypass high-pressure-switch', 'visit', 'restore high-pressure-switch'),
  ],
  [
    'a switch off at a hold',
    before('label system', 'bypass low-pressure-switch', 'hold "Look" by lead', 'restore low-pressure-switch'),
  ],
])('is silent: %s', (_, found) => {
  expect(found).toEqual([]);
});

it.each([
  ['lines open over night', before('crimp each kept', 'visit')],
  ['a vacuum that nobody proved', before('decay-test each', 'visit')],
  [
    'nitrogen that is no test',
    before(
      'decay-test each',
      'break-vacuum each open part with nitrogen to 150 psig',
      'visit',
      'release nitrogen outdoors',
      'evacuate each open part to 500 micron',
    ),
  ],
  ['a torch that has just been put out', before('pressure-test each', 'visit')],
  [
    'a switch off on a machine that runs',
    before('label system', 'bypass low-pressure-switch', 'visit', 'restore low-pressure-switch'),
  ],
  ['a new drier open at a hold', before('install filter-drier', 'place filter-drier', 'hold "Cloth" by lead')],
])('finds %s', (_, found) => {
  expect(found).toEqual(['left-unattended']);
});

it.each([
  ['at a hold', before('crimp each kept', 'restore power', 'hold "Cloth" by lead', 'lock-out power')],
  ['over night', before('crimp each kept', 'restore power', 'visit', 'lock-out power')],
])('says once that the power is on over an open circuit: %s', (_, found) => {
  expect(found).toEqual(['joint-left-open']);
});

/** The rack plan with a valve behind its receiver, and a hold before the magnets open its solenoids. */
function rackHold(first: string): readonly string[] {
  const workspace = new Workspace();
  const instead = [
    ['  liquid-drier: filter-drier new', '  king: ball-valve kept\n    liquid-drier: filter-drier new'],
    [
      'open sol-1, sol-2 by magnet',
      `${first}\n    hold "Rack quiet" by lead\n    open king\n    open sol-1, sol-2 by magnet`,
    ],
  ] as const;
  workspace.setFile('rack.jobplan', exampleText({ base: 'rack', instead }));
  return workspace
    .snapshot()
    .findings('rack.jobplan')
    .filter((finding) => finding.severity !== 'information')
    .map((finding) => `${finding.name}: ${finding.message}`);
}

it('finds liquid shut in between a hand valve and solenoids without power', () => {
  expect(rackHold('close king')).toEqual([
    expect.stringMatching(/^left-unattended: .*liquid-main is shut in full of liquid R-22/),
  ]);
});

it('is silent where the solenoids alone are shut, and the receiver takes up what grows', () => {
  expect(rackHold('photo king')).toEqual([]);
});
