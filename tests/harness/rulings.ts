import { figureRuling } from './figure-rulings';
import { headRuling } from './head-rulings';
import { leftAlone } from './order-rulings';
import { harmful, harmless, type Ruling, type Scene } from './scene';
import { keyOf } from './trade/fault';
import { wordRuling } from './word-rulings';

/**
 * What a practitioner says of an edit, with the handbook's section. Words, names and figures are ruled by themselves; what
 * changes order or state is gone through with a model of the plant of the rulings' own (`trade/`), before and after. None of
 * it looks at a check or at the engine's walk; rulings are committed before the checks are run on them.
 */
export function rulingOf(scene: Scene): Ruling {
  const departed = notDone(scene);
  if (departed) return departed;
  const direct = wordRuling(scene) ?? headRuling(scene) ?? drierLine(scene);
  const broken = brokenBy(scene);
  if (direct) return direct.verdict === 'harmful' && broken ? merged(direct, broken) : direct;
  if (broken) return broken;
  return burnt(scene) ?? figureRuling(scene) ?? leftAlone(scene);
}

/** A step of a standard that the job skips or does otherwise: what it says of time, place and figures is not done here. */
function notDone({ edit, before: { plan } }: Scene): Ruling | null {
  const label = edit.steps[edit.at]?.label ?? null;
  if (
    label === null ||
    edit.file === edit.plan ||
    !/^(figure|drop (container|outdoors|time|wait|bubbles))/.test(edit.operator)
  )
    return null;
  return plan.departures.some((each) => each.label === label && (each.kind === 'skip' || each.kind === 'replace'))
    ? harmless(
        'The one job that follows the standard skips this step or does another in its place (language: departures).',
      )
    : null;
}

/** What the plan breaks after the edit that it did not break before; null if nothing. */
function brokenBy(scene: Scene): Ruling | null {
  const before = new Set(scene.faultsBefore.map(keyOf));
  const fresh = scene.faultsAfter.filter((fault) => !before.has(keyOf(fault)));
  const [first] = fresh;
  if (!first) return null;
  const proves = /^(pressure-test|evacuate|decay-test)$/.test(scene.edit.steps[scene.edit.at]?.verb ?? '');
  return {
    verdict: 'harmful',
    why: first.why,
    steps: fresh.flatMap((fault) => fault.steps),
    parts: fresh.flatMap((fault) => fault.parts),
    // What goes on without the proof relies on it.
    lines: proves ? /^\s*([\w-]+: )?(evacuate|decay-test|open|charge)\b/ : null,
  };
}

const merged = (direct: Ruling, broken: Ruling): Ruling => ({ ...direct, steps: broken.steps, parts: broken.parts });

/** A burnt compressor that is to be kept: the model of the plant does not know that it is burnt. */
const burnt = ({ edit, before: { plan } }: Scene): Ruling | null =>
  edit.operator === 'state new to kept' && /compressor new/.test(edit.was) && plan.kinds.includes('burnout')
    ? harmful('The burnt compressor goes on (13.4).', /place|remove|connect|kind/)
    : null;

/** A line that is said to be a drier: what goes through it goes through a drier. */
const drierLine = ({ edit }: Scene): Ruling | null =>
  edit.operator === 'kind line to drier' && edit.steps.some((each) => each.verb === 'flush')
    ? harmful(
        'A drier in the path of the flush, or an old one that goes on (4.4, 5.1).',
        /flush|purge|blow-out|crimp|drier/,
      )
    : null;
