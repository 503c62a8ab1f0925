import { describe, expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

type Instead = readonly (readonly [string, string])[];
const soap = 'pressure-test each open part to 10 psig for 15 min, bubbles on every joint';
const low = 'pressure-test low-side, high-side to 200 psig for 60 min';
const high = 'pressure-test high-side to 350 psig for 60 min';
const release = 'release nitrogen outdoors';
const ahead = (step: string, line: string): readonly [string, string] => [step, `${line}\n    ${step}`];
const behind = (step: string, line: string): readonly [string, string] => [step, `${step}\n    ${line}`];

/** What is found above information in the rack with steps put in or ratings put differently. */
function found(instead: Instead): readonly string[] {
  const workspace = new Workspace();
  workspace.setFile('rack.jobplan', exampleText({ base: 'rack', instead }));
  return workspace
    .snapshot()
    .findings('rack.jobplan')
    .filter((finding) => finding.severity !== 'information')
    .map(({ name }) => name);
}
const told = ['instruments-under-test'];
const relief = (psig: number): readonly [string, string] => [
  'receiver kept {\n      rated 400 psig',
  `receiver kept {\n      rated 400 psig\n      relief ${psig} psig`,
];

// Federal guide specification 15652A (handbook 7.1): relief valves and controls not rated for the test are isolated for it.
describe('what is isolated for the test', () => {
  it.each([
    ['out for all stages', [ahead(soap, 'bypass transducers'), behind(release, 'restore transducers')], []],
    ['out from the strong test on', [ahead(low, 'bypass transducers'), behind(release, 'restore transducers')], []],
    ['back between two stages', [ahead(low, 'bypass transducers'), behind(low, 'restore transducers')], told],
    ['back before the first', [ahead(soap, 'bypass transducers'), behind(soap, 'restore transducers')], told],
    ['put out after the last', [behind(high, 'bypass transducers'), behind(release, 'restore transducers')], told],
    [
      'a relief valve, setting unknown',
      [ahead(low, 'bypass relief-valves'), behind(low, 'restore relief-valves')],
      told,
    ],
    [
      'a relief valve set well above the test',
      [relief(395), ahead(low, 'bypass relief-valves'), behind(low, 'restore relief-valves')],
      [],
    ],
    [
      'a relief valve set just above it',
      [relief(360), ahead(low, 'bypass relief-valves'), behind(low, 'restore relief-valves')],
      told,
    ],
    [
      'a relief valve set below it',
      [relief(300), ahead(low, 'bypass relief-valves'), behind(low, 'restore relief-valves')],
      ['pressure-above-rating'],
    ],
    ['an alarm, which feels no gas', [ahead(low, 'bypass case-alarms'), behind(low, 'restore case-alarms')], []],
    [
      'a switch that is out for the charge only',
      [ahead('charge system', 'bypass low-pressure-switch'), ahead('energise controls', 'restore low-pressure-switch')],
      [],
    ],
    [
      'a switch that was out for the recovery only',
      [
        ahead('recover system', 'bypass low-pressure-switch'),
        ahead('prove-zero system', 'restore low-pressure-switch'),
      ],
      [],
    ],
  ] as const)('%s', (_, instead, expected) => {
    expect(found(instead)).toEqual(expected);
  });
});

// Common practice (handbook 13.5): what keeps people and machine safe is back before the machine runs.
describe('what is out of action when the machine starts', () => {
  const start = 'start system';
  const late = ['not-put-back'];
  it.each([
    ['a pressure cut-out', [ahead(soap, 'bypass pressure-switch'), behind(start, 'restore pressure-switch')], late],
    [
      'two in one line are one finding',
      [ahead(soap, 'bypass transducers, relief-valves'), behind(start, 'restore transducers, relief-valves')],
      late,
    ],
    ['two that nobody restores, too', [ahead(soap, 'bypass transducers, relief-valves')], late],
    ['a pump', [ahead(soap, 'bypass water-pump'), behind(start, 'restore water-pump')], late],
    ['water', [ahead(soap, 'close water-valves'), behind(start, 'open water-valves')], late],
    ['water that nobody opens', [ahead(soap, 'close water-valves')], late],
    [
      'water, under a machine that runs',
      [ahead('lock-out power', 'close water-valves'), ahead(start, 'open water-valves')],
      late,
    ],
    [
      'water, when the machine stands',
      [behind('lock-out power', 'close water-valves'), ahead(start, 'open water-valves')],
      [],
    ],
    ['an alarm may wait', [ahead(soap, 'bypass case-alarms'), behind(start, 'restore case-alarms')], []],
    [
      'a low-pressure switch, for the rest of the charge',
      [
        ahead(start, 'bypass low-pressure-switch'),
        behind(start, 'charge system with R-448A 3 lb as vapour\n    restore low-pressure-switch'),
      ],
      [],
    ],
    [
      'a low-pressure switch, for a pump-down',
      [
        ahead(
          'lock-out power\n',
          'bypass low-pressure-switch\n    stop system\n    close sol-1, sol-2\n    start system\n    pump-down system into receiver to 0 psig\n    restore low-pressure-switch',
        ),
      ],
      [],
    ],
  ] as const)('%s', (_, instead, expected) => {
    expect(found(instead).filter((name) => name === 'not-put-back')).toEqual(expected);
  });
});
