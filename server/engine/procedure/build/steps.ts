import type { Step as PlanStep } from '../../plan/step';
import type { Amount as Authored, Name } from '../../plan/term';
import { roundsOf } from '../../walk/walk';
import { textLine } from '../construct';
import type { Entry, Hold, Phase, Repeat, Step, StepLine, Visit } from '../document';
import { plainText, type Sentence, sentence } from '../sentence';
import { cautionsOf } from './cautions';
import { ifFailsOf } from './going-back';
import { hereOf } from './here';
import { linesOf } from './lines/by-verb';
import { inBlock, isWork, type Sheet } from './sheet';
import { say } from './speech';

/** What a block says for all that is in it; it is printed at the first or the last of its steps. */
interface Inherited {
  readonly cautions: readonly string[];
  readonly notes: readonly string[];
  readonly fails: readonly PlanStep[];
}

const nothing: Inherited = { cautions: [], notes: [], fails: [] };

/** Verbs that work a list one line at a time. */
const oneByOne = new Set(['blow-out', 'flush', 'back-flush', 'purge', 'pull-swab']);

export const entriesOf = (sheet: Sheet): readonly Entry[] => within(sheet, sheet.plan.steps, nothing, '');

function within(sheet: Sheet, steps: readonly PlanStep[], handed: Inherited, reason: string): readonly Entry[] {
  return steps.flatMap((step, at): readonly Entry[] => {
    const own: Inherited = {
      cautions: at === 0 ? handed.cautions : [],
      notes: at === 0 ? handed.notes : [],
      fails: at === steps.length - 1 ? handed.fails : [],
    };
    const entry = isWork(step) ? work(sheet, step, own, reason) : block(sheet, step, own, reason);
    return entry === null ? [] : [entry];
  });
}

function block(sheet: Sheet, step: PlanStep, handed: Inherited, outer: string): Phase | Repeat | Visit {
  const texts = (word: string): readonly string[] =>
    inBlock(step, word).map((bound) => String(bound.values['text'] ?? ''));
  const because = (step.values['because'] as string | undefined) ?? '';
  const inner: Inherited = {
    cautions: [...handed.cautions, ...texts('caution')],
    notes: [...handed.notes, ...texts('note'), ...(because && because !== outer ? [`Because ${because}`] : [])],
    fails: [...handed.fails, ...(inBlock(step, 'if-fails').length > 0 ? [step] : [])],
  };
  const origin = { id: sheet.idOf(step), line: sheet.lineOf(step) };
  const entries = within(sheet, step.children, inner, because || outer);
  const title = (step.values['title'] as string | undefined) ?? '';
  switch (step.word.word) {
    case 'repeat':
      return { ...origin, kind: 'repeat', until: until(sheet, step), ...roundsOf(step), entries };
    case 'visit':
      return { ...origin, kind: 'visit', title, when: when(step), entries };
    default:
      return { ...origin, kind: 'phase', title, entries };
  }
}

function until(sheet: Sheet, step: PlanStep): Sentence {
  if (step.values['clear'] === true) return sentence('until a white cloth at the far end stays clean');
  const oil = step.values['oil'] as Name | undefined;
  const share = step.values['share'] as Authored | undefined;
  return oil && share ? sentence(`until ${oil.text} oil is at most `, sheet.ruler.authored(share)) : [];
}

function when(step: PlanStep): string {
  const within = step.values['within'] as Authored | undefined;
  const after = step.values['after'] as Authored | undefined;
  return [after ? `not before ${after.literal.text}` : '', within ? `within ${within.literal.text} of the start` : '']
    .filter(Boolean)
    .join(', ');
}

function work(sheet: Sheet, step: PlanStep, handed: Inherited, outer: string): Step | Hold | null {
  const entries = sheet.entriesOf(step);
  const here = hereOf(sheet, step, entries);
  const number = sheet.numberOf(step);
  if (here === null || number === null) return null;
  const origin = { id: sheet.idOf(step), line: sheet.lineOf(step) };
  const because = (step.values['because'] as string | undefined) ?? departureReason(step);
  if (step.word.word === 'hold')
    return {
      ...origin,
      kind: 'hold',
      number,
      see: sentence((step.values['what'] as string | undefined) ?? 'Hold'),
      by: (step.values['by'] as string | undefined) ?? 'lead',
    };
  const lines = oneByOne.has(step.word.word)
    ? flowsOf(here.events('flows').map((event) => here.partName(event.line)))
    : [];
  const said = say(sheet, step, here.entry, lines.length);
  const by = inBlock(step, 'by')[0]?.values['who'] as string | undefined;
  const notes = handed.notes.map((text): StepLine => textLine('Note', text));
  return {
    ...origin,
    kind: 'step',
    number,
    text: said.text,
    aim: said.aim,
    by: by ?? null,
    cautions: cautionsOf(here, handed.cautions),
    lines: [
      ...notes,
      ...(said.listed.length > 0 ? [textLine('Which are', said.listed.join(', '))] : []),
      ...linesOf(here),
    ],
    each: lines.length > 1 ? lines : [],
    because: because !== null && because !== outer ? because : null,
    ifFails: ifFailsOf(sheet, here, handed.fails),
  };
}

const flowsOf = (names: readonly string[]): readonly string[] => [...new Set(names)];

/** A step that a departure brought in or changed carries the departure's reason. */
const departureReason = (step: PlanStep): string | null => step.departure?.reason ?? null;

/** A step's sentence without its marks, for lists that speak of it. */
export const sentenceOf = (step: Step): string => plainText(step.text);
