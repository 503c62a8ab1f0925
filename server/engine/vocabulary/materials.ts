import { choice, clock, count, date, list, name, quantity, text } from '../plan/terms';
import { clause, first, flag, maybe, word } from '../plan/vocabulary';

/** Words of the shop's materials, as their data sheets and collars give them. */
export const materialWords = [
  word({ word: 'density', places: ['solvent', 'oil'], once: true, form: { density: first(quantity('density'), 'of the liquid') }, meaning: 'Density of the liquid.', example: 'density 1.25 kg/L', roles: ['figure'] }),
  word({ word: 'boils', places: ['solvent'], once: true, form: { temperature: first(quantity('temperature'), 'at sea level') }, meaning: 'Boiling point: how fast it leaves the line.', example: 'boils 100 degF', roles: ['check', 'sheet'] }),
  word({ word: 'removes', places: ['solvent'], once: true, form: { oils: first(list(name('oil')), 'oils') }, meaning: 'The oils that it takes away.', example: 'removes mineral, POE', roles: ['check'] }),
  word({ word: 'suits', places: ['solvent', 'recovery-machine', 'oil'], once: true, form: { refrigerants: first(list(name('refrigerant')), 'refrigerants') }, meaning: 'The refrigerants that it may be used with.', example: 'suits R-22, R-454B', roles: ['check'] }),
  word({
    word: 'delivers', places: ['solvent'], once: true, form: { rate: first(quantity('volume-flow'), 'how fast'), at: clause('at', quantity('pressure'), 'nitrogen behind it') },
    meaning: 'How fast the container gives it, at which nitrogen pressure.', example: 'delivers 18 fl-oz/min at 90 psig', roles: ['figure', 'state'],
  }),
  word({ word: 'container', places: ['solvent'], once: true, form: { mass: first(quantity('mass'), 'net'), position: maybe(choice('upright', 'inverted'), 'while it gives') }, meaning: 'The container that it comes in.', example: 'container 12 lb, upright', roles: ['figure'] }),
  word({ word: 'share-of-volume', places: ['solvent'], once: true, form: { share: first(quantity('share'), 'of the line volume') }, meaning: 'Solvent for one pass, as a share of the line volume.', example: 'share-of-volume 15 %', roles: ['figure'] }),
  word({ word: 'least-per-pass', places: ['solvent'], once: true, form: { volume: first(quantity('volume'), 'for one pass') }, meaning: 'The least that makes a pass.', example: 'least-per-pass 8 fl-oz', roles: ['figure'] }),
  word({ word: 'flammable', places: ['solvent'], once: true, meaning: 'The solvent burns.', example: 'flammable', roles: ['check'] }),
  word({ word: 'use-by', places: ['solvent'], once: true, form: { day: first(date(), 'last day or month') }, meaning: 'Not to be used after.', example: 'use-by 2028-03', roles: ['check'] }),
  word({ word: 'water-volume', places: ['nitrogen-cylinder'], once: true, form: { volume: first(quantity('volume'), 'inside') }, meaning: 'Inside volume of the cylinder.', example: 'water-volume 1.55 ft3', roles: ['figure'] }),
  word({ word: 'full', places: ['nitrogen-cylinder'], once: true, form: { pressure: first(quantity('pressure'), 'when full, at 70 °F') }, meaning: 'Pressure of a full cylinder.', example: 'full 2265 psig', roles: ['figure'] }),
  word({ word: 'water-capacity', places: ['recovery-cylinder'], once: true, form: { mass: first(quantity('mass'), 'of water, from the collar') }, meaning: 'Water capacity, as stamped on the collar.', example: 'water-capacity 26.2 lb', roles: ['figure'] }),
  word({ word: 'tare', places: ['recovery-cylinder'], once: true, form: { mass: first(quantity('mass'), 'empty, from the collar') }, meaning: 'Empty weight, as stamped on the collar.', example: 'tare 24 lb', roles: ['figure'] }),
  word({ word: 'service-pressure', places: ['recovery-cylinder'], once: true, form: { pressure: first(quantity('pressure'), 'as stamped') }, meaning: 'Service pressure, as stamped.', example: 'service-pressure 400 psig', roles: ['check'] }),
  word({ word: 'retest-by', places: ['recovery-cylinder'], once: true, form: { month: first(date(), 'month of the next test') }, meaning: 'When its pressure test runs out.', example: 'retest-by 2029-06', roles: ['check'] }),
  word({ word: 'made', places: ['recovery-machine'], once: true, form: { year: first(date(), 'year or day') }, meaning: 'When it was made: the level that it must reach depends on it.', example: 'made 2021', roles: ['figure'] }),
  word({ word: 'flow', places: ['pump'], once: true, form: { flow: first(quantity('volume-flow'), 'free air') }, meaning: 'Free-air flow of the pump.', example: 'flow 8 cfm', roles: ['figure'] }),
  word({ word: 'ultimate', places: ['pump'], once: true, form: { level: first(quantity('pressure'), 'blanked off') }, meaning: 'The level that the pump reaches blanked off.', example: 'ultimate 20 micron', roles: ['figure', 'check'] }),
  word({ word: 'suits', places: ['pump'], once: true, form: { classes: first(list(choice('A1', 'A2L', 'A2', 'A3', 'B1', 'B2L')), 'safety classes') }, meaning: 'The safety classes that it is made for.', example: 'suits A1, A2L', roles: ['check'] }),
  word({ word: 'bore', places: ['hose'], once: true, form: { diameter: first(quantity('length'), 'inside') }, meaning: 'Bore of the hose.', example: 'bore 3/4 in', roles: ['figure'] }),
  word({ word: 'length', places: ['hose'], once: true, form: { length: first(quantity('length'), 'of the hose') }, meaning: 'Length of the hose.', example: 'length 4 ft', roles: ['figure'] }),
  word({ word: 'outlet', places: ['regulator'], once: true, form: { pressure: first(quantity('pressure'), 'the most that it gives') }, meaning: 'Highest outlet pressure.', example: 'outlet 800 psig', roles: ['check'] }),
  word({ word: 'relief', places: ['regulator'], once: true, form: { range: first(quantity('pressure'), 'setting or range'), adjustable: flag('adjustable', 'within the range') }, meaning: 'The relief behind the regulator.', example: 'relief 100..650 psig adjustable', roles: ['check'] }),
  word({ word: 'outside', places: ['tube'], once: true, form: { diameter: first(quantity('length'), 'outside') }, meaning: 'Outside diameter.', example: 'outside 3/4 in', roles: ['figure'] }),
  word({ word: 'wall', places: ['tube'], once: true, form: { thickness: first(quantity('length'), 'of the wall') }, meaning: 'Wall thickness.', example: 'wall 0.028 in', roles: ['figure'] }),
  word({ word: 'family', places: ['oil'], once: true, form: { family: first(choice('mineral', 'alkylbenzene', 'POE', 'PVE', 'PAG', 'PAO'), 'family') }, meaning: 'The family that the oil belongs to.', example: 'family POE', roles: ['check'] }),
  word({ word: 'price', places: ['solvent', 'nitrogen-cylinder', 'oil'], once: true, form: { amount: first(text(), 'as people write it') }, meaning: "The shop's price, printed with the list.", example: 'price "48.00 a container"', roles: ['sheet'] }),
];

const answers = {
  by: clause('by', choice('lead', 'fitter', 'helper', 'electrician'), 'who'),
};

/** Words of a record. Its blocks are answers, each headed by the label of the step that it answers. */
export const recordWords = [
  word({
    word: 'of', places: ['record'], once: true, form: { plan: first(name('plan'), 'the plan'), revision: clause('revision', count(), 'the revision that was followed') },
    meaning: 'The plan that was followed, and its revision.', example: 'of mill-lane-3 revision 4', roles: ['check'],
  }),
  word({ word: 'done', places: ['record'], once: true, form: { day: first(date(), 'the day') }, meaning: 'The day on which the work was done.', example: 'done 2027-06-14', roles: ['check', 'sheet'] }),
  word({ word: 'done', places: ['answer'], once: true, form: { time: first(clock(), 'when'), ...answers }, meaning: 'When the step was done, and by whom.', example: 'done 08:05 by lead', roles: ['check', 'sheet'] }),
  word({
    word: 'signed', places: ['record', 'answer'], form: { who: first(choice('lead', 'fitter', 'helper', 'owner'), 'who'), time: first(clock(), 'when') },
    meaning: 'A signature.', example: 'signed lead 12:10', roles: ['check', 'sheet'],
  }),
  word({
    word: 'read', places: ['answer'], roles: ['check', 'sheet'],
    form: {
      name: first(name('part'), 'what was read'),
      value: first(quantity('pressure', 'temperature', 'temperature-difference', 'pressure-difference', 'acid-number', 'mass', 'length', 'share'), 'the reading'),
      at: clause('at', quantity('temperature'), 'at which temperature'),
    },
    meaning: 'A reading.', example: 'read end 501 psig at 80 degF',
  }),
  word({ word: 'weighed', places: ['answer'], form: { mass: first(quantity('mass'), 'net'), into: clause('into', name('recovery-cylinder'), 'the cylinder') }, meaning: 'What was weighed in or out.', example: 'weighed 5 lb 3 oz into rc-30', roles: ['check', 'sheet'] }),
  word({ word: 'used', places: ['answer'], form: { what: first(name('stock'), 'a material'), amount: first(quantity('mass', 'volume', 'pressure'), 'how much') }, meaning: 'What was used.', example: 'used shop-flush 11 lb 0 oz', roles: ['check', 'sheet'] }),
  word({ word: 'went', places: ['answer'], once: true, form: { number: first(count(), 'how often'), times: flag('times', 'rounds') }, meaning: 'How often a repeat was gone through.', example: 'went 2 times', roles: ['check', 'sheet'] }),
  word({ word: 'departed', places: ['answer'], meaning: 'The work departed from the plan, with the reason.', example: 'departed because "Valve seized"', roles: ['check', 'sheet'] }),
];

/** What heads an answer: the label of a step. */
export const answerWord = word({ word: 'ANSWER', places: [], block: 'answer', blockNeeded: true, meaning: 'The answer to the step of this label.', example: 'survey { done 08:05 by lead }', roles: ['check', 'sheet'] });
