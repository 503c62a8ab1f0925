import type { Tube } from '../../circuit/graph';
import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import { exactly } from '../../quantity';
import { fahrenheit } from '../../reference/table-units';
import { tubeNamed } from '../../reference/tubes';
import { tubeWorkingPressure } from '../../takeoff/figures/tube-working-pressure';
import { input } from '../../takeoff/given';
import { defineCheck } from '../define';
import { changesRefrigerant, isHeatPump, lines, saturationDesign, sideOf, statedDesign } from '../plant-facts';
import { gauge, inOwn } from '../support';

/** The temperature for which sheets of refrigeration tube print their ratings (ASTM B280 coil, handbook section 12, WE-08). */
const ratedAt = fahrenheit(150);

/** A line whose wall does not bear the design pressure of the side that it is on. */
export const tubeNotRated = defineCheck({
  name: 'tube-not-rated',
  severity: 'error',
  title: 'A line is not rated for the side that it is on',
  acceptable: false,
  noFix: 'The tube is as thick as it is: another line must be laid, or its wall measured.',
  reads: 'figure',
  ground: 'published',
  meaning:
    'The working pressure of the tube, by its diameter and wall, is below the design pressure of its side. The vapour line of a heat pump is high side in heating.',
  why: 'A thin or worn wall bursts on the first hot day, or in the pressure test with somebody beside it.',
  source:
    'copper tube formula of ASME B31 with the stresses of annealed copper, at 150 °F; design temperatures of ASHRAE 15',
  wrong: {
    base: 'split',
    instead: [
      ['suction-line kept {', 'vapour-line kept {'],
      ['tube 7/8 in ACR', 'tube 7/8 in ACR # <- here\n      wall 0.035 in measured'],
    ],
  },
  right: { base: 'split' },
  plan(whole) {
    const { plan } = whole;
    const repairs =
      !changesRefrigerant(plan) &&
      !plan.graph.parts.some((part) => part.kind.group === 'coil' && part.standing === 'new');
    for (const part of lines(plan)) {
      const { tube, rated, per } = part.properties;
      if (!tube || part.standing === 'removed' || per?.['tube'] || per?.['wall'] || per?.['rated']) continue;
      const side = sideOf(plan, part);
      const needed = statedDesign(plan, side) ?? saturationDesign(plan, side);
      const bears = rated ?? workingPressure(tube, plan.site.atmosphere);
      if (needed === null || bears === null || bears >= needed * 0.995) continue;
      // A repair leaves line and refrigerant as they were sold: only a rating or a wall that somebody read says something new.
      if (repairs && rated === undefined && !tube.measured) continue;
      const block = plan.partStatements[part.index]?.block ?? [];
      const plate = child(block, rated === undefined ? 'tube' : 'rated');
      const said = {
        message: `${part.name} (${tube.shown}) is good for ${gauge(plan, bears)}${rated === undefined ? ` at ${inOwn(plan, '150 °F', '65 °C')}` : ''}, and the ${side} side${side === 'high' && !part.highSide && isHeatPump(plan) ? ', which it is in heating,' : ''} is designed for ${gauge(plan, needed)}: it cannot stay in this circuit.`,
        concerns: [part.index],
      };
      if (plate) whole.reportAt(plate, wordSpan(plate), said);
      else whole.reportPart(part.index, said);
    }
  },
});

const bearing = new WeakMap<Tube, { readonly atmosphere: number; readonly pressure: number | null }>();

/** Pa absolute at the site; the standard's tolerances count unless the wall was measured. Found once a tube. */
function workingPressure(tube: Tube, atmosphere: number): number | null {
  const known = bearing.get(tube);
  if (known?.atmosphere === atmosphere) return known.pressure;
  const pressure = pressureOf(tube, atmosphere);
  bearing.set(tube, { atmosphere, pressure });
  return pressure;
}

function pressureOf(tube: Tube, atmosphere: number): number | null {
  const listed = tube.measured ? undefined : tubeNamed(tube.outside, tube.shown.includes('EN') ? 'EN' : 'ACR');
  const same = listed && Math.abs(listed.wall - tube.wall) < 1e-6 ? listed : undefined;
  const figure = tubeWorkingPressure.figure(
    tube.shown,
    {
      outsideDiameter: input(exactly('length', tube.outside), 'reference'),
      wall: input(exactly('length', tube.wall), 'reference'),
      diameterTolerance: same?.diameterTolerance
        ? input(exactly('length', same.diameterTolerance), 'reference')
        : undefined,
      wallTolerance: same?.wallTolerance ? input(exactly('length', same.wallTolerance), 'reference') : undefined,
      temperature: input(exactly('temperature', ratedAt), 'reference'),
    },
    { atmosphere },
  );
  return figure.quantity?.low ?? null;
}
