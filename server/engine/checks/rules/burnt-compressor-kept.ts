import { wordSpan } from '../../plan/gather';
import { statement } from '../course';
import { defineCheck } from '../define';
import { isCompressor, touched } from '../plant';

/** A burnout cleaned up round the compressor that burnt. */
export const burntCompressorKept = defineCheck({
  name: 'burnt-compressor-kept',
  severity: 'warning',
  title: 'No compressor is renewed after a burnout',
  acceptable: true,
  noFix: 'Which compressor burnt, and where its change falls among the steps, the plan does not hold.',
  reads: 'state',
  ground: 'published',
  yieldsTo: ['part-not-as-stated'],
  meaning:
    'The job is a burnout, and every compressor of the circuit is an old one: left in place, or taken off and put back.',
  why: 'A motor with burnt windings does not run again, and its shell is full of the acid and soot that the clean-up is for.',
  source: 'replacement of the compressor: public service manuals on burnout clean-up (handbook 13.4)',
  wrong: {
    base: 'rack',
    instead: [['kind conversion', 'kind conversion, burnout # <- here']],
  },
  right: { base: 'rack' },
  plan(whole) {
    const kind = statement(whole.plan, 'kind');
    const last = whole.entries.at(-1);
    if (!whole.plan.kinds.includes('burnout') || !kind || !last) return;
    const compressors = whole.plan.graph.parts.filter(
      (part) => isCompressor(part) && touched(whole.plan.graph, part.index),
    );
    if (compressors.length === 0) return;
    if (compressors.some((part) => part.standing === 'new' || last.after.parts[part.index]!.renewed !== null)) return;
    const back = compressors.find((part) => last.after.parts[part.index]!.setBy !== null);
    if (!back) {
      whole.reportAt(kind, wordSpan(kind), {
        message: `The job is a burnout and no compressor is renewed: state the one that burnt new, and set it.`,
        concerns: compressors.map((part) => part.index),
      });
      return;
    }
    const { setBy } = last.after.parts[back.index]!;
    whole.reportPart(back.index, {
      message: (say) =>
        `${back.name} is stated ${back.standing}: ${say.step(setBy)} puts the burnt one back. State it new.`,
      concerns: [back.index],
      related: [{ cause: setBy, message: 'it is put back here' }],
    });
  },
});
