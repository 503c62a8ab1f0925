import { describe, expect, it } from 'vitest';
import { ownSystem } from '../../../server/engine/plan/own-system';
import { Workspace } from '../../../server/engine/workspace';
import { editsOf } from '../../harness/edits';
import { filesOf, folders, sound } from '../../harness/plans';

/** Every sound plan that is written in SI units, with the files that stand beside it. */
const metric = folders.flatMap((folder) => {
  const files = filesOf(folder);
  const workspace = new Workspace();
  for (const [path, text] of Object.entries(files)) workspace.setFile(path, text);
  const snapshot = workspace.snapshot();
  return sound(files)
    .filter((path) => snapshot.plans(path).some(({ plan }) => ownSystem(plan.head) === 'si'))
    .map((path) => ({ path, files, workspace }));
});

const inchPound =
  /\d (psig?|psia|inHg|micron|°F|degF|Δ°F|lb|oz|fl-oz|gal|cfh|cfm|scf|ft3?|in|Btu\/h|tons?)(?=[ ,.;:)]|$)/;

/** Said of words before there is a plan whose units could be known, or of tube that is sold in inches. */
const ofWords: ReadonlySet<string> = new Set(['missing-term', 'unknown-tube']);

/** A text without what it quotes, and what it gives in brackets as a source: a standard keeps its own units. */
function own(text: string): string {
  for (let last = ''; last !== text; ) {
    last = text;
    text = text.replace(/\([^()]*\)|"[^"]*"/g, '');
  }
  return text;
}

/** What is said in a finding and offered by it, in units that the author has not written himself. */
function saidIn(text: string, path: string, workspace: Workspace): readonly string[] {
  return workspace
    .snapshot()
    .findings(path)
    .filter(({ name }) => !ofWords.has(name))
    .flatMap(({ name, message, fixes }) =>
      [message, ...fixes.flatMap((fix) => [fix.title, ...fix.edits.map((edit) => edit.text)])].map(
        (said) => `${name}: ${said}`,
      ),
    )
    .filter((said) => {
      const found = inchPound.exec(own(said));
      return found && !text.includes(found[0].trim());
    });
}

// Fluency of the sheet in the plan's own units (design of the language: whoever reads 450 psig on a kPa gauge errs).
describe('findings of a plan in SI units', () => {
  it('has plans to look at', () => expect(metric.length).toBeGreaterThanOrEqual(5));

  it.each(metric.map((each) => [each.path, each] as const))('%s speaks SI units', (path, { files, workspace }) => {
    const source = files[path]!;
    const said = new Set<string>();
    let at = 0;
    for (const edit of editsOf(path, path, source)) {
      if (at++ % 7 !== 0) continue;
      workspace.setFile(path, edit.text);
      for (const each of saidIn(edit.text, path, workspace)) said.add(each);
    }
    workspace.setFile(path, source);
    expect([...said]).toEqual([]);
  });
});
