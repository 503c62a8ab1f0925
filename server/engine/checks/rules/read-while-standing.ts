import { defineCheck } from '../define';
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
    'Superheat, subcooling, amps, the temperature split, the drop over a drier or the readings of the record are taken while no machine runs: before the start, or after a stop that no start follows.',
  why: 'What is written down says nothing of the machine; the next crew trims the charge by it.',
  source: 'common practice (handbook 13.1: read when it runs)',
  wrong: {
    base: 'split',
    instead: [['start system\n', 'read amps # <- here\n    start system\n']],
  },
  right: { base: 'split', instead: [['adjust charge', 'read amps after 10 min\n    adjust charge']] },
  step(here) {
    if (here.before.running) return;
    // A record may be written when the machine that gave its readings has been stopped again.
    if (here.step.word.word === 'record' && [...here.before.marks.keys()].some((mark) => mark.startsWith('start ')))
      return;
    const read = here.events('reads').flatMap((event) => event.of.filter((each) => ofRunning.has(each)));
    if (read.length === 0) return;
    here.report({
      message: `${listed(read)} ${read.length > 1 || read[0]!.endsWith('s') ? 'are' : 'is'} read while the system stands still: start it first.`,
      slot: 'what',
      root: 'standing',
      concerns: here.before.graph.parts.map((part) => part.index),
      fixes:
        here.before.power === 'on'
          ? [
              {
                title: 'Start before this step',
                edits: (mend) => edits(mend.insertBefore(here.step, 'start system')),
              },
            ]
          : [],
    });
  },
});
