import { expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

const pull = 'evacuate each open part to 500 micron';
const watch = 'decay-test each open part for 15 min, rise at most 300 micron';
const sheet = ' per "unit sheet, page 12"';

/** What is found above information when the last pull of the split and its decay test read otherwise. */
function found(evacuate: string, decay: string): readonly string[] {
  const workspace = new Workspace();
  const instead = [[pull, evacuate] as const, [watch, decay] as const];
  workspace.setFile('cited.jobplan', exampleText({ base: 'split', instead }));
  return workspace
    .snapshot()
    .findings('cited.jobplan')
    .filter((finding) => finding.severity !== 'information')
    .map(({ name }) => name);
}

const rises = (rise: string): string => watch.replace('300 micron', rise) + sheet;
const pulls = (level: string): string => pull.replace('500 micron', level) + sheet;

// A cited sheet stands in place of the usual rules (language: `per`), but water at 32 °F boils under 4,588 micron (IAPWS;
// handbook 8.3), and the roughest pull that a sheet asks for is 29 inHg, 23,400 micron at sea level (handbook 8.1, S:72).
it.each([
  ['a cited rise to 1,300 micron', pull, rises('800 micron'), []],
  ['a cited rise to 4,000 micron', pull, rises('3500 micron'), []],
  ['a cited rise to 5,500 micron', pull, rises('5000 micron'), ['decay-limit-high']],
  ['a cited rise of 50,000 micron', pull, rises('50000 micron'), ['decay-limit-high']],
  ['a cited rise of torr in place of micron', pull, rises('300 torr'), ['decay-limit-high']],
  ['a cited pull to 1,500 micron, and a rise to 4,000', pulls('1500 micron'), rises('2500 micron'), []],
  [
    'a cited pull to 1,500 micron, and a rise to 6,500',
    pulls('1500 micron'),
    rises('5000 micron'),
    ['decay-limit-high'],
  ],
  ['a cited pull to 29 inHg, and a rise of 1 inHg in 5 minutes', pulls('29 inHg'), rises('1 inHg'), []],
  ['a cited pull of torr in place of micron', pulls('500 torr'), rises('300 micron'), ['evacuation-not-deep']],
  ['a cited pull to 50,000 micron', pulls('50000 micron'), rises('300 micron'), ['evacuation-not-deep']],
] as const)('%s', (_, evacuate, decay, expected) => {
  expect(found(evacuate, decay)).toEqual(expected);
});
