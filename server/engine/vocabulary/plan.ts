import { choice, count, date, list, name, quantity, text, thing } from '../plan/terms';
import { clause, first, flag, maybe, needed, word } from '../plan/vocabulary';

const label = name('label');

/** Words of a plan's own block. */
export const planWords = [
  word({
    word: 'revision', places: ['plan', 'standard', 'house-rules'], form: { number: first(count(), 'a whole number') }, once: true,
    meaning: 'The revision; it stands in the head of every printed page and records are taken against it.', example: 'revision 4', roles: ['check', 'sheet'],
  }),
  word({
    word: 'date', places: ['plan'], form: { day: first(date(), 'the day of the work') }, once: true,
    meaning: 'The day of the work; rules that depend on a date are judged by it.', example: 'date 2027-05-18', roles: ['check', 'sheet'],
  }),
  word({
    word: 'kind', places: ['plan'], once: true,
    form: { kinds: first(list(choice('changeout', 'conversion', 'burnout', 'repair', 'new')), 'one or more kinds of job') },
    meaning: 'The kind of job; checks and house rules ask different things of each.', example: 'kind conversion, burnout', roles: ['check', 'state'],
  }),
  word({
    word: 'follows', places: ['plan'], once: true,
    form: { standard: first(name('standard'), 'the standard'), revision: clause('revision', count(), 'the revision that the job was written against') },
    meaning: 'Takes the steps of a standard, at a revision.', example: 'follows line-set-reuse revision 4', roles: ['state', 'check'],
  }),
  word({
    word: 'under', places: ['plan'], form: { rules: first(name('house-rules'), 'the house rules') },
    meaning: 'Puts the plan under house rules.', example: 'under quillbrook', roles: ['check'],
  }),
  word({ word: 'site', places: ['plan'], block: 'site', blockNeeded: true, once: true, meaning: 'Where the work is: altitude, weather, rooms.', example: 'site { altitude 640 ft }', roles: ['figure', 'check'] }),
  word({ word: 'crew', places: ['plan'], block: 'crew', blockNeeded: true, once: true, meaning: 'Who is needed, by certificate; no names of people.', example: 'crew { lead certified universal }', roles: ['check', 'sheet'] }),
  word({ word: 'system', places: ['plan'], block: 'system', blockNeeded: true, once: true, meaning: 'The machine: refrigerant, oil, charge, capacity, pressures.', example: 'system { refrigerant R-22 -> R-454B }', roles: ['state', 'figure', 'check'] }),
  word({
    word: 'circuit', places: ['plan'], label: 'may', block: 'circuit', blockNeeded: true, form: { untouched: flag('untouched', 'no step of the plan may reach it') },
    meaning: 'The parts in flow order (for a heat pump: in cooling); the list closes on itself.', example: 'circuit { compressor new … }', roles: ['state', 'figure', 'check'],
  }),
  word({ word: 'bring', places: ['plan'], block: 'bring', blockNeeded: true, once: true, meaning: 'The stock that the job takes along; without it the sheet says what to bring.', example: 'bring { nitrogen 1 x n2-250 }', roles: ['figure', 'check'] }),
  word({ word: 'steps', places: ['plan', 'standard'], block: 'steps', blockNeeded: true, once: true, meaning: 'The procedure, in order.', example: 'steps { lock-out power … }', roles: ['state'] }),
  word({
    word: 'test-pressure', places: ['plan'], once: true, form: { level: first(quantity('pressure'), 'a gauge pressure') },
    meaning: 'The test pressure that a standard asks the job to state.', example: 'test-pressure 450 psig', roles: ['state', 'figure', 'check'],
  }),
  word({
    word: 'solvent', places: ['plan'], once: true, form: { solvent: first(name('solvent'), 'a solvent of the shop') },
    meaning: 'The solvent that the flushes use.', example: 'solvent shop-flush', roles: ['figure', 'check'],
  }),
  word({
    word: 'change', places: ['plan'], block: 'change', blockNeeded: true, roles: ['state', 'sheet'],
    form: { label: first(label, 'a labelled step of the standard') },
    meaning: "Changes limits of one of the standard's steps; the block holds the clauses as the step would have them.",
    example: 'change rounds because "Oil came dark" { at most 5 }',
  }),
  word({
    word: 'skip', places: ['plan'], form: { label: first(label, 'a labelled step of the standard') }, roles: ['state', 'sheet'],
    meaning: "Leaves out one of the standard's steps.", example: 'skip test-low because "Tested at the bench"',
  }),
  word({
    word: 'replace', places: ['plan'], block: 'steps', blockNeeded: true, roles: ['state', 'sheet'],
    form: { label: first(label, 'a labelled step of the standard') },
    meaning: "Puts steps of the job in place of one of the standard's.", example: 'replace label because "Owner\'s own plate" { label system }',
  }),
  ...(['before', 'after'] as const).map((each) =>
    word({
      word: each, places: ['plan'], block: 'steps', blockNeeded: true, roles: ['state', 'sheet'],
      form: { label: first(label, 'a labelled step of the standard'), add: flag('add', 'puts steps there') },
      meaning: `Adds steps ${each} one of the standard's.`, example: `${each} evacuate add because "Rain is forecast" { … }`,
    }),
  ),
  word({
    word: 'accept', places: ['plan', 'step', 'steps'], roles: ['check', 'sheet'],
    form: { check: first(name('check'), 'the name of a finding') },
    meaning: 'Accepts a finding, with the reason, which is printed; the gravest cannot be accepted.',
    example: 'accept no-field-drier because "Maker fits none"',
  }),
  word({
    word: 'note', places: ['plan', 'standard', 'site', 'system', 'part', 'step', 'steps', 'bring', 'answer'], form: { text: first(text(), 'what people must know') },
    meaning: 'A remark that is printed where it stands.', example: 'note "Key at the front desk"', roles: ['sheet'],
  }),

  // Words of a standard.
  word({
    word: 'applies-to', places: ['standard'], form: { kinds: first(list(choice('changeout', 'conversion', 'burnout', 'repair', 'new')), 'kinds of job') },
    meaning: 'The kinds of job that may follow it.', example: 'applies-to changeout', roles: ['check'],
  }),
  word({
    word: 'needs', places: ['standard'], form: { what: first(name('parameter'), 'a word of the plan'), kind: first(choice('pressure', 'material', 'figure'), 'what kind of thing') },
    meaning: 'What a job that follows it must state.', example: 'needs test-pressure pressure', roles: ['check'],
  }),

  // Site.
  word({ word: 'altitude', places: ['site'], once: true, form: { height: first(quantity('length'), 'above the sea') }, meaning: 'Sets the local atmosphere that gauge and vacuum readings count from.', example: 'altitude 640 ft', roles: ['figure'] }),
  word({ word: 'outdoors', places: ['site'], once: true, form: { temperature: first(quantity('temperature'), 'dry bulb') }, meaning: 'Temperature outdoors at the time of the work.', example: 'outdoors 84 degF', roles: ['figure', 'check'] }),
  word({
    word: 'indoors', places: ['site'], once: true, form: { temperature: first(quantity('temperature'), 'dry bulb'), wetBulb: clause('wet-bulb', quantity('temperature'), 'wet bulb of the return air') },
    meaning: 'Return air at the time of the work.', example: 'indoors 75 degF, wet-bulb 63 degF', roles: ['figure'],
  }),
  word({
    word: 'work-space', places: ['site'],
    form: {
      where: first(thing('PLACE'), 'attic, machine-room, roof …'), volume: maybe(quantity('volume'), 'air in it'),
      ventilation: clause('ventilation', quantity('volume-flow'), 'fresh air while the work is done'), open: flag('open-air', 'out of doors'),
    },
    meaning: 'The room that the crew works in: oxygen and solvent vapour are judged by it.', example: 'work-space attic 2200 ft3', roles: ['figure', 'check'],
  }),
  word({ word: 'smallest-room', places: ['site'], once: true, form: { volume: first(quantity('volume'), 'air in it') }, meaning: 'The smallest room that a leak could fill.', example: 'smallest-room 960 ft3', roles: ['figure', 'check'] }),
  word({ word: 'lowest-tube', places: ['site'], once: true, form: { temperature: first(quantity('temperature'), 'of the coldest tube') }, meaning: 'The coldest tube that is evacuated; water freezes in it before it is pumped off.', example: 'lowest-tube 41 degF', roles: ['check'] }),

  // Crew.
  ...(['lead', 'fitter', 'helper', 'electrician'] as const).map((each) =>
    word({
      word: each, places: ['crew'],
      form: { number: maybe(count(), 'how many'), certificate: clause('certified', choice('universal', 'type-I', 'type-II', 'type-III', 'section-609', 'flammable'), 'certificate held') },
      meaning: `A ${each} of the crew.`, example: each === 'helper' ? 'helper' : `${each} certified universal`, roles: ['check', 'sheet'],
    }),
  ),

  // Bring.
  word({
    word: 'solvent', places: ['bring'], form: { number: first(count(), 'how many'), x: flag('x', 'times'), what: first(name('solvent'), 'a solvent of the shop') },
    meaning: 'Containers of solvent.', example: 'solvent 2 x shop-flush', roles: ['figure', 'check'],
  }),
  word({
    word: 'nitrogen', places: ['bring'], label: 'may', form: { number: first(count(), 'how many'), x: flag('x', 'times'), what: first(name('nitrogen-cylinder'), 'a cylinder of the shop'), at: clause('at', quantity('pressure'), 'pressure now, if not full') },
    meaning: 'Nitrogen cylinders.', example: 'nitrogen 1 x n2-250', roles: ['figure', 'check'],
  }),
  word({
    word: 'recovery', places: ['bring'], label: 'may',
    form: { number: first(count(), 'how many'), x: flag('x', 'times'), what: first(name('recovery-cylinder'), 'a cylinder of the shop'), empty: flag('empty', 'evacuated'), holding: clause('holding', name('refrigerant'), 'what is in it'), mass: maybe(quantity('mass'), 'how much is in it') },
    meaning: 'Recovery cylinders; a label names one, so that a step can say "into" it.', example: 'burnt: recovery 1 x rc-30 empty', roles: ['figure', 'check'],
  }),
  word({ word: 'recovery-machine', places: ['bring'], form: { what: first(name('recovery-machine'), 'a machine of the shop') }, meaning: 'The recovery machine.', example: 'recovery-machine rm-2', roles: ['check'] }),
  word({ word: 'regulator', places: ['bring'], form: { what: first(name('regulator'), 'a regulator of the shop') }, meaning: 'The nitrogen regulator.', example: 'regulator reg-800', roles: ['check'] }),
  word({
    word: 'pump', places: ['bring'], form: { what: first(name('pump'), 'a pump of the shop'), number: clause('with', count(), 'how many hoses'), x: flag('x', 'times'), hose: maybe(name('hose'), 'the hose') },
    meaning: 'The vacuum pump and its hoses.', example: 'pump vp-8 with 2 x vac-3-4', roles: ['figure', 'check'],
  }),
  word({ word: 'leak-detector', places: ['bring'], form: { class: first(choice('A1', 'A2L', 'A3', 'B2L'), 'safety class that it is made for') }, meaning: 'The leak detector.', example: 'leak-detector A2L', roles: ['check'] }),
  word({ word: 'refrigerant', places: ['bring'], form: { refrigerant: first(name('refrigerant'), 'which'), mass: first(quantity('mass'), 'how much') }, meaning: 'Refrigerant to charge with.', example: 'refrigerant R-448A 100 lb', roles: ['figure', 'check'] }),
  word({ word: 'oil', places: ['bring'], form: { oil: first(name('oil'), 'which'), volume: first(quantity('volume'), 'how much') }, meaning: 'Oil to fill in.', example: 'oil POE 700 fl-oz', roles: ['figure', 'check'] }),
  word({ word: 'swabs', places: ['bring'], form: { number: first(count(), 'how many') }, meaning: 'Swabs to pull; as many come out as went in.', example: 'swabs 6', roles: ['check', 'sheet'] }),
  word({ word: 'tool', places: ['bring'], form: { what: first(text(), 'what it is') }, meaning: 'Any other tool or paper that must be there.', example: 'tool "flaring kit, 45 degrees"', roles: ['sheet'] }),

  // House rules.
  word({
    word: 'every', places: ['house-rules'],
    form: {
      subject: first(thing('SUBJECT'), 'what the rule is about'), needs: clause('needs', list(thing('THING')), 'what must be there'),
      least: clause('at least', quantity('pressure', 'time'), 'the least'), most: clause('at most', quantity('pressure', 'time', 'pressure-difference'), 'the most'),
      unless: flag('unless per', "silent where the maker's sheet is cited"), severity: clause('as', choice('error', 'warning', 'information'), 'how grave a breach is'),
    },
    meaning: 'Asks something of every joint, step or job of a kind.', example: 'every burnout needs suction-drier as error', roles: ['check'],
  }),
  word({ word: 'recovery-cylinder', places: ['house-rules'], form: { fill: needed(clause('fill at most', quantity('share'), 'share of the water capacity by volume')) }, meaning: 'How full a recovery cylinder may be.', example: 'recovery-cylinder fill at most 75 %', roles: ['figure', 'check'] }),
  word({ word: 'oil', places: ['house-rules'], form: { oil: first(name('oil'), 'the old oil'), most: needed(clause('left at most', quantity('share'), 'share of the new charge')) }, meaning: 'How much of an old oil may be left.', example: 'oil mineral left at most 5 %', roles: ['figure', 'check'] }),
];
