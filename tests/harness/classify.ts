import type { Step } from '../../server/engine/plan/step';
import type { PlanView } from '../../server/engine/view';
import type { ClauseEdit } from './clause-edit';

/**
 * What a practitioner says of an edit of a sound plan. Written by hand from the trade's job order (handbook 13.1), by words
 * and their order alone; it looks at no state and at no check. What hangs on more than that is `unclear` and not counted.
 */
export type Verdict = 'harmful' | 'harmless' | 'unclear';

export interface Job {
  readonly view: PlanView;
  readonly steps: readonly Step[];
}

const word = (step: Step): string => step.word.word;
const at = (job: Job, step: Step): number => job.steps.indexOf(step);
const after = (job: Job, step: Step): readonly Step[] => job.steps.slice(at(job, step) + 1);
const before = (job: Job, step: Step): readonly Step[] => job.steps.slice(0, at(job, step));
const object = (step: Step): string => step.text.replace(/^(\S+:\s*)?\S+\s*/, '');
const wide = (step: Step): boolean => /\b(system|each open part)\b/.test(step.text);

/** A step that others point to cannot go without them. */
const goneBackTo = (step: Step, job: Job): boolean =>
  step.label !== null &&
  job.steps.some((each) => JSON.stringify(each.bound.block.map((b) => b.values)).includes(`"${step.label}"`));

/** Words that only print, or that good practice may do without. */
const idle = new Set([
  'survey',
  'photo',
  'notify',
  'tag',
  'untag',
  'move-product',
  'cap',
  'blow-out',
  'wrap',
  'unwrap',
  'read',
]);

export function classifyDeletion(step: Step, job: Job): Verdict {
  const later = after(job, step);
  const next = (name: string): boolean => later.some((each) => word(each) === name);
  const opens = later.some((each) => ['disconnect', 'cut-out', 'change', 'remove'].includes(word(each)));
  switch (word(step)) {
    case 'lock-out':
      return object(step) === 'power' && opens && !before(job, step).some((each) => word(each) === 'lock-out')
        ? 'harmful'
        : 'unclear';
    case 'recover':
      return wide(step) &&
        job.steps.filter((each) => word(each) === 'recover' || word(each) === 'pump-down').length === 1 &&
        opens
        ? 'harmful'
        : 'unclear';
    case 'prove-zero':
      return wide(step) && opens && job.steps.filter((each) => word(each) === 'prove-zero').length === 1
        ? 'harmful'
        : 'unclear';
    case 'inspect':
      return next('flush') && job.steps.filter((each) => word(each) === 'inspect').length === 1 ? 'harmful' : 'unclear';
    case 'connect':
      return wide(step) || /each kept line at both ends/.test(step.text) ? 'harmful' : 'unclear';
    case 'place':
      return /new equipment/.test(step.text) ? 'harmful' : 'unclear';
    case 'trim':
      return before(job, step).some((each) => word(each) === 'crimp') ? 'harmful' : 'unclear';
    case 'take-off':
      return before(job, step).some((each) => word(each) === 'choke') ? 'harmful' : 'unclear';
    case 'pressure-test':
      return job.steps.filter((each) => word(each) === 'pressure-test').length === 1 ? 'harmful' : 'unclear';
    case 'release':
      return next('evacuate') && job.steps.filter((each) => word(each) === 'release').length === 1
        ? 'harmful'
        : 'unclear';
    case 'evacuate':
      // The first pulls of several are good practice, not a must.
      return later.some((each) => word(each) === 'evacuate' && wide(each)) && wide(step) && !goneBackTo(step, job)
        ? 'harmless'
        : 'unclear';
    case 'decay-test':
      // A drier's shell between its own valves is small: some prove it by the level alone.
      if (/drier/.test(object(step))) return 'unclear';
      return job.steps.filter((each) => word(each) === 'decay-test').length === 1 ? 'harmful' : 'unclear';
    case 'open':
      return /service-valves/.test(step.text) ? 'harmful' : 'unclear';
    case 'restore':
      return 'harmful';
    case 'return':
      return 'harmful';
    case 'purge':
      return next('purge') ? 'unclear' : 'harmful';
    case 'break-vacuum':
      return 'harmless';
    default:
      return idle.has(word(step)) && !/pressure-drop|temperature-split/.test(step.text) ? 'harmless' : 'unclear';
  }
}

/** Pairs of which the first must come first: the trade's job order. */
const order: readonly (readonly [first: RegExp, second: RegExp])[] = [
  [/^lock-out power/, /^(disconnect|cut-out|change|remove|connect)/],
  [/^recover system/, /^(disconnect|cut-out|change|remove)/],
  [/^recover system/, /^prove-zero system/],
  [/^prove-zero system/, /^(disconnect|cut-out|change|remove)/],
  [/^trim each kept line/, /^connect each kept line/],
  [/^take-off chokes/, /^connect each kept line/],
  [/^connect each kept line/, /^pressure-test each open part/],
  [/^install filter-drier/, /^pressure-test each open part/],
  [/^pressure-test/, /^release/],
  [/^release/, /^evacuate (system|each open part)/],
  [/^evacuate each open part/, /^decay-test each open part/],
  [/^evacuate system/, /^decay-test system/],
  [/^decay-test (system|each open part)/, /^(charge system with|open service-valves)/],
  [/^open service-valves/, /^restore power/],
  [/^restore power/, /^start system/],
  [/^start system/, /^adjust charge/],
];
/** Pairs that may stand either way round. */
const free: readonly (readonly [a: RegExp, b: RegExp])[] = [
  [/^label/, /^record/],
  [/^survey/, /^(move-product|photo|notify)/],
  [/^cut-out/, /^remove old equipment/],
  [/^connect each kept line/, /^install filter-drier/],
  [/^check ignition-sources/, /^hold/],
];

const plainText = (step: Step): string => step.text.replace(/^\S+:\s*/, '');

export function classifySwap(a: Step, b: Step, job: Job): Verdict {
  const [one, two] = [plainText(a), plainText(b)];
  // Where the whole system was pumped down, the compressor stands in the vacuum that the charge breaks.
  const pumped = job.steps.some((each) => plainText(each).startsWith('evacuate system'));
  if (pumped && one.startsWith('charge system with') && two === 'restore power') return 'harmful';
  if (order.some(([first, second]) => first.test(one) && second.test(two))) return 'harmful';
  if (free.some(([x, y]) => (x.test(one) && y.test(two)) || (x.test(two) && y.test(one)))) return 'harmless';
  return 'unclear';
}

export function classifyClause(step: Step, clause: ClauseEdit, job: Job): Verdict {
  if (step.values['per'] !== undefined) return 'unclear';
  const only = (name: string): boolean => job.steps.filter((each) => word(each) === name).length === 1;
  switch (clause.slot) {
    case 'nitrogen':
      // Without it the circuit may still say that a joint needs no torch.
      return clause.by === '' ? (/each kept line/.test(step.text) ? 'harmful' : 'unclear') : 'harmful';
    case 'into':
      return word(step) === 'flush' ? 'harmful' : 'unclear';
    case 'rise':
      return clause.by === '' ? 'harmful' : 'unclear';
    case 'level':
      if (word(step) === 'purge' && after(job, step).some((each) => word(each) === 'purge')) return 'unclear';
      if (word(step) === 'purge' && /100 psig/.test(clause.was))
        return /\b30 psig/.test(clause.by) ? (longPurge(step) ? 'unclear' : 'harmful') : 'unclear';
      if (word(step) === 'pressure-test' && only('pressure-test') && /psig/.test(clause.was))
        return Number.parseFloat(clause.by.replace(/^\D+/, '')) > 900 ? 'harmful' : 'unclear';
      return 'unclear';
    case 'time':
      if (after(job, step).some((each) => word(each) === 'purge')) return 'unclear';
      return word(step) === 'purge' && /100 psig/.test(step.text) && / s$/.test(clause.was) ? 'harmful' : 'unclear';
    default:
      return 'unclear';
  }
}

const longPurge = (step: Step): boolean => /min|\bh\b/.test(step.text);
