import fc from 'fast-check';
import { expect, it } from 'vitest';
import type { Item } from '../../../grammar/tree';
import { aboveZero, underPressure } from '../../../server/engine/checks/plant';
import type { Cause } from '../../../server/engine/circuit/state';
import type { Finding } from '../../../server/engine/finding';
import { furtherRounds, waysBack } from '../../../server/engine/takeoff/rounds';
import type { PlanView } from '../../../server/engine/view';
import { walkAgain, walkBack } from '../../../server/engine/walk/back';
import type { Entry } from '../../../server/engine/walk/walk';
import { Workspace } from '../../../server/engine/workspace';
import { filesOf, folders, sound } from '../../harness/plans';
import { type Choice, carelessKinds, soundKinds, varied } from '../../harness/vary';

/** Every sound plan of the repository that writes its own steps: splits, heat pumps, racks, ductless, freezers, burnouts. */
const bases = folders.flatMap((folder) => {
  const files = filesOf(folder);
  const workspace = new Workspace();
  for (const [path, text] of Object.entries(files)) workspace.setFile(path, text);
  return sound(files)
    .filter((path) => /^ {2}steps \{/m.test(files[path]!) && !/^standard /m.test(files[path]!))
    .map((path) => ({ path, text: files[path]!, workspace }));
});

interface Opened {
  readonly entry: Entry;
  readonly since: Cause | null;
}

/** Where a part is opened while it holds pressure; by the events and states alone, not by what a check says. */
const opensPressure = (entries: readonly Entry[]): readonly Opened[] =>
  entries.flatMap((entry) =>
    entry.events.flatMap((event): readonly Opened[] => {
      if (event.type !== 'opens' || event.how === 'pierced') return [];
      const { held } = event;
      const pressure =
        underPressure(entry.before, held) || (held.gas === 'refrigerant' && aboveZero(entry.before, held));
      return pressure ? [{ entry, since: held.since }] : [];
    }),
  );

/** A base with some of its steps changed, and what there is to say of it; the plan as it was is put back. */
function tried<T>(
  { path, text, workspace }: (typeof bases)[number],
  choices: readonly Choice[],
  look: (view: PlanView, findings: readonly Finding[], text: string) => T,
): T {
  const changed = varied(text, choices);
  workspace.setFile(path, changed);
  const snapshot = workspace.snapshot();
  const result = look(snapshot.plans(path)[0]!, snapshot.findings(path), changed);
  workspace.setFile(path, text);
  return result;
}

/** By number: a whole workspace is too long to be shown when a case fails. */
const anyBase = fc.nat(bases.length - 1);

const choices = (kinds: readonly string[], most: number) =>
  fc.array(fc.record({ kind: fc.constantFrom(...kinds), where: fc.nat(400), other: fc.nat(400) }), {
    minLength: 1,
    maxLength: most,
  });

/** They follow from how much is used, and a sound plan's stock is not brought for more work than it has. */
const ofQuantity = new Set(['stock-falls-short', 'figure-differs', 'oxygen-falls', 'house-rule-broken']);

it('has bases of many kinds of job', () => {
  expect(bases.length).toBeGreaterThan(30);
});

it('no way through a sound plan, nor a way back, opens a part under pressure, and no finding says that it does', () => {
  fc.assert(
    fc.property(anyBase, choices(soundKinds, 5), (at, changes) => {
      const base = bases[at]!;
      tried(base, changes, (view, findings, text) => {
        const { entries } = view.walk;
        expect(opensPressure(entries)).toEqual([]);
        for (const { from, to } of waysBack(entries))
          expect(opensPressure(walkBack(view.plan, entries, to, from, entries[from]!)), text).toEqual([]);
        for (const { from, to } of furtherRounds(entries))
          expect(opensPressure(walkAgain(view.plan, entries, to, from, entries[from]!.after)), text).toEqual([]);
        const grave = findings.filter(({ severity, name }) => severity !== 'information' && !ofQuantity.has(name));
        expect(grave.map((finding) => `${base.path} ${finding.name}: ${finding.message}`)).toEqual([]);
      });
    }),
    { numRuns: 200 },
  );
});

/** Whether an error is shown at one of some statements, or names it among its related places. */
const told = (findings: readonly Finding[], items: readonly (Item | undefined)[]): boolean =>
  findings.some(
    ({ severity, at, related }) =>
      severity === 'error' && [at, ...related.map((each) => each.at)].some((place) => items.includes(place.item)),
  );

it('whatever is done to the order of the work: where a part is opened under pressure, an error says so', () => {
  let opened = 0;
  let openedBack = 0;
  fc.assert(
    fc.property(anyBase, choices([...carelessKinds, ...soundKinds], 3), (at, changes) => {
      const base = bases[at]!;
      tried(base, changes, (view, findings) => {
        const { entries } = view.walk;
        const stepOf = (cause: Cause | null): Item | undefined =>
          entries.find((entry) => entry.cause === cause)?.slot.step.bound.item;
        const places = ({ entry, since }: Opened) => [entry.slot.step.bound.item, stepOf(since)];
        const all = findings.map(({ name, message }) => `${base.path} ${name}: ${message}`).join('\n');
        for (const each of opensPressure(entries)) {
          opened++;
          expect(told(findings, places(each)), `${each.entry.slot.step.text}\n${all}`).toBe(true);
        }
        for (const { from, to, bound } of waysBack(entries))
          for (const each of opensPressure(walkBack(view.plan, entries, to, from, entries[from]!))) {
            openedBack++;
            const why = `back from ${from} to ${to}: ${each.entry.slot.step.text}\n${all}`;
            expect(told(findings, [bound.item, ...places(each)]), why).toBe(true);
          }
      });
    }),
    { numRuns: 300 },
  );
  expect(opened).toBeGreaterThan(0);
  expect(openedBack).toBeGreaterThan(0);
});
