import { expect, it } from 'vitest';
import { Workspace } from '../../../server/engine/workspace';

/** Findings of a file of materials, as "name: text at fault -> offered". */
function found(text: string): readonly string[] {
  const workspace = new Workspace();
  workspace.setFile('materials.jobplan', text);
  return workspace
    .snapshot()
    .findings('materials.jobplan')
    .map(
      (finding) =>
        `${finding.name} -> ${finding.fixes.flatMap((fix) => fix.edits.map((edit) => edit.text)).join(' or ')}`,
    );
}

it.each([
  ['solvent s {\n  removes minral, POE\n}', ['unknown-name -> mineral']],
  ['solvent s {\n  suits R-22, R-454V\n}', ['unknown-name -> R-454A']],
  ['recovery-machine m {\n  suits R-22, R-410A\n}', []],
  ['oil shop-poe {\n  family POE\n}\nsolvent s {\n  removes shop-poe\n}', []],
  ['house-rules h {\n  oil minerl left at most 5 %\n}', ['unknown-name -> mineral']],
] as const)('%s', (text, expected) => {
  expect(found(text)).toEqual(expected);
});
