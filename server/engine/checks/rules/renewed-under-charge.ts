import type { Plant } from '../../circuit/state';
import type { Entry } from '../../walk/walk';
import { has, leaves, visitOf } from '../course';
import { defineCheck, type Report } from '../define';
import { heldBy, refrigerantShows, touchedSpaces } from '../plant';
import { moveDown } from '../ways-out';

/** Seals that are renewed while the whole circuit stands under its charge. */
export const renewedUnderCharge = defineCheck({
  name: 'renewed-under-charge',
  severity: 'error',
  title: 'Seals are renewed with the charge still in',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'The step renews seals or gaskets, and every part of the circuit holds refrigerant above the atmosphere at that moment. Cores that are changed with a tool under pressure are not meant, unless the charge is recovered right after.',
  why: 'What is unscrewed blows out, with liquid behind it: frostbite, eyes, and the charge is gone.',
  source: 'recover, prove zero, then open: common practice (handbook 13.1)',
  wrong: {
    base: 'rack',
    instead: [
      ['    renew seals, cores\n', ''],
      ['    recover system to 0 inHg\n', '    renew seals # <- here\n    recover system to 0 inHg\n'],
    ],
  },
  right: { base: 'rack' },
  step(here) {
    if (!leaves(here.entry, /^(renew|change) .*(seal|gasket)/)) return;
    const held = underCharge(here.before);
    if (held) here.report(told(here.entry, held, 'seals'));
  },
  plan(whole) {
    const { entries } = whole;
    for (const [at, entry] of entries.entries()) {
      if (!leaves(entry, /^(renew|change) .*core/) || leaves(entry, /^(renew|change) .*(seal|gasket)/)) continue;
      const held = underCharge(entry.before);
      // A core comes out under pressure with its tool; whoever means to empty the machine anyway does it after that.
      if (held && emptiesNext(entries, at)) whole.report(entry, told(entry, held, 'cores'));
    }
  },
});

/** The parts that hold refrigerant under pressure, where every part of the circuit does. */
function underCharge(before: Plant): readonly number[] | null {
  const spaces = touchedSpaces(before);
  const [first] = spaces;
  return first && spaces.every((space) => refrigerantShows(before, heldBy(before, space))) ? first.parts : null;
}

/** Whether the charge comes out later in the same visit, before anything is started. */
function emptiesNext(entries: readonly Entry[], at: number): boolean {
  const next = entries.slice(at + 1).find((entry) => has(entry, 'recovers') || has(entry, 'starts'));
  return next !== undefined && has(next, 'recovers') && visitOf(next) === visitOf(entries[at]!);
}

const told = (entry: Entry, parts: readonly number[], what: string): Report => ({
  message: (say) =>
    `${say.parts(parts)} still hold refrigerant under pressure when ${what} are taken out: recover first, and prove zero.`,
  slot: 'what',
  fixes: [
    moveDown('Renew them when the charge is out', entry, 'after', (later) =>
      later.events.some((event) => event.type === 'opens'),
    ),
  ],
});
