import { farEnd, nearEnd, type Part, type PartSpec, type Series } from '../../circuit/graph';
import { isLine } from '../../circuit/kinds';
import { child } from '../../plan/bind';
import type { Amount as Authored } from '../../plan/term';
import type { Flow } from '../../steps/events';
import type { TitledDrawing } from '../document';
import { drawCircuit } from '../drawing/draw';
import { drawnPart, type Mark, type Piece, signOf } from '../drawing/graph';
import type { Sheet } from './sheet';

/** Each circuit that the job touches: what is kept, new and removed, sizes, where solvent goes in and out, what is shut. */
export function drawingsOf(sheet: Sheet): readonly TitledDrawing[] {
  const { circuits } = sheet.plan;
  const flushes = sheet.walk.entries
    .flatMap((entry) => entry.events)
    .filter((event): event is Flow => event.type === 'flows' && event.medium === 'solvent');
  return circuits.flatMap((spec, circuit) => {
    if (spec.untouched || spec.series.length === 0) return [];
    const series = piecesOf(spec.series, (part) => drawn(sheet, flushes, circuit, part));
    return [
      {
        title: spec.name === null ? 'Circuit' : `Circuit ${spec.name}`,
        drawing: drawCircuit({ series, patterns: {} }),
      },
    ];
  });
}

function piecesOf(series: Series, part: (spec: PartSpec) => Piece): readonly Piece[] {
  return series.flatMap((item): readonly Piece[] => {
    if (item.type === 'part') return [part(item.part)];
    if (item.type === 'through') return [{ kind: 'through', name: item.name }];
    // Parts in one casing are a parallel of one branch: they are drawn in line.
    const [only] = item.branches;
    if (only && item.branches.length === 1) return piecesOf(only.series, part);
    const branches = item.branches.map((branch) => ({
      name: branch.name ?? '',
      series: piecesOf(branch.series, part),
    }));
    return [{ kind: 'parallel', branches }];
  });
}

function drawn(sheet: Sheet, flushes: readonly Flow[], circuit: number, spec: PartSpec): Piece {
  const { graph } = sheet.plan;
  const part = graph.parts.find((each) => each.circuit === circuit && each.name === spec.name);
  if (!part) return drawnPart(spec.name, signOf(spec.kind.kind));
  return drawnPart(spec.name, signOf(spec.kind.kind), {
    state: spec.standing,
    size: sizeOf(sheet, part),
    neverFlush: flushes.length > 0 && spec.kind.neverFlush !== null,
    shut: shutAtStart(sheet, part),
    marks: isLine(spec.kind) ? marksOf(sheet, flushes, part) : [],
  });
}

function sizeOf(sheet: Sheet, part: Part): string | null {
  const { tube } = part.properties;
  const block = sheet.plan.partStatements[part.index]?.block ?? [];
  const written = (word: string, slot: string): string | null =>
    (child(block, word)?.values[slot] as Authored | undefined)?.literal?.text ?? null;
  const rise = written('rise', 'height');
  const drop = written('drop', 'height');
  const pieces = [
    tube?.shown.replace(/ (ACR|EN)$/, '') ?? null,
    written('length', 'length'),
    rise ? `rise ${rise}` : null,
    drop ? `drop ${drop}` : null,
    part.properties.traps?.length ? 'trap' : null,
    isLine(part.kind) ? null : written('volume', 'volume'),
  ].filter((each) => each !== null);
  return pieces.length > 0 ? pieces.join(', ') : null;
}

/** As the job begins, and of what is new as it comes. */
function shutAtStart(sheet: Sheet, part: Part): boolean {
  const { walk } = sheet;
  const comes = part.standing === 'new' || part.standing === 'added';
  if (comes) return part.properties.closed === true || part.properties.valves === 'closed';
  return (
    walk.start.parts[part.index]?.position === 'shut' || part.ends.some((end) => walk.start.ends[end]?.valve === 'shut')
  );
}

function marksOf(sheet: Sheet, flushes: readonly Flow[], part: Part): readonly Mark[] {
  const side = (end: number): Mark['at'] => sheet.plan.graph.ends[end]!.side;
  const flow = flushes.find((each) => each.line === part.index);
  if (flow) {
    const out = flow.outlets.map((outlet) => outlet.opening.end).filter((end) => part.ends.includes(end));
    return [
      { at: side(flow.inlet), what: 'solvent-in' },
      ...out.map((end): Mark => ({ at: side(end), what: 'solvent-out' })),
    ];
  }
  if (part.standing !== 'kept' && part.standing !== 'reused') return [];
  const opened = sheet.walk.entries.some((entry) =>
    entry.events.some((event) => event.type === 'opens' && event.part === part.index),
  );
  return opened
    ? [
        { at: side(nearEnd(part)), what: 'near' },
        { at: side(farEnd(part)), what: 'far' },
      ]
    : [];
}
