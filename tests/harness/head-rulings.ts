import type { Plan } from '../../server/engine/plan/plan';
import { harmful, harmless, type Ruling, type Scene, unclear } from './scene';

const unknown = /misspelt|unknown|impossible|departure label/;
/** Refrigerants that mineral oil runs with: CFC, HCFC and hydrocarbons (handbook 4.1). */
const mineralSuits = /^R-(12|22|11|123|502|290|600a|1270|717|409A|401A|408A|402A)$/;
const mild = /^R-(32|454A|454B|454C|452B|455A|1234yf|1234ze\(E\))$/;
/** Medium-pressure refrigerants of 40 CFR 82.152 (handbook 2.1). */
export const medium = /^R-(12|134a|1234yf|513A|500|409A|401A|450A)$/;
/** What a circuit cannot do without. */
const essential =
  /^(compressor|condenser|evaporator|expansion-valve|electronic-expansion-valve|cap-tube|fixed-orifice|coaxial-coil)$/;
export const after = (plan: Plan): string => plan.system.refrigerant.after ?? plan.system.refrigerant.before ?? '';
const named = (name: string, source: string): boolean =>
  new RegExp(`(?<![\\w-])${name.replace(/[.]/g, '\\.')}(?![\\w-])`).test(source);

/** Rulings on what stands above the steps. Null where the state decides, or where the edit is of a step. */
export function headRuling({ edit, before: { plan } }: Scene): Ruling | null {
  if (edit.at >= 0) return null;
  const steps = edit.steps
    .filter(
      (each) => !/^(wrap|unwrap|tag|untag|notify|photo|move-product|read|check|record|label|hold)$/.test(each.verb),
    )
    .map((each) => each.plain)
    .join('\n');
  const uses = (verbs: RegExp): boolean => plan.standard !== null || verbs.test(steps);
  if (unknown.test(edit.operator))
    return harmful(
      'A word, a name or a figure that there is not (language).',
      edit.operator === 'file misspelt'
        ? /^\s*(follows|under|solvent|nitrogen|recovery|pump|regulator|recovery-machine)\b|flush/
        : null,
    );
  switch (edit.operator) {
    case 'psig to psi':
    case 'difference to temperature':
    case 'unit dropped':
      return harmful('A figure without its unit, or with one that leaves open what it is (8.4; language).');
    case 'use dropped': {
      const file = /use "([^"]*)"/.exec(edit.was)?.[1] ?? '';
      const theirs = plan.scope.declarations.filter((each) => each.file.endsWith(file));
      return theirs.some((each) => named(each.name, edit.source.replace(edit.was, '')))
        ? harmful(
            'Names of that file are used and nobody knows them now (language).',
            new RegExp(theirs.map((each) => `\\b${each.name}\\b`).join('|')),
          )
        : harmless('No name of that file is used here.');
    }
    case 'standard revision':
      return harmful('Follows a revision that there is not (language).', /follows|^standard/);
    case 'plan revision':
      return harmless('The author numbers his revisions as he likes.');
    case 'because dropped':
      return /^\s*(before|after|change|skip|replace|accept)\b/.test(edit.was)
        ? harmful('A departure or an acceptance with no reason (floor list; language).')
        : unclear('A remark less.');
    case 'refrigerant propane':
    case 'refrigerant carbon dioxide':
    case 'refrigerant of the old': {
      const holds = plan.graph.parts.some((part) => part.properties.holds !== undefined);
      const rising =
        plan.system.refrigerant.after !== null && plan.system.refrigerant.after !== plan.system.refrigerant.before;
      const gas =
        edit.operator === 'refrigerant of the old'
          ? plan.system.refrigerant.before
          : edit.operator === 'refrigerant propane'
            ? 'R-290'
            : 'R-744';
      if (gas === after(plan)) return unclear('Nothing changes.');
      return holds || rising || /with R-/.test(steps) || /for R-/.test(steps)
        ? harmful(
            'What is charged, or what the unit holds, is not what the system is said to run on; or it does not suit it (3.1, 7.2, 13.3).',
            /^\s*(refrigerant|holds|charge|recover-charge|smallest-room|design-pressure|rated|oil|velocity|line-allowance|solvent)\b|R-\d|\b(charge|adjust|reset)\b|tube/,
          )
        : unclear('The plan is as whole with the other one.');
    }
    case 'oil mineral':
      return mineralSuits.test(after(plan))
        ? unclear('Mineral oil runs with it.')
        : harmful('Mineral oil does not come back with this refrigerant (4.1).', /\boil\b|refrigerant/);
    case 'holds another':
      return after(plan) === 'R-22'
        ? unclear('Nothing changes.')
        : harmful('The unit is shipped with another refrigerant (floor list).', /holds|refrigerant|charge|open/);
    case 'unit valves open':
      return harmful(
        "The unit's charge is lost as soon as it is joined (13.2).",
        /holds|valves|place|connect|install|open|pressure-test|evacuate/,
      );
    case 'both ways dropped':
      return plan.graph.parts.some((part) => part.kind.kind === 'reversing-valve')
        ? harmful('A drier for one way in a line that flows both ways (floor list).', /filter-drier/)
        : unclear('It may flow one way only.');
    case 'tube far wider':
    case 'tube far smaller': {
      const block = blockAround(edit.source, edit.touched[0]!);
      const vapour = /(suction|vapour)-line/.test(block);
      if (/^(use|accept)|accepted per/m.test(edit.source) && /velocity accepted/.test(edit.source))
        return unclear("The maker's table is cited.");
      if (!plan.system.capacity || !vapour) return unclear('Hangs on the flow in it.');
      return edit.operator === 'tube far smaller'
        ? harmful('Far too narrow for the vapour: pressure drop (10.1).', /-line/)
        : /rise/.test(block)
          ? harmful('Far too wide to carry oil up (10.1).', /-line|rise/)
          : unclear('Oil comes back where the line does not rise.');
    }
    case 'certificate too low': {
      if (plan.system.refrigerant.before === 'R-744' && after(plan) === 'R-744')
        return harmless('Carbon dioxide may be let go anywhere; no certificate is asked (2.2).');
      const others = edit.source
        .split('\n')
        .filter((line, k) => k !== edit.touched[0] && /certified (universal|type-I{1,2})\b(?!I)/.test(line));
      if (others.length > 0) return unclear('Another of the crew holds one.');
      return harmful(
        'No one of the crew may recover this refrigerant (2.2: type III is low pressure).',
        /recover|crew/,
      );
    }
    case 'solvent dropped':
      if ((plan.bring ?? []).some((item) => item.word === 'solvent')) return unclear('The list of stock names one.');
      return uses(/^(?:[\w-]+: )?(flush|back-flush|bench-flush)/m)
        ? harmful('Flushed with nothing named (language: needs).', /flush|follows/)
        : harmless('Nothing is flushed.');
    case 'test pressure dropped':
      return uses(/to test-pressure/)
        ? harmful('The test has no pressure (language: needs).', /pressure-test|follows/)
        : harmless('No step names it.');
    case 'holds dropped':
    case 'unit valves dropped':
      return unclear('Whether the unit comes charged is then not said.');
    case 'date dropped':
      return unclear('Rules go by the day of the work.');
    case 'refrigerant dropped':
      return harmful(
        'Nothing says what runs in it: level, cylinders, pressures and charge hang on it (2.1, 7.2).',
        /^\s*(system|oil|charge)\b|\b(recover|charge)\b|holds|follows/,
      );
    case 'stock dropped':
      return dropped(edit.was, steps, plan);
    case 'cylinder full':
      return (
        roomFor(edit.was, plan) ??
        harmful('Gas into a cylinder that holds another (2.3: never mix), and over its fill.', /\brecover/)
      );
    case 'detector of another class':
      return mild.test(after(plan))
        ? harmful('The detector is not made for this refrigerant (floor list).', /leak-|check/)
        : unclear('It may do.');
    case 'date after the retest':
      return (plan.bring ?? []).some((item) => item.word === 'recovery')
        ? harmful('The cylinder is past its retest on that day (2.3).', /recovery|\brecover/)
        : unclear('Rules of that day are not known.');
    case 'design high / 10':
      return harmful(
        'The high side under the low side, and under what the refrigerant has (7.2).',
        /design-pressure|pressure-test/,
      );
    case 'design low x 10':
      return harmful(
        'Nothing here stands or is tested at such a pressure (7.1, 7.2).',
        /pressure-test|rated|tube|design-pressure|test-pressure/,
      );
    case 'test pressure x 2':
      return harmful(
        'Far above the design pressure of either side (7.1: at most a quarter more).',
        /pressure-test|rated|regulator|tube/,
      );
    case 'rating / 2': {
      const over = (stated: typeof plan.system.designLow): number | null =>
        stated && stated.quantity.low - plan.site.atmosphere;
      const [low, high] = [over(plan.system.designLow), over(plan.system.designHigh)];
      const now = edit.figure?.now;
      if (now === undefined || low === null || high === null) return null;
      if (now < low * 0.99)
        return harmful(
          'Under the design pressure of the low side, which no part of a circuit may be (7.2).',
          /pressure-test|rated|refrigerant|design-pressure|test-pressure/,
        );
      return now >= high ? harmless('Still rated for the high side (7.2).') : null;
    }
    case 'design low x 2': {
      const high = plan.system.designHigh?.quantity.low;
      const low = plan.system.designLow?.quantity.low;
      if (high === undefined || low === undefined) return null;
      const { atmosphere } = plan.site;
      return (low - atmosphere) * 2 >= (high - atmosphere) * 0.99
        ? harmful(
            'The low side at the pressure of the high side or over it (7.2: 80 against 104 or 122 degF).',
            /pressure-test|rated|tube|design-pressure|test-pressure|refrigerant/,
          )
        : null;
    }
    case 'rating / 10':
      return harmful(
        'Under the pressure of the refrigerant itself (7.2).',
        /pressure-test|rated|refrigerant|design-pressure|test-pressure/,
      );
    case 'room / 100':
      return roomRuling(plan);
    case 'outdoors frost': {
      const [, stated, unit] = /outdoors (-?\d+(?:\.\d+)?) deg(F|C)/.exec(edit.was) ?? [];
      const was = unit === 'C' ? Number(stated) * 1.8 + 32 : Number(stated);
      if (was < 35) return unclear('It freezes outdoors in the sound plan too; what is kept warm is not said (8.1).');
      return uses(/^(?:[\w-]+: )?evacuate/m) || (was >= 55 && uses(/^(?:[\w-]+: )?adjust charge/m))
        ? harmful(
            'Too cold to pump water off (8.1: above 35 degF) or to adjust by (9.2: from 55 degF).',
            /outdoors|evacuate|adjust|decay-test/,
          )
        : unclear('No step feels the weather.');
    }
    case 'charge x 10':
      return plan.system.recoverCharge ||
        plan.graph.parts.some((part) => part.properties.holds) ||
        /charge \S+ with \S+ \d/.test(steps)
        ? harmful('Ten times what the machine holds (9.1).', /charge|holds|smallest-room|refrigerant|adjust/)
        : unclear('Nothing to hold it against.');
    case 'recover-charge x 20':
      return (plan.bring ?? []).some((item) => item.word === 'recovery')
        ? harmful('More than the cylinders on the list take (2.3).', /recover/)
        : unclear('Cylinders are then brought for it.');
    case 'kind condenser to microchannel': {
      if (!/^\s+[\w-]+: /.test(edit.was) && named('condenser', steps))
        return harmful('Steps speak of a condenser that there is not (language).', /condenser/);
      return plan.kinds.includes('burnout') ||
        /^(?:[\w-]+: )?(flush|back-flush|blow-out|purge)\b/m.test(steps) ||
        plan.standard
        ? null
        : harmless('Only what is flushed or burnt asks what coil it is (5.1).');
    }
    case 'kind valve to orifice': {
      const name = /^\s+([\w-]+): /.exec(edit.was)?.[1];
      if (!name && named('expansion-valve', steps))
        return harmful('Steps speak of a valve that there is not (language).', /expansion-valve/);
      if (name && edit.steps.some((each) => /^adjust superheat/.test(each.plain) && named(name, each.plain)))
        return harmful('An orifice has no superheat to set (9.2: fixed orifice by the charge).', /adjust|orifice/);
      return plan.system.subcooling && /adjust charge(?!.* to sight-glass)/.test(steps)
        ? harmful('Subcooling as the target with a fixed orifice (9.2).', /subcooling|adjust|orifice/)
        : unclear('Hangs on how it is charged.');
    }
    case 'part dropped': {
      const name = /^\s+([\w-]+): /.exec(edit.was)?.[1] ?? /^\s+([\w-]+)/.exec(edit.was)?.[1] ?? '';
      // A clear sight glass is what one looks for, and small things that are renewed go by words of their own (language).
      const spoken = steps
        .split('\n')
        .filter((line) => !/^renew\b/.test(line))
        .join('\n')
        .replaceAll('to sight-glass clear', '');
      const kind = /^\s+(?:[\w-]+: )?([\w-]+)/.exec(edit.was)?.[1] ?? '';
      if (named(name, spoken) && !(plan.graph.parts.filter((each) => each.name === name).length > 1))
        return harmful(
          'Steps speak of a part that there is not (language).',
          new RegExp(`(?<![\\w-])${name}(?![\\w-])${essential.test(kind) ? '|circuit' : ''}`),
        );
      if (named(name, steps)) return unclear('The steps speak of it with a word that needs no part.');
      const alike = plan.graph.parts.filter((each) => each.kind.kind === kind).length;
      // A kept part that no step touches may be left out of the story; a new one may not.
      return alike === 1 && essential.test(kind) && / new\b/.test(edit.was)
        ? harmful('A circuit that lacks what makes it one (13.0).', /circuit|place|remove/)
        : unclear('The circuit may be told with less.');
    }
    case 'state new to removed': {
      const [, name, kind] = /^\s+(?:([\w-]+): )?([\w-]+)/.exec(edit.was) ?? [];
      const set = edit.steps.filter(
        (each) => /^(place|install|connect|change|renew)$/.test(each.verb) && named(name ?? kind ?? '', each.plain),
      );
      return set.length > 0 || essential.test(kind ?? '')
        ? harmful(
            'It is said to be gone for good, and it is set in place or cannot be done without.',
            /^\s*([\w-]+: )?(place|install|connect|change|renew)\b/,
          )
        : null;
    }
    case 'tube dropped':
      return /-line kept/.test(blockAround(edit.source, edit.touched[1] ?? 0)) &&
        plan.system.refrigerant.after !== plan.system.refrigerant.before &&
        plan.system.refrigerant.after !== null
        ? harmful('A kept line of unknown wall for another refrigerant (10.3; floor list).', /-line kept/)
        : null;
    case 'length dropped':
      return unclear('It can be measured on the job; until then nothing is reckoned from it.');
    case 'certificate dropped': {
      const others = edit.source.split('\n').filter((line, k) => k !== edit.touched[0] && /certified /.test(line));
      if (/^R-(744|717|290|600a|1270)$/.test(after(plan)))
        return unclear('No certificate is asked for this refrigerant (2.2).');
      return others.length > 0
        ? unclear('Another of the crew holds one.')
        : harmful('A crew is stated and no one of it is certified (2.2).', /recover|crew/);
    }
    default:
      return null;
  }
}

function blockAround(source: string, line: number): string {
  const lines = source.split('\n');
  let from = line;
  while (from > 0 && !/\{\s*$/.test(lines[from]!)) from--;
  let to = line;
  while (to < lines.length && lines[to]!.trim() !== '}') to++;
  return lines.slice(from, to).join('\n');
}

function dropped(was: string, steps: string, plan: Plan): Ruling {
  const word = /^\s*(?:[\w-]+: )?([\w-]+)/.exec(was)?.[1] ?? '';
  const label = /^\s*([\w-]+): /.exec(was)?.[1];
  if (label && named(label, steps))
    return harmful('A step fills a cylinder that is not on the list (language).', new RegExp(`\\b${label}\\b`));
  const again = (plan.bring ?? []).filter((item) => item.word === word).length > 1;
  const needs: Readonly<Record<string, RegExp>> = {
    solvent: /flush/,
    nitrogen: /pressure-test|purge|blow-out|nitrogen/,
    recovery: /\brecover /,
    refrigerant: /charge \S+ with/,
    oil: /change-oil|add-oil/,
  };
  const need = needs[word];
  if (again || !need || !(need.test(steps) || plan.standard))
    return unclear('A tool less on the list, or another of its kind is there.');
  return harmful(
    'The list leaves out what the steps use (floor list: stock falls short).',
    new RegExp(`${need.source}|bring|follows`),
  );
}

function roomRuling(plan: Plan): Ruling {
  const room = plan.site.smallestRoom?.quantity.low;
  const charge = plan.system.charge?.quantity.low;
  if (!room || !charge) return unclear('No room or no charge is stated.');
  const share = charge / (room / 100);
  // A quarter of the lower flammable limit of the mildly flammable ones is near 0.07 kg/m3; A1 limits lie near 0.2 to 0.4.
  return share > 0.4 || (mild.test(after(plan)) && share > 0.3)
    ? harmful(
        'More refrigerant than the room may take (11, room limit; floor list).',
        /smallest-room|refrigerant|charge|holds|leak-sensor/,
      )
    : unclear('Near the limit of the room.');
}

/** What cylinders of these sizes take of R-134a, kg (handbook 2.3); they are named by their size. */
const takes: readonly (readonly [size: RegExp, kg: number])[] = [
  [/-30\b/, 11.5],
  [/-50\b/, 20.9],
  [/-125\b/, 54],
];

/** A cylinder that holds the same refrigerant already; null where it is another, burnt, or too much. */
function roomFor(was: string, plan: Plan): Ruling | null {
  if ((plan.system.refrigerant.before ?? after(plan)) !== 'R-134a' || plan.kinds.includes('burnout')) return null;
  const kg = (plan.system.recoverCharge ?? plan.system.charge)?.quantity.low;
  const most = takes.find(([size]) => size.test(was))?.[1];
  if (kg === undefined || most === undefined) return unclear('It holds the same; whether there is room is not told.');
  return kg + 18 * 0.4536 <= most ? harmless('The same refrigerant, and room for it (2.3).') : null;
}
