import { Option } from 'commander';
import { spaces } from '../../engine/circuit/spaces';
import type { Plant } from '../../engine/circuit/state';
import { exactly, nearest, type ShowOptions, show } from '../../engine/quantity';
import type { Entry } from '../../engine/walk/walk';
import { type Chosen, chosenPlan, type Handle, handles, verdict } from '../chosen';
import type { CommandDescription } from '../description';
import { type Paint, paintFor } from '../host';
import { failOnOption, formatOption, planOption, todayOption, unitsIn, unitsOption, wantsJson } from '../options';
import { partReports, sameReport } from '../parts';
import { jsonText } from '../report/json';
import { table } from '../report/table';
import type { PartReport, StateReport } from '../shapes/state';
import { Trouble } from '../trouble';

export const state: CommandDescription = {
  about:
    'Of a repeat the first and the last round are walked, on the way on which every test passes. For people only what a ' +
    'step changes is shown, unless one step is asked for.',
  takes: [['<file>', 'that holds the plan; "-" reads standard input']],
  options: [
    new Option('--after <step>', 'the state after one step, by its label or its number on the sheet'),
    planOption,
    formatOption('text', 'json'),
    unitsOption,
    todayOption,
    failOnOption,
  ],
  examples: ['jobplan state jobs/alder.jobplan', 'jobplan state jobs/alder.jobplan --after evacuate'],
  run: async (host, words) => {
    const chosen = await chosenPlan(host, words);
    const handleOf = handles(chosen);
    const after = words.option('after');
    const entries = after === undefined ? chosen.view.walk.entries : entriesNamed(chosen, handleOf, after);
    if (wantsJson(words)) {
      const steps = entries.map((entry) => stepReport(entry, handleOf(entry)));
      host.out(jsonText({ version: 1, steps } satisfies StateReport));
    } else {
      const options: ShowOptions = { system: unitsIn(words), atmosphere: chosen.view.plan.site.atmosphere };
      const paint = paintFor(host);
      if (after === undefined) host.out(courseText(chosen, handleOf, options, paint));
      else
        for (const entry of entries)
          host.out(
            `${headingOf(entry, handleOf(entry), paint)}\n${tableOf(entry.after, partReports(entry.after), options)}\n`,
          );
    }
    return verdict(host, words, chosen);
  },
};

/** The rounds of the step that is named by its label or by its number. */
function entriesNamed({ view, file }: Chosen, handleOf: (entry: Entry) => Handle, name: string): readonly Entry[] {
  const { entries } = view.walk;
  const labelled = entries.filter(({ slot }) => slot.step.label === name);
  if (labelled.length > 0) return labelled;
  const numbered = entries.filter((entry) => String(handleOf(entry).number) === name);
  if (numbered.length > 0) return numbered;
  const within = entries.filter(({ slot }) => slot.within.some((block) => block.label === name));
  // A block is done when the last step in it is.
  if (within.length > 0) return within.slice(-1);
  const labels = entries.flatMap(({ slot }) => [slot.step, ...slot.within].flatMap(({ label }) => label ?? []));
  const near = nearest(name, labels);
  const steps = new Set(entries.map(({ slot }) => slot.step)).size;
  const hint = near ? `perhaps "${near}" is meant` : `steps are numbered from 1 to ${steps}`;
  throw new Trouble(`The plan in ${file} has no step "${name}"; ${hint}.`);
}

const stepReport = ({ slot, after }: Entry, { step, standing }: Handle): StateReport['steps'][number] => ({
  step,
  text: slot.step.text,
  file: standing.file,
  line: standing.range.start.line,
  ...(slot.round !== null && { round: slot.round }),
  parts: Object.fromEntries(partReports(after)),
});

/** The beginning in full, then what each step changes. */
function courseText({ view }: Chosen, handleOf: (entry: Entry) => Handle, options: ShowOptions, paint: Paint): string {
  const pieces = [
    `${paint('bold', 'At the beginning')}\n${tableOf(view.walk.start, partReports(view.walk.start), options)}`,
  ];
  let before: Plant = view.walk.start;
  for (const entry of view.walk.entries) {
    const was = new Map(partReports(before));
    const changed = partReports(entry.after).filter(([name, part]) => !sameReport(part, was.get(name)));
    before = entry.after;
    const heading = headingOf(entry, handleOf(entry), paint);
    pieces.push(
      changed.length === 0
        ? `${heading}\n    nothing changes in the circuit\n`
        : `${heading}\n${tableOf(entry.after, changed, options)}`,
    );
  }
  return pieces.join('\n');
}

const headingOf = ({ slot }: Entry, { number }: Handle, paint: Paint): string =>
  paint('bold', `${number}  ${slot.step.text}${slot.round === null ? '' : ` (round ${slot.round})`}`);

function tableOf(plant: Plant, parts: readonly (readonly [string, PartReport])[], options: ShowOptions): string {
  const rows = parts.map(([name, part]) => [
    name,
    part.mounted ? part.holds : 'off',
    part.mounted ? pressureOf(part, options) : '',
    spacesOf(plant, name),
    part.openEnds
      .map(({ end, opening }) => (opening === null ? end : `${end} ${lengthOf(opening, options)}`))
      .join(', '),
    [part.wet && 'wet', part.tested && 'tested', part.decayTested && 'decay-tested'].filter(Boolean).join(', '),
  ]);
  return `${table([['part', 'holds', 'at', 'space', 'open', 'is'], ...rows], '    ').join('\n')}\n`;
}

/** What hangs together has one number: parts with the same one share what they hold. */
function spacesOf(plant: Plant, name: string): string {
  const index = plant.graph.parts.find((part) => part.name === name)?.index ?? -1;
  return spaces(plant)
    .flatMap((space, at) => (space.parts.includes(index) ? [at + 1] : []))
    .join(', ');
}

const lengthOf = (metres: number, options: ShowOptions): string => show(exactly('length', metres), options);

function pressureOf({ pressure, low, high }: PartReport, options: ShowOptions): string {
  const [from, to] = [low ?? pressure, high ?? pressure];
  return from === undefined || to === undefined ? '' : show({ kind: 'pressure', low: from, high: to }, options);
}
