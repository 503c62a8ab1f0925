import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { buildProcedure, type ProcedureOptions } from '../../../server/engine/procedure/build';
import type { Entry, Procedure, Step } from '../../../server/engine/procedure/document';
import type { PlanView } from '../../../server/engine/view';
import { Workspace } from '../../../server/engine/workspace';

const folder = join(import.meta.dirname, '../../fixtures/samples');

/** The sample files with some of their texts changed, by file name. */
export function samples(changed: (path: string, text: string) => string = (_path, text) => text): Workspace {
  const workspace = new Workspace();
  for (const path of readdirSync(folder))
    if (path.endsWith('.jobplan')) workspace.setFile(path, changed(path, readFileSync(join(folder, path), 'utf8')));
  return workspace;
}

export interface Sheet {
  readonly view: PlanView;
  readonly procedure: Procedure;
}

export function sheetOf(path: string, workspace = samples(), options: Partial<ProcedureOptions> = {}): Sheet {
  const snapshot = workspace.snapshot();
  const [view] = snapshot.plans(path);
  if (!view) throw new Error(`${path} declares no plan`);
  const sources = snapshot.closure(path).map((file) => ({ path: file.path, text: snapshot.file(file.path)!.text }));
  return { view, procedure: buildProcedure(view, { units: 'both', workings: false, sources, ...options }) };
}

/** Steps and holds in printing order. */
export const flat = (entries: readonly Entry[]): readonly (Step | Extract<Entry, { kind: 'hold' }>)[] =>
  entries.flatMap((entry) => (entry.kind === 'step' || entry.kind === 'hold' ? [entry] : flat(entry.entries)));

export const plans = ['changeout-split.jobplan', 'ductless-three-zone.jobplan', 'rack-conversion.jobplan'] as const;
