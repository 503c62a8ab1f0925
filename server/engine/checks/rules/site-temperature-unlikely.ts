import { wordSpan } from '../../plan/gather';
import { celsius } from '../../reference/table-units';
import { defineCheck } from '../define';
import { inOwn, shown } from '../support';

/** The hottest and the coldest air that was ever measured where people work, K: weather records, from memory. */
const hottest = celsius(57);
const coldest = celsius(-68);

/** Air hotter than any weather. */
export const siteTemperatureUnlikely = defineCheck({
  name: 'site-temperature-unlikely',
  severity: 'warning',
  title: 'The site is stated hotter or colder than any place',
  acceptable: true,
  noFix: 'A unit or a sign slipped, and only whoever reads the thermometer knows which.',
  reads: 'figure',
  ground: 'memory',
  meaning: 'The outdoor or the indoor temperature of the site lies above 57 °C (135 °F) or below -68 °C (-90 °F).',
  why: 'What nitrogen a cylinder gives, what stands in a recovery cylinder and what a gauge is to read are all reckoned from it.',
  source: 'records of air temperature where people live, from memory',
  wrong: {
    base: 'split',
    plan: 'site {\n  altitude 0 ft\n  outdoors 62 degC # <- here\n  indoors 75 degF, wet-bulb 63 degF\n  work-space yard open-air\n  smallest-room 9600 ft3\n}',
  },
  right: { base: 'split' },
  plan({ plan, reportAt }) {
    const { outdoors, indoors } = plan.site;
    for (const stated of [outdoors, indoors]) {
      if (!stated || (stated.quantity.high <= hottest + 0.01 && stated.quantity.low >= coldest - 0.01)) continue;
      const hot = stated.quantity.high > hottest;
      reportAt(stated.bound, stated.span ?? wordSpan(stated.bound), {
        message: `${shown(plan, stated.quantity)} is ${hot ? 'hotter' : 'colder'} than any place where people work, ${hot ? inOwn(plan, '135 °F', '57 °C') : inOwn(plan, '-90 °F', '-68 °C')} (weather records, from memory): read figure, sign and unit again.`,
      });
    }
  },
});
