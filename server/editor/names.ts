import { kindNamed } from '../engine/circuit/kinds';
import type { Bound } from '../engine/plan/bind';
import type { Span } from '../engine/plan/read-terms';
import type { Declaration, Scope } from '../engine/plan/scope';
import type { Selector } from '../engine/plan/selection';
import type { Name, Reference } from '../engine/plan/term';
import type { Snapshot } from './engine';

/** A name in a statement, at offsets from the statement's start. */
export interface Mention extends Span {
  readonly text: string;
  readonly refers: Reference;
  /** Whether the name is made here rather than spoken of. */
  readonly declares: boolean;
}

/** Where a name is made. */
export interface Definition extends Span {
  readonly kind: 'declaration' | 'part' | 'label' | 'stock' | 'parameter';
  readonly text: string;
  readonly file: string;
  readonly bound: Bound;
  /** False for a part that is called by its kind: there is no name to change. */
  readonly named: boolean;
}

const mentions = new WeakMap<Bound, readonly Mention[]>();

/** All names in a statement's own line, in order; made once a statement. */
export function mentionsIn(bound: Bound): readonly Mention[] {
  let known = mentions.get(bound);
  if (!known) mentions.set(bound, (known = findMentions(bound)));
  return known;
}

/** Slots whose name is made by the statement itself, by the place where it stands. */
const makesName = (bound: Bound, slot: string): boolean =>
  slot === 'name' &&
  (bound.place === 'file' ||
    bound.word?.word === 'branch' ||
    bound.word?.word === 'section' ||
    bound.word?.word === 'unit');

function findMentions(bound: Bound): readonly Mention[] {
  const found: Mention[] = [];
  if (bound.label)
    found.push({
      text: bound.label.text,
      from: bound.label.from,
      to: bound.label.to,
      refers: labelKind(bound),
      declares: true,
    });
  const word = bound.item.word;
  if (word && bound.place === 'circuit' && !bound.label && kindNamed(word.text)) {
    found.push({ text: word.text, from: word.at, to: word.at + word.text.length, refers: 'part', declares: true });
  }
  if (word && bound.place === 'record' && bound.word?.block === 'answer') {
    found.push({ text: word.text, from: word.at, to: word.at + word.text.length, refers: 'label', declares: false });
  }
  for (const [slot, value] of Object.entries(bound.values)) collect(value, makesName(bound, slot), bound, found);
  return found.sort((a, b) => a.from - b.from);
}

const labelKind = (bound: Bound): Reference =>
  bound.place === 'circuit' || bound.word?.word === 'circuit' ? 'part' : bound.place === 'bring' ? 'stock' : 'label';

function collect(value: unknown, declares: boolean, bound: Bound, found: Mention[]): void {
  if (typeof value !== 'object' || value === null) return;
  if (Array.isArray(value)) {
    for (const each of value) collect(each, declares, bound, found);
  } else if ('refers' in value) {
    const { text, refers, from, to } = value as Name;
    found.push({ text, refers, from, to, declares });
  } else if ('noun' in value) {
    const { noun, of, from, to } = value as Selector;
    const token = bound.item.terms.find(
      (each) => each.kind === 'word' && each.at >= from && each.at < to && each.text === noun,
    );
    if (token)
      found.push({
        text: noun,
        refers: 'place-in-circuit',
        from: token.at,
        to: token.at + noun.length,
        declares: false,
      });
    for (const each of of) collect(each, false, bound, found);
  } else if ('a' in value) {
    for (const each of Object.values(value)) collect(each, declares, bound, found);
  }
}

const scopes = new WeakMap<Snapshot, Map<string, Scope>>();

/** What a file sees; found once a snapshot. */
export function scopeOf(snapshot: Snapshot, path: string): Scope {
  let known = scopes.get(snapshot);
  if (!known) scopes.set(snapshot, (known = new Map()));
  let scope = known.get(path);
  if (!scope) known.set(path, (scope = snapshot.scope(path)));
  return scope;
}

type Table = ReadonlyMap<string, readonly Definition[]>;
const partTables = new WeakMap<Bound, Table>();
const labelTables = new WeakMap<Bound, Table>();
const stockTables = new WeakMap<Bound, Table>();

/** The parts, sections, branches and circuits of a plan by name. */
export const partsOf = (top: Bound, file: string): Table =>
  table(partTables, top, (add) => {
    for (const circuit of top.block) if (circuit.word?.word === 'circuit') addParts(circuit, file, add);
  });

/** The labelled steps of a plan or a standard, those in blocks included. */
export const labelsOf = (top: Bound, file: string): Table =>
  table(labelTables, top, (add) => {
    for (const each of top.block) if (each.word?.block === 'steps') addLabels(each.block, file, add);
  });

/** What a plan's `bring` gives a label. */
export const stockOf = (top: Bound, file: string): Table =>
  table(stockTables, top, (add) => {
    for (const bring of top.block) {
      if (bring.word?.word !== 'bring') continue;
      for (const each of bring.block) if (each.label) add(labelled('stock', each, file));
    }
  });

function table(kept: WeakMap<Bound, Table>, top: Bound, fill: (add: (each: Definition) => void) => void): Table {
  const known = kept.get(top);
  if (known) return known;
  const made = new Map<string, Definition[]>();
  fill((each) => {
    const before = made.get(each.text);
    if (before) before.push(each);
    else made.set(each.text, [each]);
  });
  kept.set(top, made);
  return made;
}

const labelled = (kind: Definition['kind'], bound: Bound, file: string): Definition => ({
  kind,
  text: bound.label!.text,
  from: bound.label!.from,
  to: bound.label!.to,
  file,
  bound,
  named: true,
});

function addParts(bound: Bound, file: string, add: (each: Definition) => void): void {
  for (const mention of mentionsIn(bound)) {
    if (!mention.declares) continue;
    add({
      kind: 'part',
      text: mention.text,
      from: mention.from,
      to: mention.to,
      file,
      bound,
      named: mention.from !== bound.item.word?.at,
    });
  }
  if (bound.word?.block === 'circuit' || bound.word?.block === 'branches')
    for (const each of bound.block) addParts(each, file, add);
}

function addLabels(block: readonly Bound[], file: string, add: (each: Definition) => void): void {
  for (const each of block) {
    if (each.label) add(labelled('label', each, file));
    if (each.word?.block === 'steps') addLabels(each.block, file, add);
  }
}

export const declarationPlace = (declaration: Declaration): Definition => {
  const span = declaration.bound.spans['name'] ?? { from: 0, to: 0 };
  return {
    kind: 'declaration',
    text: declaration.name,
    ...span,
    file: declaration.file,
    bound: declaration.bound,
    named: true,
  };
};

/** Words that declare what a reference may name. */
const declaring: Partial<Record<Reference, readonly string[]>> = {
  standard: ['standard'],
  'house-rules': ['house-rules'],
  plan: ['plan'],
  solvent: ['solvent'],
  'nitrogen-cylinder': ['nitrogen-cylinder'],
  'recovery-cylinder': ['recovery-cylinder'],
  'recovery-machine': ['recovery-machine'],
  pump: ['pump'],
  hose: ['hose'],
  regulator: ['regulator'],
  oil: ['oil'],
  tube: ['tube'],
  stock: ['solvent', 'nitrogen-cylinder', 'recovery-cylinder', 'oil'],
};

/** Declarations that a reference may mean, as the file sees them. */
export function declared(snapshot: Snapshot, path: string, refers: Reference): readonly Declaration[] {
  const scope = scopeOf(snapshot, path);
  return (declaring[refers] ?? []).flatMap((kind) => scope.of(kind));
}

/**
 * Where the name of a mention is made: more than once for a kind that several parts share. `top` is the file's statement
 * around it. Empty for what the engine knows by itself (refrigerants, checks) and for names that nothing makes.
 */
export function definitionsOf(snapshot: Snapshot, path: string, top: Bound, mention: Mention): readonly Definition[] {
  const { text, refers } = mention;
  switch (refers) {
    case 'part':
      return partDefinitions(snapshot, path, top, text);
    case 'place-in-circuit': {
      // A cylinder is labelled and weighed by its name.
      const parts = partDefinitions(snapshot, path, top, text);
      return parts.length > 0 ? parts : (stockOf(top, path).get(text) ?? []);
    }
    case 'label':
      return stepsAround(snapshot, path, top).flatMap(({ bound, file }) => labelsOf(bound, file).get(text) ?? []);
    case 'parameter':
      return parameterDefinitions(snapshot, path, top, text);
    case 'stock': {
      const own = stockOf(top, path).get(text);
      if (own) return own;
      break;
    }
  }
  if (mention.declares && top.values['name'] !== undefined && (top.values['name'] as Name).from === mention.from) {
    return [{ kind: 'declaration', text, from: mention.from, to: mention.to, file: path, bound: top, named: true }];
  }
  const scope = scopeOf(snapshot, path);
  for (const kind of declaring[refers] ?? []) {
    const found = scope.find(kind, text);
    if (found) return [declarationPlace(found)];
  }
  return [];
}

/** A name of the circuit; a kind (`suction-line`) means each part of it. Those of a standard are roles, which no circuit makes. */
function partDefinitions(_snapshot: Snapshot, path: string, top: Bound, text: string): readonly Definition[] {
  if (top.word?.word !== 'plan') return [];
  const parts = partsOf(top, path);
  const own = parts.get(text);
  if (own) return own;
  const kind = text.endsWith('s') && !kindNamed(text) ? text.slice(0, -1) : text;
  if (!kindNamed(kind)) return [];
  return [...parts.values()].flat().filter((each) => each.bound.word?.word === kind);
}

/** The plan or standard whose steps a name in `top` may speak of, and what it follows. */
export function stepsAround(
  snapshot: Snapshot,
  path: string,
  top: Bound,
): readonly { readonly bound: Bound; readonly file: string }[] {
  const scope = scopeOf(snapshot, path);
  if (top.word?.word === 'record') {
    const of = top.block.find((each) => each.word?.word === 'of')?.values['plan'] as Name | undefined;
    const plan = of && scope.find('plan', of.text);
    return plan ? stepsAround(snapshot, plan.file, plan.bound) : [];
  }
  const own = { bound: top, file: path };
  const follows = top.block.find((each) => each.word?.word === 'follows')?.values['standard'] as Name | undefined;
  const standard = follows && scope.find('standard', follows.text);
  return standard ? [own, { bound: standard.bound, file: standard.file }] : [own];
}

/** In a plan, the statement that states it; in a standard, the line that asks for it. */
function parameterDefinitions(_snapshot: Snapshot, path: string, top: Bound, text: string): readonly Definition[] {
  for (const each of top.block) {
    const needs = each.word?.word === 'needs' ? (each.values['what'] as Name | undefined) : undefined;
    if (needs?.text === text)
      return [{ kind: 'parameter', text, from: needs.from, to: needs.to, file: path, bound: each, named: false }];
    const word = each.item.word;
    if (each.word?.word === text && word)
      return [
        {
          kind: 'parameter',
          text,
          from: word.at,
          to: word.at + word.text.length,
          file: path,
          bound: each,
          named: false,
        },
      ];
  }
  return [];
}

/** Whether two definitions are the same one. */
export const sameDefinition = (a: Definition | undefined, b: Definition | undefined): boolean =>
  a !== undefined && b !== undefined && a.bound.item === b.bound.item && a.from === b.from && a.file === b.file;

/** The mention at an offset of a statement's own line. */
export const mentionAt = (bound: Bound, within: number): Mention | undefined =>
  mentionsIn(bound).find((each) => each.from <= within && within <= each.to);
