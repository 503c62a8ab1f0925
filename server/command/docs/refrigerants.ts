import { refrigerantNamed, refrigerantNames, trustIn } from '../../engine/properties';
import { lawDates } from '../../engine/reference/law-dates';
import { type RefrigerantFacts, refrigerantFacts } from '../../engine/reference/refrigerant-facts';
import { figure, rows, sure } from './table';

/** What is known of each refrigerant beside its tables, how sure, and from when which rule restricts it. */
export const refrigerantChapters = (): readonly string[] => [
  '## What is known of the refrigerants',
  `${refrigerantNames.length} refrigerants have property tables, ${refrigerantFacts.length} have the facts of law and safety below. ${refrigerantFacts[0]?.source ?? ''} Composition is the nominal one of ASHRAE 34 by mass; the property tables hold the same, and the molar masses that follow are checked (worked example WE-50). What is marked “from memory” was not looked up: verify it before it is relied on.`,
  rows(
    ['refrigerant', 'class', 'limit, lb/Mcf', 'warming, 4th / 5th', 'oils', 'pressures good to', 'made of'],
    refrigerantFacts.map((facts) => [
      facts.name,
      facts.safetyClass ? `${facts.safetyClass} (${sure[facts.classConfidence]})` : 'none known',
      limitOf(facts),
      `${facts.warming.fourth} / ${facts.warming.fifth} (${sure[facts.warmingConfidence]})`,
      [...facts.oils, ...facts.oilsWithCare.map((oil) => `${oil} with care`)].join(', '),
      trustOf(facts.name),
      facts.composition?.map(({ refrigerant, share }) => `${refrigerant} ${figure(share * 100)} %`).join(', ') ?? '',
    ]),
  ),
  '## From when rules restrict them',
  '“Verified” says that the text of the rule, or a table made from it paragraph by paragraph, was read for the figure and the date; “not verified” says that it was not opened. The plan’s own date decides which hold.',
  rows(
    ['rule', 'law', 'from', 'what', 'cited', 'how sure'],
    lawDates.map((row) => [
      `\`${row.name}\``,
      row.law,
      row.from,
      row.subject,
      row.citation,
      `${sure[row.confidence]}, ${row.verified ? 'verified' : 'not verified'}`,
    ]),
  ),
];

/** A pound in a thousand cubic feet, kg/m3. */
const poundPerThousandCubicFeet = 0.45359237 / (1000 * 0.3048 ** 3);

function limitOf({ concentrationLimit, limitConfidence }: RefrigerantFacts): string {
  if (concentrationLimit === null) return 'none known';
  const [low, high] = [concentrationLimit.low, concentrationLimit.high].map((each) =>
    figure(each / poundPerThousandCubicFeet),
  );
  return `${low === high ? low : `${low}..${high}`} (${sure[limitConfidence]})`;
}

function trustOf(name: string): string {
  const refrigerant = refrigerantNamed(name);
  return refrigerant ? `${figure(trustIn(refrigerant).pressure * 100)} %` : 'no table';
}
