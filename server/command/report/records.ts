import type { RecordView } from '../../engine/snapshot';
import { figuresOfRecord, type RecordFigure } from '../../engine/takeoff/of-record';
import { type Chosen, verdict } from '../chosen';
import type { Words } from '../description';
import { type Host, paintFor } from '../host';
import { unitsIn, wantsJson } from '../options';
import type { RecordTakeoffReport } from '../shapes/takeoff';
import { figureReport } from './figure';
import { figureRows } from './figure-rows';
import { jsonText } from './json';

/** What the readings and weights of the records of a file mean, written out. */
export function ofRecords(
  host: Host,
  words: Words,
  chosen: Omit<Chosen, 'view'>,
  records: readonly RecordView[],
): number {
  const taken = records.map(({ declaration, view }) => ({
    record: declaration.name,
    plan: view?.plan ?? null,
    figures: view ? figuresOfRecord(declaration, view) : [],
  }));
  const options = (plan: (typeof taken)[number]['plan']) => ({
    system: unitsIn(words),
    ...(plan && { atmosphere: plan.site.atmosphere }),
  });
  if (wantsJson(words)) {
    const report: RecordTakeoffReport = {
      version: 1,
      records: taken.map(({ record, plan, figures }) => ({
        record,
        plan: plan?.name ?? null,
        figures: figures.map(({ answer, figure }) => ({
          answer: answer?.item.word?.text ?? null,
          figure: figureReport(figure, options(plan)),
        })),
      })),
    };
    host.out(jsonText(report));
  } else {
    const paint = paintFor(host);
    const lines = taken.flatMap(({ record, plan, figures }) => [
      paint('bold', plan ? `${record}, of ${plan.title || plan.name}` : `${record}: its plan is not found`),
      ...figureRows(
        figures.map(({ figure }) => figure),
        options(plan),
      ),
      ...notesOf(figures),
    ]);
    host.out(`${lines.join('\n')}\n`);
  }
  return verdict(host, words, chosen);
}

/** What a reader must know beside the numbers: what was read, when a visit is due. */
const notesOf = (figures: readonly RecordFigure[]): readonly string[] => {
  const notes = figures.flatMap(({ figure }) =>
    figure.notes
      .filter((note) => !figure.defaults.includes(note) && figure.quantity !== null)
      .map((note) => `    ${figure.subject}: ${note}`),
  );
  return notes.length > 0 ? ['', ...new Set(notes)] : [];
};
