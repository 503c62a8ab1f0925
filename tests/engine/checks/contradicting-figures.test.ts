import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { Workspace } from '../../../server/engine/workspace';

const folder = join(__dirname, '../../fixtures/good');
const files = readdirSync(folder).filter((file) => file.endsWith('.jobplan'));

/** The findings above information of a sound plan with one text put differently. */
function foundWith(file: string, from: string, to: string): readonly string[] {
  const workspace = new Workspace();
  for (const each of files) workspace.setFile(each, readFileSync(join(folder, each), 'utf8'));
  const text = readFileSync(join(folder, file), 'utf8');
  expect(text, 'the text to be put differently').toContain(from);
  workspace.setFile(
    file,
    text.replace(from, () => to),
  );
  return workspace
    .snapshot()
    .findings(file)
    .filter((each) => each.severity !== 'information')
    .map((each) => each.name);
}

/**
 * One figure of a sound plan slips; what the rest of the plan says gives it away. The limits: charge by plate and lines
 * (handbook 9.1, 13.3), design pressures by ASHRAE 15 (7.2, from memory), test by ASME B31.5 (7.1, from memory), purge at
 * most 200 psig (5.2), a usual pump about 50 micron (8.5, common practice), acid 0.05 to 0.2 mg KOH/g and the drop over a
 * suction drier (4.5, from memory), 4 inHg of a small appliance (40 CFR 82.156), 10 ft round flammable gas (common practice).
 */
describe('a figure that contradicts the rest of the plan', () => {
  it.each([
    [
      'plate-exchanger-renewed',
      'charge system with R-410A 12 lb',
      'charge system with R-410A 6 lb',
      'charge-does-not-fit',
    ],
    [
      'plate-exchanger-renewed',
      'charge system with R-410A 12 lb',
      'charge system with R-410A 120 lb',
      'charge-does-not-fit',
    ],
    ['branch-box-renewed', 'with R-410A 6 lb 10 oz', 'with R-410A 3 lb 10 oz', 'charge-does-not-fit'],
    ['high-altitude-split', 'holds R-454B 4 lb 12 oz', 'holds R-454B 47 lb', 'charge-does-not-fit'],
    ['ductless-line-moved', 'low 320 psig', 'low 3200 psig', 'design-pressure-unlikely'],
    ['plate-exchanger-renewed', 'high 450 psig', 'high 45 psig', 'design-pressure-unlikely'],
    ['compressor-between-valves', '250 psig for', '2500 psig for', 'test-far-above-design'],
    ['drier-changed', '200 psig for', '2000 psig for', 'test-far-above-design'],
    ['isobutane-cabinet', 'to 60 psig', 'to 6 psig', 'test-below-design'],
    [
      'carbon-dioxide-case',
      'coil-a: evaporator kept {\n          rated 870',
      'coil-a: evaporator kept {\n          rated 87',
      'design-pressure-unlikely',
    ],
    ['walk-in-new-lines', 'rated 250 psig', 'rated 25 psig', 'design-pressure-unlikely'],
    ['compressor-between-valves', 'at most 0.05 mgKOH/g', 'at most 0.5 mgKOH/g', 'limit-far-too-loose'],
    ['double-riser-flushed', 'suction-drier, at most 4 psi', 'suction-drier, at most 40 psi', 'limit-far-too-loose'],
    ['double-riser-flushed', 'filter-drier, at most 3 psi', 'filter-drier, at most 30 psi', 'limit-far-too-loose'],
    ['bottle-cooler-line-taps', 'to 4 inHg', 'to 2 inHg', 'recovery-too-shallow'],
    ['split-taped-ends', 'ignition-sources within 10 ft', 'ignition-sources within 1 ft', 'ignition-sources-unchecked'],
    ['lines-pinched-overnight', '    compressor new\n', '', 'circuit-incomplete'],
    ['plate-exchanger-renewed', 'condenser at 100 psig', 'condenser at 400 psig', 'purge-pressure-high'],
    [
      'plate-exchanger-renewed',
      'evacuate system to 250 micron',
      'evacuate system to 25 micron',
      'evacuation-not-reachable',
    ],
    ['plate-exchanger-renewed', 'suction-line at 50 psig', 'suction-line at -5 psig', 'impossible-level'],
  ] as const)('%s: "%s" as "%s"', (name, from, to, expected) => {
    expect(foundWith(`${name}.jobplan`, from, to)).toContain(expected);
  });
});
