import { harmful, harmless, type Ruling, type Scene, unclear } from './scene';

/** Blends with a glide that counts (handbook 3.4, 9.3); R-410A, R-404A and R-507A have next to none. */
const gliding = /R-(407|448|449|452|454|455|438|422|427|453|401|402|409|417|424)[A-Z]/;
const escaped = (text: string): string => text.replace(/[-/\\^$*+?.()|[\]{}]/g, '\\$&');

/** Whether something points to a label. */
export const pointedTo = (label: string | null, source: string): boolean =>
  label !== null && new RegExp(`(back to|before|after|skip|replace|change) ${escaped(label)}\\b`).test(source);

/** Rulings on words of a step: what hangs on no state. Null where the state decides. */
export function wordRuling({ edit, before, after }: Scene): Ruling | null {
  const step = edit.steps[edit.at];
  if (!step) return null;
  // A kind is a name for all parts of it.
  const names = (noun: string): boolean =>
    before.plan.graph.named.has(noun) || before.plan.graph.parts.some((part) => part.kind.kind === noun);
  const pointed =
    pointedTo(step.label, edit.source) || before.plan.departures.some((departure) => departure.label === step.label);
  switch (edit.operator) {
    case 'delete':
      return pointed
        ? harmful('Something points to a step that is gone (language: labels).', new RegExp(`\\b${step.label}\\b`))
        : null;
    case 'duplicate':
      return step.label ? harmful('Two steps of one name: nobody can say which one is meant (language).') : null;
    case 'drop label':
      return pointed
        ? harmful('Something points to a name that is gone (language: labels).', new RegExp(`\\b${step.label}\\b`))
        : harmless('A name that nothing points to is only a name.');
    case 'misspell verb':
    case 'misspell name':
      return harmful('A word or a name that nobody knows (language).');
    case 'back to nowhere':
      return harmful('The way back leads to a step that there is not (language: labels).');
    case 'back to another': {
      const label = /back to ([\w-]+)/.exec(edit.now)?.[1];
      const to = edit.steps.findIndex((each) => each.label === label);
      return to >= edit.at
        ? harmful('The way back leads on past the failed test (8.1: else repeat).')
        : unclear('How far back the crew goes is for the author.');
    }
    case 'drop block':
      return /if-fails|note|caution|read/.test(edit.was)
        ? harmless('A remark or a way back: sound plans do without it.')
        : unclear('Hangs on what the block says.');
    case 'psig to psi':
    case 'gauge dropped':
      return harmful('Gauge or absolute is left open (8.4; language).');
    case 'micron to torr':
      return harmful('A thousand times the pressure: no vacuum at all (8.4).');
    case 'cfh to cfm':
      return harmful('Sixty times the flow (6.3: 2 to 10 cfh).');
    case 'drop container':
      if (step.verb === 'flush') return null;
      if (/ per "/.test(step.plain)) return unclear('The sheet cited is not at hand.');
      return step.verb === 'purge' && edit.steps.some((each) => each.verb === 'flush')
        ? harmful('A purge after a flush blows solvent out with nothing to catch it (5.2: into a container).', /flush/)
        : unclear('What it blows out may be caught, or be nothing.');
    case 'drop nitrogen':
      return null;
    case 'drop outdoors':
      return unclear('Hangs on the room and what is let go in it.');
    case 'drop bubbles':
      return harmless('The hold proves the same; the bubbles only show where.');
    case 'drop limit':
      if (/ per "/.test(step.plain)) return unclear('The sheet cited gives the limit (8.1; the maker is first).');
      return harmful('A decay test with no limit proves nothing (8.1).');
    case 'drop time':
      return step.verb === 'decay-test'
        ? harmful('A decay test with no time proves nothing (8.1).')
        : unclear('What is not stated is computed, or left to the crew.');
    case 'drop level':
      return /^(evacuate|pressure-test)$/.test(step.verb)
        ? harmful('A test or a pull to no level (7.1, 8.1; language: needed).')
        : step.verb === 'recover'
          ? harmless('The level that the rule asks is computed (2.1).')
          : unclear('What is not stated is computed.');
    case 'drop wait':
      return step.verb !== 'adjust' ||
        edit.steps.slice(0, edit.at).some((each) => /^(adjust|read).* after /.test(each.plain))
        ? unclear('It may have run long enough by then.')
        : harmful('Adjusted with no steady running before (9.2: 15 min).');
    case 'drop phase of charge':
      return unclear('The crew knows how the gas goes in, or does not.');
    case 'liquid to vapour':
      return gliding.test(edit.was)
        ? harmful('A blend with glide charged as vapour changes its mixture (9.3).')
        : unclear('A single substance or one near it may go in either way.');
    case 'nitrogen to air':
      return harmful('A vacuum broken with air (floor list; 8.2).');
    case 'nitrogen to oxygen':
      return harmful('Oxygen on oil explodes (6.4).');
    case 'system to one part':
      return names('compressor') ? null : harmful('A name that nobody knows (language).');
    case 'kept to new':
    case 'kept to one line':
      return edit.operator === 'kept to one line' &&
        !before.plan.graph.parts.some((part) => part.kind.kind === 'suction-line')
        ? harmful('There is no such line here: nothing is done (language: roles).', /flush|purge|connect|disconnect/)
        : null;
    case 'drop first of list':
    case 'drop last of list':
      return after === null || !/^(inspect|read|record|survey|check|renew)$/.test(step.verb)
        ? null
        : unclear('One thing less to look at.');
    default:
      return null;
  }
}
