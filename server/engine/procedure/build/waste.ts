import type { Entry } from '../../walk/walk';
import type { WasteContainer } from '../document';
import type { Amount } from '../sentence';
import type { Sheet } from './sheet';
import { listed } from './words';

/** Each container that leaves the job; spent solvent and used oil never share one (40 CFR 279.10(b)(1)(ii)(B)). */
export function wasteOf(sheet: Sheet): readonly WasteContainer[] {
  return [...gases(sheet), ...spentSolvent(sheet), ...usedOil(sheet), ...oldParts(sheet)];
}

const acidAt = (entry: Entry, parts: readonly number[]): boolean =>
  parts.some((index) => entry.before.parts[index]?.residue.acid === true);

function gases(sheet: Sheet): readonly WasteContainer[] {
  const { plan, ruler } = sheet;
  const found = new Map<
    string,
    { refrigerants: Set<string>; burnt: boolean; most: Amount | null; kind: string | null }
  >();
  const items = (plan.bring ?? []).filter((item) => item.word === 'recovery');
  for (const entry of sheet.walk.entries) {
    for (const event of entry.events) {
      if (event.type !== 'recovers' || event.spaces.length === 0) continue;
      const item = event.into ? items.find((each) => each.label === event.into) : items[0];
      const container = event.into ?? item?.label ?? item?.name ?? 'Recovery cylinder';
      const row = found.get(container) ?? { refrigerants: new Set<string>(), burnt: false, most: null, kind: null };
      for (const held of event.held) if (held.refrigerant) row.refrigerants.add(held.refrigerant);
      // The gas of a part that burnt out is burnt gas; that of the rest of the plant is only the old charge.
      row.burnt ||= event.into !== null && /burn/.test(event.into);
      row.burnt ||= plan.kinds.includes('burnout') && event.into === null && acidAt(entry, event.spaces[0]!.parts);
      row.most ??=
        sheet.figuresOf(entry.slot.step, 'safe-fill').flatMap((figure) => ruler.figure(figure) ?? [])[0] ?? null;
      row.kind ??= item && item.name !== container ? item.name : null;
      found.set(container, row);
    }
  }
  return [...found].map(([container, row]) => {
    const gas = listed([...row.refrigerants]);
    const burnt = row.burnt ? ', burnt' : '';
    return {
      container: row.kind ? `${container} (${row.kind})` : container,
      contents: `recovered ${gas}${burnt}`,
      most: row.most,
      label: `RECOVERED ${gas}${burnt.toUpperCase()}. Job, date, weight`,
      goesTo: row.burnt ? 'reclaimer, told that it is burnt; never mixed' : 'reclaimer, or back to the owner',
    };
  });
}

function spentSolvent(sheet: Sheet): readonly WasteContainer[] {
  const { plan, ruler } = sheet;
  const flushed = sheet.walk.entries.flatMap((entry) =>
    entry.events.filter((event) => event.type === 'flows' && event.medium === 'solvent').map(() => entry),
  );
  const [first] = flushed;
  if (!first) return [];
  const solvent = sheet.totals('solvent-in-job')[0]?.subject ?? plan.parameters.solvent?.name ?? 'solvent';
  const oil = plan.system.oil.before;
  const most =
    [...sheet.totals('spent-solvent-volume'), ...sheet.totals('solvent-in-job')].flatMap(
      (figure) => ruler.figure(figure) ?? [],
    )[0] ?? null;
  const acid = plan.kinds.includes('burnout') ? ', acid' : '';
  return [
    {
      container: 'Catch container',
      contents: `spent ${solvent}${oil ? ` with ${oil} oil` : ''}${acid}`,
      most,
      label: `SPENT SOLVENT ${solvent}${acid.toUpperCase()}. Not used oil. Date`,
      goesTo: 'solvent waste, by its data sheet; never the used-oil can',
    },
  ];
}

function usedOil(sheet: Sheet): readonly WasteContainer[] {
  const { plan, ruler } = sheet;
  const words = new Set(sheet.walk.entries.map((entry) => entry.slot.step.word.word));
  const oil = plan.system.oil.before ?? 'compressor';
  const rows: WasteContainer[] = [];
  if (words.has('change-oil') || words.has('drain'))
    rows.push({
      container: 'Used-oil can',
      contents: `${oil} oil${plan.kinds.includes('burnout') ? ', may be acid' : ''}`,
      // What is filled stands in for what comes out where the drain itself is not counted.
      most:
        [...sheet.totals('used-oil'), ...sheet.totals('oil-in-all')].flatMap(
          (figure) => ruler.figure(figure) ?? [],
        )[0] ?? null,
      label: 'USED REFRIGERATION OIL. No solvent in it. Date',
      goesTo: 'used-oil collector; not mixed with other oil',
    });
  const pump = sheet.walk.entries.some(
    (entry) => entry.slot.step.word.word === 'change' && /pump-oil/.test(entry.slot.step.text),
  );
  if (pump)
    rows.push({
      container: 'Pump-oil bottle',
      contents: 'oil of the vacuum pump',
      most: null,
      label: 'USED PUMP OIL. Date',
      goesTo: 'used-oil collector',
    });
  return rows;
}

/** More names than this are no help on a label. */
const mostNamed = 6;

/** Old machines go to scrap with their oil in them unless somebody drains it. */
function oldParts(sheet: Sheet): readonly WasteContainer[] {
  const off = new Set<number>();
  for (const entry of sheet.walk.entries)
    for (const event of entry.events)
      if (event.type === 'unmounts')
        for (const index of event.parts) if (entry.before.parts[index]?.mounted === 'old') off.add(index);
  const named = [...off]
    .map((index) => sheet.plan.graph.parts[index]!)
    .filter(
      (part) =>
        part.standing !== 'kept' && part.standing !== 'reused' && (part.kind.equipment || part.kind.group === 'drier'),
    );
  if (named.length === 0) return [];
  const oil = sheet.plan.system.oil.before;
  return [
    {
      container: 'Old parts',
      contents: `${named.length > mostNamed ? `${named.length} parts that came off` : listed(named.map((part) => part.name))}${oil ? `; ${oil} oil in them` : ''}`,
      most: null,
      label: 'Refrigerant recovered, date and by whom; ends capped',
      goesTo: 'scrap that takes refrigeration parts; oil drained into the used-oil can first',
    },
  ];
}
