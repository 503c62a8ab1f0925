import type { PlanView } from '../view';
import { chargeAidsOf } from './build/charge-aids';
import { drawingsOf } from './build/circuit-drawing';
import { jobOf } from './build/job';
import { materialsOf } from './build/materials';
import { notByTheBook } from './build/not-by-the-book';
import { protectionOf } from './build/protection';
import { putBackOf } from './build/put-back';
import { recordOf } from './build/record';
import type { Units } from './build/ruler';
import { type Sheet, type Source, sheetOf } from './build/sheet';
import { entriesOf } from './build/steps';
import { toolsOf } from './build/tools';
import { wasteOf } from './build/waste';
import { workingsOf } from './build/workings';
import type { Head, Procedure } from './document';
import { contentHash } from './hash';
import { plainText } from './sentence';

export interface ProcedureOptions {
  readonly units: Units;
  /** Whether the pages with every figure's formula, inputs and source are wanted. */
  readonly workings: boolean;
  /** All files that the plan draws in, its own among them: the content hash covers them. */
  readonly sources: readonly Source[];
}

/** The printable procedure of a plan that is walked, checked and taken off. Never throws: what is missing is left out. */
export function buildProcedure(view: PlanView, options: ProcedureOptions): Procedure {
  const sheet = sheetOf(view, options.units, options.sources);
  const errors = view.findings.filter((finding) => finding.severity === 'error').length;
  return {
    head: headOf(sheet, options),
    units: unitsLine(sheet),
    draft: errors > 0 ? { errors } : null,
    job: jobOf(sheet),
    notByTheBook: notByTheBook(sheet),
    packing: { materials: materialsOf(sheet), tools: toolsOf(sheet), protection: protectionOf(sheet) },
    drawings: drawingsOf(sheet),
    steps: entriesOf(sheet),
    chargeAids: chargeAidsOf(sheet),
    waste: wasteOf(sheet),
    putBack: putBackOf(sheet),
    record: recordOf(sheet),
    workings: options.workings ? workingsOf(sheet) : null,
  };
}

function headOf({ plan }: Sheet, { sources }: ProcedureOptions): Head {
  const standard = plan.standard;
  const revision = standard?.bound.block.find((each) => each.word?.word === 'revision')?.values['number'];
  return {
    job: plan.title,
    shop: plan.rules.map((rules) => rules.title ?? rules.name).join(', '),
    plan: plan.name,
    revision: plan.revision === null ? 'none' : String(plan.revision),
    standard: standard ? { name: standard.title ?? standard.name, revision: String(revision ?? 'none') } : null,
    date: plan.date,
    contentHash: contentHash(sources),
  };
}

const unitWords = {
  'inch-pound': 'inch-pound',
  si: 'SI',
} as const;

function unitsLine({ plan, ruler }: Sheet): string {
  const main = unitWords[ruler.main];
  const other = unitWords[ruler.main === 'si' ? 'inch-pound' : 'si'];
  const site = plan.site.altitude ? plainText([{ ...ruler.stated(plan.site.altitude), other: null }]) : 'sea level';
  return `Units: ${main}${ruler.units === 'both' ? ` (${other} in brackets)` : ''}. Gauge and vacuum at ${site}.`;
}
