import { Draft } from '../../circuit/settle';
import type { Selector } from '../../plan/selection';
import type { Step } from '../../plan/step';
import type { Amount } from '../../plan/term';
import type { Values } from '../../plan/vocabulary';
import type { Speech, Target, Verb } from '../../steps/verb';
import { Acting } from '../../walk/act';
import type { Entry } from '../../walk/walk';
import { name, type Run, type Sentence, words } from '../sentence';
import type { Sheet } from './sheet';
import { listed, unhyphened } from './words';

/** A step as it is said on the sheet. */
export interface Said {
  readonly text: Sentence;
  readonly aim: Sentence;
  /** Names that were too many for the sentence. */
  readonly listed: readonly string[];
}

/** More names than this stand on a line of their own. */
const mostNames = 6;
/** Lines worked one at a time have boxes with their names; more than this are only counted in the sentence. */
const mostLines = 3;

// A verb says its sentence as text. Names and amounts in it travel as marks of the private use area, so that they come
// back as what they are: never broken over two lines, with their twin in the other system.
const open = '\uE000';
const close = '\uE001';

/** Says a step with its verb's own sentence, with the names that its selectors stand for when the step comes. */
export function say(sheet: Sheet, step: Step, entry: Entry, oneAtATime: number): Said {
  const runs: Run[] = [];
  const long: string[] = [];
  const mark = (run: Run): string => `${open}${runs.push(run) - 1}${close}`;
  const act = new Acting(new Draft(entry.before, entry.cause), sheet.plan, step, entry.cause, entry.slot.round);

  const namesOf = (names: readonly string[]): string => {
    if (names.length > mostNames) {
      long.push(...names);
      return '';
    }
    return listed(names.map((each) => mark(name(each))));
  };
  const one = (selector: Selector, target: Target): string => {
    const { graph } = sheet.plan;
    if (selector.of.length > 0) {
      const noun = unhyphened(selector.noun, sheet.isName);
      const owners = listed(selector.of.map((each) => one(each, act.targets([each])[0]!)));
      return `${noun === 'valves' ? 'the valves' : noun} of ${owners}`;
    }
    if (target.thing !== null) return unhyphened(target.thing, sheet.isName);
    if (selector.noun === 'system') return 'the system';
    if (selector.noun === 'service-valves') return serviceValves(selector, target);
    const names = target.parts.map((index) => graph.parts[index]!.name);
    if (graph.named.has(selector.noun)) return mark(name(selector.noun));
    if (names.length === 0) return unhyphened(selector.text, sheet.isName);
    if (oneAtATime > mostLines) return `${oneAtATime} lines`;
    const shown = namesOf(names);
    const ofAge = selector.standing === 'old' || selector.standing === 'new';
    if (shown === '') {
      const text = unhyphened(selector.text.replace(/^each /, 'every '), sheet.isName);
      return ofAge ? `the ${text}` : text;
    }
    return ofAge ? `the ${selector.standing} ${shown}` : shown;
  };
  /** The valves of a new unit are no parts of their own: they are named by what they belong to. */
  const serviceValves = (selector: Selector, target: Target): string => {
    const { graph } = sheet.plan;
    const units = [...new Set(graph.ends.filter((end) => end.valve).map((end) => graph.parts[end.part]!))]
      .filter((part) => part.unit !== null)
      .map((part) => graph.parts[part.unit!]!.name);
    const own = target.parts.map((index) => graph.parts[index]!.name);
    const owners = [...new Set(units)];
    if (owners.length === 0) return own.length > 0 ? namesOf(own) : unhyphened(selector.text, sheet.isName);
    return `the service valves of ${listed(owners.map((each) => mark(name(each))))}`;
  };

  const speech: Speech = {
    step,
    parts: (selectors) => {
      const targets = act.targets(selectors);
      const names = (selectors ?? []).every((each) => each.of.length === 0 && sheet.plan.graph.named.has(each.noun));
      if (names && oneAtATime > mostLines) return `${oneAtATime} lines`;
      if (names && (selectors?.length ?? 0) > mostNames) {
        long.push(...(selectors ?? []).map((each) => each.noun));
        return `${selectors?.length} parts`;
      }
      return listed((selectors ?? []).map((selector, k) => one(selector, targets[k]!)));
    },
    inTurn: () => (oneAtATime > 1 ? ', one line at a time' : ''),
    parameter: (parameter) => {
      const stated = parameter === 'test-pressure' ? sheet.plan.parameters.testPressure : null;
      return stated ? mark(sheet.ruler.stated(stated)) : unhyphened(parameter, sheet.isName);
    },
    amount: (amount: Amount | undefined) => (amount ? mark(sheet.ruler.authored(amount)) : ''),
  };
  const verb = step.word as Verb;
  const { sentence, aside } = verb.say(step.values as Values<Verb['form']>, speech);
  const unmark = (text: string): Sentence =>
    text
      .split(/(\uE000\d+\uE001)/)
      .filter((piece) => piece !== '')
      .map((piece) =>
        piece.startsWith(open) ? runs[Number(piece.slice(1, -1))]! : words(unhyphened(piece, sheet.isName)),
      );
  return { text: unmark(sentence), aim: unmark(aside ?? ''), listed: long };
}
