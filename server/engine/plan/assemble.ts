import { bubblePressure, dewPressure, refrigerantNamed } from '../properties';
import { atmosphereAt, nearest } from '../quantity';
import { assembleCircuits } from './assemble-circuit';
import { type Bound, child, children } from './bind';
import { depart } from './departures';
import { Gather, stated, wordSpan } from './gather';
import type { Acceptance, BringItem, Change, CrewMember, Head, JobKind, Plan, Stated } from './plan';
import { isRefrigerant } from './refrigerants';
import type { Declaration, Scope } from './scope';
import { type Step, stepsOf } from './step';
import type { Name } from './term';
import type { Vocabulary } from './vocabulary';

export const oilFamilies = ['mineral', 'alkylbenzene', 'POE', 'PVE', 'PAG', 'PAO'] as const;

/** Statements of a plan that its head does not hang on. */
export const ofSteps = new Set(['steps', 'follows', 'change', 'skip', 'replace', 'before', 'after', 'accept']);
const heads = new WeakMap<
  Bound,
  { readonly statements: readonly Bound[]; readonly seen: readonly Bound[]; readonly head: Head }
>();

/** Puts one plan together from its statements and what its file sees. `today` stands in for the date of a plan without one. */
export function assemble(
  declaration: Declaration,
  scope: Scope,
  vocabulary: Vocabulary,
  today: string | null = null,
): Plan {
  const { bound, file } = declaration;
  const block = bound.block;
  const gather = new Gather(file);
  const head = headOf(declaration, scope, today);

  const follows = child(block, 'follows');
  const standardName = follows?.values['standard'] as Name | undefined;
  const standard = standardName ? (scope.find('standard', standardName.text) ?? null) : null;
  if (follows && standardName && !standard)
    gather.unknownName('standard', standardName.text, follows, standardName, scope.names('standard'));
  const own = child(block, 'steps');
  const standardSteps = standard ? stepsOf(child(standard.bound.block, 'steps')?.block ?? [], standard.file) : null;
  if (standardSteps && own)
    gather.report(
      'steps-twice',
      'error',
      'A plan that follows a standard states departures, not steps of its own.',
      own,
      wordSpan(own),
    );
  const base = standardSteps ?? stepsOf(own?.block ?? [], file);
  const { steps, departures } = depart(base, block, file, vocabulary, gather);
  if (base.length === 0 && !(standardName && !standard))
    gather.report(
      'no-steps',
      'warning',
      'The plan has no steps: state them in steps { … }, or follow a standard.',
      bound,
      wordSpan(bound),
    );
  return {
    ...head,
    head,
    declaration,
    scope,
    standard,
    followedRevision: (follows?.values['revision'] as number | undefined) ?? null,
    steps,
    departures,
    acceptances: acceptances(block, steps, file),
    findings: [...head.headFindings, ...gather.findings],
  };
}

/** The head of a plan; made anew only when one of its own statements, or a declaration that it sees, has changed. */
function headOf(declaration: Declaration, scope: Scope, today: string | null): Head {
  const statements = declaration.bound.block.filter((each) => each.word && !ofSteps.has(each.word.word));
  const seen = scope.declarations
    .filter((each) => each.kind !== 'plan' && each.kind !== 'standard' && each.kind !== 'record')
    .map((each) => each.bound);
  const [key] = statements;
  const known = key && heads.get(key);
  if (
    known &&
    same(known.statements, statements) &&
    same(known.seen, seen) &&
    known.head.file === declaration.file &&
    known.head.title === (declaration.title ?? declaration.name)
  )
    return known.head;
  const head = assembleHead(declaration, scope, today);
  if (key) heads.set(key, { statements, seen, head });
  return head;
}

const same = (a: readonly Bound[], b: readonly Bound[]): boolean =>
  a.length === b.length && a.every((each, k) => each === b[k]);

function assembleHead(declaration: Declaration, scope: Scope, today: string | null): Head {
  const { bound, file } = declaration;
  const block = bound.block;
  const gather = new Gather(file);

  const siteBlock = child(block, 'site')?.block ?? [];
  const altitude = stated(child(siteBlock, 'altitude'), 'height', atmosphereAt(0), gather);
  const atmosphere = atmosphereAt(altitude?.quantity.low ?? 0);
  const of = (at: readonly Bound[], word: string, slot: string) => stated(child(at, word), slot, atmosphere, gather);
  const workSpace = child(siteBlock, 'work-space');
  const indoors = of(siteBlock, 'indoors', 'temperature');
  const wetBulb = of(siteBlock, 'indoors', 'wetBulb');
  if (indoors && wetBulb && wetBulb.quantity.low > indoors.quantity.high)
    gather.report(
      'impossible',
      'error',
      `A wet bulb of ${wetBulb.amount.literal.text} cannot be in air of ${indoors.amount.literal.text}: it is never above the dry bulb.`,
      wetBulb.bound,
      wetBulb.span,
    );

  const systemBound = child(block, 'system') ?? null;
  const system = systemBound?.block ?? [];
  const refrigerant = changeOf(child(system, 'refrigerant'));
  const oils = oilsOf(scope);
  const written = changeOf(child(system, 'oil'));
  // A misspelt oil is told at its place; the rest of the plan is judged by the oil that was meant.
  const meant = (name: string | null): string | null =>
    name === null || isOil(name, scope) ? name : (nearest(name, oils) ?? name);
  const oil = { ...written, before: meant(written.before), after: meant(written.after) };
  for (const each of [child(system, 'refrigerant')]) {
    for (const slot of ['before', 'after'] as const) {
      const name = each?.values[slot] as Name | undefined;
      if (each && name && !isRefrigerant(name.text)) gather.unknownRefrigerant(name.text, each, name);
    }
  }
  for (const slot of ['before', 'after'] as const) {
    const each = child(system, 'oil');
    const name = each?.values[slot] as Name | undefined;
    if (each && name && !isOil(name.text, scope)) gather.unknownName('oil', name.text, each, name, oils);
  }

  const circuits = assembleCircuits(children(block, 'circuit'), scope, atmosphere, gather);
  circuits.graph.parts.forEach((part, index) => {
    const holds = part.properties.holds;
    const statement = circuits.statements[index]!;
    const name = child(statement.block, 'holds')?.values['refrigerant'] as Name | undefined;
    if (holds && name && !isRefrigerant(name.text))
      gather.unknownRefrigerant(name.text, child(statement.block, 'holds')!, name);
  });

  const rules = children(block, 'under').flatMap((under) => {
    const name = under.values['rules'] as Name | undefined;
    const found = name && scope.find('house-rules', name.text);
    if (name && !found) gather.unknownName('house-rules', name.text, under, name, scope.names('house-rules'));
    return found ? [found] : [];
  });

  const solventStatement = child(block, 'solvent');
  const solventName = solventStatement?.values['solvent'] as Name | undefined;
  const solvent = solventName ? (scope.find('solvent', solventName.text) ?? null) : null;
  if (solventStatement && solventName && !solvent)
    gather.unknownName('solvent', solventName.text, solventStatement, solventName, scope.names('solvent'));

  const bringBlock = child(block, 'bring');
  const date = (child(block, 'date')?.values['day'] as string | undefined) ?? null;
  return {
    file,
    declaration,
    name: declaration.name,
    title: declaration.title ?? declaration.name,
    revision: (child(block, 'revision')?.values['number'] as number | undefined) ?? null,
    date,
    day: date ?? today,
    kinds: (child(block, 'kind')?.values['kinds'] as readonly JobKind[] | undefined) ?? [],
    scope,
    rules,
    site: {
      atmosphere,
      altitude,
      outdoors: of(siteBlock, 'outdoors', 'temperature'),
      indoors,
      wetBulb,
      smallestRoom: of(siteBlock, 'smallest-room', 'volume'),
      lowestTube: of(siteBlock, 'lowest-tube', 'temperature'),
      workSpace: workSpace
        ? {
            where: (workSpace.values['where'] as string | undefined) ?? 'work space',
            volume: stated(workSpace, 'volume', atmosphere, gather),
            ventilation: stated(workSpace, 'ventilation', atmosphere, gather),
            open: workSpace.values['open'] === true,
            bound: workSpace,
          }
        : null,
    },
    crew: (child(block, 'crew')?.block ?? []).flatMap((each): CrewMember[] =>
      each.word && each.word.word !== 'note'
        ? [
            {
              role: each.word.word,
              number: (each.values['number'] as number | undefined) ?? 1,
              certificates: (each.values['certificates'] as readonly string[] | undefined) ?? [],
            },
          ]
        : [],
    ),
    system: {
      refrigerant,
      oil,
      recoverCharge: of(system, 'recover-charge', 'mass'),
      charge: of(system, 'charge', 'mass'),
      chargeCovers: of(system, 'charge', 'line'),
      lineAllowance: of(system, 'line-allowance', 'rate'),
      capacity: of(system, 'capacity', 'full'),
      leastCapacity: of(system, 'capacity', 'least'),
      subcooling: of(system, 'subcooling', 'target'),
      superheat: of(system, 'superheat', 'target'),
      designLow: of(system, 'design-pressure', 'low'),
      designHigh: of(system, 'design-pressure', 'high'),
      evaporating: of(system, 'evaporating', 'temperature'),
      condensing: of(system, 'condensing', 'temperature'),
      velocityAccepted: acceptedVelocity(child(system, 'velocity')),
      rated: of(system, 'rated', 'pressure'),
      smallAppliance: smallAppliance(child(system, 'small-appliance')),
      bound: systemBound,
    },
    circuits: circuits.specs,
    graph: circuits.graph,
    partStatements: circuits.statements,
    parameters: { testPressure: of(block, 'test-pressure', 'level'), solvent },
    bring: bringBlock ? bringItems(bringBlock, scope, gather) : null,
    notes: children(block, 'note').map((each) => each.values['text'] as string),
    startPressure: (name) =>
      restingPressure(name, of(siteBlock, 'outdoors', 'temperature'), of(siteBlock, 'indoors', 'temperature')) ??
      // Above its critical temperature (R-508B in a warm room) the vessel that it rests in settles the pressure, not a table.
      (isRefrigerant(name) ? [atmosphere * 2, atmosphere * 20] : null),
    headFindings: gather.findings,
  };
}

/** A machine at rest stands between the saturation pressures of its coldest and its warmest place; 70 °F where none is stated. */
function restingPressure(
  name: string,
  outdoors: Stated | null,
  indoors: Stated | null,
): readonly [number, number] | null {
  const refrigerant = refrigerantNamed(name);
  if (!refrigerant) return null;
  const stated = [outdoors, indoors].flatMap((each) => (each ? [each.quantity.low] : []));
  const temperatures = stated.length > 0 ? stated : [294.26];
  const low = dewPressure(refrigerant, Math.min(...temperatures));
  const high = bubblePressure(refrigerant, Math.max(...temperatures));
  return low === null || high === null ? null : [low, high];
}

const oilsOf = (scope: Scope): readonly string[] => [...oilFamilies, ...scope.names('oil')];
const isOil = (name: string, scope: Scope): boolean =>
  (oilFamilies as readonly string[]).includes(name) || scope.find('oil', name) !== undefined;

function changeOf(bound: Bound | undefined): Change<string> {
  const before = (bound?.values['before'] as Name | undefined)?.text ?? null;
  return { before, after: (bound?.values['after'] as Name | undefined)?.text ?? before };
}

const acceptedVelocity = (bound: Bound | undefined): string | null =>
  bound?.values['accepted'] === true ? ((bound.values['per'] as string | undefined) ?? 'accepted') : null;

const smallAppliance = (bound: Bound | undefined): 'runs' | 'dead' | null =>
  bound ? ((bound.values['compressor'] as 'runs' | 'dead' | undefined) ?? 'dead') : null;

const declaredAs: Readonly<Record<string, string>> = {
  solvent: 'solvent',
  nitrogen: 'nitrogen-cylinder',
  recovery: 'recovery-cylinder',
  'recovery-machine': 'recovery-machine',
  pump: 'pump',
  regulator: 'regulator',
};

function bringItems(bring: Bound, scope: Scope, gather: Gather): readonly BringItem[] {
  return bring.block.flatMap((bound): BringItem[] => {
    const word = bound.word?.word;
    if (!word || word === 'note') return [];
    const what = bound.values['what'] as Name | string | undefined;
    const named = typeof what === 'object' ? what : undefined;
    const kind = declaredAs[word];
    const declaration = kind && named ? (scope.find(kind, named.text) ?? null) : null;
    if (kind && named && !declaration)
      gather.unknownName(kind.replaceAll('-', ' '), named.text, bound, named, scope.names(kind));
    const hose = bound.values['hose'] as Name | undefined;
    if (hose && !scope.find('hose', hose.text)) gather.unknownName('hose', hose.text, bound, hose, scope.names('hose'));
    const gas = bound.values['refrigerant'] as Name | undefined;
    if (gas && !isRefrigerant(gas.text)) gather.unknownRefrigerant(gas.text, bound, gas);
    const oil = bound.values['oil'] as Name | undefined;
    if (oil && !isOil(oil.text, scope)) gather.unknownName('oil', oil.text, bound, oil, oilsOf(scope));
    const text = named?.text ?? gas?.text ?? oil?.text ?? (typeof what === 'string' ? what : '');
    return [
      {
        word,
        label: bound.label?.text ?? null,
        number: (bound.values['number'] as number | undefined) ?? 1,
        name: text,
        declaration,
        bound,
      },
    ];
  });
}

function acceptances(block: readonly Bound[], steps: readonly Step[], file: string): readonly Acceptance[] {
  const found: Acceptance[] = children(block, 'accept').flatMap((each) => acceptance(each, file, null));
  for (const step of steps) for (const each of acceptancesIn(step)) found.push(each);
  return found;
}

const accepted = new WeakMap<Step, readonly Acceptance[]>();

/** What is accepted in a step's block and in the steps under it; remembered by the step. */
function acceptancesIn(step: Step): readonly Acceptance[] {
  const known = accepted.get(step);
  if (known) return known;
  let found: Acceptance[] | null = null;
  for (const each of step.bound.block) {
    if (each.word?.word === 'accept') (found ??= []).push(...acceptance(each, step.file, step));
  }
  for (const inner of step.children) for (const each of acceptancesIn(inner)) (found ??= []).push(each);
  accepted.set(step, found ?? none);
  return found ?? none;
}

const none: readonly Acceptance[] = [];

function acceptance(bound: Bound, file: string, step: Step | null): readonly Acceptance[] {
  const check = bound.values['check'] as Name | undefined;
  return check
    ? [{ check: check.text, reason: (bound.values['because'] as string | undefined) ?? null, bound, file, step }]
    : none;
}
