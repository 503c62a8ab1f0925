import { defineCheck } from '../define';
import { statementOf } from '../stock';
import { leadOutdoors, lettingOut } from '../ways-out';
import { reportSolvent, solventsUsed } from './solvent-does-not-suit';

/** A flammable solvent where its vapour gathers. */
export const solventBurns = defineCheck({
  name: 'solvent-burns',
  severity: 'warning',
  title: 'A flammable solvent in a closed space',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning: 'The solvent burns, the work space is not open air, and the flush is not led outdoors.',
  why: 'Its vapour is heavier than air, gathers at the floor and finds a pilot light or the torch that makes up the joints.',
  source: 'common practice; data sheets of flammable solvents',
  wrong: {
    base: 'split',
    instead: [
      ['work-space yard open-air', 'work-space attic 2200 ft3'],
      ['boils 100 degF', 'boils 100 degF\n  flammable'],
      ['  solvent shop-flush\n', '  solvent shop-flush # <- here\n'],
    ],
  },
  right: { base: 'split', instead: [['boils 100 degF', 'boils 100 degF\n  flammable']] },
  plan(whole) {
    const space = whole.plan.site.workSpace;
    if (!space || space.open) return;
    for (const { solvent, entry } of solventsUsed(whole)) {
      const indoors = entry.events.some(
        (event) => event.type === 'flows' && event.medium === 'solvent' && !event.outdoors,
      );
      if (statementOf(solvent, 'flammable') && indoors)
        reportSolvent(
          whole,
          entry,
          `${solvent.name} burns, and it comes out in the ${space.where}: lead the outlet outdoors, keep flames out and air moving, or take a solvent that does not burn.`,
          leadOutdoors(lettingOut(whole.entries, 'solvent')),
        );
    }
  },
});
