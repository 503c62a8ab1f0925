import { expect, test } from 'vitest';
import { applied, inverse, randomChange } from './edits';
import { Random } from './random';
import { closureOf, folders, type Texts, workspaceOf } from './shop';
import { told } from './told';

/** Every job with the files that it uses, and the shops as a whole, where an edit of a standard reaches several jobs. */
const starts: readonly (readonly [name: string, texts: Texts])[] = Object.entries(folders).flatMap(
  ([folder, texts]) => [
    ...Object.keys(texts).map((path) => [`${folder}/${path}`, closureOf(texts, path)] as const),
    [folder, texts] as const,
  ],
);

const edits = 10_000;
/** Edits of one start; then the texts are so broken that the next one is taken. */
const row = 100;
/** Findings are asked for after as many edits as somebody types ahead, and compared at the end and once in between. */
const ahead = 5;

test.each([20270518, 20280229])(
  `half of ${edits} edits throw nothing, and end as a fresh reading does: seed %i`,
  (seed) => {
    const random = new Random(seed);
    for (let done = 0; done < edits / 2; done += row) {
      const [name, start] = random.of(starts);
      const texts: Record<string, string> = { ...start };
      const workspace = workspaceOf(texts);
      const asked = () => {
        const snapshot = workspace.snapshot();
        for (const path of snapshot.paths) snapshot.findings(path);
      };
      asked();
      const back: (readonly [path: string, change: ReturnType<typeof inverse>])[] = [];
      const compared = 1 + random.below(row);
      for (let number = 1; number <= row; number++) {
        const text = (path: string): string => texts[path]!;
        let [path, change] = random.below(3) === 0 ? (back.pop() ?? []) : [];
        if (path === undefined || change === undefined) {
          path = random.of(Object.keys(texts));
          change = randomChange(text(path), random);
          back.push([path, inverse(text(path), change)]);
        }
        texts[path] = applied(text(path), change);
        // Some editors hand over the whole text, and so does a file that changed on disk.
        if (random.below(8) === 0) workspace.setFile(path, texts[path]!);
        else workspace.edit(path, [change]);
        if (number % ahead === 0) asked();
        if (number !== row && number !== compared) continue;
        // What is used and not there is known to be missing, as it is to the fresh workspace.
        for (const wanted of workspace.wanted()) workspace.setFile(wanted, null);
        const [edited, fresh] = [told(workspace.snapshot()), told(workspaceOf(texts).snapshot())];
        const at = fresh.findIndex((line, index) => line !== edited[index]);
        const where = `seed ${seed}, ${name}, edit ${done + number}: ${path} ${JSON.stringify(change)}`;
        expect(edited[at], where).toBe(fresh[at]);
        expect(edited.length, where).toBe(fresh.length);
      }
    }
  },
  240_000,
);

/** Edits of a standard, in order, and the job in whose findings or walk each of them must show. */
test('an edit of a standard shows in the jobs that follow it, and is gone when it is taken back', () => {
  const texts = closureOf(folders['examples']!, 'weir-street-21.jobplan');
  const standard = 'standard-kept-lines.jobplan';
  const workspace = workspaceOf(texts);
  const before = told(workspace.snapshot());
  const lines = texts[standard]!.split('\n');
  let at = 0;
  let shown = 0;
  for (const line of lines) {
    const change = { from: at, to: at + line.length, text: line.trim() === '}' || line.endsWith('{') ? line : '' };
    const back = inverse(texts[standard]!, change);
    workspace.edit(standard, [change]);
    const edited = told(workspace.snapshot());
    const fresh = told(workspaceOf({ ...texts, [standard]: applied(texts[standard]!, change) }).snapshot());
    expect(edited).toEqual(fresh);
    if (edited.some((each, k) => each.startsWith('weir-street-21') && each !== before[k])) shown++;
    workspace.edit(standard, [back]);
    at += line.length + 1;
  }
  expect(told(workspace.snapshot())).toEqual(before);
  expect(shown).toBeGreaterThan(20);
}, 240_000);
