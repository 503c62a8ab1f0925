import { movedPast } from './pair-rulings';
import { harmful, harmless, type Line, type Ruling, type Scene, unclear } from './scene';

const flOz = 2.95735e-5;

/** Rulings on what breaks no rule that the model knows. */
export function leftAlone(scene: Scene): Ruling {
  const { edit, before, after } = scene;
  const step = edit.steps[edit.at];
  if (!step || !after) return unclear('No ruling.');
  if (edit.operator === 'delete') return leftOut(step, scene);
  if (edit.operator === 'duplicate')
    return /^(start|adjust|sample)$/.test(step.verb) || /^change pump-oil/.test(step.plain)
      ? harmless('It runs already, or is looked at and set once more as the rule itself asks (9.2).')
      : /^(change|change-oil|run|pinch-off|remove-cores|charge|add-oil|bench-flush|back-flush|drain)$/.test(step.verb)
        ? unclear('A second time may be wanted, or may have nothing to act on.')
        : harmless('Doing it twice costs time and harms nothing: information at most.');
  if (edit.past.length > 0) {
    const again = edit.steps.filter((each) => each.verb === step.verb).length > 1;
    return movedPast(step, edit.past, !/^(up|move to start)/.test(edit.operator), before.plan, edit.steps, again);
  }
  switch (edit.operator) {
    case 'near end only':
    case 'far end only':
    case 'other end':
      return /^(disconnect|connect)$/.test(step.verb) &&
        !before.plan.circuits.some((circuit) => circuit.series.some((item) => item.type === 'parallel'))
        ? harmless('Its other end is opened or made by what is done to its neighbour.')
        : unclear('What the other end needs is settled by what comes after.');
    case 'drop tool':
      return harmless('The joint is one without a torch.');
    case 'drop nitrogen':
      return unclear('The joint may be one without a torch.');
    case 'drop first of list':
    case 'drop last of list':
      if (step.verb === 'reset' && before.plan.kinds.includes('conversion')) {
        const words = (line: string): readonly string[] => line.trim().split(/[ ,]+/);
        const gone = words(edit.was).filter((word) => !words(edit.now).includes(word));
        return gone.some((word) => before.plan.graph.named.has(word))
          ? harmful('That control stays set for the old refrigerant (9.3, 13.3).', /start|adjust|conversion/)
          : unclear('Whether the machine has that control, nothing else in the plan says (9.3).');
      }
      if (/^(move-product|tag|untag|notify|photo|unwrap)$/.test(step.verb))
        return harmless('Printed, or a habit that sound jobs do without.');
      if (!/^(disconnect|connect|install|place|cut-out|remove)$/.test(step.verb)) return unclear('One thing less.');
      return leftOn(scene) ?? harmless('What is done to its neighbours, or a later step, does it.');
    case 'kept to one line':
      return before.plan.graph.parts.filter((part) => part.kind.group === 'line' && part.standing === 'kept').length ===
        1
        ? harmless('There is only that line.')
        : unclear('The others may need it, or not.');
    case 'system to one part':
      return harmless('What hangs together is emptied and proved together.');
    default:
      return unclear('No rule of the trade that words and model settle.');
  }
}

/** What a list of things to take apart leaves on for good, or leaves joined at a tee. */
function leftOn({ edit, before: { plan } }: Scene): Ruling | null {
  const step = edit.steps[edit.at]!;
  if (!/^(disconnect|cut-out|remove)$/.test(step.verb)) return null;
  const words = (line: string): readonly string[] => line.trim().split(/[ ,]+/);
  const [name] = words(edit.was).filter((word) => !words(edit.now).includes(word));
  const [part] = (name && plan.graph.named.get(name)) || [];
  if (part === undefined) return null;
  const { kind, ends } = plan.graph.parts[part]!;
  const others = edit.steps.slice(edit.at + 1);
  if (kind.kind === 'piercing-valve' && !others.some((each) => words(each.plain).includes(name!)))
    return unclear('The tap stays on the line; whether one may is not said (handbook silent).');
  const tee = ends.some((end) => (plan.graph.joints[plan.graph.ends[end]!.joint]?.ends.length ?? 0) > 2);
  return tee && others.some((each) => /^(flush|back-flush|purge|blow-out)$/.test(each.verb))
    ? unclear(
        'What is flushed comes out at the tee, or goes on into the line left joined there (5.2: each line for itself).',
      )
    : null;
}

function leftOut(step: Line, { edit, before: { plan } }: Scene): Ruling {
  const kinds = plan.kinds;
  const conversion = kinds.includes('conversion');
  const burnout = kinds.includes('burnout');
  const changes =
    plan.system.refrigerant.after !== null && plan.system.refrigerant.after !== plan.system.refrigerant.before;
  const others = edit.steps.filter((each) => each !== step && each.verb === step.verb);
  const beforeIt = edit.steps.slice(0, edit.at);
  const later = edit.steps.slice(edit.at + 1);
  switch (step.verb) {
    case 'survey':
    case 'photo':
    case 'notify':
    case 'tag':
    case 'untag':
    case 'note':
    case 'move-product':
    case 'unwrap':
    case 'blow-out':
      return harmless('Printed, or a habit that sound jobs do without.');
    case 'read':
      if (/pressure-drop/.test(step.plain) && burnout)
        return harmful("Nobody sees the suction drier's drop after a burnout (4.5).", /visit|suction-drier|start/);
      return /at most|at least/.test(step.plain)
        ? unclear('Some follow it up otherwise.')
        : harmless('A reading that nothing hangs on.');
    case 'break-vacuum':
      return beforeIt.some((each) => each.verb === 'evacuate') && later.some((each) => each.verb === 'evacuate')
        ? harmless('A break between two pulls is good practice, not a must (8.2).')
        : unclear('It was at the pressure of the air already; whether nitrogen keeps the air out is not said (13.1).');
    case 'evacuate':
      return later.some((each) => each.verb === 'evacuate')
        ? harmless('The first pulls of several are good practice, not a must (8.2).')
        : unclear('Another may serve.');
    case 'pressure-test':
      return edit.at > 0 && beforeIt.some((each) => each.verb === 'pressure-test')
        ? harmless('A stage between; others prove it.')
        : unclear('The first, low stage: some soap on the way up.');
    case 'disconnect':
    case 'remove':
      return harmless('What is done to its neighbours, or the setting of the new one, takes it off.');
    case 'cut-out':
      return unclear('Installing takes the old one off; whether by cutter or by torch is then not said (13.1).');
    case 'connect':
    case 'install':
    case 'place':
      return harmless('Its joints are made with those of its neighbours.');
    case 'stop':
      return later.some((each) => /^lock-out power/.test(each.plain))
        ? harmless('The lock-out stops it.')
        : unclear('Hangs on what follows.');
    case 'energise': {
      const sump = Math.max(0, ...plan.graph.parts.map((part) => part.properties.oil?.volume ?? 0));
      if (sump > 0 && sump <= 60.5 * flOz)
        return unclear('So small a sump often has no heater; 13.1 names no size, and sound jobs do without.');
      return /for/.test(step.plain)
        ? harmful('The crankcase heater stays cold before the start (13.1: 12 h and more).', /start|restore/)
        : unclear('Power may be there.');
    }
    case 'adjust':
      return conversion &&
        changes &&
        /^adjust charge/.test(step.plain) &&
        !others.some((each) => /^adjust charge/.test(each.plain))
        ? harmful(
            'The first charge of a conversion is short on purpose and is never trimmed (9.3, 13.3).',
            /charge|start|conversion/,
          )
        : unclear('It was weighed in; whether it is looked at once more is for the author.');
    case 'prove-airflow':
      return later.some((each) => /^adjust charge\b(?!.* to (sight-glass|level))/.test(each.plain)) &&
        others.length === 0
        ? harmful('Adjusted with no airflow proved (9.2: prerequisite).', /adjust|start/)
        : unclear('Nothing is adjusted by it.');
    case 'label':
      return changes && others.length === 0
        ? harmful(
            'The next crew does not know what is in it (13.1 label; 13.3).',
            /label|charge|start|kind|refrigerant/,
          )
        : unclear('The plate still holds.');
    case 'hold':
      if (burnout && /cause/i.test(step.plain))
        return harmful(
          'The cause of the burnout is not found before the new compressor runs (13.4).',
          /start|restore|place|burnout/,
        );
      return unclear('Who looks, and when, is for the shop.');
    case 'reset':
      return conversion
        ? harmful('Controls stay set for the old refrigerant (9.3, 13.3).', /start|adjust|conversion/)
        : unclear('They may stand as they were.');
    case 'renew':
      return conversion && changes && /seals/.test(step.plain)
        ? harmful('Old seals shrink in the new refrigerant (13.3).', /charge|conversion|pressure-test/)
        : unclear('They may be sound.');
    case 'clean':
      return conversion || burnout
        ? harmful('Strainers fill after a conversion or a burnout (floor list; 4.1).', /visit|start|conversion|burnout/)
        : unclear('They may be clean.');
    case 'change-oil':
      return conversion
        ? harmful('The old oil stays (4.2, 4.3).', /repeat|charge|recover|oil|run|sample/)
        : unclear('The oil may stay.');
    case 'run':
      return conversion
        ? harmful('Oil changed with no running between (4.3).', /change-oil|repeat|sample/)
        : unclear('It runs anyway.');
    case 'acid-test':
      return burnout && beforeIt.some((each) => each.verb === 'start')
        ? others.length > 1
          ? unclear('Another test serves.')
          : harmful('No acid test after a burnout (4.5).', /visit|start/)
        : unclear('A look before.');
    case 'drain':
      return later.some((each) => each.verb === 'flush') && others.length === 0
        ? harmful('Solvent stands in the trap (5.2; floor list).', /flush|trap|purge/)
        : unclear('Not flushed, or drained again.');
    default:
      return unclear('Hangs on law, house rules or the kind of job.');
  }
}
