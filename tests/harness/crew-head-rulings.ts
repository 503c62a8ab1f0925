import { brokenBy } from './broken';
import { after } from './head-rulings';
import { harmful, harmless, type Ruling, type Scene, unclear } from './scene';

const mineralSuits = /^R-(12|22|11|123|502|290|600a|1270|717|409A|401A|408A|402A)$/;
const kindIn = (line: string): string => /^\s*(?:[\w-]+: )?([\w-]+)/.exec(line.replace(/^behind /, ''))?.[1] ?? '';

/** Rulings on facts above the steps taken for others. */
export function crewHeadRuling(scene: Scene): Ruling {
  const broken = brokenBy(scene);
  const direct = told(scene, broken?.verdict === 'harmful');
  if (direct?.verdict === 'harmful')
    return broken?.verdict === 'harmful' ? { ...direct, steps: broken.steps, parts: broken.parts } : direct;
  if (broken?.verdict === 'harmful' && !/^(same|stock|kind|acceptance|certificate)/.test(scene.edit.operator))
    return broken;
  return direct ?? broken ?? unclear('No ruling.');
}

function told({ edit, before: { plan } }: Scene, broken: boolean): Ruling | null {
  const { system } = plan;
  const { refrigerant, oil } = system;
  const steps = edit.steps.map((each) => each.plain).join('\n');
  const uses = (verbs: RegExp): boolean => plan.standard !== null || verbs.test(steps);
  const changes = refrigerant.after !== null && refrigerant.after !== refrigerant.before;
  switch (edit.operator) {
    case 'refrigerants turned':
      if (!changes) return unclear('The same before and after.');
      return harmful(
        'What goes in is said to come out, and the old one to go in: level, cylinder, charge and label go wrong (2.1, 9.1, 3.1).',
        /R-\d|refrigerant|charge|recover|holds|oil|kind|label|design-pressure/,
      );
    case 'oils turned':
      return oil.before === oil.after
        ? unclear('The same before and after.')
        : mineralSuits.test(after(plan))
          ? unclear('The old oil runs with it.')
          : harmful('The oil that was to go is said to stay (4.1).', /\boil\b|refrigerant/);
    case 'design pressures exchanged':
      return harmful('The low side above the high side (7.2).', /design-pressure|pressure-test|rated/);
    case 'superheat for subcooling':
    case 'subcooling for superheat': {
      if (!uses(/adjust charge(?!.* to sight-glass)/)) return unclear('Nothing is adjusted by it.');
      const fixed = plan.graph.parts.some((part) => /^(fixed-orifice|cap-tube)$/.test(part.kind.kind));
      const valve = plan.graph.parts.some((part) => /expansion-valve$/.test(part.kind.kind));
      const wrong = edit.operator === 'superheat for subcooling' ? valve && !fixed : fixed && !valve;
      return wrong
        ? harmful(
            'Charged by the figure that this metering device holds by itself (9.2).',
            /superheat|subcooling|adjust|expansion-valve|fixed-orifice|cap-tube/,
          )
        : unclear('Hangs on how it is charged.');
    }
    case 'outdoors in degC':
    case 'condensing in degC': {
      const degrees = Number(/ (\d+) deg/.exec(edit.now)?.[1] ?? 0);
      return degrees >= 58
        ? harmful(
            'Hotter than any weather, any room or any condenser of this plan (8.1, 9.2).',
            /outdoors|indoors|condensing/,
          )
        : unclear('Warm, and there may be such a place.');
    }
    case 'capacity in kW':
      return harmful(
        'Three thousand times the capacity: velocities and sizes go by it (10.1).',
        /capacity|velocity|tube|-line/,
      );
    case 'head: psig to kPa gauge':
      return harmful(
        'A seventh of the pressure: under what the refrigerant itself has (7.2).',
        /rated|design-pressure|test-pressure|relief|pressure-test|refrigerant/,
      );
    case 'head: lb to kg':
      return system.recoverCharge ||
        plan.graph.parts.some((part) => part.properties.holds?.mass) ||
        /charge \S+ with \S+ \d/.test(steps)
        ? harmful('More than twice what the machine holds (9.1).', /charge|holds|refrigerant|smallest-room|recover/)
        : unclear('Nothing to hold it against.');
    case 'head: oz to lb':
      return harmful(
        'Sixteen times what the machine holds (9.1).',
        /charge|holds|refrigerant|smallest-room|recover|small-appliance/,
      );
    case 'head: oil of another kind':
      return /fl-oz/.test(edit.was)
        ? harmful(
            'The compressor comes with another oil than the system is said to run on (4.1).',
            /\boil\b|refrigerant/,
          )
        : mineralSuits.test(after(plan))
          ? unclear('Alkylbenzene runs with it.')
          : harmful('Alkylbenzene does not come back with this refrigerant (4.1).', /\boil\b|refrigerant/);
    case 'head: oil in oz':
      return harmful('A weight where a volume is asked (language: oil).');
    case 'stock of another gas':
      return gasTaken(edit.was, steps, plan) === after(plan)
        ? harmful(
            'What is charged is not on the list of stock (floor list: stock falls short).',
            /charge|bring|refrigerant|adjust/,
          )
        : unclear('Whether that gas is used is not told by the words.');
    case 'stock in oz':
    case 'stock a third':
      return short(edit.now, plan);
    case 'stock in kg':
      return harmless('More than is used.');
    case 'stock one for two':
      return fewer(edit.was, plan);
    case 'stock one more':
      return harmless('A cylinder more than is used.');
    case 'kind: repair':
    case 'kind: new':
    case 'kind: conversion':
      return kindRuling(edit.operator, changes || (oil.after !== null && oil.after !== oil.before), plan);
    case 'certificate of small ones': {
      if (system.smallAppliance) return harmless('A small appliance asks no more (2.2: type I).');
      const others = edit.source
        .split('\n')
        .filter((line, k) => k !== edit.touched[0] && /certified (universal|type-I{1,2})\b(?!I)/.test(line));
      if (others.length > 0) return unclear('Another of the crew holds one.');
      const gas = refrigerant.before ?? after(plan);
      return /^R-(744|717|290|600a|1270)$/.test(gas)
        ? unclear('No certificate is asked for this refrigerant (2.2).')
        : uses(/^recover/m)
          ? harmful('No one of the crew may recover from a machine that is no small appliance (2.2).', /recover|crew/)
          : unclear('Nothing is recovered.');
    }
    case 'revision before':
      return harmful('Follows a revision that is no longer there (language).', /follows|^standard/);
    case 'revision not said':
      return unclear('It then follows whatever revision stands.');
    case 'acceptance dropped':
      return unclear('What was accepted stands, and whether it must be accepted is not for the trade.');
    case 'acceptance of another':
      return harmful(
        'Accepts something that there is not, and no longer what it was written for (language).',
        /accept/,
      );
    case 'departure: skip to change':
      return harmful(
        'A change that changes nothing, and the step that was to be skipped is done (language: departures).',
        new RegExp(labelIn(edit.was)),
      );
    case 'departure: change to replace':
      return harmful(
        'Clauses stand where steps are asked: nothing is done in its place (language: departures).',
        new RegExp(labelIn(edit.was)),
      );
    case 'departure: before to after':
    case 'departure: after to before':
      return unclear('Whether the added steps may come on the other side hangs on them.');
    case 'departure dropped':
      return unclear('The job then does what the standard says, and why it wanted otherwise is for its author.');
    case 'through dropped': {
      const name = /through ([\w-]+)/.exec(edit.was)?.[1] ?? '';
      const part = plan.graph.parts.find((each) => each.name === name);
      return part && /^(reversing-valve|branch-box)$/.test(part.kind.kind)
        ? harmful(
            'The way back does not go through the valve or box that it came out of: it has a passage that leads nowhere (13.0).',
            /circuit|through|reversing-valve|branch-box|branch-/,
          )
        : unclear('The part may have one passage.');
    }
    case 'branch left out': {
      const names = [
        ...edit.was.matchAll(/(?<=[{}] |\S )(?:([\w-]+): )?([\w-]+) (?:kept|new|added|reused|removed)\b/g),
      ].map((match) => match[1] ?? match[2]!);
      const left = new Set(
        edit.text
          .split('\n')
          .flatMap(
            (line) => /^\s+(?:([\w-]+): )?([\w-]+) (?:kept|new|added|reused|removed)\b/.exec(line)?.slice(1) ?? [],
          ),
      );
      const gone = names.filter((name) => !left.has(name) && new RegExp(`(?<![\\w-])${name}(?![\\w-])`).test(steps));
      return gone.length > 0
        ? harmful(
            'Steps speak of parts that there are not any more (language).',
            new RegExp(gone.map((name) => `(?<![\\w-])${name}(?![\\w-])`).join('|')),
          )
        : unclear('The circuit may be told with less.');
    }
    case 'parts exchanged':
      return flow(kindIn(edit.was), kindIn(edit.now));
    case 'part told twice':
      return broken ? null : unclear('It goes in with the rest; a second one of its kind may be meant.');
    case 'tubes exchanged':
      return tubes(edit.was, edit.now.split(' | ')[0]!, edit.source, edit.touched);
    default:
      return null;
  }
}

type Plan = Scene['before']['plan'];
const labelIn = (line: string): string => `\\b${/^\s*\w+ ([\w-]+)/.exec(line)?.[1] ?? 'x'}\\b`;

/** The refrigerant that a line of stock names, if a step or the standard charges. */
const gasTaken = (line: string, steps: string, plan: Plan): string | null =>
  plan.standard || /^(charge|adjust)/m.test(steps) ? (/refrigerant (R-\S+)/.exec(line)?.[1] ?? null) : null;

function short(now: string, plan: Plan): Ruling {
  const [, gas, number, unit] = /refrigerant (R-\S+) ([\d.]+) (lb|oz|kg)/.exec(now) ?? [];
  const kg = Number(number) * (unit === 'lb' ? 0.4536 : unit === 'oz' ? 0.02835 : 1);
  const need = plan.system.charge?.quantity.low;
  const holds = plan.graph.parts.reduce((sum, part) => sum + (part.properties.holds?.mass ?? 0), 0);
  if (gas !== after(plan) || !need) return unclear('What is needed of it is not stated.');
  if (kg < (need - holds) * 0.9)
    return harmful('Less than the charge that it is for (floor list: stock falls short).', /charge|bring|refrigerant/);
  return holds > 0 ? unclear('The unit brings most of it.') : harmless('Enough for the charge.');
}

function fewer(was: string, plan: Plan): Ruling {
  const several = Number(/ (\d+) x /.exec(was)?.[1] ?? 2);
  const kg = plan.system.recoverCharge?.quantity.low ?? plan.system.charge?.quantity.low;
  if (!/recovery/.test(was) || !kg) return unclear('How much of it is used is not told by the words.');
  if (/30/.test(was) && kg > 11.8)
    return harmful('More than one cylinder of that size takes (2.3).', /recover|bring|charge/);
  return several === 2 && /30/.test(was) && kg < 7 ? harmless('One is enough (2.3).') : unclear('Near its fill (2.3).');
}

function kindRuling(operator: string, changes: boolean, plan: Plan): Ruling {
  const came = plan.graph.parts.every((part) => part.standing === 'added' || part.standing === 'new');
  switch (operator) {
    case 'kind: repair':
      return changes
        ? harmful('A repair changes neither refrigerant nor oil (language: kinds of job).', /kind|refrigerant|\boil\b/)
        : unclear('What is asked of the one kind and not of the other is for law and house.');
    case 'kind: new':
      return came
        ? unclear('All of it is new.')
        : harmful(
            'A new machine has nothing to recover, to keep or to take off (language: kinds of job).',
            /kind|kept|recover|remove|cut-out|refrigerant|circuit/,
          );
    default:
      return changes
        ? unclear('The refrigerant changes: whether by new equipment or in the old is said elsewhere.')
        : harmful('A conversion that converts nothing (13.3).', /kind|refrigerant/);
  }
}

const liquid = /^(liquid-line|filter-drier|sight-glass|receiver|solenoid)$/;
const metering = /^(expansion-valve|electronic-expansion-valve|cap-tube|fixed-orifice)$/;
const small = /^(filter-drier|sight-glass|solenoid|access-valve|liquid-line)$/;

/** Two neighbours of the circuit in each other's place, in the order of the flow. */
function flow(first: string, second: string): Ruling {
  const pair = (a: RegExp, b: RegExp): boolean =>
    (a.test(first) && b.test(second)) || (a.test(second) && b.test(first));
  const lines = new RegExp(`circuit|\\b${first}\\b|\\b${second}\\b`);
  if (first === second) return unclear('Two of a kind.');
  if (pair(/^compressor$/, /^(condenser|evaporator)$/))
    return harmful('The gas goes into the compressor from the wrong side (13.0: flow order).', lines);
  if (pair(/^compressor$/, /^(suction-line|discharge-line|accumulator|suction-drier|oil-separator|vapour-line)$/))
    return harmful('The line or vessel stands on the other side of the compressor (13.0: flow order).', lines);
  if (pair(/^condenser$/, /^(liquid-line|receiver|filter-drier|sight-glass|discharge-line|oil-separator)$/))
    return harmful('What belongs before the condenser stands behind it, or the other way (13.0: flow order).', lines);
  if (pair(/^evaporator$/, metering))
    return harmful('The metering device stands behind the coil that it feeds (13.0: flow order).', lines);
  if (pair(/^evaporator$/, /^(suction-line|accumulator|liquid-line|vapour-line)$/))
    return harmful('The line or vessel stands on the other side of the coil (13.0: flow order).', lines);
  if (pair(metering, /^(receiver|sight-glass)$/))
    return harmful('What holds or shows liquid stands behind the metering device (13.0: flow order).', lines);
  if (small.test(first) && small.test(second)) return harmless('Small parts of one line may come in either order.');
  if (liquid.test(first) && liquid.test(second)) return unclear('Both are of the liquid side.');
  return unclear('Either order is found.');
}

function tubes(was: string, now: string, source: string, touched: readonly number[]): Ruling {
  const size = (line: string): number => {
    const [, whole, part, of] = /tube (?:(\d+)-)?(\d+)(?:\/(\d+))?/.exec(line) ?? [];
    return Number(whole ?? 0) + Number(part ?? 0) / Number(of ?? 1);
  };
  const lines = source.split('\n');
  const kindAt = (at: number): string => {
    let from = at;
    while (from > 0 && !/\{\s*$/.test(lines[from]!)) from--;
    return kindIn(lines[from]!);
  };
  const [a, b] = [kindAt(touched[0]!), kindAt(touched[1]!)];
  const [wide, narrow] = [Math.max(size(was), size(now)), Math.min(size(was), size(now))];
  if (/ mm /.test(was + now)) return unclear('Metric sizes are not reckoned here.');
  if (a === b) return unclear('Two lines of a kind.');
  if (/velocity accepted|accepted per/.test(source)) return unclear("The maker's table is cited.");
  const crossed = /^(suction|vapour)-line$/.test(a) !== /^(suction|vapour)-line$/.test(b) && /-line$/.test(a + b);
  return crossed && wide / narrow >= 1.6
    ? harmful('The vapour goes through the tube of the liquid (10.1).', /-line|tube|capacity|velocity/)
    : unclear('Sizes that differ little, or lines of one side.');
}
