import { itemsOf } from './crew-tree';
import type { Figure, Line } from './scene';
import { lineChange, type Made } from './step-edits';
import { type Found, figuresIn, inSI, kindOf } from './units';

type Change = readonly [operator: string, find: RegExp, put: string];
const head = '^(\\s*(?:[\\w-]+: )?)';

/** A verb taken for its near relative, with the clauses that the relative has. */
const relatives: readonly Change[] = [
  ['recover to release', new RegExp(`${head}recover (\\S+).*?( \\{)?$`), '$1release $2 outdoors$3'],
  ['recover to pump-down', new RegExp(`${head}recover (\\S+).*?( \\{)?$`), '$1pump-down $2$3'],
  ['evacuate to pump-down', new RegExp(`${head}evacuate (.*?) to .*?( \\{)?$`), '$1pump-down $2$3'],
  ['decay-test to evacuate', new RegExp(`${head}decay-test (.*?) for .*?( \\{)?$`), '$1evacuate $2 to 500 micron$3'],
  ['release to recover', new RegExp(`${head}release .*?( \\{)?$`), '$1recover system to 0 psig$2'],
  ['flush to blow-out', new RegExp(`${head}flush `), '$1blow-out '],
  ['blow-out to flush', new RegExp(`${head}blow-out `), '$1flush '],
  ['cap to plug', new RegExp(`${head}cap `), '$1plug '],
  ['plug to cap', new RegExp(`${head}plug `), '$1cap '],
  ['crimp to pinch-off', new RegExp(`${head}(?:crimp|choke) (.*? at [a-z]+ ends?).*$`), '$1pinch-off $2'],
  ['install to place', new RegExp(`${head}install (.*?)( with .*)?$`), '$1place $2'],
  ['place to remove', new RegExp(`${head}place (?!new equipment)`), '$1remove '],
  ['remove to disconnect', new RegExp(`${head}remove (?!old|cores)`), '$1disconnect '],
  ['disconnect to remove', new RegExp(`${head}disconnect (.*?)( at [a-z]+ ends?)?$`), '$1remove $2'],
  ['cut-out to disconnect', new RegExp(`${head}cut-out `), '$1disconnect '],
  ['charge to adjust', new RegExp(`${head}charge .*?( \\{)?$`), '$1adjust charge$2'],
  ['start to restore', new RegExp(`${head}start .*?( \\{)?$`), '$1restore power$2'],
  ['stop to lock-out', new RegExp(`${head}stop system`), '$1lock-out power'],
  ['lock-out to stop', new RegExp(`${head}lock-out power`), '$1stop system'],
  ['energise to restore', new RegExp(`${head}energise .*?( \\{)?$`), '$1restore power$2'],
  ['restore to energise', new RegExp(`${head}restore power`), '$1energise controls'],
  ['prove-zero to read', new RegExp(`${head}prove-zero .*?( \\{)?$`), '$1read pressures$2'],
  ['change to remove', new RegExp(`${head}change (?!pump-oil)(.*?)( with .*)?$`), '$1remove $2'],
  ['return to close', new RegExp(`${head}return (.*?)( to (?:control|service))?$`), '$1close $2'],
];

/** A gas or another stuff taken for the one that is meant; a tool for another. */
const stuffs: readonly Change[] = [
  ['gas: air', new RegExp(`${head}((?:purge|blow-out) (?:(?! with | at ).)*)( at )`), '$1$2 with air$3'],
  ['gas: oxygen', new RegExp(`${head}((?:purge|blow-out) (?:(?! with | at ).)*)( at )`), '$1$2 with oxygen$3'],
  [
    'gas: test with air',
    new RegExp(`${head}(pressure-test (?:(?! with ).)*? to \\S+(?: psig| [kM]Pa gauge)?)`),
    '$1$2 with air',
  ],
  ['gas: break with refrigerant', / with nitrogen to/, ' with refrigerant to'],
  ['refrigerant: R-404A', new RegExp(`${head}((?:charge|adjust) .*with )R-(?!404A)\\S+`), '$1$2R-404A'],
  ['refrigerant: R-410A', new RegExp(`${head}((?:charge|adjust) .*with )R-(?!410A)\\S+`), '$1$2R-410A'],
  ['refrigerant: R-22', new RegExp(`${head}((?:charge|adjust|reset) .*(?:with|for) )R-(?!22\\b)\\S+`), '$1$2R-22'],
  ['oil: mineral', new RegExp(`${head}((?:change-oil|add-oil) .*(?:with|to) )(?:POE|PVE)`), '$1$2mineral'],
  ['tool: wrench', / with nitrogen at [\d.]+ [\w/]+/, ' with torque-wrench'],
  ['all: each open part to system', /each open part/, 'system'],
  [
    'all: system to each open part',
    /^(\s*(?:[\w-]+: )?(?:pressure-test|evacuate|decay-test) )system/,
    '$1each open part',
  ],
];

/** A unit of the other system behind the figure of this one. */
const units: readonly (readonly [operator: string, find: RegExp, put: string, unit: string])[] = [
  ['unit: psig to kPa gauge', /(?<=[1-9.]\d*0*) psig/, ' kPa gauge', 'kPa gauge'],
  ['unit: psig to MPa gauge', /(?<=[1-9.]\d*0*) psig/, ' MPa gauge', 'MPa gauge'],
  ['unit: micron to Pa absolute', /(?<!most \d+) micron/, ' Pa absolute', 'Pa absolute'],
  ['unit: micron of rise to Pa', /(?<=most \d+) micron/, ' Pa', 'Pa'],
  ['unit: inHg to kPa vacuum', /(?<=[1-9]\d*) inHg/, ' kPa vacuum', 'kPa vacuum'],
  ['unit: lb to kg', / lb(?! \d)/, ' kg', 'kg'],
  ['unit: oz to lb', /(?<! lb \d+(?:\.\d+)?) oz\b/, ' lb', 'lb'],
  ['unit: fl-oz to oz', / fl-oz/, ' oz', 'oz'],
  ['unit: kPa gauge to psig', / kPa gauge/, ' psig', 'psig'],
  ['unit: min to h', / min\b/, ' h', 'h'],
  ['unit: kg to lb', / kg\b/, ' lb', 'lb'],
];

/** The same amount in another unit. */
const same: readonly (readonly [from: string, to: string, factor: number])[] = [
  ['psig', 'kPa gauge', 6.89476],
  ['kPa gauge', 'psig', 1 / 6.89476],
  ['min', 's', 60],
  ['h', 'min', 60],
  ['inHg', 'kPa vacuum', 3.38639],
  ['cfh', 'L/min', 0.471947],
  ['kg', 'g', 1000],
];

export const partLine = /^\s+(?:([\w-]+): )?([\w-]+) (kept|new|added|reused|removed)\b/;
export interface Named {
  readonly name: string;
  readonly kind: string;
  readonly standing: string;
}
export const partsIn = (lines: readonly string[]): readonly Named[] =>
  lines.flatMap((line) => {
    const match = partLine.exec(line);
    return match ? [{ name: match[1] ?? match[2]!, kind: match[2]!, standing: match[3]! }] : [];
  });

const figureOf = (was: Found, now: { number: number; unit: string }): Figure => ({
  was: inSI(was.number, was.unit) ?? was.number,
  now: inSI(now.number, now.unit) ?? now.number,
  key: was.key,
  unit: was.unit,
  nowUnit: now.unit,
});

/** One word of a step taken for another. */
export function* crewWordEdits(lines: readonly string[], steps: readonly Line[]): Generator<Made> {
  const parts = partsIn(lines);
  for (const [at, step] of steps.entries()) {
    const was = lines[step.from]!;
    const made = lineChange(lines, step, at);
    for (const [operator, find, put] of [...relatives, ...stuffs]) {
      const now = was.replace(find, put);
      if (now !== was) yield made(operator, now);
    }
    for (const [operator, find, put, unit] of units) {
      const now = was.replace(find, put);
      if (now === was) continue;
      const [old, fresh] = [figuresIn(was), figuresIn(now)];
      const changed = old.findIndex((each, k) => each.unit !== fresh[k]?.unit);
      if (changed >= 0) yield made(operator, now, figureOf(old[changed]!, { number: old[changed]!.number, unit }));
    }
    for (const found of figuresIn(was)) {
      const other = same.find(([from]) => from === found.unit);
      if (!other || found.number === 0) continue;
      const number = Math.round(found.number * other[2] * 100) / 100;
      const now = was.slice(0, found.from) + number + was.slice(found.to).replace(` ${other[0]}`, ` ${other[1]}`);
      yield made('same in another unit', now);
    }
    yield* listEdits(lines, steps, at, made, parts);
    yield* figuresExchanged(lines, steps, at);
  }
  for (const item of itemsOf(lines, steps)) {
    if (item.kind !== 'repeat') continue;
    const was = lines[item.from]!;
    const now = was.replace(/at least (\d+), at most (\d+)/, 'at least $2, at most $1');
    if (now === was || /least (\d+), at most \1\b/.test(was)) continue;
    yield {
      operator: 'bounds exchanged',
      at: steps.indexOf(item.steps[0]!),
      was,
      now,
      lines: lines.map((line, k) => (k === item.from ? now : line)),
      touched: [item.from],
      group: [],
    };
  }
}

const list = /^(\s*(?:[\w-]+: )?[\w-]+ )([\w-]+(?:, [\w-]+)+)(?= at | with | to | for | by | after |$)(.*)$/;

/** Lists cut down, turned, split and run together; one part named for another of its kind. */
function* listEdits(
  lines: readonly string[],
  steps: readonly Line[],
  at: number,
  made: (operator: string, now: string) => Made,
  parts: readonly Named[],
): Generator<Made> {
  const step = steps[at]!;
  const was = lines[step.from]!;
  const kept = parts.find((each) => /-line$/.test(each.kind) && each.standing === 'kept');
  if (kept && / each kept line/.test(was)) yield made('first kept line only', was.replace('each kept line', kept.name));
  const several = list.exec(was);
  if (several) {
    const [, start = '', names = '', rest = ''] = several;
    const all = names.split(', ');
    yield made('list turned', `${start}${[...all].reverse().join(', ')}${rest}`);
    if (all.length > 2) yield made('first of list only', `${start}${all[0]}${rest}`);
    if (step.to === step.from) {
      const bare = start.replace(/^(\s*)[a-z][\w-]*: /, '$1');
      const split = [`${start}${all[0]}${rest}`, `${bare}${all.slice(1).join(', ')}${rest}`];
      yield {
        ...made('list split', split.join(' | ').trim()),
        lines: [...lines.slice(0, step.from), ...split, ...lines.slice(step.from + 1)],
        touched: [step.from, step.from + 1],
      };
    }
  }
  const next = steps[at + 1];
  const one = /^(\s*(?:[\w-]+: )?)([\w-]+) ([\w-]+(?:, [\w-]+)*)((?: at | with | by ).*)?$/;
  const [a, b] = [one.exec(was), next && next.from === step.to + 1 ? one.exec(lines[next.from]!) : null];
  if (a && b && a[2] === b[2] && a[4] === b[4] && step.to === step.from && next!.to === next!.from && !next!.label)
    yield {
      ...made('two run together', `${a[1]}${a[2]} ${a[3]}, ${b[3]}${a[4] ?? ''}`),
      lines: [
        ...lines.slice(0, step.from),
        `${a[1]}${a[2]} ${a[3]}, ${b[3]}${a[4] ?? ''}`,
        ...lines.slice(step.from + 2),
      ],
    };
  for (const part of parts) {
    const spoken = new RegExp(`(?<![\\w-])${part.name}(?![\\w-])`);
    const other = parts.find((each) => each !== part && each.kind === part.kind && each.name !== part.name);
    if (!other || !spoken.test(was) || /^(note|hold|photo|record)/.test(step.plain) || spoken.test(step.verb)) continue;
    if (new RegExp(`(?<![\\w-])${other.name}(?![\\w-])`).test(was)) continue;
    const code = was.replace(
      /^(\s*(?:[\w-]+: )?[\w-]+ )(.*)$/,
      (_, start: string, rest: string) => start + rest.replace(spoken, other.name),
    );
    if (code !== was) yield made('another of its kind', code);
  }
}

/** Figures of one kind, each written where the other belongs: those of two steps of a verb, or of a pull and its proof. */
function* figuresExchanged(lines: readonly string[], steps: readonly Line[], at: number): Generator<Made> {
  const step = steps[at]!;
  const was = lines[step.from]!;
  const to = steps.findIndex((each, k) => k > at && (each.verb === step.verb || proves(step, each)));
  const other = steps[to];
  if (!other) return;
  const text = lines[other.from]!;
  for (const mine of figuresIn(was)) {
    const theirs = figuresIn(text).find((each) => each.unit === mine.unit && kindOf(each.unit) !== null);
    if (!theirs || theirs.number === mine.number) continue;
    const now = was.slice(0, mine.from) + theirs.number + was.slice(mine.to);
    const then = text.slice(0, theirs.from) + mine.number + text.slice(theirs.to);
    yield {
      operator: 'figures exchanged',
      at,
      was,
      now: `${now.trim()} | ${then.trim()}`,
      lines: lines.map((line, k) => (k === step.from ? now : k === other.from ? then : line)),
      touched: [step.from, other.from],
      figure: figureOf(mine, theirs),
      past: [other],
      group: [step],
    };
    return;
  }
}
const proves = (first: Line, second: Line): boolean => first.verb === 'evacuate' && second.verb === 'decay-test';
