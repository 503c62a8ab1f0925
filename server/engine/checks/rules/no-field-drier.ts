import { wordSpan } from '../../plan/gather';
import { statement } from '../course';
import { defineCheck } from '../define';
import { isDrier, touched } from '../plant';

/** A circuit that was opened and has no drier. */
export const noFieldDrier = defineCheck({
  name: 'no-field-drier',
  severity: 'information',
  title: 'No filter-drier in a circuit that is opened',
  acceptable: true,
  noFix:
    'Where a drier stands in the circuit, and which one, the plan does not hold; where the maker fits none, accept this with his word.',
  reads: 'state',
  ground: 'practice',
  meaning:
    'The circuit is opened and has no filter-drier at all. Some makers fit none in ductless machines; say so when you accept this.',
  why: 'What air and brazing leave in the tube has nowhere to stay but in the new oil.',
  source: 'a new liquid drier after every opening: public service manuals (handbook 4.4)',
  wrong: {
    base: 'ductless',
    instead: [
      ['accept no-field-drier because "Maker fits none"', ''],
      ['  circuit {', '  circuit { # <- here'],
    ],
  },
  right: { base: 'ductless' },
  plan(whole) {
    const { graph } = whole.plan;
    const opened = whole.entries.some((entry) => entry.events.some((event) => event.type === 'opens'));
    const circuit = statement(whole.plan, 'circuit');
    if (!opened || !circuit || graph.parts.some((part) => isDrier(part) && touched(graph, part.index))) return;
    whole.reportAt(circuit, wordSpan(circuit), {
      message: 'The circuit is opened and has no filter-drier: fit one, or say why the maker fits none.',
    });
  },
});
