import type { Snapshot as EngineSnapshot } from '../engine/snapshot';
import type { Workspace as EngineWorkspace } from '../engine/workspace';

export type { BoundFile, SourceFile } from '../engine/snapshot';
export type { PlanView } from '../engine/view';
export type { TextChange } from '../engine/workspace';

/** What the editor asks of a snapshot. Paths are relative to the workspace folder, with `/` between names. */
export type Snapshot = Pick<EngineSnapshot, keyof EngineSnapshot>;

/** What the editor asks of the engine; a test of the frame puts something simpler in its place. */
export interface Workspace extends Omit<Pick<EngineWorkspace, keyof EngineWorkspace>, 'snapshot'> {
  snapshot(): Snapshot;
}
