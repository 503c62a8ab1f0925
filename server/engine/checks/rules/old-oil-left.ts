import type { Step } from '../../plan/step';
import type { Amount, Name } from '../../plan/term';
import { isProblem, toQuantity } from '../../quantity';
import { oldOilAccepted } from '../../reference/oil-limits';
import { roundsOf } from '../../walk/walk';
import { defineCheck, type WayOut } from '../define';
import { lines, oilFamily, systemSpot } from '../plant-facts';
import { houseLimit } from '../stock';
import { amount, edits } from '../support';

/** Old oil that the planned rounds or flushes leave. */
export const oldOilLeft = defineCheck({
  name: 'old-oil-left',
  severity: 'warning',
  title: 'Too much of the old oil is left',
  acceptable: true,
  reads: 'state',
  ground: 'published',
  meaning:
    'The oil changes, and at the end a compressor that stays holds more of the old oil than the accepted share, or, where no oil round is done, a kept line was never flushed.',
  why: 'Old oil does not come back with the new refrigerant: it lines the coils, and the compressor runs short.',
  source: oldOilAccepted.source,
  wrong: {
    base: 'rack',
    instead: [
      ['leaving 30 %', 'leaving 30 % # <- here'],
      ['repeat until mineral at most 5 %, at least 3, at most 4', 'repeat at least 1, at most 2'],
    ],
  },
  right: { base: 'rack' },
  plan(whole) {
    const { plan } = whole;
    const { before, after } = plan.system.oil;
    const end = whole.entries.at(-1);
    if (!end || before === null || after === null || oilFamily(plan, before) === oilFamily(plan, after)) return;
    const house = houseLimit(plan, 'oil', 'most');
    const ours = house && (house.bound.values['oil'] as Name | undefined)?.text === before ? house : null;
    const limit = ours?.quantity.high ?? oldOilAccepted.quantity.high;
    let rounds = false;
    for (const part of plan.graph.parts) {
      if (part.kind.kind !== 'compressor' || part.standing !== 'kept' || plan.graph.circuits[part.circuit]?.untouched)
        continue;
      const { residue } = end.after.parts[part.index]!;
      const last = [...whole.entries]
        .reverse()
        .find(
          (entry) => entry.before.parts[part.index]!.residue.share !== entry.after.parts[part.index]!.residue.share,
        );
      if (last) rounds = true;
      if (residue.oil === null || residue.share <= limit * 1.01) continue;
      const repeat = last?.slot.within.find((step) => step.word.word === 'repeat');
      if (last && repeat && goesOn(repeat, limit, last.slot.step)) continue;
      const share = amount(plan, 'share', residue.share);
      const message = `${part.name} is left with ${share} of the old ${before} oil, and ${amount(plan, 'share', limit)} are accepted ${ours ? 'by the house rule' : `(${oldOilAccepted.source})`}: plan more rounds, or repeat until it is at most that.`;
      const related = ours ? [{ bound: ours.bound, file: ours.file, message: 'the house limit' }] : [];
      if (last)
        whole.report(last, {
          message,
          slot: 'leaving',
          related,
          fixes: repeat ? moreRounds(repeat, last.slot.step, limit) : [],
        });
      else {
        const [bound, span] = systemSpot(plan, 'oil', 'after', 'before');
        whole.reportAt(bound, span, {
          message: `${part.name} stays and its oil is never changed, though the plan goes from ${before} to ${after}: plan the oil rounds.`,
          related,
        });
      }
    }
    if (rounds || plan.graph.parts.some((part) => part.kind.kind === 'compressor' && part.standing === 'kept')) return;
    for (const line of lines(plan)) {
      const state = end.after.parts[line.index]!;
      if (
        (line.standing !== 'kept' && line.standing !== 'reused') ||
        state.residue.oil === null ||
        state.residue.share === 0
      )
        continue;
      whole.reportPart(line.index, {
        message: `${line.name} stays with the old ${before} oil in it and is never flushed, though the new equipment runs on ${after}.`,
        root: 'lines',
      });
    }
  },
});

/** As many rounds at least as bring the share down to the limit, and one more at the most. */
function moreRounds(repeat: Step, change: Step, limit: number): readonly WayOut[] {
  const leaving = quantity(change.values['leaving']) ?? 0.5;
  const rounds = Math.ceil(Math.log(limit) / Math.log(leaving));
  const { least } = repeat.spans;
  if (leaving >= 1 || rounds > mostRounds || !least) return [];
  return [
    {
      title: `Make at least ${rounds} rounds`,
      edits: (mend) =>
        edits(
          mend.replace(repeat, 'least', `at least ${rounds}`),
          repeat.spans['most'] ? mend.replace(repeat, 'most', `at most ${rounds + 1}`) : null,
        ),
    },
  ];
}

/** More oil changes than this are no plan any more (handbook 4.3: three are usual). */
const mostRounds = 5;

/** Whether a repeat goes on until the share is low enough, and can get there in the rounds that it may take. */
function goesOn(repeat: Step, limit: number, change: Step): boolean {
  const share = quantity(repeat.values['share']);
  const leaving = quantity(change.values['leaving']) ?? 0.5;
  return share !== null && share <= limit * 1.01 && leaving ** roundsOf(repeat).most <= share * 1.3;
}

function quantity(value: unknown): number | null {
  const it = value as Amount | undefined;
  if (!it?.literal) return null;
  const found = toQuantity(it.literal, it.kind, 101325);
  return isProblem(found) ? null : found.high;
}
