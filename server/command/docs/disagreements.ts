/** A point on which published sources do not agree, and how it was settled. */
export interface Disagreement {
  readonly about: string;
  readonly sources: readonly string[];
  readonly chosen: string;
  readonly why: string;
}

/** Where sources disagree (handbook section 15), in the order of the groups that they bear on. */
export const disagreements: readonly Disagreement[] = [
  {
    about: 'Working pressure of copper tube',
    sources: [
      'nominal wall and diameter: 10 to 18 % more',
      'least wall and largest diameter by tolerance: reproduces the printed tables',
      'European trade body: 20 F t / (D - t)',
    ],
    chosen: 'least wall and largest diameter; the European formula stands as a relation of its own',
    why: 'the printed tables are what an inspector opens',
  },
  {
    about: 'Fill of a recovery cylinder',
    sources: [
      'AHRI Guideline K: 0.80 × water capacity × specific gravity at 77 °F',
      'the older form without specific gravity',
      '49 CFR 173.304(b): not full of liquid at 131 °F',
      '49 CFR 173.304a: filling densities',
      'ADR P200: R-404A and R-410A 0.82, R-32 0.78 kg/L',
      'some shops: 70 % for oily gas',
    ],
    chosen:
      'the least of Guideline K, 95 % liquid at 131 °F and the filling density; a house rule may ask for less; the older form never',
    why: 'at 80 % R-410A and R-404A leave 3 % of vapour space at 131 °F and R-125 none; without specific gravity light gases are overfilled',
  },
  {
    about: 'Level of recovery for R-32',
    sources: [
      '40 CFR 82.152 by pressure at 104 °F: 360 psia, above 355, very high pressure: 0 inHg',
      'the examples of the rule do not name it: high pressure, 10 inHg from 200 lb',
    ],
    chosen: 'high pressure: 10 inHg from 200 lb, 0 inHg below',
    why: 'the deeper level satisfies both readings',
  },
  {
    about: 'Solvent for a pass, and how many passes',
    sources: ['no public standard was found', 'the solvent’s own sheet'],
    chosen: '10 to 15 % of the line’s volume, at least 8 fl-oz, as a range, until the sheet’s figures are stated',
    why: 'an estimate is shown as one, and the plan’s own figures come first',
  },
  {
    about: 'Pressure of the flush',
    sources: ['8 to 12 psig with a circulating pump', '100 to 150 psig behind a shot'],
    chosen: 'what the solvent’s sheet states with its rate',
    why: 'it depends on the method, which the plan must say',
  },
  {
    about: 'Nitrogen while brazing',
    sources: [
      'trade: 2 to 10 cfh',
      'Army TM 9-4120-380-14: under 1 to 2 cfm (60 to 120 cfh)',
      'Army TM 5-4120-259-15: 1 to 2 psig at an open end',
    ],
    chosen: '2 to 10 cfh, or 1 to 2 psig at an open end',
    why: 'ten times as much cools the joint and pushes filler out; no standard names a figure',
  },
  {
    about: 'Correction of a test pressure for temperature',
    sources: ['gas law on absolute pressure and temperature', 'federal guide specification 15182: 0.3 psi for each °F'],
    chosen: 'the gas law, on site pressure',
    why: 'the fixed figure is right near 150 psig and a third of the truth at 500 psig',
  },
  {
    about: 'Level and decay of the last evacuation',
    sources: [
      'trade: 500 micron; 1000 after 10 minutes',
      'federal guide specification 15182: 300 micron; 500 after 1 h',
      'older and European practice: 1000 to 2000 micron',
    ],
    chosen:
      'at most 500 micron unless a sheet says otherwise; the rise is the plan’s, and the leak rate V dp/dt stands beside it',
    why: 'a rise without the volume says nothing of the size of a leak',
  },
  {
    about: 'Conductance of hoses',
    sources: ['12.1 d³/L (L/s, cm), which is 78 D³/L in inches', 'a rounded 75 D³/L'],
    chosen: '12.1 d³/L, with 4d/3 more length for short tubes',
    why: 'the rounded constant is 4 % low',
  },
  {
    about: 'Charge to add for a line',
    sources: ['0.6 oz/ft for 3/8 in, for every refrigerant', 'bore × density of the liquid', 'the maker’s table'],
    chosen: 'the maker’s figure where the plan states it, else bore × density',
    why: '0.6 is right for R-22, 13 % high for R-410A and 24 % high for R-32',
  },
  {
    about: 'Included length of line in circuits with several liquid lines',
    sources: ['makers count the main line and the branches together', 'some count the main line alone'],
    chosen:
      'the included length is used up by the longest line first, then by the next; each line counts by its own bore',
    why: 'the main line is the longest as a rule; the note on the figure says so, and the maker’s allowance may be stated instead',
  },
  {
    about: 'Subcooling where the plate is silent',
    sources: ['10 °F', '5 to 15 °F by coil'],
    chosen: '8 to 12 °F, shown as a default',
    why: 'a range says that the plate is missing',
  },
  {
    about: 'Superheat of a fixed orifice',
    sources: ['printed table', 'formula (3 WB - 80 - DB)/2'],
    chosen: 'the table',
    why: 'the formula is up to 6.5 °F off at 115 °F',
  },
  {
    about: 'Old oil that may stay',
    sources: ['UN guide: 1 % preferred, 5 % often accepted', 'trade: 5 %', 'low temperature: 1 to 3 %'],
    chosen: 'what the plan or the house rule states; 5 % else',
    why: 'it is a policy of the shop and the maker',
  },
  {
    about: 'Least velocity up a riser',
    sources: ['trade press: 1000 fpm, 1500 for safety', 'flooding number 0.85: about 440 fpm for 7/8 in with R-22'],
    chosen: 'both: the rule of thumb warns, the flooding number is the physical limit',
    why: 'rules of thumb carry a margin of two to three',
  },
  {
    about: 'Warming potentials',
    sources: ['fourth report by composition: R-454B 466', 'rule’s exchange values: R-454B 465', 'fifth report'],
    chosen: 'the fourth report by composition',
    why: 'US rules count by it; it differs by 1 or 2',
  },
  {
    about: 'Boiling points of blends with R-22, R-124, R-142b or hydrocarbons',
    sources: ['ASHRAE 34', 'mixing rule without a fitted pair: up to 2 K off'],
    chosen: 'the property model, marked as estimated wherever a figure rests on such a pair',
    why: 'one model throughout, and its own word on how far to trust it',
  },
];
