// Makes one big plan of about the lines asked for, with places to break, hover and complete it: what a bench of language
// servers needs. Blocks of seven statements in ten lines; one line of each has two spaces too many, so that a formatter
// has work. Given to a bench, the default export is called with the number of lines.
const zones = ['den', 'loft', 'study', 'porch', 'attic', 'store', 'shop', 'hall'];
const lineName = (block) => `vapour-${zones[block % zones.length]}`;

const branch = (zone) => `      branch ${zone} {
        eev-${zone}: electronic-expansion-valve new
        liquid-${zone}: liquid-line kept {
          tube 1/4 in ACR
          length 24 ft
          joint flare
        }
        head-${zone}: evaporator new {
          leak-sensor built-in
        }
        vapour-${zone}: vapour-line kept {
          tube 3/8 in ACR
          length 24 ft
          joint flare
        }
      }`;

const header = `# A made-up plan of any length.
solvent bench-flush "Line flush, non-flammable" {
  density 1.25 kg/L
  boils 100 degF
  removes mineral, alkylbenzene, POE
  suits R-410A, R-32
  delivers 18 fl-oz/min at 90 psig
  container 12 lb, upright
}

plan long-day "A plan of many phases" {
  revision 1
  date 2027-06-14
  kind changeout

  site {
    altitude 1200 ft
    outdoors 79 degF
    indoors 73 degF, wet-bulb 61 degF
    smallest-room 9600 ft3
  }

  crew {
    lead certified universal
  }

  system {
    refrigerant R-410A -> R-32
    oil POE -> POE
    recover-charge 5 lb 8 oz
    charge 4 lb 0 oz for 110 ft of line
    capacity 24000 Btu/h, least 8000 Btu/h
    rated 600 psig
  }

  circuit {
    compressor new
    reversing-valve new
    outdoor-coil: condenser new {
      holds R-32 4 lb 0 oz
      valves closed
    }
    main-liquid: liquid-line kept {
      tube 3/8 in ACR
      length 36 ft
      joint flare
    }
    branch-box new {
      volume 0.03 ft3
    }
    parallel {
${zones.map(branch).join('\n')}
    }
    through branch-box
    main-vapour: vapour-line kept {
      tube 5/8 in ACR
      length 36 ft
      joint flare
    }
    through reversing-valve
  }

  solvent bench-flush

  steps {
    energise controls
    open expansion-valves
    recover: recover system to 10 inHg
    lock-out power
    prove-zero system
    break-old: break-vacuum with nitrogen to 0 psig
    disconnect each kept line at both ends
    remove old equipment
    look: inspect each kept line for low-spots, traps, kinks, wall
`.split('\n');

const footer = `  }
}
`.split('\n');

/** Block number `block`: seven statements in ten lines. */
const makeBlock = (block) => [
  `    phase "Rounds, part ${block}" {`,
  `      rounds-${block}: repeat until clear, at least 2, at most 4 {`,
  `        flush ${lineName(block)} into container outdoors`,
  `        purge ${lineName(block)} at 50 psig for 15 s into container outdoors`,
  '      }',
  `      purge ${lineName(block)} at 100 psig for   45 s into container outdoors`,
  `      inspect ${lineName(block)} for low-spots, traps`,
  '      hold "Lead sees a clean cloth" by lead',
  '    }',
  '',
];

/**
 * A clean plan of about `count` lines.
 *
 * Places are `{ line, character }`, from zero, in UTF-16 units. Each of `toggles` has in `insert` characters of which one,
 * typed there, makes an error on that line; at each of `syntaxes` the removal of one character breaks the syntax.
 */
export default function document(count) {
  const blocks = Math.max(4, Math.round(count / 10));
  const lines = header.slice(0, -1);
  const starts = [];
  for (let block = 0; block < blocks; block++) {
    starts.push(lines.length);
    lines.push(...makeBlock(block));
  }
  lines.push(...footer.slice(0, -1));

  const place = (block, row, text, further) => ({
    line: starts[block] + row,
    character: makeBlock(block)[row].indexOf(text) + further,
  });
  const spread = (number, make) =>
    Array.from({ length: number }, (_, n) => make(1 + Math.floor(((n + 0.5) / number) * (blocks - 2))));
  return {
    text: `${lines.join('\n')}\n`,
    lines: lines.length,
    blocks,
    statements: blocks * 7,
    toggles: spread(31, (block) => ({ ...place(block, 2, lineName(block), 3), insert: 'qvwxyz' })),
    syntaxes: spread(13, (block) => place(block, 0, '{', 0)),
    hover: spread(30, (block) => place(block, 3, 'purge', 1)),
    completion: spread(30, (block) => place(block, 6, ' for ', 5)),
    definition: spread(30, (block) => place(block, 3, lineName(block), 1)),
  };
}
