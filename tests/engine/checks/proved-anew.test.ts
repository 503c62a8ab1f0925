import { expect, it } from 'vitest';
import { foundIn } from './edited';

// Each visit that empties a drier's shell waits anew: what the visit before saw says nothing of it (40 CFR 82.156; handbook 2.1).
it.each(['replace-cores', 'remove-cores'])('the proof before %s is left out', (verb) => {
  const proof = '      prove-zero suction-drier\n';
  const work = `      ${verb} suction-drier\n`;
  const found = foundIn('burnout-cores-three-visits.jobplan', [[proof + work, work]]);
  expect(found.map(({ name }) => name)).toEqual(['not-proved-zero']);
});
