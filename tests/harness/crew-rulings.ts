import { brokenBy, notDone } from './broken';
import { crewHeadRuling } from './crew-head-rulings';
import { crewWordRuling } from './crew-word-rulings';
import { leftAlone } from './order-rulings';
import { movedPast, printed } from './pair-rulings';
import { harmful, harmless, type Line, type Ruling, type Scene, unclear } from './scene';
import { figuresIn, inSI } from './units';
import { pointedTo } from './word-rulings';

/** Rulings on the edits of several lines, and on words taken for others; nothing of the checks is looked at. */
export function crewRuling(scene: Scene): Ruling {
  const { edit } = scene;
  if (edit.at < 0) return crewHeadRuling(scene);
  const alone = edit.group === null || edit.group.length === 1;
  const moved = /^(copied|label renamed|unit: fl-oz|phase|visit|repeat)/.test(edit.operator);
  const departed = alone && !moved ? notDone(scene) : null;
  if (departed) return departed;
  const broken = brokenBy(scene);
  const direct = edit.group === null || edit.operator === 'bounds exchanged' ? crewWordRuling(scene, broken) : null;
  if (direct)
    return direct.verdict === 'harmful' && broken?.verdict === 'harmful'
      ? { ...direct, steps: broken.steps, parts: broken.parts }
      : direct;
  if (broken) return broken.verdict === 'harmful' ? also(broken, lost(scene)) : (lost(scene) ?? broken);
  return lost(scene) ?? ordered(scene);
}

const also = (ruling: Ruling, more: Ruling | null): Ruling =>
  more?.lines
    ? { ...ruling, lines: ruling.lines ? new RegExp(`${ruling.lines.source}|${more.lines.source}`) : more.lines }
    : ruling;

/** A label that went with its step or its block, and that something still points to. */
function lost({ edit, before }: Scene): Ruling | null {
  if (!/^(delete|phase heading dropped|two run together)/.test(edit.operator)) return null;
  const left = new Set(edit.text.split('\n').flatMap((line) => /^\s*([a-z][\w-]*): /.exec(line)?.[1] ?? []));
  const labels = edit.source
    .split('\n')
    .flatMap((line) => /^\s*([a-z][\w-]*): /.exec(line)?.[1] ?? [])
    .filter((label) => !left.has(label));
  const asked = labels.filter(
    (label) => pointedTo(label, edit.text) || before.plan.departures.some((departure) => departure.label === label),
  );
  return asked.length > 0
    ? harmful(
        'Something points to a step that is gone (language: labels).',
        new RegExp(asked.map((label) => `\\b${label}\\b`).join('|')),
      )
    : null;
}

/** What breaks no state: the steps that went, or those that were passed, are judged one by one, and the worst counts. */
function ordered(scene: Scene): Ruling {
  const { edit, before, after } = scene;
  const { operator } = edit;
  const group = edit.group ?? [];
  if (!after) return unclear('No ruling.');
  if (operator === 'phase heading dropped')
    return harmless('A heading only: the steps and their order stay (language: phase).');
  if (/^phase: /.test(operator)) {
    const label = / of ([\w-]+)$/.exec(edit.now)?.[1] ?? null;
    return pointedTo(label, edit.source) || before.plan.departures.some((departure) => departure.label === label)
      ? unclear('What goes back to the phase, or departs from it, then takes in a step more or less.')
      : harmless('The heading stands elsewhere; the order of the steps stays.');
  }
  if (/^visit: /.test(operator)) return atVisit(operator, group[0]!);
  if (/^repeat: /.test(operator)) return inRound(group[0]!, operator);
  if (/^delete /.test(operator)) {
    const rest = edit.steps.filter((each) => !group.includes(each));
    return worst(
      group.map((each) => {
        const steps = edit.steps.filter((other) => other === each || rest.includes(other));
        const alone = { ...edit, operator: 'delete', group: null, past: [], at: steps.indexOf(each), steps };
        return leftAlone({ ...scene, edit: alone });
      }),
    );
  }
  if (/^copied/.test(operator)) return copied(group[0]!, scene);
  if (operator === 'figures exchanged') return exchanged(scene);
  if (edit.past.length === 0) return unclear('Past nothing.');
  const again = (step: Line): boolean => edit.steps.filter((each) => each.verb === step.verb).length > 1;
  const down = edit.past[0]!.from > (group[0]?.from ?? edit.steps[edit.at]!.from);
  const rulings = group.map((step) => movedPast(step, edit.past, down, before.plan, edit.steps, again(step)));
  if (operator === 'pair inverted') {
    const second = edit.past.at(-1)!;
    const between = edit.past.slice(0, -1);
    if (between.length > 0) rulings.push(movedPast(second, between, false, before.plan, edit.steps, again(second)));
  }
  const [earlier, later] = down ? [group, edit.past] : [edit.past, group];
  return worst([...rulings, ...earlier.flatMap((first) => later.flatMap((second) => turned(first, second)))]);
}

/** What the pairs of single moves leave out: `first` stood before `second`, and now comes after it. */
function turned(first: Line, second: Line): readonly Ruling[] {
  const words = (line: Line): readonly string[] => line.plain.split(/[ ,]+/).slice(1);
  const alike = words(first).some(
    (word) => !/^(each|at|both|near|far|end|ends|with)$/.test(word) && words(second).includes(word),
  );
  if (first.verb === 'flare' && second.verb === 'connect' && alike)
    return [harmful('Connected before the end has its flare (13.1: fit, then join).', /flare|connect/)];
  if (first.verb === 'recover' && second.verb === 'weigh')
    return [unclear('The cylinder is weighed before the gas is in it; it may have been weighed empty.')];
  if (
    /^(prove-zero|recover|lock-out)$/.test(first.verb) &&
    /^(renew .*(seals|cores)|clean strainers|replace-cores)/.test(second.plain)
  )
    return [
      harmful(
        'Seals, cores and strainers come out before the machine is off, empty and proved so (13.1).',
        /renew|clean|replace-cores|prove-zero|recover|lock-out/,
      ),
    ];
  if (/^(disconnect|cut-out|remove)$/.test(first.verb) && /^(place|install)$/.test(second.verb))
    return [unclear('Set in place before all of the old is undone; what was in its way is not said.')];
  if (first.verb === 'survey' && /^(recover|disconnect|cut-out|remove)$/.test(second.verb))
    return [unclear('Surveyed after the work has begun (13.1: survey, isolate, recover); its amounts may be known.')];
  return [];
}

/** Harmful before unclear before harmless; the lines of all that is harmful. */
function worst(rulings: readonly Ruling[]): Ruling {
  const broken = rulings.filter((each) => each.verdict === 'harmful');
  const lines = broken.flatMap((each) => each.lines?.source ?? []);
  const [first] = broken;
  if (first) return { ...first, lines: lines.length > 0 ? new RegExp(lines.join('|')) : null };
  return (
    rulings.find((each) => each.verdict === 'unclear') ?? rulings[0] ?? { ...unclear('Nothing to rule on.'), steps: [] }
  );
}

function atVisit(operator: string, step: Line): Ruling {
  const earlier = /last into the next|last left outside|next taken in/.test(operator);
  if (printed.test(step.verb) || /^(record|label|leak-check|read|hold|sample|prove-airflow)$/.test(step.verb))
    return harmless('A look or a line of the record may be had on either day.');
  if (/^(plug|cap)$/.test(step.verb) && /last/.test(operator))
    return harmful(
      'The ends stand open until the next visit (13.1: open, then capped; drier exposure).',
      /visit|cap|plug|disconnect|cut-out|remove/,
    );
  return unclear(
    earlier
      ? 'On which of the days it is done hangs on what stands open, shut or under pressure between them.'
      : 'Which day it falls on is for the author.',
  );
}

function inRound(step: Line, operator: string): Ruling {
  if (printed.test(step.verb) || /^(read|hold)$/.test(step.verb))
    return harmless('A look once more or once less in a round.');
  if (/taken in/.test(operator) && /^(inspect|prove-zero|blow-out)$/.test(step.verb))
    return harmless('Done in each round, which costs time.');
  return unclear('Whether each round wants it hangs on what the round is for.');
}

/** A step that stands in two places now, and breaks no state in the second. */
function copied(step: Line, { edit }: Scene): Ruling {
  const down = edit.operator === 'copied down';
  const passes = (verbs: RegExp): boolean => edit.past.some((each) => verbs.test(each.verb));
  const costs = harmless('Done once more where nothing stands against it: it costs time at most.');
  if (step.verb === 'prove-zero' && passes(down ? /^(charge|open)$/ : /^(recover|pump-down)$/))
    return unclear('There is no zero to prove where gas stands in it: whoever reads the gauge stops.');
  if (step.verb === 'recover')
    return passes(/^(pressure-test|break-vacuum|purge|blow-out)$/)
      ? unclear('There may be nitrogen in it, which is not to go into a cylinder (2.3).')
      : harmless('There is no more to recover.');
  if ((step.verb === 'hold' || step.verb === 'close') && !down)
    return unclear('Earlier than it can be seen or should be shut, or not.');
  if ((step.verb === 'stop' || step.verb === 'wrap') && down)
    return unclear('Whether it is started again, or unwrapped again, is not said.');
  if (down && step.verb === 'decay-test' && passes(/^(charge|open)$/))
    return unclear('There is no vacuum to watch where gas stands in it: whoever reads the gauge stops.');
  if (down && step.verb === 'release' && passes(/^(evacuate|charge)$/))
    return unclear('There is no nitrogen to let go by then: whoever reads the gauge stops.');
  if (down && step.verb === 'evacuate' && rougher(step, edit))
    return unclear('It stands deeper by then; whether the rough level is the one that counts is not said (8.2).');
  if (!down && /^restore power/.test(step.plain) && passes(early))
    return unclear('Whether the machine that gets its power back stands shut off with its charge.');
  if (!down && /^record .*readings/.test(step.plain) && passes(/^start$/))
    return unclear('There are no readings before it runs: what is then written down is not said.');
  if (step.verb === 'return') return down ? costs : unclear('Given back to its control before the work, or in it.');
  if (step.verb === 'label' && down) return harmless('A second label says the same.');
  return printed.test(step.verb) ||
    /^(lock-out|restore|read|leak-check|hold|inspect|prove-zero|release|evacuate|pressure-test|decay-test|open|close|prove-airflow|check|record|wrap|unwrap|stop|acid-test|reset|watch|sample)$/.test(
      step.verb,
    )
    ? costs
    : unclear('Done twice, and whether the second has anything to act on is not said.');
}

/** What a machine stands shut off for, and what ends that. */
const early =
  /^(disconnect|cut-out|remove|place|install|connect|pressure-test|release|evacuate|decay-test|open|charge)$/;

const levelOf = (line: Line): number => {
  const found = figuresIn(line.plain).find((each) => each.key === 'to');
  return (found && inSI(found.number, found.unit)) ?? 0;
};

/** Whether it comes right on a deeper pull, and none after it. */
function rougher(step: Line, { past, steps }: Scene['edit']): boolean {
  const last = past.filter((each) => /^(evacuate|break-vacuum|pressure-test)$/.test(each.verb)).at(-1);
  const next = steps
    .slice(steps.indexOf(past.at(-1)!) + 1)
    .find((each) => /^(evacuate|charge|open|start)$/.test(each.verb));
  return last?.verb === 'evacuate' && next?.verb !== 'evacuate' && levelOf(step) > 68 && levelOf(last) < levelOf(step);
}

/** Figures of two steps, each in the place of the other, that break no state. */
function exchanged({ edit }: Scene): Ruling {
  const [first] = edit.group ?? [];
  const [second] = edit.past;
  const figure = edit.figure;
  if (!first || !second || !figure) return unclear('No ruling.');
  if (/ per "/.test(first.plain + second.plain)) return unclear('The sheet cited is not at hand.');
  const time = /^(s|min|h|days?)$/.test(figure.unit);
  if (first.verb === 'pressure-test' && second.verb === 'pressure-test')
    return time
      ? harmless('Either hold is ten minutes or more, or that of a low stage (7.1).')
      : unclear('The full pressure before the low stage: stages are for safety (6.4), and the proof stands.');
  if (first.verb === 'evacuate' && second.verb === 'decay-test') {
    // The pull ends at the limit of the rise, and the rise is let go as far as the pull.
    if (time) return unclear('How long it is pulled and watched.');
    return figure.was > 140
      ? harmful('A rise of more than 1000 micron is let pass (8.1).', /decay-test/)
      : figure.now <= 68
        ? harmless('A pull to 500 micron or less, and a rise of 1000 or less (8.1).')
        : unclear('Limits in use differ (8.1, 15.2).');
  }
  if (/^(break-vacuum|read|recover|weigh)$/.test(first.verb))
    return time
      ? harmless('How long it stands or is watched may be either (8.2).')
      : unclear('Which of the levels belongs to which is for the author.');
  if (first.verb === 'evacuate')
    return time ? unclear('How long each is pulled.') : harmless('The last pull is still deep enough (8.1, 8.2).');
  if (/^(purge|blow-out)$/.test(first.verb))
    return time || /psig|gauge/.test(figure.unit)
      ? unclear('Which of them is long or strong enough hangs on the line (5.2).')
      : unclear('Another figure.');
  return unclear('Which figure belongs to which step is not told by the trade.');
}
