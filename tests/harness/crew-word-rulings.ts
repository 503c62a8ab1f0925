import { figureRuling } from './figure-rulings';
import { after } from './head-rulings';
import { leftAlone } from './order-rulings';
import { harmful, harmless, type Line, type Ruling, type Scene, unclear } from './scene';

const proof = /^\s*([\w-]+: )?(evacuate|decay-test|open|charge|pressure-test)\b/;
/** Substances that 40 CFR 82 lets go, and those that air may be tested with (handbook 2.2, 6.4). */
const natural = /^R-(744|717|718)$/;
const letGo = /^R-(744|718)$/;
const flammableNatural = /^R-(290|600a|1270)$/;
/** Refrigerants that mineral oil runs with (handbook 4.1). */
const mineralSuits = /^R-(12|22|11|123|502|290|600a|1270|717|409A|401A|408A|402A)$/;

/** Rulings on one word of a step taken for another; null where the state decides. `broken`: what the model says of it. */
export function crewWordRuling(scene: Scene, broken: Ruling | null): Ruling | null {
  const { edit, before } = scene;
  const { plan } = before;
  const step = edit.steps[edit.at]!;
  const [kind = ''] = edit.operator.split(':');
  const later = edit.steps.slice(edit.at + 1);
  if (kind === 'unit') return unitRuling(scene, step);
  const gas = plan.system.refrigerant.before ?? after(plan);
  switch (edit.operator) {
    case 'same in another unit':
      return / per "/.test(step.plain) || broken?.verdict === 'harmful'
        ? unclear('Rounding, or a limit to the last digit.')
        : harmless('The same amount (8.4).');
    case 'label renamed':
      return harmless('A name may be any, if all that points to it goes with it (language: labels).');
    case 'list turned':
      return broken ?? harmless('The parts of one step go in any order.');
    case 'list split':
    case 'two run together':
      return broken ?? harmless('The same parts, in two steps or in one.');
    case 'bounds exchanged':
      return harmful('At least more than at most: no number of rounds is both (language: repeat).');
    case 'recover to release':
      if (letGo.test(gas)) return broken ?? harmless('This refrigerant may be let go anywhere (2.2).');
      if (natural.test(gas) || flammableNatural.test(gas))
        return broken ?? unclear('Let go outdoors in some uses only (2.2: listed end uses).');
      return harmful(
        'Refrigerant is let go into the open (2.2: venting ban).',
        /recover|disconnect|cut-out|remove|prove-zero|release/,
      );
    case 'recover to pump-down':
      if (plan.kinds.includes('burnout'))
        return harmful('A burnt compressor cannot pump anything down (13.4).', /pump-down|disconnect|cut-out|remove/);
      return broken ?? unclear('A machine that runs may hold its charge on its own liquid side.');
    case 'evacuate to pump-down':
      return broken?.verdict === 'harmful'
        ? broken
        : later.some((each) => each.verb === 'evacuate')
          ? harmful('A machine that stands cannot pump down, and pumping down is not evacuating (8.1; 13.1).', proof)
          : harmful('No pump pulls it: the machine would have to run on nitrogen (13.1).', proof);
    case 'decay-test to evacuate':
      return broken ?? notProved(scene);
    case 'release to recover':
      return harmful(
        'Test nitrogen into a recovery cylinder, which then holds what no one can reclaim (2.3: never mix).',
        /recover|evacuate|release/,
      );
    case 'flush to blow-out':
      return unclear(
        'Whether kept lines are flushed or blown dry differs among makers, and hangs on the acid (15.15; 13.4).',
      );
    case 'blow-out to flush':
      return broken ?? unclear('A flush more, if what it goes through bears it (5.1).');
    case 'cap to plug':
    case 'plug to cap':
      return broken ?? harmless('Either closes the end until it is joined (13.1: open, then capped).');
    case 'crimp to pinch-off':
      return broken ?? unclear('A pinched end may be cut off again.');
    case 'install to place':
      return broken ?? harmless('Its joints are made with those of its neighbours.');
    case 'place to remove':
      return (
        broken ??
        (later.some((each) => /^(install|place)$/.test(each.verb) && sharesName(each, step))
          ? harmless('It is set in place later all the same.')
          : harmful('What is to be set in place is taken out (13.1).', /place|remove|install|connect/))
      );
    case 'remove to disconnect':
      return broken ?? harmless('Undone, and taken off when the new one is set in place.');
    case 'disconnect to remove':
      return broken ?? harmless('What is taken off is set in place again later.');
    case 'cut-out to disconnect':
      return broken ?? unclear('Unbrazed in place of cut: heat drives what the drier holds into the lines (13.1).');
    case 'charge to adjust':
      return broken ?? harmful('Adjusted with nothing weighed in before (13.2, 9.1).', /charge|adjust|start/);
    case 'start to restore':
      return (
        broken ??
        (!goesOn(edit.steps.slice(0, edit.at), plan.kinds) &&
        later.some((each) => /^(read|adjust|run|sample|prove-airflow)\b/.test(each.verb))
          ? harmful('What is read or set on a running machine: nobody starts it (9.2).', /read|adjust|run|start/)
          : unclear('With its power it starts on its own, or not.'))
      );
    case 'stop to lock-out':
      return broken ?? harmless('The lock-out stops it.');
    case 'lock-out to stop':
      return broken ?? unlocked(scene);
    case 'energise to restore':
      return broken ?? leftAlone({ ...scene, edit: { ...edit, operator: 'delete' } });
    case 'restore to energise':
      return broken ?? unclear('The controls have power; whether the rest had lost it is not said.');
    case 'prove-zero to read':
      return broken ?? unclear('Pressures that are read at zero prove it too, if that is what is meant (13.1).');
    case 'change to remove':
      return broken ?? unclear('Taken out, and whether another comes in its place is said elsewhere.');
    case 'return to close':
      return broken ?? unclear('A valve that is let go by its magnet shuts by itself (language: solenoid).');
    case 'gas: air':
      return natural.test(after(plan))
        ? unclear('Air may do where it is pumped off again (6.4).')
        : harmful('Never compressed air: wet, and with oil under pressure it burns (6.4).');
    case 'gas: test with air':
      return natural.test(after(plan))
        ? unclear('Air may do for this refrigerant, if it is pumped off again (6.4).')
        : harmful('Never compressed air: wet, and with oil under pressure it burns (6.4).');
    case 'gas: oxygen':
      return harmful('Oxygen on oil explodes (6.4).');
    case 'gas: break with refrigerant': {
      const next = later.find((each) =>
        /^(disconnect|cut-out|remove|change|place|install|connect|evacuate|recover)$/.test(each.verb),
      );
      return next && !/^(evacuate|recover)$/.test(next.verb)
        ? harmful(
            'Refrigerant into what is opened next: it is let go with it (2.2).',
            /break-vacuum|disconnect|cut-out|remove|change/,
          )
        : unclear(
            'Sweeps with the refrigerant of the system were asked by one guide (8.1), and go into the air now (2.2).',
          );
    }
    case 'refrigerant: R-404A':
    case 'refrigerant: R-410A':
    case 'refrigerant: R-22': {
      const put = edit.operator.split(': ')[1]!;
      if (step.verb === 'reset') return harmful('Set for a refrigerant that is not in it (9.3, 13.3).', /reset|start/);
      return put === after(plan)
        ? unclear('It is the one that the system is said to run on.')
        : harmful('Another refrigerant than the system is said to run on (9; 13.1: type verified).');
    }
    case 'oil: mineral':
      return mineralSuits.test(after(plan))
        ? unclear('Mineral oil runs with it.')
        : harmful('Mineral oil does not come back with this refrigerant (4.1).', /\boil\b/);
    case 'tool: wrench':
      return wrench(scene, step);
    case 'all: each open part to system':
    case 'all: system to each open part':
      return broken ?? unopened(scene, step);
    case 'first kept line only':
      return broken ?? firstLine(scene, step);
    case 'first of list only':
      return broken ?? leftAlone({ ...scene, edit: { ...edit, operator: 'drop last of list' } });
    case 'another of its kind':
      return broken ?? another(step);
    default:
      return broken ?? unclear('No ruling.');
  }
}

const sharesName = (a: Line, b: Line): boolean =>
  a.plain.split(/[ ,]+/).some((word, k) => k > 0 && b.plain.split(/[ ,]+/).slice(1).includes(word));

function notProved({ edit }: Scene): Ruling {
  const others = edit.steps.filter((each, k) => k !== edit.at && each.verb === 'decay-test');
  return others.length > 0
    ? unclear('Another decay test may prove the same (8.1).')
    : harmful('A vacuum that no decay test proves (8.1; 13.1).', proof);
}

/** Whether a machine runs once it has its power: it ran when the power went, or was started before. */
function goesOn(earlier: readonly Line[], kinds: readonly string[]): boolean {
  let [runs, resumes] = [!kinds.includes('new'), false];
  for (const { plain, verb } of earlier) {
    if (verb === 'stop') [runs, resumes] = [false, false];
    else if (verb === 'start') runs = true;
    else if (/^lock-out power/.test(plain)) [runs, resumes] = [false, runs || resumes];
    else if (/^restore power/.test(plain)) [runs, resumes] = [runs || resumes, false];
  }
  return runs || resumes;
}

/** Stopped and not locked out: what is opened after it may start. */
function unlocked({ edit }: Scene): Ruling {
  const later = edit.steps.slice(edit.at + 1);
  const again = edit.steps.some((each, k) => k !== edit.at && /^lock-out power/.test(each.plain));
  return !again && later.some((each) => /^(disconnect|cut-out|remove|change|recover|install)$/.test(each.verb))
    ? harmful(
        'Worked on with its power on: it may start by itself (11, electrical isolation; 13.1).',
        /recover|disconnect|cut-out|remove|change|restore|install|stop/,
      )
    : unclear('Another lock-out serves, or nothing is opened.');
}

/** A torch exchanged for a wrench: by the joints that the circuit states at the parts named. */
function wrench({ edit, before: { plan } }: Scene, step: Line): Ruling {
  const { graph } = plan;
  if (/ with [a-z-]+ /.test(step.plain.replace(/ with nitrogen/, '')) || step.verb === 'break-vacuum')
    return unclear('Not a joint.');
  const words = step.plain.split(/[ ,]+/);
  const kept = /\bkept line/.test(edit.was);
  const parts = graph.parts.filter(
    (part) => words.includes(part.name) || (kept && part.kind.group === 'line' && part.standing === 'kept'),
  );
  const joints = parts.flatMap((part) => part.properties.joint ?? []);
  if (joints.includes('brazed'))
    return harmful('A brazed joint is not made with a wrench (6.3; 13.1 braze).', /joint|connect|install/);
  return joints.includes('flare')
    ? harmless('A flared joint is made so.')
    : unclear('How the joint is made is not said.');
}

function unopened({ edit, before: { plan } }: Scene, step: Line): Ruling {
  const covers = plan.graph.parts.every((part) => !part.properties.holds && part.properties.valves !== 'closed');
  return covers || step.verb === 'decay-test'
    ? harmless('What was open and what hangs together with it is the same.')
    : unclear(`What ${edit.now.trim().split(' ')[0]} then takes in beside it hangs on the valves.`);
}

function firstLine({ edit, before: { plan } }: Scene, step: Line): Ruling {
  const kept = plan.graph.parts.filter((part) => part.kind.group === 'line' && part.standing === 'kept');
  if (kept.length === 1) return harmless('There is only that line.');
  const { refrigerant, oil } = plan.system;
  const changes =
    (refrigerant.after !== null && refrigerant.after !== refrigerant.before) ||
    (oil.after !== null && oil.after !== oil.before) ||
    plan.kinds.includes('burnout');
  const others = edit.steps.filter((each) => each !== step && each.verb === step.verb && /kept line/.test(each.plain));
  if (step.verb === 'flush' && changes && others.length === 0)
    return harmful('The other lines keep the old oil and its dirt (5.2: each line; 4.2).', /flush|repeat|-line kept/);
  if (/^(crimp|choke|tape|trim|flare|uncap)$/.test(step.verb))
    return harmless('How the end of the other one is made ready may be seen on the job.');
  return unclear('The others may need it, or not.');
}

function another(step: Line): Ruling {
  if (/^(photo|tag|untag|notify|move-product|survey|inspect|leak-check|weigh)$/.test(step.verb))
    return unclear('Another is looked at or marked than was meant.');
  if (/^(disconnect|connect|cut-out|place|install|remove)$/.test(step.verb))
    return harmless('What is done to its neighbours, or a later step, does it.');
  return unclear('Which of them is meant, nothing else in the plan tells.');
}

/** A unit of the other system with the figure left as it was. */
function unitRuling(scene: Scene, step: Line): Ruling {
  const { edit } = scene;
  const { figure } = edit;
  if (!figure) return unclear('No figure.');
  const factor = figure.was === 0 ? 1 : figure.now / figure.was;
  switch (edit.operator) {
    case 'unit: psig to MPa gauge':
      return harmful('A thousand times what anything here bears (7.1, 7.2).');
    case 'unit: fl-oz to oz':
      return harmful('A weight where a volume is asked (language: oil).');
    case 'unit: micron of rise to Pa':
      return / per "/.test(step.plain)
        ? unclear('The sheet cited is not at hand.')
        : figure.now > 133
          ? harmful('A rise that no tight and dry system shows is let pass (8.1).')
          : unclear('Limits in use differ (8.1, 15.2).');
    case 'unit: min to h':
      return figure.now > 24 * 3600 || /^(purge|blow-out|flush|back-flush)$/.test(step.verb)
        ? unclear('So long that nobody may mean it.')
        : /^(break-vacuum|read|adjust)$/.test(step.verb)
          ? unclear('Hours where minutes are usual: it costs a day, and may harm nothing.')
          : harmless('A longer hold or watch.');
    case 'unit: kPa gauge to psig':
      return factor > 5 && figure.now > 5e5
        ? harmful('Near seven times the pressure (7.1).')
        : unclear('A low pressure made seven times higher.');
    default: {
      const broken = scene.faultsAfter.length > scene.faultsBefore.length;
      const ruled = figureRuling(scene);
      return ruled && ruled.verdict !== 'unclear'
        ? ruled
        : broken
          ? harmful('Too little by a factor that the model of the plant stops at (7.1, 8.1).', proof)
          : (ruled ?? unclear('Another figure.'));
    }
  }
}
