import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { Snapshot } from '../../server/engine/snapshot';
import { Workspace } from '../../server/engine/workspace';

/** The sound plans of a folder, as one shop. That nothing is found in them is held by the tests of the checks. */
function snapshotOf(folder: string): Snapshot {
  const at = new URL(`../../${folder}/`, import.meta.url);
  const workspace = new Workspace();
  for (const path of readdirSync(at, { recursive: true }) as string[]) {
    if (path.endsWith('.jobplan')) workspace.setFile(path, readFileSync(new URL(path, at), 'utf8'));
  }
  for (const path of workspace.wanted()) workspace.setFile(path, null);
  return workspace.snapshot();
}

describe.each(['examples', 'tests/fixtures/samples', 'tests/fixtures/good'])('%s', (folder) => {
  const snapshot = snapshotOf(folder);
  it('has plans', () => {
    expect(snapshot.paths.flatMap((path) => snapshot.plans(path)).length).toBeGreaterThan(2);
  });
  it.each(snapshot.paths)('%s: every step of its plans is walked, and none is without effect', (path) => {
    for (const { plan, walk } of snapshot.plans(path)) {
      expect(walk.entries.length, plan.name).toBeGreaterThan(5);
      const idle = walk.entries.filter((entry) => entry.events.some((event) => event.type === 'no-effect'));
      expect(idle.map((entry) => entry.slot.step.text)).toEqual([]);
    }
  });
  it.each(snapshot.paths)(
    '%s: a job that ends with the machine running leaves nothing open, wet or under vacuum',
    (path) => {
      for (const { walk } of snapshot.plans(path)) {
        const end = walk.entries.at(-1)!.after;
        if (!end.running) continue;
        const wrong = end.graph.parts.filter((part) => {
          const state = end.parts[part.index]!;
          return (
            state.mounted !== 'none' &&
            (state.wet !== null || state.contents.some((held) => held.gas !== 'refrigerant'))
          );
        });
        expect(wrong.map((part) => part.name)).toEqual([]);
      }
    },
  );
});
