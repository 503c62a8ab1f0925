import type { Bound } from './bind';
import type { Name } from './term';

/** What a file declares: a plan, a standard, a solvent … */
export interface Declaration {
  /** The word that declares it: `plan`, `solvent`. */
  readonly kind: string;
  readonly name: string;
  readonly title: string | null;
  readonly bound: Bound;
  readonly file: string;
}

/** The declarations that a file sees: its own and those of the files that it uses, at any remove. */
export class Scope {
  private readonly byKey = new Map<string, Declaration>();

  constructor(readonly declarations: readonly Declaration[]) {
    for (const each of declarations) {
      const key = `${each.kind} ${each.name}`;
      if (!this.byKey.has(key)) this.byKey.set(key, each);
    }
  }

  find(kind: string, name: string): Declaration | undefined {
    return this.byKey.get(`${kind} ${name}`);
  }
  of(kind: string): readonly Declaration[] {
    return this.declarations.filter((each) => each.kind === kind);
  }
  names(kind: string): readonly string[] {
    return this.of(kind).map((each) => each.name);
  }
}

export function declarationsOf(file: string, statements: readonly Bound[]): readonly Declaration[] {
  const found: Declaration[] = [];
  for (const bound of statements) {
    const name = bound.values['name'] as Name | undefined;
    if (!bound.word || bound.word.word === 'use' || !name) continue;
    found.push({
      kind: bound.word.word,
      name: name.text,
      title: (bound.values['title'] as string | undefined) ?? null,
      bound,
      file,
    });
  }
  return found;
}
