/** Ways to say the same sound job otherwise. Each takes a plan's text and gives it back changed, or as it was where nothing of it applies. */
export type Rewrite = (text: string) => string;

/** Names of the kept lines of a plan, in flow order: by label, or by kind where there is none. */
function keptLines(text: string): readonly string[] {
  const found = [...text.matchAll(/^ +(?:([a-z][\w-]*): )?([a-z-]+-line) (?:kept|reused)\b/gm)];
  return found.map((match) => match[1] ?? match[2]!);
}

/** The lines of a block that opens at a line, without the braces, and where it ends. */
function blockAt(lines: readonly string[], at: number): { readonly inner: readonly string[]; readonly end: number } {
  const indent = /^ */.exec(lines[at]!)![0];
  const end = lines.findIndex((line, n) => n > at && line === `${indent}}`);
  return { inner: lines.slice(at + 1, end), end };
}

const outdent = (line: string): string => line.replace(/^ {2}/, '');

/** A repeat written out: its steps stand there as often as it asks at the least. */
const writeOutRepeats: Rewrite = (text) => {
  const lines = text.split('\n');
  for (let at = lines.length - 1; at >= 0; at--) {
    const head = /^ *(?:[\w-]+: )?repeat until clear(?:, at least (\d+))?/.exec(lines[at]!);
    if (!head) continue;
    const { inner, end } = blockAt(lines, at);
    const label = /^ *([\w-]+): /.exec(lines[at]!)?.[1];
    if (label && new RegExp(`(?:to|change|replace|before|after|skip) ${label}\\b`).test(text)) continue;
    const once = inner.map(outdent).map((line) => line.replace(/^( *)[\w-]+: /, '$1'));
    const times = Number(head[1] ?? 1);
    lines.splice(at, end - at + 1, ...Array.from({ length: times }, () => once).flat());
  }
  return lines.join('\n');
};

/** Headings taken off: the steps of a phase stand in the plan's own block. */
const withoutPhases: Rewrite = (text) => {
  const lines = text.split('\n');
  for (let at = lines.length - 1; at >= 0; at--) {
    if (!/^ *phase "/.test(lines[at]!)) continue;
    const { inner, end } = blockAt(lines, at);
    lines.splice(at, end - at + 1, ...inner.map(outdent));
  }
  return lines.join('\n');
};

/** A step with a list of parts becomes one step a part. */
const onePartAStep =
  (words: string): Rewrite =>
  (text) =>
    text.replace(
      new RegExp(`^( *)(${words}) ([\\w-]+(?:, [\\w-]+)+)( (?:at|with|by|to|for) [^\\n{]*)?$`, 'gm'),
      (_whole, indent: string, word: string, parts: string, rest: string | undefined) =>
        parts
          .split(', ')
          .map((part) => `${indent}${word} ${part}${rest ?? ''}`)
          .join('\n'),
    );

const replacing =
  (...pairs: readonly (readonly [RegExp, string])[]): Rewrite =>
  (text) =>
    pairs.reduce((so, [from, by]) => so.replace(from, by), text);

export const rewrites: Readonly<Record<string, Rewrite>> = {
  'the kept lines by their names': (text) => {
    const names = keptLines(text);
    return names.length === 0 ? text : text.replace(/each kept line/g, names.join(', '));
  },
  'the kept lines one step each': (text) => {
    const names = keptLines(text);
    if (names.length === 0) return text;
    return text.replace(
      /^( *)((?!inspect|flush|purge|blow-out)[a-z-]+) each kept line( [^\n{]*)?$/gm,
      (_whole, indent: string, word: string, rest: string | undefined) =>
        names.map((name) => `${indent}${word} ${name}${rest ?? ''}`).join('\n'),
    );
  },
  'repeats written out': writeOutRepeats,
  'headings left out': withoutPhases,
  'parts cut out one by one': onePartAStep('cut-out|remove|change'),
  'parts put in one by one': onePartAStep('install|connect|flare'),
  'valves one by one': onePartAStep('open|close|return|tag|untag|bypass'),
  'both ends unsaid': replacing([/^( *(?:[\w-]+: )?(?:disconnect|connect|flare) [^\n]*?) at both ends/gm, '$1']),
  'near and far end apart': replacing([
    /^( *)disconnect ([^\n{]*) at both ends$/gm,
    '$1disconnect $2 at near end\n$1disconnect $2 at far end',
  ]),
  'a drier placed, then connected': replacing([
    /^( *)install ([\w-]*(?:filter-)?drier[\w-]*) with nitrogen at ([^\n,]*)$/gm,
    '$1place $2\n$1connect $2 at both ends with nitrogen at $3',
  ]),
  'clauses the other way round': replacing(
    [/ at (\d+ psig) for (\d+ s) into container( outdoors)?/g, ' into container$3, for $2, at $1'],
    [/ for (\d+ min), rise at most (\d+ micron)/g, ', rise at most $2, for $1'],
  ),
  'no commas': replacing([
    /, (rise|at least|at most|leaving|bubbles|wet-bulb|least|beyond|depth|within|high) /g,
    ' $1 ',
  ]),
  'pressures in kPa': replacing(
    [/\bto 10 psig\b/g, 'to 70 kPa gauge'],
    [/\bat 50 psig\b/g, 'at 345 kPa gauge'],
    [/\bat 100 psig\b/g, 'at 690 kPa gauge'],
    [/\bto 2 psig\b/g, 'to 14 kPa gauge'],
    [/\bto 450 psig\b/g, 'to 3.11 MPa gauge'],
    [/\bto 250 psig\b/g, 'to 17.3 bar gauge'],
    [/\bto 0 inHg\b/g, 'to 0 psig'],
    [/\bto 10 inHg\b/g, 'to 34 kPa vacuum'],
  ),
  'vacuum in other units': replacing(
    [/\bto 500 micron\b/g, 'to 0.5 torr'],
    [/\bto 400 micron\b/g, 'to 53 Pa absolute'],
    [/\bto 300 micron\b/g, 'to 0.4 mbar'],
    [/\b1500 micron\b/g, '2 mbar'],
    [/\brise at most 200 micron\b/g, 'rise at most 26 Pa'],
    [/\brise at most 300 micron\b/g, 'rise at most 0.3 torr'],
    [/\brise at most 250 micron\b/g, 'rise at most 0.33 mbar'],
  ),
  'times in other units': replacing(
    [/\b60 min\b/g, '1 h'],
    [/\b30 min\b/g, '0.5 h'],
    [/\b24 h\b/g, '1 day'],
    [/\b60 s\b/g, '1 min'],
  ),
  'lengths and weights in metric units': replacing(
    [/\b(\d+) ft$/gm, '$1.0 ft'],
    [/\bcharge 6 lb$/gm, 'charge 2.72 kg'],
    [/\bat 5 cfh\b/g, 'at 2.4 L/min'],
    [/\bat 8 cfh\b/g, 'at 3.8 L/min'],
    [/\bleaving 1\/8 in\b/g, 'leaving 3.2 mm'],
    [/\bwithin 10 ft\b/g, 'within 3 m'],
  ),
  'nitrogen by pressure at an open end': replacing([/with nitrogen at \d+ cfh/g, 'with nitrogen at 1.5 psig']),
  'chokes for crimps': replacing(
    [/^( *)crimp ([^\n{]*) at far end, leaving ([^\n]*)$/gm, '$1choke $2 at far end to $3'],
    [/^( *)trim [^\n{]* at far end(?: +#[^\n]*)?$/gm, '$1take-off chokes'],
  ),
  'tape for crimps': replacing(
    [/^( *)crimp ([^\n{]*) at far end, leaving ([^\n]*)$/gm, '$1tape $2 at far end, leaving $3'],
    [/^( *)trim ([^\n{]*) at far end(?: +#[^\n]*)?$/gm, '$1unplug $2 at far end'],
  ),
  'each open part for the system': replacing([
    /^( *(?:[\w-]+: )?(?:pressure-test|evacuate|decay-test)) system\b/gm,
    '$1 each open part',
  ]),
  'released to nothing': replacing([/release nitrogen( outdoors)?$/gm, 'release nitrogen to 0 psig$1']),
  'a label at every step': (text) => {
    let number = 0;
    return text.replace(/^( {4,})(survey|lock-out|recover|prove-zero|disconnect|restore|start|label) /gm, (whole) =>
      whole.replace(/^( *)/, (indent) => `${indent}step-${++number}: `),
    );
  },
  'a note, a reason and somebody at steps': replacing(
    [
      /^( *(?:[\w-]+: )?lock-out power)$/gm,
      '$1 {\n      by electrician\n      note "Isolator behind the stair"\n    }',
    ],
    [/^( *(?:[\w-]+: )?survey system)$/gm, '$1 because "Nobody knows what was done here"'],
    [/^( *(?:[\w-]+: )?prove-zero system)$/gm, '$1 {\n      by lead\n    }'],
  ),
  'steps that change nothing among them': replacing(
    [/^( *)(?:[\w-]+: )?lock-out power\b/gm, '$1photo plates\n$1notify owner\n$&'],
    [/^( *)(?:[\w-]+: )?prove-zero system\b/gm, '$1weigh cylinder\n$&'],
    [/^( *)(?:[\w-]+: )?label system\b/gm, '$1photo joints\n$&'],
  ),
  'every part with a name of its own': (text) => {
    let number = 0;
    return text.replace(
      /^( {4,})(compressor|condenser|evaporator|accumulator|receiver|expansion-valve|solenoid) (new|kept)\b/gm,
      (whole) => whole.replace(/^( *)/, (indent) => `${indent}own-${++number}: `),
    );
  },
};
