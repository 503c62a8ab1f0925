import { wordSpan } from '../../plan/gather';
import { statement } from '../course';
import { defineCheck } from '../define';
import { isDrier, touched } from '../plant';

/** A burnout cleaned up without a drier in the suction line. */
export const suctionDrierMissing = defineCheck({
  name: 'suction-drier-missing',
  severity: 'warning',
  title: 'No suction drier after a burnout',
  acceptable: true,
  noFix: 'A drier must be brought, given its place in the suction line and fitted while the circuit is open.',
  reads: 'state',
  ground: 'published',
  meaning:
    'The job is a burnout, and no new filter-drier, or new cores, come into the suction side. For a mild burnout (clean oil, no acid) accept the finding with that reason.',
  why: 'Acid and soot that no flush brings out come back with the suction gas and burn the new compressor within weeks.',
  source: 'public service manuals on burnout clean-up (handbook 4.5, 13.4)',
  wrong: {
    base: 'rack',
    instead: [
      ['kind conversion', 'kind conversion, burnout # <- here'],
      ['clean strainers', 'clean strainers\n      acid-test system, at most 0.05 mgKOH/g'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const kind = statement(whole.plan, 'kind');
    if (!whole.plan.kinds.includes('burnout') || !kind) return;
    const { graph } = whole.plan;
    const driers = graph.parts.filter((part) => isDrier(part) && !part.highSide && touched(graph, part.index));
    // A plan whose steps do not set it is told of the part that no step fits, not of one that is missing.
    const comes = driers.some(
      ({ index, standing }) =>
        standing === 'new' ||
        standing === 'added' ||
        whole.entries.some((entry) => entry.after.parts[index]!.renewed !== null),
    );
    if (comes) return;
    const [old] = driers;
    if (old && old.standing !== 'removed') {
      whole.reportPart(old.index, {
        message: `After a burnout a new drier belongs into the suction line for the first days, and ${old.name} is an old one that stays or is put back.`,
      });
      return;
    }
    whole.reportAt(kind, wordSpan(kind), {
      message: 'After a burnout a drier belongs into the suction line for the first days, and the circuit has none.',
    });
  },
});
