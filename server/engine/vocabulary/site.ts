import { bounded, quantity } from '../plan/amounts';
import { choice, count, list, thing } from '../plan/terms';
import { clause, first, flag, maybe, word } from '../plan/vocabulary';
import { lawDefault, laws } from '../reference/jurisdictions';

/** No air on earth is colder or hotter: -128 and 134 °F are the records (World Meteorological Organization, from memory). */
const weather = { least: '-140 degF', most: '160 degF' } as const;

/** The highest town that people live in lies at about 16,700 ft (from memory). */
const highestSite = '17000 ft';

/** Words of a plan's site and crew. */
export const siteWords = [
  word({
    word: 'altitude',
    places: ['site'],
    once: true,
    form: { height: first(bounded(quantity('altitude'), { least: '-1500 ft', most: highestSite }), 'above the sea') },
    meaning: 'Sets the local atmosphere that gauge and vacuum readings count from.',
    example: 'altitude 640 ft',
    roles: ['figure'],
  }),
  word({
    word: 'outdoors',
    places: ['site'],
    once: true,
    form: { temperature: first(bounded(quantity('temperature'), weather), 'dry bulb') },
    meaning: 'Temperature outdoors at the time of the work.',
    example: 'outdoors 84 degF',
    roles: ['figure', 'check'],
  }),
  word({
    word: 'indoors',
    places: ['site'],
    once: true,
    form: {
      temperature: first(bounded(quantity('temperature'), weather), 'dry bulb'),
      wetBulb: clause('wet-bulb', bounded(quantity('temperature'), weather), 'wet bulb of the return air'),
    },
    meaning: 'Return air at the time of the work.',
    example: 'indoors 75 degF, wet-bulb 63 degF',
    roles: ['figure'],
  }),
  word({
    word: 'work-space',
    places: ['site'],
    form: {
      where: first(thing('PLACE', ['attic', 'machine-room', 'cellar', 'roof']), 'attic, machine-room, roof …'),
      volume: maybe(bounded(quantity('volume'), { over: '0 ft3' }), 'air in it'),
      ventilation: clause('ventilation', quantity('volume-flow'), 'fresh air while the work is done'),
      open: flag('open-air', 'out of doors'),
    },
    meaning: 'The room that the crew works in: oxygen and solvent vapour are judged by it.',
    example: 'work-space attic 2200 ft3',
    roles: ['figure', 'check'],
  }),
  word({
    word: 'smallest-room',
    places: ['site'],
    once: true,
    form: { volume: first(bounded(quantity('volume'), { over: '0 ft3' }), 'air in it') },
    meaning: 'The smallest room that a leak could fill.',
    example: 'smallest-room 960 ft3',
    roles: ['figure', 'check'],
  }),
  word({
    word: 'lowest-tube',
    places: ['site'],
    once: true,
    form: { temperature: first(quantity('temperature'), 'of the coldest tube') },
    meaning: 'The coldest tube that is evacuated; water freezes in it before it is pumped off.',
    example: 'lowest-tube 41 degF',
    roles: ['check'],
  }),
  word({
    word: 'law',
    places: ['site'],
    once: true,
    form: { whose: first(choice(...laws), 'whose') },
    meaning: `Whose law the site is under: levels of recovery, certificates and dates go by it. ${lawDefault} where nothing is said.`,
    example: 'law EU',
    roles: ['figure', 'check', 'sheet'],
  }),
  word({
    word: 'hot-work',
    places: ['site'],
    once: true,
    form: { watch: clause('watch', quantity('time'), 'after the last torch') },
    meaning: 'The site asks for a permit and a watch for fire wherever a torch is used.',
    example: 'hot-work watch 60 min per "permit of the owner"',
    roles: ['check', 'sheet'],
  }),

  // Crew.
  ...(['lead', 'fitter', 'helper', 'electrician'] as const).map((each) =>
    word({
      word: each,
      places: ['crew'],
      form: {
        number: maybe(count(), 'how many'),
        certificates: clause(
          'certified',
          list(
            choice(
              'universal',
              'type-I',
              'type-II',
              'type-III',
              'section-609',
              'category-I',
              'category-II',
              'A1',
              'A2',
              'flammable',
            ),
          ),
          'certificates held',
        ),
      },
      meaning: `A ${each} of the crew.`,
      example: each === 'helper' ? 'helper' : `${each} certified universal`,
      roles: ['check', 'sheet'],
    }),
  ),
];
