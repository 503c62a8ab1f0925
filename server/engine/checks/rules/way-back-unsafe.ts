import { defineCheck } from '../define';
import { brokenWays } from '../ways-back';
import { chargeIntoGas } from './charge-into-gas';
import { chargeStillIn } from './charge-still-in';
import { closureLeftIn } from './closure-left-in';
import { compressorWithoutRefrigerant } from './compressor-without-refrigerant';
import { coresLeftOut } from './cores-left-out';
import { decayTestMissing } from './decay-test-missing';
import { evacuationNotDeep } from './evacuation-not-deep';
import { flushNoOutlet } from './flush-no-outlet';
import { flushNotPurged } from './flush-not-purged';
import { jointLeftOpen } from './joint-left-open';
import { lineNotDisconnected } from './line-not-disconnected';
import { notPressureTested } from './not-pressure-tested';
import { notPutBack } from './not-put-back';
import { openUnderPressure } from './open-under-pressure';
import { powerNotRestored } from './power-not-restored';
import { pressureAboveRating } from './pressure-above-rating';
import { pumpOntoPressure } from './pump-onto-pressure';
import { refrigerantVented } from './refrigerant-vented';
import { sectionNotEvacuated } from './section-not-evacuated';
import { sectionNotRecovered } from './section-not-recovered';
import { torchHazard } from './torch-hazard';
import { vacuumBrokenWithAir } from './vacuum-broken-with-air';
import { valveLeftShut } from './valve-left-shut';
import { valvesOpenedEarly } from './valves-opened-early';
import { wetWithSolvent } from './wet-with-solvent';
import { workWithoutLockOut } from './work-without-lock-out';

/** Checks whose finding may come with the second time round alone, the gravest first. */
const looked = {
  steps: [
    openUnderPressure,
    torchHazard,
    refrigerantVented,
    chargeStillIn,
    workWithoutLockOut,
    pumpOntoPressure,
    pressureAboveRating,
    compressorWithoutRefrigerant,
    valvesOpenedEarly,
    vacuumBrokenWithAir,
    lineNotDisconnected,
    flushNoOutlet,
    flushNotPurged,
    closureLeftIn,
    decayTestMissing,
  ],
  wholes: [
    jointLeftOpen,
    sectionNotRecovered,
    chargeIntoGas,
    notPressureTested,
    sectionNotEvacuated,
    evacuationNotDeep,
    wetWithSolvent,
    powerNotRestored,
    notPutBack,
    valveLeftShut,
    coresLeftOut,
  ],
} as const;

/** Going back after a failed test, over steps that what stands there by then does not suit. */
export const wayBackUnsafe = defineCheck({
  name: 'way-back-unsafe',
  severity: 'error',
  title: 'The way back after a failed step leads into a hazard',
  acceptable: false,
  reads: 'state',
  ground: 'practice',
  yieldsTo: [...looked.steps, ...looked.wholes].map((each) => each.name),
  meaning:
    'If this step fails, the crew lets down what the test put in and goes back. At one of the steps that it then goes through again, the plant stands as that step must not meet it, though it was well the first time: refrigerant let in meanwhile, power back, a line already closed.',
  why: 'Nobody rehearses the way back; it is gone in a hurry, and the sheet is trusted.',
  source: 'common practice (handbook 2.1, 11, 13.1: the same rules hold the second time)',
  wrong: {
    base: 'split',
    instead: [
      ['  connect each kept', '  close-up: connect each kept'],
      [
        'charge system\n',
        'charge system\n  read pressure of system {\n    if-fails back to close-up, at most 2 times # <- here\n  }\n',
      ],
    ],
  },
  right: {
    base: 'split',
    instead: [
      ['  connect each kept', '  close-up: connect each kept'],
      [
        'pressure-test each open part to 450 psig for 30 min',
        'pressure-test each open part to 450 psig for 30 min {\n    if-fails back to close-up, at most 2 times\n  }',
      ],
    ],
  },
  plan(whole) {
    for (const { way, entry, report } of brokenWays(whole.view, looked)) {
      whole.reportAt(
        way.bound,
        { from: way.label.from, to: way.label.to },
        {
          message: (say) =>
            `When the crew goes back from here, ${say.step(entry.cause)} meets another state than the first time: ${typeof report.message === 'string' ? report.message : report.message(say)}`,
          root: way.bound,
          ...(report.concerns && { concerns: report.concerns }),
          related: [{ cause: entry.cause, message: 'it breaks here the second time' }, ...(report.related ?? [])],
        },
        way.step.file,
      );
    }
  },
});
