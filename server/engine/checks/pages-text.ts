import { faultPage } from './fault-page';
import type { Page } from './page';

const line = 'survey system\n';
const passedOver = 'The line is passed over, so that what it says is neither walked nor checked.';

/** Faults of the text and of its words. */
export const textPages: readonly Page[] = [
  faultPage(
    'unclosed-brace',
    'A block is never closed',
    'A { has no } that belongs to it. It is shown where it opened.',
    'What follows would count as part of the block, and the plan would mean something else.',
    [
      ['  site {', '  site { # <- here'],
      ['    smallest-room 9600 ft3\n  }', '    smallest-room 9600 ft3'],
    ],
  ),
  faultPage(
    'unclosed-quote',
    'A text is never closed',
    'A " has no second one on its line.',
    'Everything behind it on the line would count as text.',
    [['"Example" {', '"Example {  # <- here']],
  ),
  faultPage(
    'stray-brace',
    'A } closes nothing',
    'There is a } with no open block before it.',
    'One block was closed too early, or one } is too many: the statements behind it stand in the wrong place.',
    [['  revision 1\n', '  revision 1\n}\n} # <- here\n']],
  ),
  faultPage(
    'unreadable-text',
    'Characters without a meaning',
    'These characters belong to no word, number or text of the language.',
    passedOver,
    [['revision 1', 'revision 1 ; # <- here']],
  ),
  faultPage(
    'text-after-block',
    'Something stands behind a }',
    'Behind the } of a block only a comment may follow on its line.',
    'Two statements on one line cannot be told apart, and changing one would change both in a comparison.',
    [['    smallest-room 9600 ft3\n  }', '    smallest-room 9600 ft3\n  } revision 2 # <- here']],
  ),
  faultPage(
    'missing-word',
    'A line without a word',
    'A line begins with a word, or with a label, a colon and a word; this one begins with a number or a mark.',
    passedOver,
    [[line, '5 survey system # <- here\n']],
  ),
  faultPage(
    'too-deep',
    'Blocks are nested too deeply',
    'A block stands inside so many others that what is in it is not read.',
    'No plan needs it; most likely a } is missing many times over.',
    [],
  ),
  faultPage(
    'too-large',
    'The file or the circuit is too large',
    'The text is larger than any plan, or a circuit has more parts than any plant.',
    'A text that is too large is not read at all, and of a circuit only its first parts: most likely something was pasted many times over.',
    [],
  ),
  faultPage(
    'unknown-word',
    'A word that is not known there',
    'No statement of this block begins with that word. The nearest one is offered; some words belong in another block.',
    passedOver,
    [['evacuate each open part to 500 micron', 'evacaute each open part to 500 micron # <- here']],
  ),
  faultPage(
    'unexpected-term',
    'Something that cannot stand there',
    'The statement takes no such clause.',
    'What it says is passed over: a limit that was meant is not there.',
    [['to 500 micron', 'to 500 micron quickly # <- here']],
  ),
  faultPage(
    'wrong-term',
    'Not what belongs there',
    'A pressure, a name, a choice of words is expected, and something else stands there.',
    'The statement does not have the value that it needs.',
    [['valves closed', 'valves shut # <- here']],
  ),
  faultPage(
    'missing-term',
    'Something is missing',
    'The statement needs a value that it does not have.',
    'A test without a pressure, a recovery without an object, is no instruction.',
    [['evacuate each open part to 500 micron', 'evacuate each open part # <- here']],
  ),
  faultPage(
    'said-twice',
    'Said twice',
    'A word that may stand once in its block, or a clause of a statement, stands there again.',
    'Which of the two counts is left to chance.',
    [['  revision 1\n', '  revision 1\n  revision 2 # <- here\n']],
  ),
  faultPage(
    'label-not-here',
    'A label where none belongs',
    'This statement takes no label.',
    'Nothing could point to it.',
    [['revision 1', 'first: revision 1 # <- here']],
  ),
  faultPage(
    'block-not-here',
    'A block where none belongs',
    'This statement takes no { … }.',
    'What stands in it would be lost.',
    [['  revision 1\n', '  revision 1 { # <- here\n  }\n']],
  ),
  faultPage(
    'missing-block',
    'A block is missing',
    'This statement says what it has to say in a { … }.',
    'Without it the statement says nothing.',
    [['  revision 1\n', '  revision 1\n  bring # <- here\n']],
  ),
];
