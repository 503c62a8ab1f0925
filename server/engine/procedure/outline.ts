import type { Block, Cell, Column, TableBlock } from './block';
import type { Departure, Fact, Packing, Procedure, RecordRow, Tool, Working } from './document';
import { chargeBlocks } from './outline-charge';
import { stepBlocks } from './outline-steps';
import { type Amount, plainText, type Run, type Sentence, sentence, small, strong } from './sentence';

const column = (title: string, share: number, align: Column['align'] = 'left'): Column => ({ title, share, align });
const text = (...pieces: readonly (string | Run)[]): Cell => ({ kind: 'text', text: sentence(...pieces) });
const said = (runs: Sentence): Cell => ({ kind: 'text', text: runs });
const box: Cell = { kind: 'box' };

function heading(level: 1 | 2, title: string, anchor: string, newPage = false): Block {
  return { kind: 'heading', level, text: title, anchor, line: null, depth: 0, newPage };
}

const paragraph = (runs: Sentence, isSmall = false, indent = 0): Block => ({
  kind: 'paragraph',
  text: runs,
  small: isSmall,
  indent,
  keep: false,
});

const factTable = (facts: readonly Fact[]): TableBlock => ({
  kind: 'table',
  columns: [column('', 22), column('', 78)],
  rows: facts.map((fact) => [text(strong(fact.label)), said(fact.value)]),
});

const stepWords = (numbers: string): string => `${/\D/.test(numbers) ? 'steps' : 'step'} ${numbers}`;

const departureKinds: Record<Departure['kind'], string> = {
  departure: 'Departure',
  maker: 'Maker’s sheet',
  accepted: 'Accepted',
};

function departureBlocks(departures: readonly Departure[]): Block[] {
  if (departures.length === 0) return [paragraph(sentence('Nothing: the standard and the built-in limits stand.'))];
  return [
    {
      kind: 'table',
      columns: [column('Kind', 14), column('What', 38), column('Because', 32), column('Step', 6), column('Signs', 10)],
      rows: departures.map((one) => [
        text(strong(departureKinds[one.kind])),
        said(one.what),
        text(one.because),
        text(one.step ?? ''),
        text(one.signer ?? ''),
      ]),
    },
  ];
}

const toolTable = (title: string, rating: string, tools: readonly Tool[]): TableBlock => ({
  kind: 'table',
  columns: [column('', 0), column(title, 34), column(rating, 38), column('Why', 28)],
  rows: tools.map((tool) => [box, said(tool.take), said(tool.rating), text(small(tool.why))]),
});

/** The bare figure in brackets, its twin inside the same pair. */
const bareNeed = (needed: Amount): string =>
  `(${plainText([{ ...needed, other: null }])}${needed.other === null ? '' : `; ${needed.other}`})`;

function packingBlocks(packing: Packing): Block[] {
  const materials: TableBlock = {
    kind: 'table',
    columns: [column('', 0), column('Take, in whole containers', 38), column('(Bare need)', 24), column('Why', 38)],
    rows: packing.materials.map((one) => [
      box,
      said(one.take),
      one.needed === null ? text('') : text(bareNeed(one.needed)),
      text(small(one.why)),
    ]),
  };
  return [
    heading(2, 'Materials', 'materials'),
    materials,
    heading(2, 'Tools', 'tools'),
    toolTable('Tool', 'Rating it must have', packing.tools),
    heading(2, 'Protection and paper', 'protection'),
    toolTable('Take', 'Must be', packing.protection),
  ];
}

function recordTable(what: string, planned: string, rows: readonly RecordRow[], blanks: readonly string[]): TableBlock {
  return {
    kind: 'table',
    columns: [column(what, 34), column(planned, 24), ...blanks.map((title) => column(title, 42 / blanks.length))],
    rows: rows.map((row) => [
      text(row.what),
      said(row.planned),
      ...blanks.map((): Cell => ({ kind: 'write', unit: row.unit })),
    ]),
  };
}

function recordBlocks({ record }: Procedure): Block[] {
  const blocks: Block[] = [];
  if (record.quantities.length > 0) {
    blocks.push(heading(2, 'Quantities used', 'quantities'), recordTable('What', 'Plan', record.quantities, ['Used']));
  }
  if (record.readings.length > 0) {
    blocks.push(
      heading(2, 'Readings at start and end', 'readings'),
      recordTable('What', 'Limit', record.readings, ['Start', 'End']),
    );
  }
  if (record.serials.length > 0) {
    blocks.push(heading(2, 'Serial numbers', 'serials'), {
      kind: 'table',
      columns: [column('Of', 34), column('Number', 66)],
      rows: record.serials.map((one) => [text(one), { kind: 'write', unit: '' }]),
    });
  }
  blocks.push(heading(2, 'Departures made on site, and why', 'site-departures'));
  blocks.push({ kind: 'ruled', count: record.departureLines });
  blocks.push(heading(2, 'Signatures', 'signatures'), { kind: 'signatures', roles: record.signatures });
  return blocks;
}

function workingBlocks(workings: readonly Working[]): Block[] {
  return workings.flatMap((one, index) => {
    const inputs = one.inputs.map((input) => `${input.name} = ${input.shown} (${input.from})`).join('; ');
    const value: Sentence = one.value === null ? sentence('not known') : [one.value];
    const notes = [...one.notes, `Source: ${one.sources.join('; ') || 'none'}. How sure: ${one.confidence}.`];
    return [
      heading(2, `${one.subject}: ${one.name}`, `working-${index + 1}`),
      paragraph([...value, ...sentence('   by ', strong(one.formula))]),
      ...(inputs === '' ? [] : [paragraph(sentence(inputs), true, 1)]),
      ...one.lines.map((line) => paragraph(sentence(line), false, 1)),
      ...notes.map((note) => paragraph(sentence(note), true, 1)),
    ];
  });
}

/** Whether a row of a table stays with the next one: neither the first nor the last ever stands alone on a page. */
export const keepsNext = (row: number, rows: number): boolean => row < rows - 1 && (row === 0 || row === rows - 2);

/** The whole sheet in printing order. Sections without content of their own that may be empty say so or are left out. */
export function outline(procedure: Procedure): readonly Block[] {
  const blocks: Block[] = [
    heading(1, 'The job', 'job'),
    factTable(procedure.job),
    heading(1, 'Not by the book', 'not-by-the-book'),
    ...departureBlocks(procedure.notByTheBook),
    heading(1, 'Before you leave the shop', 'packing'),
    ...packingBlocks(procedure.packing),
  ];
  for (const [index, { title, drawing }] of procedure.drawings.entries()) {
    blocks.push(heading(1, title, `drawing-${index + 1}`), { kind: 'drawing', drawing });
  }
  blocks.push(heading(1, 'Steps', 'steps'), ...stepBlocks(procedure.steps));
  blocks.push(...chargeBlocks(procedure.chargeAids));
  blocks.push(heading(1, 'Waste and gas going back', 'waste'), {
    kind: 'table',
    columns: [
      column('', 0),
      column('Container', 20),
      column('What is in it', 22),
      column('At most', 18),
      column('Label', 22),
      column('Goes to', 18),
    ],
    rows: procedure.waste.map((one) => [
      box,
      text(strong(one.container)),
      text(one.contents),
      one.most === null ? text('') : text(one.most),
      text(one.label),
      text(one.goesTo),
    ]),
  });
  blocks.push(heading(1, 'Put back', 'put-back'), {
    kind: 'table',
    columns: [
      column('', 0),
      column('What', 38),
      column('Stands at the end', 38),
      column('Touched', 12),
      column('Back', 12),
    ],
    rows: procedure.putBack.map((one) => [
      box,
      said(one.what),
      text(one.stands),
      text(stepWords(one.touched)),
      text(one.restored === null ? 'by hand' : stepWords(one.restored)),
    ]),
  });
  blocks.push(heading(1, 'Record and signatures', 'record'), ...recordBlocks(procedure));
  if (procedure.workings !== null) {
    blocks.push(heading(1, 'Workings', 'workings', true), ...workingBlocks(procedure.workings));
  }
  return blocks;
}
