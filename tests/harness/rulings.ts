import { brokenBy, notDone } from './broken';
import { crewRuling } from './crew-rulings';
import { figureRuling } from './figure-rulings';
import { headRuling } from './head-rulings';
import { leftAlone } from './order-rulings';
import { harmful, type Ruling, type Scene } from './scene';
import { wordRuling } from './word-rulings';

/**
 * What a practitioner says of an edit, with the handbook's section. Words, names and figures are ruled by themselves; what
 * changes order or state is gone through with a model of the plant of the rulings' own (`trade/`), before and after. None of
 * it looks at a check or at the engine's walk; rulings are committed before the checks are run on them.
 */
export function rulingOf(scene: Scene): Ruling {
  if (scene.edit.set === 'new') return crewRuling(scene);
  const departed = notDone(scene);
  if (departed) return departed;
  const direct = wordRuling(scene) ?? headRuling(scene) ?? drierLine(scene);
  const broken = brokenBy(scene);
  if (direct) return direct.verdict === 'harmful' && broken?.verdict === 'harmful' ? merged(direct, broken) : direct;
  if (broken) return broken;
  return burnt(scene) ?? figureRuling(scene) ?? leftAlone(scene);
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
