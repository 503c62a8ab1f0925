import type { Entry } from '../../walk/walk';
import { has, isCharge, timeOf } from '../course';
import { defineCheck, type Whole } from '../define';
import { listed } from '../listed';
import { edits } from '../support';

/** Readings that a machine gives only while it runs. */
const ofRunning = new Set([
  'superheat',
  'subcooling',
  'amps',
  'temperature-split',
  'pressure-drop',
  'freeze-time',
  'harvest-time',
  'readings',
]);

/** A reading of the running machine taken while it stands. */
export const readWhileStanding = defineCheck({
  name: 'read-while-standing',
  severity: 'warning',
  title: 'A reading is taken while the system stands still',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['refrigerant-not-stated', 'compressor-without-refrigerant', 'power-not-restored', 'not-started'],
  meaning:
    'Superheat, subcooling, amps, the temperature split, the drop over a drier or the readings of the record are taken while no machine runs: before the start, or after a stop that no start follows; or pressures with a time that it has run.',
  why: 'What is written down says nothing of the machine; the next crew trims the charge by it.',
  source: 'common practice (handbook 13.1: read when it runs)',
  wrong: {
    base: 'split',
    instead: [['start system\n', 'read amps # <- here\n    start system\n']],
  },
  right: { base: 'split', instead: [['adjust charge', 'read amps after 10 min\n    adjust charge']] },
  plan(whole) {
    // A record may be written when the machine that gave its readings has been stopped again; a run before the charge
    // went in gave none of it.
    let ran = false;
    for (const entry of whole.entries) {
      if (isCharge(entry)) ran = false;
      if (entry.after.running) ran = true;
      look(whole, entry, ran);
    }
  },
});

function look(whole: Whole, entry: Entry, ran: boolean): void {
  const { before } = entry;
  if (before.running || !has(entry, 'reads')) return;
  const { step } = entry.slot;
  if (step.word.word === 'record' && ran) return;
  // Pressures can be read of a machine at rest; with a time that it has run, they are those of its run.
  const run = timeOf(entry, 'after') > 0;
  const read = entry.events.flatMap((event) =>
    event.type === 'reads' ? event.of.filter((each) => ofRunning.has(each) || (run && each === 'pressures')) : [],
  );
  if (read.length === 0) return;
  whole.report(entry, {
    message: `${listed(read)} ${read.length > 1 || read[0]!.endsWith('s') ? 'are' : 'is'} read while the system stands still: start it first.`,
    slot: 'what',
    root: 'standing',
    concerns: before.graph.parts.map((part) => part.index),
    fixes:
      before.power === 'on'
        ? [{ title: 'Start before this step', edits: (mend) => edits(mend.insertBefore(step, 'start system')) }]
        : [],
  });
}
