import { exactly } from '../../quantity';
import { defineCheck } from '../define';
import { edits, inOwn, shown } from '../support';

/** Below this share of the atmosphere air goes in with a hiss; a gauge that reads a little under zero does not count. */
const clearly = 0.9;

/** A joint undone while a vacuum stands behind it. */
export const openedUnderVacuum = defineCheck({
  name: 'opened-under-vacuum',
  severity: 'warning',
  title: 'A part is opened while it stands under vacuum',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  yieldsTo: ['charge-into-gas', 'section-not-evacuated', 'compressor-without-refrigerant'],
  meaning:
    'The recovery or a pump has drawn the part well below the atmosphere, and a joint is undone before the vacuum is broken with dry nitrogen.',
  why: 'Air and its water are sucked in, and with them what lies at the joint; the oil takes the water up and does not give it back to a pump.',
  source: 'common practice (handbook 13.1: break the vacuum with nitrogen before opening)',
  wrong: {
    base: 'rack',
    instead: [
      ['recover system to 0 inHg', 'recover system to 15 inHg'],
      ['cut-out liquid-drier', 'cut-out liquid-drier # <- here'],
    ],
  },
  right: {
    base: 'rack',
    instead: [
      ['recover system to 0 inHg', 'recover system to 15 inHg'],
      ['cut-out liquid-drier', 'break-vacuum system with nitrogen to 0 psig\n    cut-out liquid-drier'],
    ],
  },
  step(here) {
    for (const { how, space, held, part } of here.events('opens')) {
      if (how === 'pierced' || space.openings.length > 0 || held.high >= here.before.atmosphere * clearly) continue;
      here.report({
        message: (say) =>
          `This opens ${say.part(part)} while ${say.parts(space.parts)} ${space.parts.length > 1 ? 'stand' : 'stands'} at ${shown(here.plan, exactly('pressure', held.high), { level: 'vacuum' })}: air and water are sucked in; break the vacuum with dry nitrogen first.`,
        slot: 'what',
        root: held.since ?? here.before.graph,
        concerns: space.parts,
        related: held.since ? [{ cause: held.since, message: 'it stands so since here' }] : [],
        fixes: [
          {
            title: 'Break the vacuum before this step',
            edits: (mend) =>
              edits(
                mend.insertBefore(
                  here.step,
                  `break-vacuum system with nitrogen to ${inOwn(here.plan, '0 psig', '0 kPa gauge')}`,
                ),
              ),
          },
        ],
      });
    }
  },
});
