import type { Cause } from '../../circuit/state';
import type { Entry } from '../../walk/walk';
import { defineCheck } from '../define';
import { isOrAre } from '../is-are';
import { insertAfter } from '../ways-out';

/** A tag that still hangs on a valve which was opened again. */
export const tagLeftOn = defineCheck({
  name: 'tag-left-on',
  severity: 'information',
  title: 'A tag stays on a valve that is open again',
  acceptable: true,
  reads: 'state',
  ground: 'practice',
  meaning:
    'A step hangs a tag on a valve that is shut, a later one opens the valve, and no step takes the tag off. The paper tag of a cylinder or of a job is not meant.',
  why: 'The tag says that somebody works behind the valve: the next crew leaves the machine off for it, or learns to pass over tags.',
  source: '29 CFR 1910.147(e)(3): whoever hangs a tag takes it off (from memory)',
  wrong: {
    base: 'rack',
    instead: [['close valve-s, valve-d\n', 'close valve-s, valve-d\n    tag valve-s, valve-d # <- here\n']],
  },
  right: {
    base: 'rack',
    instead: [
      ['close valve-s, valve-d\n', 'close valve-s, valve-d\n    tag valve-s, valve-d\n'],
      ['open valve-s, valve-d\n', 'untag valve-s, valve-d\n    open valve-s, valve-d\n'],
    ],
  },
  plan(whole) {
    const { entries, plan } = whole;
    const last = entries.at(-1);
    if (!last || ![...last.after.marks.keys()].some((mark) => mark.startsWith('tag '))) return;
    const order = new Map<Cause, number>(entries.map((entry, at) => [entry.cause, at]));
    const at = (mark: string): number => order.get(last.after.marks.get(mark) as Cause) ?? -1;
    const left = new Map<Entry, { readonly name: string; readonly opened: Entry }[]>();
    for (const part of plan.graph.parts) {
      const hung = at(`tag ${part.name}`);
      const off = Math.max(at(`untag ${part.name}`), at(`untag ${part.kind.kind}s`), at('untag valves'));
      const entry = entries[hung];
      if (!entry || off > hung || entry.after.parts[part.index]!.position !== 'shut') continue;
      const opened = entries
        .slice(hung)
        .find(
          (each) =>
            each.before.parts[part.index]!.position === 'shut' && each.after.parts[part.index]!.position === 'open',
        );
      if (!opened || last.after.parts[part.index]!.position === 'shut') continue;
      const known = left.get(entry);
      if (known) known.push({ name: part.name, opened });
      else left.set(entry, [{ name: part.name, opened }]);
    }
    for (const [entry, tags] of left) {
      const names = tags.map((each) => each.name);
      whole.report(entry, {
        message: `${names.join(' and ')} ${isOrAre(names.length)} tagged here and opened again later, and no step takes the ${names.length > 1 ? 'tags' : 'tag'} off.`,
        slot: 'what',
        related: [{ cause: tags.at(-1)!.opened.cause, message: 'open again here' }],
        fixes: [insertAfter('Take the tags off', tags.at(-1)!.opened.slot.step, `untag ${names.join(', ')}`)],
      });
    }
  },
});
