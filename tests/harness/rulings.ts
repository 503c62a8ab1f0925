import type { Line, Scene } from './scene';

/**
 * What a practitioner says of an edit of the text, from the trade's job order (handbook sections 5 to 9 and 13, the floor list
 * of mistakes) and from the words of the plan alone. Written down before the checks were run on any of these edits.
 */
export interface Ruling {
  readonly verdict: 'harmful' | 'harmless' | 'unclear';
  readonly why: string;
  /** Lines at which a harmful edit may be reported besides the touched ones: the step that it breaks or that relies on it. */
  readonly breaks: RegExp;
}

const any = /./;
const harmful = (why: string, breaks: RegExp = any): Ruling => ({ verdict: 'harmful', why, breaks });
const harmless = (why: string): Ruling => ({ verdict: 'harmless', why, breaks: any });
const unclear = (why: string): Ruling => ({ verdict: 'unclear', why, breaks: any });
const step = (verbs: string): RegExp => new RegExp(`^\\s*([\\w-]+: )?(${verbs})\\b`);

const printed = /^(photo|notify|tag|untag|move-product|note|wrap|unwrap|hold|check|watch)$/;
const opening = 'disconnect|cut-out|change|remove|unplug|remove-cores|renew';
const joining = 'connect|install|place|flare';

export function lineVerdict(operator: string, scene: Scene): Ruling {
  const here = scene.steps[scene.at];
  const [head] = operator.split(' x ');
  switch (head) {
    case 'delete':
      return scene.at >= 0 ? deleted(here!, scene) : unclear('no step');
    case 'duplicate':
      if (here!.label) return harmful('Two steps of one name: nobody can say which one is meant.');
      if (/^charge system with/.test(here!.plain)) return harmful('The charge goes in twice.');
      if (
        /^(change|change-oil|run|sample|pinch-off|remove-cores|bypass|break-vacuum|release|acid-test)$/.test(here!.verb)
      )
        return unclear('A second time may be wanted, or may have nothing to act on.');
      return harmless('Doing a step twice costs time and harms nothing: information at most.');
    case 'swap':
      return swapped(here!, scene.other!, scene);
    case 'move to end':
      return movedLate(here!, scene);
    case 'move to start':
      return movedEarly(here!, scene);
    case 'drop from list':
      return dropped(here!);
    case 'drop container':
      return here!.verb === 'flush'
        ? harmful('Solvent runs out on the floor where nothing catches it.')
        : unclear('Where the purge goes may be settled by the flush before it.');
    case 'drop nitrogen':
      return /joint (flare|pressed|flanged)/.test(scene.source)
        ? unclear('The joint may be one without a torch.')
        : harmful('Brazing without flowing nitrogen scales the tube inside.');
    case 'one end only':
      return harmful(
        'The other end stays on, or stays open.',
        step('connect|flush|purge|blow-out|pressure-test|evacuate|disconnect'),
      );
    case 'drop limit':
      return harmful('A decay test with no limit proves nothing.', step('decay-test'));
    case 'drop label':
      return new RegExp(`(back to|before|after|skip|replace|change) ${here!.label}\\b`).test(scene.source)
        ? harmful('Something points to a name that is gone.', /if-fails|before|after|skip|replace|change/)
        : harmless('A name that nothing points to is only a name; a record may use it.');
    case 'misspell verb':
    case 'misspell name':
    case 'misspell kind':
    case 'misspell refrigerant':
    case 'misspell tube':
    case 'misspell file':
      return harmful('A word or a name that nobody knows.');
    case 'psig to psi':
      return harmful('Gauge or absolute is left open.');
    case 'micron to torr':
      return harmful('A thousand times the pressure.');
    case 'drop unit':
      return harmful('A number without its unit.');
    case 'difference to temperature':
      return harmful('A temperature where a difference is meant.');
    case 'standard revision':
      return harmful('Follows a revision that there is not.', /follows|standard/);
    case 'plan revision':
      return harmless('The author numbers his revisions as he likes.');
    case 'rating / 10':
      return scene.steps.some((each) => each.verb === 'pressure-test')
        ? harmful(
            'The test goes far above the rating of the part.',
            step('pressure-test|purge|blow-out|break-vacuum|install|connect'),
          )
        : unclear('Nothing in this file puts pressure on the part.');
    case 'design':
    case 'design x 10':
      return harmful('The low side is never proved at its design pressure.', /pressure-test|rated|design-pressure/);
    case 'state kept to removed':
      return harmful('The circuit is left with a gap where the part was.');
    case 'state kept to new':
      return harmful('A new part is meant that no step brings in.');
    case 'state new to kept':
      return /compressor|condenser|evaporator|coil|filter-drier/.test(scene.was)
        ? harmful('The step that renews the part has nothing new to bring, or an old drier goes on.')
        : unclear('Small parts may be taken out and put back.');
    case 'figure':
      return figured(here!, scene);
    default:
      return unclear('No ruling.');
  }
}

const others = (scene: Scene, verb: string): readonly Line[] =>
  scene.steps.filter((each, k) => k !== scene.at && each.verb === verb);
const later = (scene: Scene, verb: RegExp): boolean =>
  scene.steps.slice(scene.at + 1).some((each) => verb.test(each.plain));
const pointed = (line: Line, source: string): boolean =>
  line.label !== null && new RegExp(`(back to|before|after|skip|replace|change) ${line.label}\\b`).test(source);

function deleted(line: Line, scene: Scene): Ruling {
  if (pointed(line, scene.source)) return harmful('Something points to a step that is gone.', /./);
  const single = others(scene, line.verb).length === 0;
  const opens = later(scene, step(opening));
  switch (line.verb) {
    case 'lock-out':
      return single && opens
        ? harmful('Work on live equipment.', step(opening))
        : unclear('Another lock may cover it.');
    case 'recover':
      return single && opens && others(scene, 'pump-down').length === 0
        ? harmful('A part is opened under refrigerant.', step(`${opening}|prove-zero|break-vacuum`))
        : unclear('Another step may have emptied it.');
    case 'prove-zero':
      return single && opens
        ? harmful('Opened without proving zero.', step(opening))
        : unclear('Another reading may cover it.');
    case 'disconnect':
    case 'cut-out':
    case 'remove':
      return harmful('What comes after needs the part off or open.', any);
    case 'connect':
    case 'install':
    case 'place':
      return harmful('The circuit is not closed.', any);
    case 'inspect':
      return single && later(scene, /^flush/)
        ? harmful('Flushed without looking for low spots.', step('flush|blow-out'))
        : unclear('No flush relies on it.');
    case 'trim':
    case 'take-off':
    case 'unplug':
      return harmful('The choke stays in the line.', step('connect|flare|pressure-test|evacuate'));
    case 'purge':
      return later(scene, /^purge/)
        ? unclear('Another purge comes after it.')
        : harmful('Solvent stays in the line.', step(`${joining}|pressure-test|evacuate|purge|flush|take-off|trim`));
    case 'pressure-test':
      return single ? harmful('Never tested.', step('evacuate|charge|open')) : unclear('One stage of several.');
    case 'release':
      return single && later(scene, /^evacuate/)
        ? harmful('Pump on test pressure.', step('evacuate'))
        : unclear('Another release.');
    case 'evacuate':
      return single ? harmful('Charged into air.', step('decay-test|charge|open')) : unclear('One of several.');
    case 'decay-test':
      return single ? harmful('The vacuum is never proved.', step('evacuate|charge|open')) : unclear('One of several.');
    case 'restore':
    case 'return':
      return harmful('Put out of action and never put back.', any);
    case 'open':
      return /service-valves/.test(line.plain)
        ? harmful('The charge never reaches the lines.', any)
        : unclear('Hangs on the valve.');
    case 'start':
      return later(scene, /^adjust/)
        ? harmful('Adjusted without running.', step('adjust|read'))
        : unclear('May be started later.');
    case 'survey':
    case 'blow-out':
    case 'break-vacuum':
    case 'read':
    case 'cap':
      return harmless('Good practice may do without it.');
    default:
      return printed.test(line.verb)
        ? harmless('Only printed, or done by habit.')
        : unclear('Hangs on law, house rules or kind of job.');
  }
}

/** Pairs of verbs of which the first must come before the second where they stand side by side. */
const must: readonly (readonly [string, string])[] = [
  ['lock-out', opening],
  ['recover', `${opening}|prove-zero|break-vacuum`],
  ['prove-zero', `${opening}`],
  ['disconnect', 'crimp|tape|choke|flush|purge|blow-out|inspect'],
  ['crimp|tape|choke', 'trim|take-off|unplug'],
  ['flush', 'purge'],
  ['trim|take-off|unplug|cut-out', joining],
  ['connect|install|place', 'pressure-test|evacuate'],
  ['pressure-test', 'release|evacuate'],
  ['release', 'evacuate'],
  ['evacuate', 'decay-test|charge'],
  ['decay-test', 'charge|open'],
  ['restore', 'start'],
  ['start', 'adjust'],
];
const freely = /^(survey|photo|notify|tag|label|record|leak-check|hold|move-product|note|check)$/;

function swapped(a: Line, b: Line, scene: Scene): Ruling {
  const rule = must.find(([x, y]) => step(x).test(a.verb) && step(y).test(b.verb));
  if (rule && a.verb === 'release' && others(scene, 'release').length > 1) return unclear('Another release may serve.');
  if (rule && a.verb === 'evacuate' && b.verb === 'decay-test' && others(scene, 'evacuate').length > 1)
    return harmful('The last level is never held to a decay test.', step('decay-test|evacuate|charge|open'));
  if (rule) return harmful(`${a.verb} comes before ${b.verb}.`, any);
  if (freely.test(a.verb) && freely.test(b.verb)) return harmless('Either may come first.');
  if (
    a.verb === b.verb &&
    /^(disconnect|cut-out|install|connect|read|remove|lock-out|reset|adjust|acid-test)$/.test(a.verb)
  )
    return harmless('Two of one kind, either may come first.');
  return unclear('Neither clearly first.');
}

function movedLate(line: Line, scene: Scene): Ruling {
  if (
    others(scene, line.verb).length > 0 &&
    /^(lock-out|recover|prove-zero|evacuate|pressure-test|release|decay-test|purge|read|open)$/.test(line.verb)
  )
    return unclear('Another of its kind stays in place.');
  if (/^(record|label|leak-check|notify|photo|read|note|survey|move-product|tag|untag)$/.test(line.verb))
    return harmless('May as well be done at the end.');
  if (
    /^(lock-out|recover|prove-zero|disconnect|cut-out|remove|inspect|flush|purge|trim|take-off|connect|install|place|pressure-test|release|evacuate|decay-test|start|charge|open)$/.test(
      line.verb,
    )
  )
    return harmful('Everything that relied on it comes before it now.', any);
  return unclear('Hangs on the job.');
}

function movedEarly(line: Line, scene: Scene): Ruling {
  if (/^(survey|photo|notify|note|move-product|tag|hold)$/.test(line.verb))
    return harmless('May as well be done first.');
  if (pointed(line, scene.source)) return harmful('Done before the state that it needs.', any);
  if (
    /^(disconnect|cut-out|remove|trim|take-off|flush|purge|blow-out|connect|install|place|pressure-test|evacuate|decay-test|charge)$/.test(
      line.verb,
    )
  )
    return harmful('Done before the state that it needs.', any);
  return unclear('Hangs on the job.');
}

function dropped(line: Line): Ruling {
  switch (line.verb) {
    case 'disconnect':
    case 'connect':
    case 'install':
    case 'place':
    case 'trim':
    case 'restore':
    case 'return':
      return harmful('One of them is left as it was.', any);
    case 'cut-out':
      return harmful('One of them is never taken out.', any);
    default:
      return unclear('Hangs on the valve.');
  }
}

function figured(line: Line, scene: Scene): Ruling {
  const now = Number(/(?<![\w-])(\d+(?:\.\d+)?)(?= (?:psig|kPa|cfh|micron|inHg|lb|kg|Pa)\b)/.exec(scene.now)?.[1]);
  const was = Number(/(?<![\w-])(\d+(?:\.\d+)?)(?= (?:psig|kPa|cfh|micron|inHg|lb|kg|Pa)\b)/.exec(scene.was)?.[1]);
  if (/ per "/.test(line.plain)) return unclear('The sheet cited is not at hand.');
  if (/cfh/.test(line.plain) && /nitrogen/.test(line.plain))
    return now < 2 || now > 10 ? harmful('Out of the usual 2 to 10 cfh.') : harmless('Within the usual 2 to 10 cfh.');
  switch (line.verb) {
    case 'pressure-test': {
      if (now > was)
        return was >= 100 && /psig/.test(line.plain)
          ? harmful('Far above any rating.')
          : unclear('A low stage made higher.');
      return others(scene, 'pressure-test').length === 0
        ? harmful('Below the design pressure.')
        : unclear('A stage of several.');
    }
    case 'evacuate':
      if (later(scene, /^evacuate/)) return unclear('Not the last pull.');
      if (/micron/.test(line.plain))
        return now > 1000
          ? harmful('Above the common 500 micron.')
          : now < 50
            ? harmful('Deeper than a pump and hoses reach.')
            : harmless('A deeper pull than usual.');
      return unclear('In other units.');
    case 'decay-test':
      return now > was
        ? harmful('A rise that no tight and dry system shows is let pass.')
        : harmless('A stricter limit.');
    case 'recover':
      return now > 29.92 && /inHg/.test(line.plain)
        ? harmful('Deeper than a perfect vacuum.')
        : now === was
          ? unclear('Nothing changed.')
          : unclear('The level asked hangs on the rule.');
    case 'purge':
      if (now > was)
        return was >= 30 && /psig/.test(line.plain) && now > 450
          ? harmful('Above the rating of the lines.')
          : unclear('Other figures.');
      return later(scene, /^purge/) ? unclear('A purge of several.') : harmful('Below the common 100 psig.');
    case 'charge':
      return harmful('Ten times or a part of the charge.');
    case 'break-vacuum':
      return unclear('A break at another pressure may be wanted.');
    default:
      return unclear('Other figures.');
  }
}
