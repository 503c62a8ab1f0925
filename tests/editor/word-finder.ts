import { createGrammar } from '../../grammar';
import type { Workspace } from '../../server/editor/engine';
import type { Finding } from '../../server/engine/finding';
import { Scope } from '../../server/engine/plan/scope';

const grammar = createGrammar([]);

/**
 * A workspace that knows no refrigeration: it finds fault with each statement whose word is `wrong`, and with each
 * `use` of a file that is not there. With it the tests of the server's frame are about the frame alone.
 */
export function wordFinder(): Workspace {
  const files = new Map<string, string | null>();
  const uses = (text: string) => [...text.matchAll(/^use "([^"]+)"/gm)].map((found) => found[1] ?? '');
  return {
    setFile: (path, text) => void files.set(path, text),
    removeFile: (path) => void files.delete(path),
    edit(path, changes) {
      const text = files.get(path) ?? '';
      const [change] = changes;
      if (change !== undefined) files.set(path, text.slice(0, change.from) + change.text + text.slice(change.to));
    },
    wanted: () => [...files.values()].flatMap((text) => uses(text ?? '')).filter((path) => !files.has(path)),
    snapshot() {
      const now = new Map(files);
      const trees = new Map([...now].map(([path, text]) => [path, grammar.parse(text ?? '')]));
      const findings = (path: string): Finding[] =>
        (trees.get(path)?.items ?? []).flatMap((item): Finding[] => {
          if (item.kind !== 'statement' || item.word === null) return [];
          const { at: from, text } = item.word;
          const finding = (name: string, message: string): Finding => {
            const at = { file: path, item, from, to: from + text.length };
            return { name, severity: 'error', message, at, related: [], fixes: [] };
          };
          const used = item.terms[0]?.text.slice(1, -1);
          if (text === 'wrong') return [finding('wrong-word', 'This is wrong.')];
          if (text === 'use' && used !== undefined && now.get(used) === null)
            return [finding('no-file', `No ${used}.`)];
          return [];
        });
      return {
        paths: [...now].filter(([, text]) => text !== null).map(([path]) => path),
        file(path) {
          const text = now.get(path);
          const tree = trees.get(path);
          return typeof text === 'string' && tree !== undefined ? { path, text, tree } : undefined;
        },
        bound: () => undefined,
        closure: () => [],
        scope: () => new Scope([]),
        plans: () => [],
        records: () => [],
        findings,
        firstFindings: findings,
        plainFindings: findings,
      };
    },
  };
}
