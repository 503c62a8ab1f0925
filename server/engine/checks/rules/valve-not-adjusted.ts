import type { Part } from '../../circuit/graph';
import { defineCheck, type WayOut } from '../define';
import { touched } from '../plant';
import { edits } from '../support';
import { said } from '../ways-out';

/** A superheat that is adjusted of some valves, and not of one that is as new as they, or of a wrong one. */
export const valveNotAdjusted = defineCheck({
  name: 'valve-not-adjusted',
  severity: 'warning',
  title: 'The superheat is adjusted of other valves than those that are new',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The plan adjusts the superheat of expansion valves, and leaves one out that it renews; or it adjusts one that it never touches, and not the one that it renews.',
  why: 'A valve that is turned without need is out of its setting, and the new one stands as it left the works: one evaporator starves, or liquid comes back.',
  source: 'common practice, no source: what is new is adjusted, what was not touched is left alone',
  wrong: {
    base: 'rack',
    instead: [['adjust superheat of txv-1, txv-2', 'adjust superheat of txv-1 # <- here']],
  },
  right: { base: 'rack' },
  plan(whole) {
    const { entries, plan } = whole;
    const adjusting = entries.filter(({ events }) =>
      events.some((event) => event.type === 'adjusts' && event.what === 'superheat' && event.parts.length > 0),
    );
    const last = entries.at(-1);
    const [first] = adjusting;
    if (!first || !last) return;
    const isNew = ({ index }: Part): boolean => last.after.parts[index]!.renewed !== null;
    const set = new Set(
      adjusting.flatMap(({ events }) => events.flatMap((event) => (event.type === 'adjusts' ? event.parts : []))),
    );
    const left = plan.graph.parts.filter(
      (part) =>
        part.kind.kind === 'expansion-valve' && touched(plan.graph, part.index) && isNew(part) && !set.has(part.index),
    );
    if (left.length === 0) return;
    const names = left.map(({ name }) => name).join(', ');
    // In a conversion every valve is set for the new refrigerant; else one that nobody touched is out of place.
    const converts = plan.system.refrigerant.before !== plan.system.refrigerant.after;
    const entry = adjusting.find(
      ({ events }) =>
        !converts &&
        events.some(
          (event) => event.type === 'adjusts' && event.parts.every((each) => !isNew(plan.graph.parts[each]!)),
        ),
    );
    const at = entry ?? first;
    const text = said(at.slot.step, 'what');
    const fix: WayOut = entry
      ? {
          title: `Adjust ${names} instead`,
          edits: (mend) => edits(mend.replace(at.slot.step, 'what', `superheat of ${names}`)),
        }
      : {
          title: `Adjust ${names} as well`,
          edits: (mend) => edits(mend.replace(at.slot.step, 'what', `${text}, ${names}`)),
        };
    whole.report(at, {
      message: entry
        ? `This turns a valve that nothing was done to, and ${names}, which the plan renews, is never adjusted.`
        : `The superheat of ${names} is never adjusted, though the plan renews it as it does those that are.`,
      slot: 'what',
      root: 'valves',
      related: left.map(({ index }) => ({ part: index, message: 'this valve is new' })),
      fixes: text === '' ? [] : [fix],
    });
  },
});
