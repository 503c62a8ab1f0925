/** Reads the tables of states under `tests/fixtures/states`; their words are explained in the README there. */

/** A pressure or a range of them, Pa absolute. */
export interface Level {
  readonly low: number;
  readonly high: number;
}

/** What stands in one passage of a part: its gas and its two ends, inlet first. */
export interface PassageState {
  readonly holds: {
    readonly gas: string;
    readonly refrigerant: string | null;
    readonly level: Level;
    readonly liquid: boolean;
  };
  readonly open: readonly [boolean, boolean];
  /** Kind and hole (m) of what sits on the ends. */
  readonly closures: readonly [Closure | null, Closure | null];
  readonly valves: readonly ['open' | 'shut' | null, 'open' | 'shut' | null];
}
export interface Closure {
  readonly kind: string;
  readonly hole: number | null;
}
export interface PartExpectation {
  readonly mounted: 'old' | 'none' | 'new';
  readonly passages: readonly PassageState[];
  readonly position: string | null;
  readonly wet: boolean;
  readonly oilShare: number;
  readonly acid: boolean;
  /** Number of the step since when air has been in it. */
  readonly opened: number | null;
  readonly tested: Level | null;
  readonly evacuated: Level | null;
  readonly decayTested: boolean;
  readonly ownCharge: boolean;
  readonly cores: 'in' | 'out';
}
export interface PlantExpectation {
  readonly power: string;
  readonly running: boolean;
  readonly outOfAction: readonly string[];
  readonly lockedOut: readonly string[];
}
export interface StepExpectation {
  readonly number: number;
  readonly round: number | null;
  readonly text: string;
  readonly plant: PlantExpectation;
  readonly parts: ReadonlyMap<string, PartExpectation>;
}

/** Parts of the circuit by name, with the number of their passages: the one thing that the table takes from the plan. */
export type Passages = ReadonlyMap<string, number>;

const psi = 6894.757; // Pa
const inHg = 3386.389; // Pa, at 32 °F
const micron = 0.1333224; // Pa
const inch = 0.0254; // m

/** Pressure of the atmosphere, Pa, by the US Standard Atmosphere 1976. */
const atmosphereAt = (feet: number): number => 101325 * (1 - 2.25577e-5 * feet * 0.3048) ** 5.25588;

export function readTable(text: string, passages: Passages): readonly StepExpectation[] {
  let atmosphere = atmosphereAt(0);
  const saturated = new Map<string, Level>();
  const groups = new Map<string, readonly string[]>();
  const result: StepExpectation[] = [];
  let parts = new Map<string, PartExpectation>();
  let plant: PlantExpectation = { power: 'on', running: false, outOfAction: [], lockedOut: [] };
  let number = 0;

  const namesOf = (subject: string): readonly string[] => {
    if (subject === 'all') return [...passages.keys()].filter((name) => parts.get(name)?.mounted !== 'none');
    const group = groups.get(subject);
    if (group) return group.flatMap(namesOf);
    if (!passages.has(subject.replace(/\/\d$/, ''))) throw new Error(`step ${number}: no part is called "${subject}"`);
    return [subject];
  };

  text.split('\n').forEach((raw, at) => {
    const line = raw.replace(/ *#.*$/, '').trimEnd();
    if (line === '') return;
    const told = (what: string): Error => new Error(`line ${at + 1}: ${what}: "${line}"`);
    let match: RegExpMatchArray | null;
    if ((match = line.match(/^altitude ([\d.]+) ft$/))) atmosphere = atmosphereAt(Number(match[1]));
    else if ((match = line.match(/^saturated (\S+) = ([\d.]+)\.\.([\d.]+) psia$/))) {
      saturated.set(match[1]!, { low: Number(match[2]) * psi, high: Number(match[3]) * psi });
    } else if ((match = line.match(/^group (\S+) = (.+)$/))) groups.set(match[1]!, match[2]!.split(', '));
    else if (line === 'start') result.push({ number: 0, round: null, text: 'start', plant, parts });
    else if ((match = line.match(/^(\d+) (?:\(round (\d+)\) )?(.+)$/))) {
      number = Number(match[1]);
      result.push({ number, round: match[2] ? Number(match[2]) : null, text: match[3]!, plant, parts });
    } else if ((match = line.match(/^ {2}(plant|[^:]+): (.+)$/))) {
      if (result.length === 0) throw told('stands before the first step');
      const phrases = match[2]!.split(', ');
      if (match[1] === 'plant') plant = phrases.reduce((state, phrase) => plantAfter(state, phrase, told), plant);
      else {
        parts = new Map(parts);
        for (const subject of match[1]!.split(', ').flatMap(namesOf)) {
          const [name, passage] = subject.split('/') as [string, string?];
          const before = parts.get(name) ?? blank(passages.get(name)!, atmosphere);
          parts.set(
            name,
            phrases.reduce(
              (state, phrase) =>
                partAfter(state, passage ? Number(passage) - 1 : null, phrase, { number, atmosphere, saturated, told }),
              before,
            ),
          );
        }
      }
      result[result.length - 1] = { ...result.at(-1)!, plant, parts };
    } else throw told('not understood');
  });
  return result;
}

type Told = (what: string) => Error;

function plantAfter(state: PlantExpectation, phrase: string, told: Told): PlantExpectation {
  const rest = (lead: string): readonly string[] => {
    const words = phrase.slice(lead.length);
    return words === 'nothing' ? [] : words.split(' + ');
  };
  if (phrase === 'running' || phrase === 'stopped') return { ...state, running: phrase === 'running' };
  if (phrase.startsWith('power ')) return { ...state, power: phrase.slice(6) };
  if (phrase.startsWith('out of action ')) return { ...state, outOfAction: rest('out of action ') };
  if (phrase.startsWith('locked out ')) return { ...state, lockedOut: rest('locked out ') };
  throw told(`"${phrase}" says nothing of a plant`);
}

function blank(count: number, atmosphere: number): PartExpectation {
  const passage: PassageState = {
    holds: air(atmosphere),
    open: [false, false],
    closures: [null, null],
    valves: [null, null],
  };
  return {
    mounted: 'none',
    passages: Array.from({ length: count }, () => passage),
    position: null,
    wet: false,
    oilShare: 0,
    acid: false,
    opened: null,
    tested: null,
    evacuated: null,
    decayTested: false,
    ownCharge: false,
    cores: 'in',
  };
}
const air = (atmosphere: number): PassageState['holds'] => ({
  gas: 'air',
  refrigerant: null,
  level: { low: atmosphere, high: atmosphere },
  liquid: false,
});

interface Around {
  readonly number: number;
  readonly atmosphere: number;
  readonly saturated: ReadonlyMap<string, Level>;
  readonly told: Told;
}

/** What a phrase makes of a part; `only` is the one passage that it speaks of. */
function partAfter(state: PartExpectation, only: number | null, phrase: string, around: Around): PartExpectation {
  const passage = (change: Partial<PassageState>): PartExpectation => ({
    ...state,
    passages: state.passages.map((each, k) => (only === null || only === k ? { ...each, ...change } : each)),
  });
  const sides = (where: string): readonly [boolean, boolean] => [where !== 'outlet', where !== 'inlet'];
  switch (phrase) {
    case 'in':
      return { ...state, mounted: 'old' };
    case 'off':
      return { ...state, mounted: 'none' };
    case 'new': {
      // Valves at its ends are places of the circuit; how they stand is said beside it where the part comes with them shut.
      const fresh = blank(state.passages.length, around.atmosphere);
      return {
        ...fresh,
        mounted: 'new',
        opened: around.number,
        position: state.position,
        passages: fresh.passages.map((each, k) => ({ ...each, valves: state.passages[k]!.valves })),
      };
    }
    case 'air':
      return passage({ holds: air(around.atmosphere) });
    case 'closed':
      return passage({ open: [false, false] });
    case 'bare':
      return passage({ closures: [null, null] });
    case 'wet':
    case 'dry':
      return { ...state, wet: phrase === 'wet' };
    case 'old oil':
      return { ...state, oilShare: 1 };
    case 'no old oil':
      return { ...state, oilShare: 0 };
    case 'acid':
    case 'no acid':
      return { ...state, acid: phrase === 'acid' };
    case 'opened':
      return { ...state, opened: around.number };
    case 'never opened':
      return { ...state, opened: null };
    case 'untested':
      return { ...state, tested: null };
    case 'not evacuated':
      return { ...state, evacuated: null };
    case 'decay-tested':
    case 'not decay-tested':
      return { ...state, decayTested: phrase === 'decay-tested' };
    case 'own charge':
    case 'no own charge':
      return { ...state, ownCharge: phrase === 'own charge' };
    case 'cores in':
    case 'cores out':
      return { ...state, cores: phrase === 'cores in' ? 'in' : 'out' };
    case 'stands open':
      return { ...state, position: 'open' };
    case 'stands shut':
      return { ...state, position: 'shut' };
    case 'under control':
      return { ...state, position: 'control' };
  }
  let match: RegExpMatchArray | null;
  if ((match = phrase.match(/^open at (both|inlet|outlet)$/))) return passage({ open: sides(match[1]!) });
  if ((match = phrase.match(/^(cap|crimp|choke|plug|tape|pinch)(?: (\S+) in)? at (both|inlet|outlet)$/))) {
    const closure: Closure = { kind: match[1]!, hole: match[2] ? fraction(match[2]) * inch : null };
    const [inlet, outlet] = sides(match[3]!);
    return passage({ closures: [inlet ? closure : null, outlet ? closure : null] });
  }
  if ((match = phrase.match(/^valve at (both|inlet|outlet) (open|shut)$/))) {
    const [inlet, outlet] = sides(match[1]!);
    const how = match[2] as 'open' | 'shut';
    return passage({ valves: [inlet ? how : null, outlet ? how : null] });
  }
  if ((match = phrase.match(/^held open by (magnet|stem)$/))) return { ...state, position: `open by ${match[1]}` };
  if ((match = phrase.match(/^old oil ([\d.]+) %$/))) return { ...state, oilShare: Number(match[1]) / 100 };
  if ((match = phrase.match(/^tested (.+)$/))) return { ...state, tested: level(match[1]!, around) };
  if ((match = phrase.match(/^evacuated (.+)$/))) return { ...state, evacuated: level(match[1]!, around) };
  if ((match = phrase.match(/^(\S+) liquid$/))) {
    const held = around.saturated.get(match[1]!);
    if (!held) throw around.told(`no saturation is given for ${match[1]}`);
    return passage({ holds: { gas: 'refrigerant', refrigerant: match[1]!, level: held, liquid: true } });
  }
  if ((match = phrase.match(/^(R-\S+|nitrogen|vacuum)(?: with (R-\S+))? at (.+)$/))) {
    const cold = match[1]!.startsWith('R-');
    return passage({
      holds: {
        gas: cold ? 'refrigerant' : match[1]!,
        refrigerant: cold ? match[1]! : (match[2] ?? null),
        level: level(match[3]!, around),
        liquid: false,
      },
    });
  }
  throw around.told(`"${phrase}" says nothing of a part`);
}

const fraction = (text: string): number => {
  const [over, under] = text.split('/').map(Number);
  return over! / (under ?? 1);
};

function level(text: string, { atmosphere, told }: Around): Level {
  const match = text.match(/^([\d.]+?)(?:\.\.([\d.]+))? (psig|inHg|micron)$/);
  if (!match) throw told(`"${text}" is no level`);
  const pressure = (value: number): number =>
    match[3] === 'psig' ? atmosphere + value * psi : match[3] === 'inHg' ? atmosphere - value * inHg : value * micron;
  const low = Number(match[1]);
  return { low: pressure(low), high: pressure(match[2] ? Number(match[2]) : low) };
}
