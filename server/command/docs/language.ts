import { type FormPart, formText } from '../../engine/plan/form-text';
import type { Place, Vocabulary, Word } from '../../engine/plan/vocabulary';

/** The grammar of the language, which knows nothing of refrigeration. */
const grammar = `\`\`\`text
file       = { statement }
statement  = [ label ":" ] word { term } [ block ] end
block      = "{" { statement } "}"
term       = word | text | quantity | number | date | time | "," | "->"
quantity   = number unit { number unit }
end        = the line's end, or the end of the block that it stands in
\`\`\`

A comment runs from \`#\` to the line's end. A word is letters, digits, \`-\` and \`_\`, and begins with a letter. A text stands in
double quotes on one line. A number may be a fraction (\`7/8\`, \`1-1/8\`) or a range (\`30..90 s\`). What is wrong in one statement
leaves the others as they are.`;

/** What stands in each place, for the table of places. */
const placeMeanings: Readonly<Record<Place, string>> = {
  file: 'the file itself',
  plan: 'a plan',
  standard: 'a standard',
  site: 'where the work is',
  crew: 'who is needed',
  system: 'the machine',
  circuit: 'parts in flow order',
  part: "a part's own facts",
  branches: 'the branches of a parallel',
  bring: 'stock that is taken along',
  steps: 'the procedure',
  step: 'what one step carries',
  change: 'clauses of the step that is changed',
  'house-rules': 'rules of the house',
  record: 'what was done',
  answer: 'what was done at one step',
  solvent: 'a solvent',
  'nitrogen-cylinder': 'a nitrogen cylinder',
  'recovery-cylinder': 'a recovery cylinder',
  'recovery-machine': 'a recovery machine',
  pump: 'a vacuum pump',
  hose: 'a vacuum hose',
  regulator: 'a nitrogen regulator',
  tube: 'a tube',
  oil: 'an oil',
  equipment: 'equipment',
};

/** The language reference in Markdown. `notes` is the hand-written part about how open points were settled. */
export function languageReference(vocabulary: Vocabulary, notes: string): string {
  const places = (Object.keys(placeMeanings) as Place[]).filter(
    (place) => vocabulary.at(place).size > 0 || vocabulary.named.has(place),
  );
  const chapters = places.map((place) => chapter(vocabulary, place));
  return [
    '# The plan language',
    'Made from the vocabulary by `npm run docs`; a test compares the two. What is written by hand stands in `docs/parts/language-notes.md`.',
    '## Grammar',
    grammar,
    '## Places',
    placesTable(vocabulary, places),
    '## How to read a form',
    'CAPITALS stand for something that you write; what is in brackets may be left out; `|` parts choices; `{ … }` is a block. Clauses may come in any order, with or without commas between them. Every statement may also carry:',
    Object.values(vocabulary.common)
      .map((slot) => `- \`${'key' in slot ? slot.key : ''} ${slot.term?.shape ?? ''}\`: ${slot.meaning}`)
      .join('\n'),
    ...chapters.flat(),
    ...(notes.trim() === '' ? [] : [notes.trim()]),
  ]
    .join('\n\n')
    .concat('\n');
}

function placesTable(vocabulary: Vocabulary, places: readonly Place[]): string {
  const opens = (place: Place): string => {
    const words = [...new Set(vocabulary.words.filter((word) => word.block === place).map((word) => word.word))];
    if (place === 'file') return '';
    if (words.length > 8)
      return `${words
        .slice(0, 6)
        .map((word) => `\`${word}\``)
        .join(', ')} and ${words.length - 6} more`;
    return words.map((word) => `\`${word}\``).join(', ');
  };
  const rows = places.map(
    (place) => `| ${link(place)} | ${placeMeanings[place]} | ${opens(place)} | ${vocabulary.at(place).size} |`,
  );
  return ['| place | what stands there | opened by | words |', '| --- | --- | --- | --- |', ...rows].join('\n');
}

const title = (place: Place): string => (place === 'file' ? 'In the file' : `In \`${place}\``);
const link = (place: Place): string => `[${place}](#in-${place === 'file' ? 'the-file' : place})`;

/** A word is described once, in the first of its places; the others name it. */
function chapter(vocabulary: Vocabulary, place: Place): readonly string[] {
  const named = vocabulary.named.get(place);
  const words = [...vocabulary.at(place).values(), ...(named ? [named] : [])];
  const own = words.filter((word) => word === named || word.places[0] === place);
  const others = words.filter((word) => !own.includes(word));
  const also = others.map((word) => `\`${word.word}\` (${link(word.places[0] ?? place)})`).join(', ');
  return [
    `## ${title(place)}`,
    ...(also === '' ? [] : [`${own.length > 0 ? 'Also' : 'Here stand'}: ${also}.`]),
    ...own.map((word) => entry(word)),
  ];
}

function entry(word: Word): string {
  const { parts, text } = formText(word);
  const notes = [
    word.label === 'never' ? '' : word.label === 'must' ? 'Must have a label.' : 'May have a label.',
    word.places.length > 1 ? `Stands in ${word.places.map(link).join(', ')}.` : '',
    word.once ? 'Once in its block.' : '',
    word.block ? `Block: ${link(word.block)}.` : '',
    word.roles.length === 1 && word.roles[0] === 'sheet' ? 'Only printed.' : '',
  ].filter((note) => note !== '');
  return [
    `### ${word.word}`,
    `\`\`\`jobplan\n${text}\n\`\`\``,
    `${word.meaning}${notes.length > 0 ? ` *${notes.join(' ')}*` : ''}`,
    ...(parts.length > 0 ? [parts.map(slotLine).join('\n')] : []),
    `\`\`\`jobplan\n${word.example}\n\`\`\``,
  ].join('\n\n');
}

/** A slot with its meaning, and every word of a choice that its shape has no room for. */
function slotLine({ text, slot }: FormPart): string {
  const choices = text.includes('…') ? (slot.term?.choices ?? []) : [];
  return `- \`${text}\`: ${slot.meaning}${choices.length > 0 ? `; one of ${choices.map((each) => `\`${each}\``).join(', ')}` : ''}`;
}
