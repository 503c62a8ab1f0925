import { locate } from '../../grammar';
import { editsOf, type LineEdit } from './edits';
import { workspaceOf } from './mutate';
import { filesOf, sound } from './plans';

/** What the checks said of one edit: the names of findings above information, and whether one stands at the right place. */
export interface Outcome {
  readonly edit: LineEdit;
  readonly heldOut: boolean;
  readonly names: readonly string[];
  readonly rightPlace: boolean;
}

/** A number from a text, the same on every machine (FNV-1a, 32 bit). */
export function numberOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let k = 0; k < text.length; k++) hash = Math.imul(hash ^ text.charCodeAt(k), 0x01000193) >>> 0;
  hash ^= hash >>> 15;
  return Math.imul(hash, 0x2c1b3c6d) >>> 0;
}

/** Three plans in ten are kept back, by their names: nobody reads their survivors before the end. */
export const heldOut = (file: string): boolean => numberOf(`kept back ${file}`) % 10 < 3;

/** Runs one edit in every `share` that is judged harmful or harmless, chosen by its text. */
export function measure(folders: readonly string[], share: number): readonly Outcome[] {
  const outcomes: Outcome[] = [];
  for (const folder of folders) {
    const files = filesOf(folder);
    const workspace = workspaceOf(files);
    for (const path of sound(files)) {
      const source = files[path]!;
      for (const edit of editsOf(path, source)) {
        if (edit.ruling.verdict === 'unclear' || numberOf(`${path} ${edit.operator} ${edit.text}`) % share !== 0)
          continue;
        workspace.setFile(path, edit.text);
        const snapshot = workspace.snapshot();
        const found = snapshot.findings(path).filter((finding) => finding.severity !== 'information');
        const lines = edit.text.split('\n');
        const rightPlace = found.some((finding) =>
          [finding.at, ...finding.related.map((related) => related.at)].some((place) => {
            if (place.file !== path) return false;
            const start = locate(snapshot.file(path)!.tree, new Set([place.item])).get(place.item) ?? 0;
            const line = edit.text.slice(0, start + place.from).split('\n').length - 1;
            return edit.touched.includes(line) || edit.ruling.breaks.test(lines[line] ?? '');
          }),
        );
        outcomes.push({ edit, heldOut: heldOut(path), names: found.map((finding) => finding.name), rightPlace });
      }
      workspace.setFile(path, source);
    }
  }
  return outcomes;
}
