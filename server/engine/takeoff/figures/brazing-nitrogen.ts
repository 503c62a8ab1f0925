import { brazingFlow, brazingTimePerJoint, brazingVolumeChanges } from '../../reference/nitrogen-practice';
import { relation } from '../relation';

/** Nitrogen that flows while joints are brazed, m3 at 70 °F and 1 atm, with the air driven out first. */
export const brazingNitrogen = relation({
  name: 'brazing-nitrogen',
  title: 'Nitrogen while brazing',
  group: 6,
  inputs: {
    joints: {
      kind: 'count',
      title: 'number of joints',
      from: '`connect` at both ends of the line',
      valid: [0, 10_000],
    },
    flow: {
      kind: 'volume-flow',
      as: 'cfh',
      title: 'flow',
      from: '`with nitrogen at` in the step',
      default: brazingFlow,
    },
    timePerJoint: {
      kind: 'time',
      title: 'time for a joint',
      from: 'nothing in the plan',
      default: brazingTimePerJoint,
    },
    volume: { kind: 'volume', as: 'ft3', title: 'volume of the line', from: '`tube` and `length` of the line' },
    changes: {
      kind: 'count',
      title: 'number of volume changes before the torch',
      from: 'nothing in the plan',
      default: brazingVolumeChanges,
    },
  },
  output: 'volume',
  outputUnit: 'scf',
  formula: 'V = flow × joints × time for a joint + changes × V line',
  validity: 'nitrogen at hardly more than the atmosphere',
  sources: [brazingFlow.source, brazingTimePerJoint.source, brazingVolumeChanges.source],
  confidence: 'practice',
  assumptions: ['the flow runs from heating up until the joint is cool', 'the air is driven out once for the line'],
  examples: [
    {
      inputs: { joints: '2', flow: '5 cfh', timePerJoint: '6 min', volume: '0.194 ft3', changes: '10' },
      expect: '2.94 scf',
      tolerance: 1e-3,
      source: 'by hand: 5/60 × 12 min = 1.0, and 10 changes of 0.194 ft3 (handbook 6.3)',
    },
  ],
  compute: ({ joints, flow, timePerJoint, volume, changes }, { say }) => {
    const brazing = flow * joints * timePerJoint;
    const before = changes * volume;
    const gas = (one: number): string => say('volume', one, 'scf');
    return {
      value: brazing + before,
      notes: ['Counted at 70 °F and 1 atm.'],
      workings: () => [
        `air out = ${changes} × ${say('volume', volume, 'ft3')} = ${gas(before)}`,
        `while brazing = ${say('volume-flow', flow, 'cfh')} × ${joints} × ${say('time', timePerJoint)} = ${gas(brazing)}`,
        `together = ${gas(brazing + before)}`,
      ],
    };
  },
});
