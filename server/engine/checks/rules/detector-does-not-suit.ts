import { isFlammable, type SafetyClass } from '../../reference/refrigerant-facts';
import { defineCheck } from '../define';
import { bringing } from '../example-stock';
import { burns, newFacts, oldFacts } from '../plant-facts';
import { brought } from '../stock';

/** A leak detector that may light what it looks for. */
export const detectorDoesNotSuit = defineCheck({
  name: 'detector-does-not-suit',
  severity: 'error',
  title: 'The leak detector is not made for this class',
  acceptable: false,
  reads: 'figure',
  ground: 'practice',
  meaning: 'The refrigerant burns, and the detector that is brought is made for a class that does not.',
  why: 'A heated sensor in a cloud of gas is an ignition source, and a sensor for another gas may not show this one.',
  source: 'equipment manuals for classes A2L and A3 (common practice)',
  wrong: { base: 'split', plan: bringing('leak-detector A1 # <- here') },
  right: { base: 'split', plan: bringing('leak-detector A2L') },
  plan(whole) {
    const facts = [newFacts(whole.plan), oldFacts(whole.plan)].sort((a, b) => burns(b) - burns(a))[0];
    if (!facts?.safetyClass || !isFlammable(facts.safetyClass)) return;
    const detectors = brought(whole.plan, 'leak-detector');
    const suits = detectors.some((each) => {
      const made = each.bound.values['class'] as SafetyClass | undefined;
      return made !== undefined && burns({ ...facts, safetyClass: made }) >= burns(facts);
    });
    const [detector] = detectors;
    if (!detector || suits) return;
    const span = detector.bound.spans['class'];
    if (span)
      whole.reportAt(detector.bound, span, {
        message: `The leak detector is for ${String(detector.bound.values['class'])}, and ${facts.name} is ${facts.safetyClass}: bring one that is made for gas that burns.`,
        fixes: [
          {
            title: `Bring one for ${facts.safetyClass}`,
            edits: () => [
              { at: { file: whole.plan.file, item: detector.bound.item, ...span }, text: facts.safetyClass ?? '' },
            ],
          },
        ],
      });
  },
});
