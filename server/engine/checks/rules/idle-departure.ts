import { wordSpan } from '../../plan/gather';
import type { Departure } from '../../plan/step';
import { defineCheck, type WayOut } from '../define';
import { exampleJob, exampleStandard } from './parameter-missing';

const follows = `${exampleJob}follows short-way revision 4\n`;

/** A departure that changes nothing. */
export const idleDeparture = defineCheck({
  name: 'idle-departure',
  severity: 'warning',
  title: 'A departure that touches nothing',
  acceptable: true,
  reads: 'words',
  ground: 'practice',
  meaning:
    'The plan departs from a step that an earlier departure has already taken out, or changes a step to what it says anyway.',
  why: 'The author meant something to be different, and the sheet is the same as without it.',
  source: 'how plans are read',
  wrong: {
    base: 'split',
    file: exampleStandard,
    plan: `${follows}skip look because "No gas in it"\nafter look add because "Owner asks" { # <- here\n  photo system\n}`,
  },
  right: {
    base: 'split',
    file: exampleStandard,
    plan: `${follows}after look add because "Owner asks" {\n  photo system\n}`,
  },
  plan(whole) {
    const gone = new Map<string, Departure>();
    for (const departure of whole.plan.departures) {
      if (!departure.of) continue;
      const { bound } = departure;
      const span = bound.spans['label'] ?? wordSpan(bound);
      const before = gone.get(departure.label);
      if (before)
        whole.reportAt(bound, span, {
          message: `"${departure.label}" is no longer there: an earlier departure has taken it out, so this does nothing.`,
          related: [{ bound: before.bound, file: before.file, message: 'taken out here' }],
          fixes: without(departure, whole.plan.file),
        });
      else if (isEmpty(departure))
        whole.reportAt(bound, span, {
          message: `This changes nothing of "${departure.label}": its block holds no step and no limit.`,
          fixes: without(departure, whole.plan.file),
        });
      if (departure.kind === 'skip' || (departure.kind === 'replace' && !keeps(departure)))
        gone.set(departure.label, departure);
    }
  },
});

const isEmpty = (departure: Departure): boolean =>
  departure.kind !== 'skip' && departure.bound.item.block !== null && departure.bound.block.length === 0;
/** A replacement may bear the label of what it replaces. */
const keeps = (departure: Departure): boolean =>
  departure.bound.block.some((each) => each.label?.text === departure.label);

/** The departure comes out; one that a standard makes is not the job's. */
const without = ({ bound, file }: Departure, own: string): readonly WayOut[] =>
  file === own
    ? [
        {
          title: 'Take the departure out',
          edits: (mend) => [mend.change(bound, { from: 0, to: bound.item.length }, '')],
        },
      ]
    : [];
