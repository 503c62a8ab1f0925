import { sayer } from '../engine/checks/check';
import { tellPart } from '../engine/walk/tell';
import type { Entry } from '../engine/walk/walk';
import { askedAt } from './asking';
import { planAround } from './plan-around';
import type { StateAnswer } from './protocol';
import type { Session } from './session';

/** How every part stands after the step of a line, or at the beginning where the line is before the steps. */
export function stateAt(session: Session, uri: string, line: number): StateAnswer | null {
  const asked = askedAt(session, uri, { line, character: Number.MAX_SAFE_INTEGER });
  const view = asked && planAround(asked);
  if (asked === undefined || view === undefined) return null;
  const bounds = new Set(asked.look.chain.map((each) => each.bound));
  const entry: Entry | undefined = view.walk.entries
    .filter(({ slot }) => bounds.has(slot.step.bound) || slot.within.some((each) => bounds.has(each.bound)))
    .at(-1);
  const plant = entry?.after ?? view.walk.start;
  const say = sayer(view);
  return {
    title: entry ? `after ${say.step(entry.cause)}` : 'at the beginning',
    parts: view.plan.graph.parts.map(({ index, name }) => ({
      name,
      facts: tellPart(plant, index).map(({ text, by }) => {
        const fresh = by !== undefined && by !== null && by === entry?.cause;
        return { text: by && !fresh ? `${text}, since ${say.step(by)}` : text, fresh };
      }),
    })),
  };
}
