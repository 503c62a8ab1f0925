import { name, text } from '../plan/terms';
import { clause, first, maybe, word } from '../plan/vocabulary';

/** Words of a file itself: what it uses and what it declares. */
export const fileWords = [
  word({
    word: 'use',
    places: ['file'],
    form: { path: first(text(), 'path from this file, inside the workspace folder') },
    meaning: 'Brings the declarations of another file into scope.',
    example: 'use "materials.jobplan"',
    roles: ['check'],
  }),
  word({
    word: 'plan',
    places: ['file'],
    block: 'plan',
    blockNeeded: true,
    roles: ['sheet'],
    form: { name: first(name('plan'), 'name of the plan'), title: maybe(text(), 'what the job is called') },
    meaning: 'One job: site, system, circuit, stock, and the steps or the standard that it follows.',
    example: 'plan tansy-row-14 "14 Tansy Row" { … }',
  }),
  word({
    word: 'standard',
    places: ['file'],
    block: 'standard',
    blockNeeded: true,
    roles: ['sheet'],
    form: { name: first(name('standard'), 'name of the standard'), title: maybe(text(), 'what it is called') },
    meaning: 'A reusable procedure, written over roles, with its own revision.',
    example: 'standard line-set-reuse "Re-use of an existing line set" { … }',
  }),
  word({
    word: 'house-rules',
    places: ['file'],
    block: 'house-rules',
    blockNeeded: true,
    roles: ['check'],
    form: { name: first(name('house-rules'), 'name of the rules'), title: maybe(text(), 'what they are called') },
    meaning: 'Limits and must-haves stricter than the built-in checks.',
    example: 'house-rules quillbrook "Quillbrook shop rules" { … }',
  }),
  word({
    word: 'record',
    places: ['file'],
    block: 'record',
    blockNeeded: true,
    roles: ['check', 'sheet'],
    form: { name: first(name('plan'), 'name of the record'), title: maybe(text(), 'what it is called') },
    meaning: 'What was really done and read, step by step, against a plan and its revision.',
    example: 'record mill-lane-3-done "3 Mill Lane, as done" { … }',
  }),
  ...(
    [
      'solvent',
      'nitrogen-cylinder',
      'recovery-cylinder',
      'recovery-machine',
      'pump',
      'hose',
      'regulator',
      'tube',
      'oil',
    ] as const
  ).map((each) =>
    word({
      word: each,
      places: ['file'],
      block: each,
      blockNeeded: true,
      roles: ['figure', 'check'],
      form: { name: first(name(each), 'the name that plans use'), title: maybe(text(), 'what it is, for people') },
      meaning: {
        solvent: 'A flushing solvent that the shop stocks, by its data sheet.',
        'nitrogen-cylinder': 'A size of nitrogen cylinder that the shop stocks.',
        'recovery-cylinder': 'A recovery cylinder, by its collar stamps.',
        'recovery-machine': 'A recovery machine and the refrigerants that it is certified for.',
        pump: 'A vacuum pump.',
        hose: 'A vacuum hose.',
        regulator: 'A nitrogen regulator with its relief.',
        tube: 'A tube that the built-in tables do not hold.',
        oil: 'A compressor oil.',
      }[each],
      example: {
        solvent: 'solvent shop-flush "Line flush, non-flammable" { … }',
        'nitrogen-cylinder': 'nitrogen-cylinder n2-80 { … }',
        'recovery-cylinder': 'recovery-cylinder rc-30 { … }',
        'recovery-machine': 'recovery-machine rm-2 { … }',
        pump: 'pump vp-8 { … }',
        hose: 'hose vac-3-4 { … }',
        regulator: 'regulator reg-800 { … }',
        tube: 'tube thin-3-4 { … }',
        oil: 'oil shop-poe { … }',
      }[each],
    }),
  ),
];

/** Slots that any statement may carry. */
export const common = {
  because: clause('because', text(), 'the reason, printed with it'),
  per: clause('per', text(), 'where the limit comes from; it then stands in place of the built-in one'),
};
