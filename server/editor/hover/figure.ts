import type { Figure, Input } from '../../engine/takeoff/figure';
import { relationNamed } from '../../engine/takeoff/figures';
import { showFigure } from '../../engine/takeoff/show-figure';

/** One figure in Markdown: the result, how it was found, what it rests on. */
export function figurePage(figure: Figure, atmosphere: number): string {
  const title = relationNamed(figure.name)?.title ?? figure.name.replaceAll('-', ' ');
  const shown = showFigure(figure, { system: 'both', atmosphere });
  const head = `**${title}** (${figure.subject}): ${shown}`;
  const workings =
    figure.workings.length > 0 ? ['```text', figure.formula, ...figure.workings, '```'].join('\n') : undefined;
  const inputs = Object.entries(figure.inputs).map(([name, input]) => `- ${inputLine(figure, name, input)}`);
  // A default stands with its input already.
  const notes = figure.notes.filter((note) => !figure.defaults.includes(note)).map((note) => `- ${note}`);
  const sources =
    figure.sources.length > 0
      ? `*${how[figure.confidence]}. Source: ${figure.sources.join('; ')}*`
      : `*${how[figure.confidence]}.*`;
  return [head, workings, [...inputs, ...notes].join('\n'), sources]
    .filter((each) => each !== undefined && each !== '')
    .join('\n\n');
}

/** An input with where it comes from: "bore: 0.311 in (3/8 in ACR), from a table". */
function inputLine(figure: Figure, name: string, input: Input): string {
  const [key = name, number] = name.split(' ');
  const spec = relationNamed(figure.name)?.inputs[key];
  const title = `${spec?.title ?? key}${number === undefined ? '' : ` ${number}`}`;
  const from: Record<Input['from'], string> = {
    plan: spec?.from.startsWith('`') ? `stated: ${spec.from}` : 'stated',
    computed: 'computed',
    reference: 'from a table',
    default: `taken, as the plan is silent: ${input.source ?? ''}`,
  };
  return `${title}: ${input.shown}, *${from[input.from]}*`;
}

const how: Record<Figure['confidence'], string> = {
  published: 'Computed; rests on published figures',
  computed: 'Computed',
  practice: 'Computed; rests on common practice',
  memory: 'Computed; rests on figures from memory',
};

/** Figures in a line each, where there are too many to tell how each was found. */
export const figureLines = (figures: readonly Figure[], atmosphere: number): string =>
  figures
    .map(
      (figure) =>
        `- ${relationNamed(figure.name)?.title ?? figure.name} (${figure.subject}): ${showFigure(figure, { system: 'both', atmosphere })}`,
    )
    .join('\n');
