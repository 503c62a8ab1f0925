import { walk } from '../../../grammar';
import type { Item } from '../../../grammar/tree';
import type { Cause } from '../../../server/engine/circuit/state';
import type { Finding, Place } from '../../../server/engine/finding';
import type { Snapshot } from '../../../server/engine/snapshot';
import type { Figure } from '../../../server/engine/takeoff/figure';
import type { PlanView } from '../../../server/engine/view';

/**
 * All that a snapshot says, as lines that two snapshots can be compared by: places as absolute offsets, steps by their
 * number in the walk. What does not stand in its tree, or in its walk, is told as lost.
 */
export function told(snapshot: Snapshot): string[] {
  const offsets = new Offsets(snapshot);
  return snapshot.paths.flatMap((path) => [
    ...snapshot.findings(path).map((finding) => `${path} ${offsets.finding(finding)}`),
    ...snapshot.plans(path).flatMap((view) => toldView(view, offsets).map((line) => `${path} ${line}`)),
  ]);
}

function toldView(view: PlanView, offsets: Offsets): string[] {
  const numbers = new Map<unknown, string>();
  view.walk.entries.forEach((entry, number) => {
    if (!numbers.has(entry.cause)) numbers.set(entry.cause, `#${number}`);
  });
  const value = (of: unknown) => toldValue(of, numbers);
  const steps = view.walk.entries.flatMap((entry, number) => [
    `${number} ${entry.slot.step.text} round ${entry.slot.round} in ${entry.slot.within.length} ${offsets.place({ file: entry.slot.step.file, item: entry.slot.step.bound.item, from: 0, to: 1 })} departs ${entry.slot.step.departure?.reason}`,
    `${number} does ${value(entry.events)} lets out ${value(entry.released)}`,
    `${number} leaves ${value({ ...entry.after, graph: null })}`,
    `${number} takes ${(view.takeOff.steps[number] ?? []).map(toldFigure).join(' ')}`,
  ]);
  const departures = view.plan.departures.map(
    (each) => `departs: ${each.kind} ${each.label} ${each.reason} from ${each.of?.text}`,
  );
  return [
    `plan ${view.plan.name} "${view.plan.title}" starts ${value({ ...view.walk.start, graph: null })}`,
    ...departures,
    ...steps,
    ...view.takeOff.totals.map((each) => `total ${toldFigure(each)}`),
  ];
}

const toldFigure = (figure: Figure): string => JSON.stringify(figure);

/** Plain data as text; a handle of a step by the number of the step. */
function toldValue(value: unknown, numbers: ReadonlyMap<unknown, string>): string {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value) ?? 'nothing';
  if (Array.isArray(value)) return `[${value.map((each) => toldValue(each, numbers)).join(',')}]`;
  if (value instanceof Map) return toldValue([...value], numbers);
  const number = numbers.get(value);
  if (number !== undefined) return number;
  if (isCause(value)) return 'a lost step';
  return `{${Object.entries(value)
    .filter(([key]) => key !== 'graph')
    .map(([key, each]) => `${key}:${toldValue(each, numbers)}`)
    .join(',')}}`;
}

const isCause = (value: object): value is Cause => Object.keys(value).join() === 'word';

/** Where items stand, by file. */
class Offsets {
  private readonly files = new Map<string, Map<Item, number>>();

  constructor(private readonly snapshot: Snapshot) {}

  finding({ severity, name, message, at, related, fixes }: Finding): string {
    const others = related.map((each) => `(${this.place(each.at)} ${each.message})`).join('');
    const ways = fixes
      .map(
        ({ title, safe, edits }) => `[${title} ${safe} ${edits.map((edit) => `${this.place(edit.at)}=${edit.text}`)}]`,
      )
      .join('');
    return `${severity} ${name} ${this.place(at)}: ${message} ${others}${ways}`;
  }

  place({ file, item, from, to }: Place): string {
    const start = this.of(file).get(item);
    return start === undefined ? `${file}:lost` : `${file}:${start + from}-${start + to}`;
  }

  private of(file: string): Map<Item, number> {
    let items = this.files.get(file);
    if (items === undefined) {
      this.files.set(file, (items = new Map()));
      const tree = this.snapshot.file(file)?.tree;
      if (tree !== undefined) walk(tree, (item, at) => void items!.set(item, at));
    }
    return items;
  }
}
