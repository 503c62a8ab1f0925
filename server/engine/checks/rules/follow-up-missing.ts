import type { Part } from '../../circuit/graph';
import type { Cause, Plant } from '../../circuit/state';
import type { Plan } from '../../plan/plan';
import { oilFit } from '../../reference/refrigerant-facts';
import type { Entry } from '../../walk/walk';
import { firstStart, leaves, markedAfter, marksLeft, statedTime, timeOf, visitOf } from '../course';
import { defineCheck, type WayOut, type Whole } from '../define';
import { isDrier, isInLiquid, touched } from '../plant';
import { newFacts, oilFamily } from '../plant-facts';
import { inOwn } from '../support';
import { insertAfter, insertBefore } from '../ways-out';

/** Nobody comes back after a burnout or an oil conversion. */
export const followUpMissing = defineCheck({
  name: 'follow-up-missing',
  severity: 'warning',
  title: 'No follow-up after a burnout or a conversion',
  acceptable: true,
  reads: 'state',
  ground: 'published',
  yieldsTo: ['compressor-without-refrigerant'],
  meaning:
    'After the start of a burnout clean-up no step tests the oil for acid, or reads the pressure drop of the suction drier. A set of cores comes out of that drier and nobody has read what it held back; or the drier stays in for more than a week, and nobody looks at it in its first hours. After a conversion with another oil no step looks at the strainers, or else at both oil and drier; or with an oil that the new refrigerant carries only in part none looks at the oil level; or the crew comes back to the drier of any conversion and leaves the strainers unseen.',
  why: 'Acid that comes back, and dirt that the new oil loosens, stop the machine weeks later; both show in the first days.',
  source:
    'public service manuals (handbook 4.1, 4.5, 13.3, 13.4); strainers where the oil stays: common practice, no source',
  wrong: {
    base: 'rack',
    instead: [
      ['start system', 'start system # <- here'],
      [
        '    visit "Drier and oil" within 2 days {\n      read pressure-drop of liquid-drier, at most 4 psi\n      clean strainers\n    }\n',
        '',
      ],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const { plan, entries } = whole;
    const at = firstStart(entries);
    const start = entries[at];
    if (!start) return;
    const missing: string[] = [];
    const steps: string[] = [];
    if (plan.kinds.includes('burnout')) {
      if (!markedAfter(entries, at, /^(acid-test|sample)/)) {
        missing.push('an acid test of the oil');
        steps.push('acid-test system, at most 0.05 mgKOH/g');
      }
      const drier = plan.graph.parts.find(
        (part) =>
          isDrier(part) &&
          !part.highSide &&
          !isInLiquid(plan.graph, part) &&
          touched(plan.graph, part.index) &&
          part.standing !== 'removed',
      );
      if (drier && !entries.slice(at).some((entry) => readsDrop(whole, drier, entry))) {
        missing.push(`the pressure drop of ${drier.name}`);
        steps.push(readDrop(whole, drier));
      } else if (drier) coresSeen(whole, drier, start);
    } else if (plan.kinds.includes('conversion') && plan.system.smallAppliance === null) {
      const seen = markedAfter(entries, at, /^(clean|inspect|renew) (strainers|screens)/);
      if (plan.system.oil.before !== plan.system.oil.after) {
        // What the new oil loosens is seen in the strainers; else in the oil and in the drier, and neither shows it alone.
        const oil = markedAfter(entries, at, /^(acid-test|sample|change-oil)/);
        const drier = markedAfter(entries, at, /^(read pressure-drop|inspect|replace-cores|renew)/);
        if (!seen && !(oil && drier)) {
          missing.push('a look at strainers and oil');
          steps.push('clean strainers', 'sample oil');
        }
      } else if (!seen) {
        if (carriedInPart(plan) && !markedAfter(entries, at, /^(read (oil-level|pressure-drop)|sample|acid-test)/)) {
          missing.push(
            `a look at the oil level, which ${plan.system.oil.after} with ${plan.system.refrigerant.after} asks for`,
          );
          steps.push('read oil-level', 'clean strainers');
        } else strainersUnseen(whole, at);
      }
    }
    if (missing.length === 0) return;
    whole.report(start, {
      message: `After this start no step asks for ${missing.join(' and ')}: plan a visit in the first days.`,
      slot: 'what',
      fixes: visitFor(entries, at, steps),
    });
  },
});

/** Whether the oil that stays goes round with the new refrigerant only in part, so that some of it lies in the lines. */
function carriedInPart(plan: Plan): boolean {
  const facts = newFacts(plan);
  const family = oilFamily(plan, plan.system.oil.after);
  return !!facts && !!family && oilFit(facts.name, family) === 'with-care';
}

/** One more visit two days after the start, before any that is due later, else behind all that the plan holds. */
function visitFor(entries: readonly Entry[], at: number, steps: readonly string[]): readonly WayOut[] {
  const last = entries.at(-1);
  if (!last) return [];
  const own = entries[at] && visitOf(entries[at]);
  const day = 86400;
  const days = Math.ceil((own ? statedTime(own, 'within') : 0) / day) + 2;
  const lines = [`visit "Follow-up" within ${days} days {`, ...steps.map((step) => `  ${step}`), '}'];
  const title = `Plan a visit within ${days} days`;
  const later = entries
    .slice(at)
    .map(visitOf)
    .find((visit) => visit && visit !== own && statedTime(visit, 'within') > days * day);
  return [
    later ? insertBefore(title, later, ...lines) : insertAfter(title, last.slot.within[0] ?? last.slot.step, ...lines),
  ];
}

const readDrop = ({ plan }: Whole, drier: Part): string =>
  `read pressure-drop of ${drier.name}, at most ${inOwn(plan, '3 psi', '20 kPa')}`;

/** Out within about three days when clean (handbook 4.5); whoever means to leave it in for longer than a week looks in the first hours too. */
const shortStay = 7 * 86400;
/** By then the first dirt has come, s (handbook 4.5: 1, 4, 24 and 48 h). */
const someHours = 4 * 3600;

/** Whether a step reads the drop over this drier, and not that over another one alone. */
function readsDrop(whole: Whole, drier: Part, entry: Entry): boolean {
  const marks = marksLeft(entry);
  if (!marks.includes('read pressure-drop')) return false;
  return (
    marks.includes(`read ${drier.name}`) ||
    !whole.plan.graph.parts.some((part) => isDrier(part) && marks.includes(`read ${part.name}`))
  );
}

/** The step that put the cores in which the drier holds; null while it holds none. */
function coresBy(plant: Plant, drier: number): Cause | null {
  const { mounted, cores, renewed } = plant.parts[drier]!;
  return mounted === 'new' && cores === 'in' ? renewed : null;
}

/** Each set of cores that the machine has run on is looked at before it comes out, and a long stay in its first hours. */
function coresSeen(whole: Whole, drier: Part, first: Entry): void {
  const { entries } = whole;
  let fitted = first;
  let start: Entry | null = null;
  let seen = false;
  let early = false;
  let out: Entry | null = null;
  for (const entry of entries.slice(entries.indexOf(first))) {
    const [before, now] = [coresBy(entry.before, drier.index), coresBy(entry.after, drier.index)];
    if (start && before !== now) {
      out = entry;
      if (!seen) unseen(whole, drier, start, entry);
      start = null;
    }
    if (before !== now) fitted = entry;
    if (!start && now && entry.after.running) {
      start = entry;
      seen = false;
    }
    if (!start || !readsDrop(whole, drier, entry)) continue;
    if (visitOf(entry) !== visitOf(fitted) || timeOf(entry, 'after') >= someHours) seen = true;
    if (visitOf(entry) === visitOf(first)) early = true;
  }
  if (early || !out || dueBy(out) - dueBy(first) <= shortStay) return;
  whole.report(first, {
    message: `${drier.name} stays in for more than a week after this start, and nobody reads its pressure drop in the first hours, when most of the dirt comes.`,
    slot: 'what',
    root: 'first hours',
    fixes: [insertAfter('Read it after an hour', first.slot.step, `${readDrop(whole, drier)}, after 1 h`)],
  });
}

/** How long after the job a step comes at the latest, s. */
const dueBy = (entry: Entry): number => {
  const visit = visitOf(entry);
  return visit ? statedTime(visit, 'within') : 0;
};

/** A set of cores comes out, and what it held back was never read once the machine had run on it. */
function unseen(whole: Whole, drier: Part, start: Entry, out: Entry): void {
  const running = whole.entries.find(
    (entry) => entry.before.running && visitOf(entry) === visitOf(out) && visitOf(out) !== visitOf(start),
  );
  whole.report(out, {
    message: (say) =>
      `The cores of ${drier.name} come out here, and nobody has read its pressure drop after the first hours of running since ${say.step(start.cause)}: whether they have taken up what was left is not known.`,
    slot: 'what',
    related: [
      { cause: start.cause, message: 'the machine runs on them since here' },
      { part: drier.index, message: 'the drier' },
    ],
    fixes: running
      ? [insertBefore('Read the drop while it still runs', running.slot.step, readDrop(whole, drier))]
      : [],
  });
}

/** The crew comes back to the drier in the first days, and the strainers are left as they are. */
function strainersUnseen(whole: Whole, at: number): void {
  const start = whole.entries[at]!;
  const back = whole.entries
    .slice(at + 1)
    .filter((entry) => visitOf(entry) !== visitOf(start) && leaves(entry, /^(read pressure-drop|sample|acid-test)/))
    .at(-1);
  if (!back) return;
  whole.report(start, {
    message: (say) =>
      `After this start ${say.step(back.cause)} looks for what the other refrigerant has loosened, and no step looks at the strainers, which fill first.`,
    slot: 'what',
    related: [{ cause: back.cause, message: 'the crew comes back here' }],
    fixes: [insertAfter('Clean them in the same visit', back.slot.step, 'clean strainers')],
  });
}
