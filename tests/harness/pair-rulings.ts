import { farEnd, nearEnd } from '../../server/engine/circuit/graph';
import { isLine } from '../../server/engine/circuit/kinds';
import type { Plan } from '../../server/engine/plan/plan';
import { harmful, harmless, type Line, type Ruling, unclear } from './scene';

/** Words that only print; when they are said is for the author. */
export const printed = /^(photo|notify|note|tag|untag|move-product|survey|weigh)$/;
const late = /^(record|label|leak-check|photo|notify|untag)$/;
const ofEnds = /^(crimp|choke|tape|trim|take-off|unplug)$/;
const ofFlow = /^(flush|purge|blow-out)$/;
/** A test that a relief valve or a transducer could feel. */
const strong = /^pressure-test .*( to test-pressure|\d{3,} psig|\d MPa)/;
const torch = /^(connect|install)$/;
const ofLines =
  /^(crimp|choke|tape|flush|purge|blow-out|pull-swab|trim|take-off|unplug|inspect|uncap|cap|drain|bench-flush|back-flush)$/;
/** Verbs that the rulings' own model knows: what it finds no fault in may stand either way, but for the pairs below. */
const modelled =
  /^(lock-out|restore|recover|prove-zero|break-vacuum|disconnect|cut-out|remove|place|install|connect|release|open|close|return|trim|take-off|unplug|crimp|choke|tape|cap|uncap|flare|bypass|stop|inspect|energise|start|blow-out|purge|flush|pull-swab|decay-test|pressure-test|evacuate|charge|change|renew|pump-down|read|adjust|drain)$/;

/** Work at the open circuit that takes its time while a drier stands open. */
const long =
  /^(install|connect|place|remove|disconnect|cut-out|change|renew|replace-cores|flush|back-flush|blow-out|purge|pull-swab|drain|trim|flare|hold)$/;
const isCloth = (line: Line): boolean => /^hold .*(cloth|swab)/i.test(line.plain);
const asks = /^(read|sample|acid-test|leak-check)\b/;

/** Steps that take joints apart, and what is done to an end that stands open. */
const opens = /^(disconnect|cut-out|remove)\b/;
const onEnds = /^(crimp|choke|tape|cap|flare)\b/;

/** The joints at the ends that a step speaks of. */
function jointsOf({ plain }: Line, { graph }: Plan): readonly number[] {
  const [what = '', where = ''] = plain.replace(/ (with|leaving|to) .*/, '').split(' at ');
  const kept = /\bkept\b/.test(what);
  const parts = [
    ...what.split(/[ ,]+/).flatMap((word) => graph.named.get(word) ?? []),
    ...(/\bold equipment\b/.test(what)
      ? graph.parts
          .filter((part) => !isLine(part.kind) && (part.standing === 'new' || part.standing === 'removed'))
          .map((part) => part.index)
      : []),
    ...(/\blines?\b/.test(what)
      ? graph.parts
          .filter((part) => isLine(part.kind) && (!kept || part.standing === 'kept' || part.standing === 'reused'))
          .map((part) => part.index)
      : []),
  ];
  return parts.flatMap((part) => {
    const it = graph.parts[part]!;
    const ends = where === 'far end' ? [farEnd(it)] : where === 'near end' ? [nearEnd(it)] : it.ends;
    return ends.flatMap((end) => (graph.ends[end]!.joint >= 0 ? [graph.ends[end]!.joint] : []));
  });
}

/** What is put on an end, or made of it, before the joint is taken apart; `earlier` steps come before both. */
function early(opening: Line, made: Line, plan: Plan, earlier: readonly Line[]): Ruling {
  const [open, ends] = [jointsOf(opening, plan), jointsOf(made, plan)];
  if (open.length === 0 || ends.length === 0)
    return unclear('Whether the joint that is taken apart is that of the end is not told by the words.');
  const shared = ends.filter((joint) => open.includes(joint));
  const apart = earlier.filter((each) => opens.test(each.plain)).flatMap((each) => jointsOf(each, plan));
  if (shared.length > 0 && shared.every((joint) => apart.includes(joint)))
    return unclear('Another step has taken the joint apart by then: this one only comes late.');
  return shared.length > 0
    ? harmful(
        'The end is not open yet; when its joint is taken apart it stands open and bare (13.1: open, then capped).',
        /^\s*([\w-]+: )?(crimp|choke|tape|cap|flare|disconnect|cut-out|remove|flush|purge)\b/,
      )
    : harmless('Another joint than that of the end.');
}

/** What is said of two steps of which `first` came before `second` and now comes after it. */
function pair(first: Line, second: Line, plan: Plan, earlier: readonly Line[]): Ruling {
  const is = (a: RegExp, b: RegExp): boolean => a.test(first.plain) && b.test(second.plain);
  if (is(/^charge\b/, /^(start|adjust charge)\b/))
    return harmful(
      'Started or adjusted before the charge is weighed in (13.2).',
      /^\s*([\w-]+: )?(start|adjust|charge|restore power|read|record|label|leak-check|prove)\b/,
    );
  if (is(/^(charge|adjust charge)\b/, /^label\b/))
    return harmful('Labelled before what the label tells is in the machine (13.1: tune before label).', /label|charge/);
  if (is(/^(recover|charge|adjust charge)\b/, /^record .*\bquantities\b/))
    return harmful('Amounts are written down before they are weighed (13.1 records).', /record|recover|charge/);
  if (is(/^restore power/, /^prove-airflow/))
    return unclear('Power is not locked out there: the airflow of the machine as it was before the work (9.2).');
  if (is(/^lock-out power/, /^recover/))
    return unclear('Power off before recovering (13.1); sound jobs lock out before opening.');
  if (is(torch, /^watch/)) return harmful('The watch for fire is over before the torch is lit (11, braze).', /watch/);
  if (is(/^start\b/, /^prove-airflow/)) return harmless('The airflow is proved before or after the start (13.1, 9.2).');
  if (is(/^(start|adjust|prove-airflow)\b/, /^leak-check/))
    return harmless('A look with the detector needs gas in it and no more (7.4).');
  if (is(opens, onEnds)) return early(first, second, plan, earlier);
  if (is(/^prove-airflow/, /^adjust charge\b(?!.* to (sight-glass|level))/))
    return harmful('Adjusted before the airflow is proved (9.2; floor list).', /adjust|prove-airflow/);
  if (is(/^check (rotation|water)/, /^start/))
    return harmful('Started before it was looked at (13.1 start-up).', /start|check/);
  if (is(/^energise .* for /, /^start/))
    return harmful('Started on a cold crankcase (13.1: 12 h and more).', /start|energise/);
  if (is(/^lock-out power/, /^energise .* for /))
    return harmful('The lock-out switches the heater off again (13.1: 12 h and more).', /start|energise|lock-out/);
  if (is(/^(open|evacuate|decay-test|release|pressure-test)/, /^restore power/))
    return unclear('Whether the machine that gets its power back stands shut off with its charge.');
  if (is(/^install .*with clamp/, /^recover/)) return unclear('It may be reached otherwise.');
  if (is(/^wrap/, torch)) return harmful('The torch comes before the wet rags (13.1 braze).', /wrap|install|connect/);
  if (is(torch, /^unwrap/))
    return harmful('The rags are off before the torch is lit (13.1 braze).', /wrap|install|connect/);
  if (is(/^bypass .*(transducers|relief)/, strong) || is(strong, /^restore .*(transducers|relief)/))
    return harmful(
      'Relief valves and transducers stand under the test (7.1: isolate).',
      /bypass|restore|pressure-test/,
    );
  if (is(/^reset/, /^(start|adjust)/) && plan.kinds.includes('conversion'))
    return harmful('Runs on settings for the old refrigerant (13.3).', /reset|start|adjust/);
  if (is(/^hold .*(cloth|swab|clean|white)/i, /^(connect|place|install)/))
    return unclear('Who looks, and when, is for the shop; the rounds go on until the cloth is clean.');
  if (first.label !== null && second.back === first.label)
    return harmful('The way back leads on past the failed test (8.1: else repeat).', /back to/);
  if (is(/^check ignition/, /^(open|charge)/)) return unclear('Hangs on which of them lets the gas in.');
  if (is(/^hold .*cause/i, /^start/))
    return harmful('The cause of the burnout is not found before it runs (13.4).', /hold|start/);
  if (is(/^drain/, /^(flush|back-flush|purge)/))
    return unclear('What a low spot holds must come out (5.2); whether before the solvent or with it is not said.');
  if (is(/^drain/, /^(connect|install|pressure-test|evacuate|charge)/))
    return unclear('A trap of a closed line is drained by opening it again.');

  if (is(/^release/, /^(evacuate|decay-test)/))
    return unclear(
      'The pump starts on a little nitrogen, and there is none to let go after it: whoever reads the gauge stops.',
    );
  if (is(/^open\b.* by /, /^decay-test/) || is(/^decay-test/, /^return/))
    return unclear(
      'With that valve shut each of its sides is pumped from its own (13.1: evacuate with the valves open).',
    );
  if (first.verb === second.verb && /^(pressure-test|evacuate|adjust|change-oil|hold|acid-test)$/.test(first.verb))
    return unclear('Stages of one proof.');
  if ((ofEnds.test(first.verb) && ofFlow.test(second.verb)) || (ofFlow.test(first.verb) && ofEnds.test(second.verb)))
    return unclear('How fast the gas flows hangs on the opening at the end.');
  if (is(ofLines, /^(place|install)/) || is(/^(place|install)/, ofLines))
    return unclear('The new part may be in the way of the cleaning, or not.');
  if (second.verb === 'install' && /drier/.test(second.plain) && long.test(first.verb))
    return unclear('The drier is open longer (13.1: last).');
  if (is(/^evacuate/, /^break-vacuum/) || is(/^break-vacuum/, /^evacuate/))
    return harmless('A sweep less, or pulls in another order: the last pull and its proof stand (8.2).');
  if (is(/^break-vacuum/, opens))
    return unclear('It was at the pressure of the air already; whether nitrogen keeps the air out is not said (13.1).');
  if (printed.test(first.verb) || printed.test(second.verb)) return harmless('One of them only prints.');
  if (is(/^(start|adjust superheat)\b/, /^label\b/))
    return unclear('The label comes after the tuning (13.1), but tells nothing that it changes.');
  if (is(/^(return|restore|open|prove-airflow|read|run|reset)\b/, /^label\b/))
    return harmless('What the label tells is in the machine by then (13.1).');
  if (is(/^(return|reset)\b/, /^leak-check\b/) || is(/^(return|open|close|reset)\b/, /^record\b/))
    return harmless('Neither the look nor the record hangs on it.');
  if (is(/^(adjust|read)\b/, /^start .* in (cooling|heating|defrost)/))
    return unclear('In which mode it is read or adjusted, the plan then leaves open (9.2).');
  if (is(/^(cap|plug)\b/, /^hold\b/)) return unclear('How long the line stands open hangs on the wait.');
  if (modelled.test(first.verb) && !ofFlow.test(first.verb) && !torch.test(first.verb) && isCloth(second))
    return harmless('What the cloth shows hangs on the lines that are flushed alone (5.2).');
  if (asks.test(first.plain) && asks.test(second.plain)) return harmless('Two looks at the same machine.');
  if (is(/^acid-test .*severe/, /^lock-out/) || is(/^lock-out/, /^acid-test .*severe/))
    return harmless('The sample may be taken before or after the power is off (13.4).');
  if (late.test(first.verb)) return harmless('May as well be done later.');
  if (
    /^(prove-airflow|check|wrap|unwrap|reset|watch|change pump-oil|sample|pull-swab|hold .*cause)/i.test(first.plain) &&
    (modelled.test(second.verb) || late.test(second.verb)) &&
    !/^watch/.test(first.plain)
  )
    return harmless('Neither needs the other.');
  if (
    /^(prove-airflow|check|wrap|unwrap|reset|change pump-oil)/.test(second.plain) &&
    modelled.test(first.verb) &&
    first.verb !== 'start'
  )
    return harmless('Neither needs the other.');
  if (modelled.test(first.verb) && modelled.test(second.verb)) return harmless('Neither changes what the other needs.');
  if (first.verb === 'hold' && /^(trim|take-off|unplug|record|label|leak-check)$/.test(second.verb))
    return harmless('Neither needs the other.');
  if (late.test(second.verb) && /^(leak-check|label|record|notify|restore|untag|read|photo)$/.test(first.verb))
    return harmless('Either may come first.');
  return unclear('Which comes first hangs on more than the state of the plant.');
}

/** A step moved past others: harmful if one pair is, harmless if every pair is. */
export function movedPast(
  step: Line,
  past: readonly Line[],
  down: boolean,
  plan: Plan,
  steps: readonly Line[],
  again = false,
): Ruling {
  if (again && !down && step.verb === 'start' && past.some((each) => each.verb === 'recover'))
    return unclear('It runs once more on its old charge (13.1 baseline), and is started after the work as well.');
  const before = (each: Line): readonly Line[] => {
    const from = down ? each.from : Math.min(...past.map((line) => line.from));
    return steps.filter((line) => line !== step && line.from < from);
  };
  const pairs = past.map((each) =>
    down ? pair(step, each, plan, before(each)) : pair(each, step, plan, before(each)),
  );
  const broken = pairs.filter((each) => each.verdict === 'harmful');
  const lines = broken.map((each) => each.lines?.source).join('|');
  return (
    (broken[0] && { ...broken[0], lines: new RegExp(lines) }) ??
    pairs.find((each) => each.verdict === 'unclear') ??
    pairs[0] ??
    unclear('Past nothing.')
  );
}
