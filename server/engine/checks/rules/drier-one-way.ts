import type { Part } from '../../circuit/graph';
import type { Plan } from '../../plan/plan';
import { defineCheck, type WayOut } from '../define';
import { flowsBothWays, isDrier, touched } from '../plant';

/** A drier for one direction where the flow turns round. */
export const drierOneWay = defineCheck({
  name: 'drier-one-way',
  severity: 'warning',
  title: 'A single-flow drier in a line that flows both ways',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'Between the two passages of a reversing valve the flow turns round with the season, and the drier that stands there is not one for both ways.',
  why: 'Flow from behind washes the caught dirt back out of the core and into the metering device.',
  source: 'common practice',
  wrong: { base: 'heat-pump', instead: [['filter-drier new {\n      both-ways\n    }', 'filter-drier new # <- here']] },
  right: { base: 'heat-pump' },
  plan(whole) {
    const { graph } = whole.plan;
    for (const part of graph.parts) {
      if (!isDrier(part) || part.properties.bothWays || part.standing === 'removed') continue;
      if (!touched(graph, part.index) || !flowsBothWays(graph, part)) continue;
      whole.reportPart(part.index, {
        message: `${part.name} stands where a heat pump turns the flow round: it must be a drier for both ways.`,
        fixes: forBothWays(whole.plan, part),
      });
    }
  },
});

/** A drier that is still to be brought can be one for both ways; what hangs there already is what it is. */
function forBothWays(plan: Plan, part: Part): readonly WayOut[] {
  const bound = plan.partStatements[part.index];
  if (!bound || (part.standing !== 'new' && part.standing !== 'added')) return [];
  return [{ title: 'Bring one for both ways', edits: (mend) => [mend.addTo(bound, 'both-ways')] }];
}
