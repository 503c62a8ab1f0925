import type { Plan } from '../../../server/engine/plan/plan';
import type { Step } from '../../../server/engine/plan/step';
import { doStep } from './doing';
import { endOfJob } from './end-of-job';
import type { Fault } from './fault';
import { Run } from './run';

/** Goes through a plan; a repeat is gone through twice, a way back is not. */
export function runOf(plan: Plan): readonly Fault[] {
  const run = new Run(plan);
  const go = (steps: readonly Step[]): void => {
    for (const step of steps) {
      run.step = step;
      if (step.word.word === 'repeat') {
        go(step.children);
        go(step.children);
      } else if (step.children.length > 0) go(step.children);
      else {
        doStep(run, step);
        run.settle();
      }
    }
  };
  go(plan.steps);
  run.step = null;
  endOfJob(run);
  return [...run.faults.values()];
}
