import { isLine } from '../../server/engine/circuit/kinds';
import type { Plan } from '../../server/engine/plan/plan';
import type { Line } from './scene';
import { stepsOf } from './step-edits';

/** A step done to all of its parts but one. */
export interface LeftOne {
  readonly verb: string;
  readonly part: string;
  readonly end: string | null;
  readonly line: number;
  readonly text: string;
}

/** Steps whose parts can be done one by one with the same words. */
const oneByOne = new Set([
  'connect',
  'install',
  'trim',
  'unplug',
  'uncap',
  'pull-swab',
  'open',
  'return',
  'restore',
  'purge',
  'place',
  'change',
  'replace-cores',
]);

const namesOf = (plan: Plan, what: string): readonly string[] => {
  const { graph } = plan;
  const touched = graph.parts.filter((part) => !graph.circuits[part.circuit]?.untouched);
  if (what === 'each kept line')
    return touched
      .filter((part) => isLine(part.kind) && (part.standing === 'kept' || part.standing === 'reused'))
      .map((part) => part.name);
  if (what === 'each new line')
    return touched.filter((part) => isLine(part.kind) && part.standing === 'new').map((part) => part.name);
  return what.split(', ');
};

/** Every way to leave one part, or one end of it, out of a step that speaks of several. */
export function* leftOnes(plan: Plan, text: string): Generator<LeftOne> {
  const lines = text.split('\n');
  for (const step of stepsOf(lines)) {
    if (!oneByOne.has(step.verb) || step.from !== step.to) continue;
    const [, what = '', rest = ''] = /^\S+ (.*?)((?: at | with | by | to | for | into ).*)?$/.exec(step.plain) ?? [];
    const names = namesOf(plan, what);
    const both = step.verb === 'connect' && (rest.startsWith(' at both ends') || !rest.startsWith(' at '));
    const ends: readonly (string | null)[] = both ? ['near end', 'far end'] : [null];
    const units = names.flatMap((name) => ends.map((end): Unit => ({ name, end })));
    if (units.length < 2) continue;
    for (const left of units)
      yield {
        ...leftOut(lines, step, units, left, both ? rest.replace(/^ at both ends/, '') : rest),
        verb: step.verb,
        part: left.name,
        end: left.end,
      };
  }
}

interface Unit {
  readonly name: string;
  readonly end: string | null;
}

/** The others stay in one statement: parts that are set together are joined to each other. */
function leftOut(lines: readonly string[], step: Line, units: readonly Unit[], left: Unit, rest: string) {
  const indent = /^\s*/.exec(lines[step.from]!)![0];
  const others = [...new Set(units.map((unit) => unit.name))].filter((name) => name !== left.name).join(', ');
  const end = units.find((unit) => unit.name === left.name && unit !== left)?.end;
  const made = [
    ...(others ? [`${step.verb} ${others}${left.end ? ' at both ends' : ''}${rest}`] : []),
    ...(end ? [`${step.verb} ${left.name} at ${end}${rest}`] : []),
  ].map((line, at) => `${indent}${at === 0 && step.label ? `${step.label}: ` : ''}${line}`);
  return { line: step.from, text: [...lines.slice(0, step.from), ...made, ...lines.slice(step.to + 1)].join('\n') };
}
