import { checks, fact, forTheRecord, hold, reading, step, textLine } from '../../../server/engine/procedure/construct';
import type { Entry, Procedure } from '../../../server/engine/procedure/document';
import { drawCircuit } from '../../../server/engine/procedure/drawing/draw';
import { amount, computed, name, sentence } from '../../../server/engine/procedure/sentence';
import { splitGraph } from './graphs';

// A job of a fictional shop that uses every kind of thing that can stand on a sheet. Its figures are filler in the
// right form: what they should be is the business of the tests of the figures.

const cleaning: Entry = {
  kind: 'phase',
  id: 'clean-lines',
  line: 31,
  title: 'Clean the lines',
  entries: [
    step(
      '6',
      'blow-out',
      sentence('Blow out ', name('liquid-line'), ', ', name('suction-line'), ' into the container'),
      {
        line: 33,
        aim: sentence('at ', amount('50 psig', '345 kPa gauge'), ' for ', amount('30 s')),
        each: ['liquid-line', 'suction-line'],
        cautions: [sentence('Oil and solvent leave with force. Face shield; hose end tied into the container.')],
      },
    ),
    {
      kind: 'repeat',
      id: 'rounds',
      line: 34,
      until: sentence('until the solvent runs clear'),
      least: 2,
      most: 5,
      entries: [
        step('7', 'flush', 'Flush with shop-flush into the container', {
          line: 35,
          each: ['liquid-line', 'suction-line'],
          aim: sentence(computed('18 fl-oz', '0.53 L'), ' a pass'),
          cautions: [sentence('Flammable solvent vapour. No flame or spark within 10 ft; keep the attic fan on.')],
          lines: [
            textLine('Time', sentence('liquid-line ', computed('70 s'), ', suction-line ', computed('95 s'))),
            reading(
              'Oil and solvent out',
              'fl-oz',
              sentence('at least ', computed('16 fl-oz'), ' of each pass'),
              false,
            ),
          ],
        }),
        step('8', 'purge', 'Purge into the container', {
          line: 36,
          each: ['liquid-line', 'suction-line'],
          aim: sentence('at ', amount('50 psig', '345 kPa gauge'), ' for ', amount('15 s')),
        }),
      ],
    },
    step('9', 'final-purge', 'Final purge into the container', {
      line: 39,
      aim: sentence('at ', amount('100 psig', '690 kPa gauge'), ' for ', amount('60 s')),
      each: ['liquid-line', 'suction-line'],
      because: 'Oil came dark at the compressor in March',
    }),
    hold('10', 'cloth', 'Lead sees the last flush from each line: cloth clean, no smell', 'lead', 41),
  ],
};

const proving: Entry = {
  kind: 'phase',
  id: 'prove',
  line: 44,
  title: 'Prove',
  entries: [
    step('11', 'test', 'Pressure test with nitrogen: liquid line, drier, coil, suction line', {
      line: 45,
      aim: sentence('to ', amount('450 psig', '3103 kPa gauge'), ', ', amount('30 min')),
      by: 'lead',
      cautions: [
        sentence(
          'Stored energy. Stand aside of caps and hose ends. Relief set 455 to 480 psig. No repair under pressure.',
        ),
      ],
      lines: [
        checks('Reach in stages', '10 psig', '150 psig', '300 psig', '450 psig'),
        reading(
          'Start',
          [
            { lead: '', unit: 'psig' },
            { lead: 'at', unit: '°F' },
          ],
          sentence(amount('450 psig', '3103 kPa gauge')),
        ),
        reading(
          'End',
          [
            { lead: '', unit: 'psig' },
            { lead: 'at', unit: '°F' },
          ],
          sentence('at most ', computed('2 psi', '14 kPa'), ' from the reading if tight'),
        ),
        textLine(
          'Reading if tight',
          sentence(
            'start ',
            amount('450 psig'),
            '; ',
            computed('+0.9 psi', '+6 kPa'),
            ' for each Δ°F warmer, as much less colder.',
          ),
        ),
      ],
      ifFails: {
        first: sentence('find it at 10 psig with bubbles, let down outdoors, remake'),
        backTo: { number: '11', id: 'test' },
        most: 3,
      },
    }),
    step('12', 'evacuate', sentence('Evacuate ', name('liquid-line'), ', drier, coil, ', name('suction-line')), {
      line: 46,
      aim: sentence('to ', amount('500 micron', '67 Pa absolute')),
      cautions: [sentence('No ohm meter and no start of a compressor under vacuum.')],
      lines: [
        textLine('Expect', sentence(computed('40 min'), ' with two 3/4 in hoses, cores out')),
        reading('Level', 'micron', sentence('at most ', amount('500 micron', '67 Pa absolute'))),
      ],
    }),
    step('13', 'decay', 'Decay test, pump shut off', {
      line: 47,
      aim: sentence(amount('15 min')),
      lines: [reading('Rise', 'micron', sentence('at most ', amount('300 micron', '40 Pa')))],
      ifFails: { first: [], backTo: { number: '12', id: 'evacuate' }, most: 1 },
    }),
  ],
};

const followUp: Entry = {
  kind: 'visit',
  id: 'acid-visit',
  line: 60,
  title: 'Acid and drier',
  when: 'within 2 days',
  entries: [
    step('15', 'acid', 'Acid test of the oil', {
      line: 61,
      lines: [
        reading('Acid', 'mg KOH/g', sentence('at most ', amount('0.05 mg KOH/g'))),
        reading('Suction drier', 'psi drop', forTheRecord),
      ],
    }),
  ],
};

/** The text that a hostile or careless plan could hold; it must come out as text everywhere. */
export const hostile = `<script>alert("x")</script> & 'quoted' \u0007 end`;

export const quillbrook: Procedure = {
  head: {
    job: '9 Larkfield Court, downstairs air conditioner',
    shop: 'Quillbrook Refrigeration',
    plan: 'larkfield-9',
    revision: '3',
    standard: { name: 'line-set-reuse', revision: '4' },
    date: '2027-05-18',
    contentHash: 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
  },
  units: 'Units: inch-pound, SI in brackets. Gauge at 640 ft.',
  draft: null,
  job: [
    fact('Place', '9 Larkfield Court, attic and yard; altitude ', amount('640 ft', '195 m')),
    fact('Kind', 'Changeout, lines kept'),
    fact('Refrigerant', 'R-22 (A1) to R-454B (A2L)'),
    fact('Oil', 'mineral to POE'),
    fact('Recover', amount('7 lb 4 oz', '3.29 kg'), ' to ', amount('0 inHg')),
    fact('Pressure test', amount('450 psig', '3103 kPa gauge'), ', ', amount('30 min')),
    fact(
      'Evacuate',
      'to ',
      amount('500 micron', '67 Pa absolute'),
      '; rise at most ',
      amount('300 micron'),
      ' in ',
      amount('15 min'),
    ),
    fact('Charge', amount('6 lb 2 oz', '2.78 kg'), ' and ', computed('1 lb 5 oz', '0.60 kg'), ' for the lines'),
    fact('Targets', 'subcooling ', amount('10 Δ°F', '5.6 Δ°C'), ' ± ', amount('3 Δ°F', '1.7 Δ°C')),
    fact('People', 'lead (universal), helper'),
    fact('Stops the job', 'rain on open lines; recovery cylinder over its fill limit; detector not rated A2L'),
  ],
  notByTheBook: [
    {
      kind: 'departure',
      what: sentence('Rounds of flush and purge: at most 5 instead of 4'),
      because: 'Oil came dark at the compressor in March',
      signer: null,
      step: '7',
    },
    {
      kind: 'maker',
      what: sentence('Subcooling ', amount('10 Δ°F'), ', rating plate'),
      because: 'The maker’s figure stands in place of the built-in one',
      signer: null,
      step: '14',
    },
    {
      kind: 'accepted',
      what: sentence('Riser velocity low at least load: ', computed('900 ft/min', '4.6 m/s')),
      because: 'Unit runs at full load only; owner’s controls lock out the low stage',
      signer: 'lead',
      step: null,
    },
  ],
  packing: {
    materials: [
      {
        take: sentence('2 x shop-flush, 1 gal'),
        needed: computed('1.4 gal', '5.3 L'),
        why: 'five rounds of two lines, step 7',
      },
      {
        take: sentence('1 x n2-250 nitrogen, full'),
        needed: computed('186 scf', '5.3 m3'),
        why: 'steps 6 to 11; lowest at step 11',
      },
      { take: sentence('R-454B, 10 lb'), needed: computed('1 lb 5 oz', '0.60 kg'), why: 'line allowance, step 14' },
      { take: sentence('Filter-drier, 3/8 in, A2L'), needed: null, why: 'one fitted; one to spare if the test fails' },
    ],
    tools: [
      {
        take: sentence('Regulator'),
        rating: sentence('out to ', amount('800 psig'), '; relief 455 to 480 psig'),
        why: 'step 11',
      },
      { take: sentence('Recovery machine'), rating: sentence('listed for A2L'), why: 'step 3' },
      { take: sentence('Vacuum gauge'), rating: sentence('reads 50 to 20,000 micron'), why: 'steps 12, 13' },
    ],
    protection: [
      { take: sentence('Face shield, gloves'), rating: sentence('solvent-proof'), why: 'steps 6 to 9' },
      { take: sentence('Data sheets'), rating: sentence('R-22, R-454B, shop-flush, POE'), why: 'in the van' },
      { take: sentence('Lock and tag'), rating: sentence('one key, with the lead'), why: 'step 1' },
    ],
  },
  drawings: [{ title: 'Circuit', drawing: drawCircuit(splitGraph) }],
  steps: [
    {
      kind: 'phase',
      id: 'before',
      line: 22,
      title: 'Before anything is opened',
      entries: [
        step('1', 'lock-out', 'Lock out the power of the unit and try it', {
          line: 23,
          cautions: [sentence('Capacitors hold charge: discharge them before touching a terminal.')],
          lines: [reading('Volts, each pair', 'V', sentence('0 V'))],
        }),
        step('2', 'detector', 'Detector on, within a foot of the floor', { line: 24 }),
        step('3', 'recover', 'Recover the system', {
          line: 25,
          aim: sentence('to ', amount('0 inHg', '0 kPa vacuum')),
          cautions: [sentence('R-22: cold burns, no air to breathe in a low place. Attic fan on.')],
          lines: [
            textLine('Into', sentence('rc-30, room for ', computed('24 lb', '10.9 kg'))),
            reading('Weight in', 'lb', sentence('at most ', computed('24 lb', '10.9 kg'))),
          ],
        }),
        step('4', 'prove-zero', 'Wait and read again: the pressure must not come back', {
          line: 26,
          aim: sentence(amount('5 min')),
          lines: [reading('Pressure', 'psig', sentence('at most ', amount('0 psig', '0 kPa gauge')))],
          ifFails: { first: [], backTo: { number: '3', id: 'recover' }, most: 3 },
        }),
        step('5', 'crimp', 'Crimp the far ends, leaving an opening', {
          line: 30,
          aim: sentence(amount('1/8 in', '3.2 mm')),
          each: ['liquid-line', 'suction-line'],
        }),
      ],
    },
    cleaning,
    proving,
    {
      kind: 'phase',
      id: 'charge-start',
      line: 50,
      title: 'Charge and start',
      entries: [
        step('14', 'charge', 'Weigh in the line allowance as liquid', {
          line: 51,
          aim: sentence(computed('1 lb 5 oz', '0.60 kg')),
          cautions: [sentence('R-454B burns (A2L). No ignition source within 10 ft.')],
          lines: [
            reading('Went in', 'lb', sentence(computed('1 lb 5 oz', '0.60 kg'), ' ± 1 oz')),
            reading('Subcooling', 'Δ°F', sentence(amount('10 Δ°F', '5.6 Δ°C'), ' ± ', amount('3 Δ°F'))),
          ],
        }),
      ],
    },
    followUp,
  ],
  chargeAids: {
    strips: [
      {
        refrigerant: 'R-454B',
        temperatureUnit: '°F',
        pressureUnit: 'psig',
        bubbleUse: 'liquid, subcooling',
        dewUse: 'vapour, superheat',
        rows: [95, 100, 105, 110, 115].map((temperature, n) => ({
          temperature: String(temperature),
          bubble: String(277 + 21 * n),
          dew: String(266 + 21 * n),
          note: temperature === 105 ? 'condensing' : null,
        })),
      },
    ],
    targets: [fact('Subcooling', amount('10 Δ°F', '5.6 Δ°C'), ' ± ', amount('3 Δ°F', '1.7 Δ°C'))],
    weights: [
      fact('In the unit', amount('6 lb 2 oz', '2.78 kg'), ' for 15 ft'),
      fact('For 33 ft more', computed('1 lb 5 oz', '0.60 kg')),
    ],
    weighIn: { cylinders: ['R-454B no. 1'], unit: 'lb', limit: sentence('at most ', computed('1 lb 7 oz', '0.65 kg')) },
  },
  waste: [
    {
      container: 'rc-30',
      contents: 'R-22, recovered',
      most: computed('24 lb', '10.9 kg'),
      label: 'R-22 RECOVERED, mineral oil',
      goesTo: 'reclaimer',
    },
    {
      container: '5 gal can, closed',
      contents: 'spent solvent with oil',
      most: computed('1.5 gal', '5.7 L'),
      label: 'SPENT SOLVENT, mineral oil',
      goesTo: 'waste carrier',
    },
  ],
  putBack: [
    { what: sentence('Service valves'), stands: 'open, caps on and tight', touched: '2', restored: '14' },
    { what: sentence('Valve cores'), stands: 'in, caps on', touched: '12', restored: null },
    { what: sentence('Disconnect'), stands: 'on, tag off', touched: '1', restored: '14' },
  ],
  record: {
    quantities: [
      { what: 'Solvent', unit: 'gal', planned: sentence(computed('1.4 gal', '5.3 L')) },
      { what: 'Nitrogen', unit: 'psig left', planned: sentence('at least ', computed('510 psig')) },
    ],
    readings: [{ what: 'Suction pressure', unit: 'psig', planned: sentence('for the record') }],
    serials: ['Outdoor unit', 'Coil'],
    departureLines: 4,
    signatures: ['Technician', 'Lead', 'Owner'],
  },
  workings: null,
};

export const withWorkings: Procedure = {
  ...quillbrook,
  workings: [
    {
      subject: 'liquid-line',
      name: 'line-volume',
      value: computed('0.022 ft3', '0.62 L'),
      formula: 'volume = pi/4 x bore^2 x length',
      inputs: [
        { name: 'bore', shown: '0.311 in', from: 'reference' },
        { name: 'length', shown: '48 ft', from: 'plan' },
      ],
      lines: ['pi/4 x (0.311 in)^2 x 48 ft = 43.8 in3'],
      sources: ['ASTM B280, table 1'],
      confidence: 'published',
      notes: ['Bore from the nominal wall.'],
    },
  ],
};

export const barred: Procedure = { ...quillbrook, draft: { errors: 2 } };
