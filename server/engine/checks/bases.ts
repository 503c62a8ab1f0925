import type { Example } from './define';

/** The plans that the checks' examples stand in. Invented; each is sound with the steps that it brings itself. */

const materials = `solvent shop-flush {
  density 1.25 kg/L
  boils 100 degF
  removes mineral, alkylbenzene, POE, PVE, PAG
  suits R-22, R-410A, R-448A, R-454B, R-32
  delivers 18 fl-oz/min at 90 psig
  container 12 lb, upright
  share-of-volume 15 %
  least-per-pass 8 fl-oz
}

nitrogen-cylinder n2-80 {
  water-volume 0.565 ft3
  full 2265 psig
}

nitrogen-cylinder n2-250 {
  water-volume 1.55 ft3
  full 2265 psig
}

recovery-cylinder rc-30 {
  water-capacity 26.2 lb
  tare 24 lb
  service-pressure 400 psig
  retest-by 2029-06
}

recovery-cylinder rc-125 {
  water-capacity 123 lb
  tare 60 lb
  service-pressure 400 psig
  retest-by 2029-06
}

recovery-machine rm-2 {
  made 2021
  suits R-22, R-404A, R-410A, R-448A, R-454B, R-32
}

pump vp-8 {
  flow 8 cfm
  ultimate 20 micron
  suits A1, A2L
}

hose vac-3-4 {
  bore 3/4 in
  length 4 ft
}

regulator reg-800 {
  outlet 800 psig
  relief 100..650 psig adjustable
}
`;

interface Base {
  readonly statements: readonly string[];
  readonly steps: string;
}

const split: Base = {
  statements: [
    'revision 1',
    'date 2027-05-18',
    'kind changeout',
    'site {\n  altitude 0 ft\n  outdoors 80 degF\n  indoors 75 degF, wet-bulb 63 degF\n  work-space yard open-air\n  smallest-room 9600 ft3\n}',
    'crew {\n  lead certified universal\n}',
    'system {\n  refrigerant R-22 -> R-454B\n  oil mineral -> POE\n  recover-charge 7 lb\n  charge 6 lb for 15 ft of line\n  capacity 36000 Btu/h\n  subcooling 10 Δ°F\n  design-pressure low 250 psig, high 450 psig\n}',
    'circuit {\n  compressor new\n  condenser new {\n    holds R-454B 6 lb\n    valves closed\n  }\n  liquid-line kept {\n    tube 3/8 in ACR\n    length 40 ft\n    joint brazed\n  }\n  filter-drier new\n  expansion-valve new\n  evaporator new {\n    rated 500 psig\n    leak-sensor built-in\n  }\n  suction-line kept {\n    tube 7/8 in ACR\n    length 40 ft\n    joint brazed\n  }\n}',
    'test-pressure 450 psig',
    'solvent shop-flush',
  ],
  steps: `survey system
lock-out power
recover system to 0 inHg
prove-zero system
disconnect each kept line at both ends
cut-out filter-drier
remove old equipment
inspect each kept line for low-spots, traps, kinks, wall
crimp each kept line at far end, leaving 1/8 in
blow-out each kept line at 50 psig for 30 s into container
repeat until clear, at least 2, at most 4 {
  flush each kept line into container
  purge each kept line at 50 psig for 15 s into container
}
purge each kept line at 100 psig for 60 s into container
trim each kept line at far end
place new equipment
connect each kept line at both ends with nitrogen at 5 cfh
install filter-drier with nitrogen at 5 cfh
pressure-test each open part to 450 psig for 30 min
release nitrogen outdoors
evacuate each open part to 500 micron
decay-test each open part for 15 min, rise at most 300 micron
check ignition-sources within 10 ft
open service-valves
charge system
restore power
start system
adjust charge after 15 min
label system
record quantities, readings`,
};

const heatPump: Base = {
  statements: split.statements.map((each) =>
    each
      .replace('compressor new\n', 'compressor new\n  reversing-valve new\n')
      .replace('suction-line kept', 'vapour-line kept')
      .replace('filter-drier new', 'filter-drier new {\n    both-ways\n  }')
      .replace(/\n}$/, (end) =>
        each.startsWith('circuit') ? `\n  through reversing-valve\n  accumulator new${end}` : end,
      ),
  ),
  steps: split.steps,
};

const rack: Base = {
  statements: [
    'revision 1',
    'date 2027-02-09',
    'kind conversion',
    'site {\n  altitude 0 ft\n  outdoors 60 degF\n  work-space machine-room 6400 ft3, ventilation 600 cfm\n  smallest-room 4800 ft3\n}',
    'crew {\n  lead certified type-II\n}',
    'system {\n  refrigerant R-22 -> R-448A\n  oil mineral -> POE\n  recover-charge 60 lb\n  charge 55 lb\n  superheat 8..12 Δ°F\n  design-pressure low 250 psig, high 400 psig\n}',
    'circuit {\n  valve-s: service-valve kept\n  comp: compressor kept {\n    oil 140 fl-oz\n  }\n  valve-d: service-valve kept\n  discharge-line kept {\n    tube 1-1/8 in ACR\n    length 20 ft\n  }\n  condenser kept {\n    rated 400 psig\n  }\n  receiver kept {\n    rated 400 psig\n    volume 1.2 ft3\n  }\n  liquid-drier: filter-drier new\n  liquid-main: liquid-line kept {\n    tube 5/8 in ACR\n    length 40 ft\n  }\n  parallel {\n    branch one {\n      sol-1: solenoid kept\n      txv-1: expansion-valve new\n      evap-1: evaporator kept {\n        rated 250 psig\n      }\n      epr-1: evaporator-pressure-regulator kept\n    }\n    branch two {\n      sol-2: solenoid kept\n      txv-2: expansion-valve new\n      evap-2: evaporator kept {\n        rated 250 psig\n      }\n    }\n  }\n  suction-main: suction-line kept {\n    tube 1-5/8 in ACR\n    length 30 ft\n  }\n  section low-side from one to suction-main\n  section high-side from discharge-line to liquid-main\n}',
  ],
  steps: `survey system
leak-check system
repeat until mineral at most 5 %, at least 3, at most 4 {
  change-oil comp to POE 140 fl-oz, leaving 30 %
  run comp for 24 h
  sample oil
}
lock-out power
open sol-1, sol-2 by magnet
open epr-1 by stem
recover system to 0 inHg
prove-zero system
cut-out liquid-drier
change txv-1, txv-2
renew seals, cores
install liquid-drier with nitrogen at 5 cfh
close valve-s, valve-d
pressure-test each open part to 10 psig for 15 min, bubbles on every joint
pressure-test low-side, high-side to 200 psig for 60 min
close sol-1, sol-2
pressure-test high-side to 350 psig for 60 min
release nitrogen outdoors
open valve-s, valve-d
open sol-1, sol-2 by magnet
evacuate system to 500 micron
decay-test system for 30 min, rise at most 200 micron
charge system with R-448A 50 lb as liquid
return sol-1, sol-2, epr-1 to control
reset low-pressure-switch, head-pressure-control, epr-1 for R-448A
energise controls for 24 h
restore power
start system
adjust superheat of txv-1, txv-2 after 15 min
adjust charge with R-448A to level after 15 min, at most 58 lb
label system
record quantities, readings
visit "Drier and oil" within 2 days {
  read pressure-drop of liquid-drier, at most 4 psi
  clean strainers
}`,
};

const ductless: Base = {
  statements: [
    'revision 1',
    'date 2027-06-14',
    'kind changeout',
    'site {\n  altitude 0 ft\n  outdoors 79 degF\n  indoors 73 degF, wet-bulb 61 degF\n  smallest-room 960 ft3\n}',
    'crew {\n  lead certified universal\n}',
    'system {\n  refrigerant R-410A -> R-32\n  oil POE\n  recover-charge 3 lb\n  charge 2 lb 8 oz for 50 ft of line\n  rated 600 psig\n  velocity accepted per "line table"\n}',
    'circuit {\n  compressor new\n  reversing-valve new\n  outdoor-coil: condenser new {\n    holds R-32 2 lb 8 oz\n    valves closed\n  }\n  eev: electronic-expansion-valve new\n  liquid: liquid-line kept {\n    tube 1/4 in ACR\n    length 24 ft\n    joint flare\n  }\n  head: evaporator new\n  vapour: vapour-line kept {\n    tube 3/8 in ACR\n    length 24 ft\n    joint flare\n  }\n  through reversing-valve\n  accumulator new\n}',
    'test-pressure 500 psig',
    'solvent shop-flush',
    'accept no-field-drier because "Maker fits none"',
  ],
  steps: `survey system
energise controls
open expansion-valves
recover system to 0 inHg
lock-out power
prove-zero system
disconnect each kept line at both ends
remove old equipment
inspect each kept line for low-spots, traps, kinks, wall
choke each kept line at far end to 1/8 in
blow-out each kept line at 50 psig for 30 s into container outdoors
repeat until clear, at least 2, at most 3 {
  flush each kept line into container outdoors
  purge each kept line at 50 psig for 15 s into container outdoors
}
purge each kept line at 100 psig for 45 s into container outdoors
take-off chokes
place new equipment
flare each kept line at both ends
connect each kept line at both ends with torque-wrench
energise controls
open expansion-valves
pressure-test each open part to 500 psig for 60 min, bubbles on every joint
release nitrogen outdoors
evacuate each open part to 500 micron
decay-test each open part for 30 min, rise at most 200 micron
check ignition-sources within 10 ft
open service-valves
charge system
restore power
start system in cooling
label system
record quantities, readings`,
};

const bases: Readonly<Record<Example['base'], Base>> = { split, 'heat-pump': heatPump, rack, ductless };

const wordOf = (statement: string): string => statement.split(/\s/, 1)[0] ?? '';
const indented = (text: string, by: string): string =>
  text
    .split('\n')
    .map((line) => (line === '' ? line : by + line))
    .join('\n');

/** The whole text of an example: its base with the example's steps and statements in it. Throws where a text to be put differently is missing. */
export function exampleText(example: Example): string {
  const base = bases[example.base];
  const own = splitStatements(example.plan ?? '');
  const replaced = new Set(own.map(wordOf));
  const statements = [...base.statements.filter((each) => !replaced.has(wordOf(each))), ...own];
  // A plan that follows a standard takes its steps from there.
  const steps = example.steps ?? (replaced.has('follows') ? null : base.steps);
  const body = steps === null ? statements : [...statements, `steps {\n${indented(steps, '  ')}\n}`];
  const declared = splitStatements(example.file ?? '');
  const names = new Set(declared.map(headOf));
  const before = [...splitStatements(materials).filter((each) => !names.has(headOf(each))), ...declared];
  let text = `${before.join('\n\n')}\n\nplan example "Example" {\n${body.map((each) => indented(each, '  ')).join('\n')}\n}\n`;
  if (example.after) text += `\n${example.after}\n`;
  for (const [from, by] of example.instead ?? []) {
    if (!text.includes(from)) throw new Error(`The example has no "${from}".`);
    text = text.replace(from, () => by);
  }
  return text;
}

const headOf = (statement: string): string => statement.split(/\s+/, 2).join(' ');

/** Cuts a text into its top statements, by braces. */
function splitStatements(text: string): string[] {
  const statements: string[] = [];
  let depth = 0;
  let current: string[] = [];
  for (const line of text.split('\n')) {
    if (line.trim() === '' && depth === 0) continue;
    current.push(line);
    depth += (line.match(/\{/g)?.length ?? 0) - (line.match(/\}/g)?.length ?? 0);
    if (depth === 0) {
      statements.push(current.join('\n'));
      current = [];
    }
  }
  if (current.length > 0) statements.push(current.join('\n'));
  return statements;
}

/** The clean-up of a burnout, as the `rack` base is given it by examples that have a suction drier. */
export const burnoutCleanUp: NonNullable<Example['instead']> = [
  ['install liquid-drier with', 'install liquid-drier, suction-drier with'],
  ['energise controls for 24 h', 'hold "Cause of the burnout found" by lead\n    energise controls for 24 h'],
  [
    'clean strainers',
    'clean strainers\n      read pressure-drop of suction-drier, at most 4 psi\n      acid-test system, at most 0.05 mgKOH/g',
  ],
];
