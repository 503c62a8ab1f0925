import type { BarBlock, Block, StepBlock } from './block';
import type { ChecksLine, Entry, Reading, Repeat, Step, StepLine } from './document';
import { type Sentence, sentence, small, strong } from './sentence';

/** The rounds that a step may be gone through: those sure to come, and those only if needed. */
interface Rounds {
  readonly least: number;
  readonly most: number;
}

/** More rounds than this get one blank for the further ones: a row of boxes must be countable at a glance. */
const mostRoundsInRow = 12;

const count = (value: number): number => (Number.isFinite(value) ? Math.max(1, Math.floor(value)) : 1);

/** One row of boxes for the rounds: those beyond the least are marked as wanted only if needed. */
function roundsRow(label: string, { least, most }: Rounds): ChecksLine {
  const shown = Math.min(most, mostRoundsInRow);
  const items: string[] = [];
  for (let round = 1; round <= shown; round++) {
    const lead = round === 1 ? 'round ' : round === least + 1 ? 'if needed ' : '';
    items.push(`${lead}${round}`);
  }
  if (most > shown) items.push(`further, up to ${most}: count ____`);
  return { kind: 'checks', label, items };
}

/** Readings taken in rounds get a row for each, up to the most; those that stand together go round by round. */
function inRounds(lines: readonly StepLine[], { most }: Rounds): readonly StepLine[] {
  const shown = Math.min(most, mostRoundsInRow);
  const result: StepLine[] = [];
  let together: Reading[] = [];
  const flush = (): void => {
    for (let round = 1; round <= shown; round++)
      for (const reading of together) result.push({ ...reading, label: `${round}: ${reading.label}` });
    together = [];
  };
  for (const line of lines) {
    if (line.kind === 'reading') {
      together.push(line);
      continue;
    }
    flush();
    result.push(line);
  }
  flush();
  return result;
}

function stepLines(step: Step, rounds: Rounds | null): readonly StepLine[] {
  const boxes: StepLine[] = [];
  if (step.each.length > 0) {
    if (rounds === null) boxes.push({ kind: 'checks', label: 'One at a time', items: step.each });
    else boxes.push(...step.each.map((one) => roundsRow(one, rounds)));
  } else if (rounds !== null) boxes.push(roundsRow('', rounds));
  const given = rounds === null ? step.lines : inRounds(step.lines, rounds);
  const reason: StepLine[] =
    step.because === null ? [] : [{ kind: 'text', label: 'Because', value: sentence(step.because) }];
  return [...boxes, ...given, ...reason];
}

function failsText({ first, backTo, most }: NonNullable<Step['ifFails']>): Sentence {
  const times = most === 1 ? 'once' : `${most} times`;
  const lead = first.length === 0 ? [] : [...first, ...sentence(', ')];
  return [...lead, ...sentence(`back to step ${backTo.number}; at most ${times}, then stop and call.`)];
}

function stepBlock(step: Step, rounds: Rounds | null, depth: number): StepBlock {
  return {
    kind: 'step',
    depth,
    anchor: step.id,
    line: step.line,
    number: step.number,
    text: step.by === null ? step.text : [...step.text, ...sentence(' ', small(`by ${step.by}`))],
    aim: step.aim,
    cautions: step.cautions,
    lines: stepLines(step, rounds),
    fails: step.ifFails === null ? null : { text: failsText(step.ifFails), anchor: step.ifFails.backTo.id },
  };
}

function repeatBlocks(repeat: Repeat, depth: number): Block[] {
  const least = count(repeat.least);
  const most = Math.max(least, count(repeat.most));
  const bounds = least === most ? `${most} times` : `at least ${least}, at most ${most} times`;
  const bar = (role: BarBlock['role'], text: Sentence): BarBlock => ({
    kind: 'bar',
    role,
    depth,
    anchor: role === 'repeat' ? repeat.id : `${repeat.id}-end`,
    line: repeat.line,
    text,
  });
  const until = repeat.until.length === 0 ? [] : [...sentence(' '), ...repeat.until];
  return [
    bar('repeat', [strong('Rounds'), ...until, ...sentence(`: ${bounds}`)]),
    ...repeat.entries.flatMap((entry) => entryBlocks(entry, { least, most }, depth + 1)),
    bar('repeat-end', sentence('End of the round: again from its top, or go on.')),
  ];
}

function entryBlocks(entry: Entry, rounds: Rounds | null, depth: number): Block[] {
  switch (entry.kind) {
    case 'step':
      return [stepBlock(entry, rounds, depth)];
    case 'hold':
      return [{ ...entry, anchor: entry.id, depth }];
    case 'repeat':
      return repeatBlocks(entry, depth);
    case 'phase':
      return [
        { kind: 'heading', level: 2, text: entry.title, anchor: entry.id, line: entry.line, depth, newPage: false },
        ...entry.entries.flatMap((one) => entryBlocks(one, rounds, depth)),
      ];
    case 'visit':
      return [
        {
          kind: 'bar',
          role: 'visit',
          depth,
          anchor: entry.id,
          line: entry.line,
          text: [strong('The crew comes back: '), ...sentence(`${entry.title}, ${entry.when}`)],
        },
        ...entry.entries.flatMap((one) => entryBlocks(one, rounds, depth)),
      ];
  }
}

export const stepBlocks = (entries: readonly Entry[]): Block[] =>
  entries.flatMap((entry) => entryBlocks(entry, null, 0));
