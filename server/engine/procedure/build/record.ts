import { exactly } from '../../quantity';
import { forTheRecord } from '../construct';
import type { RecordPage, RecordRow } from '../document';
import { type Sentence, sentence } from '../sentence';
import { recoversWhole } from './recovered';
import { chargedOf, type Sheet } from './sheet';

/** What is written down at the end, beside what the plan expected. */
export function recordOf(sheet: Sheet): RecordPage {
  return {
    quantities: quantities(sheet),
    readings: readings(sheet),
    serials: serials(sheet),
    departureLines: 4,
    signatures: ['technician', 'lead', 'owner'],
  };
}

function quantities(sheet: Sheet): readonly RecordRow[] {
  const { plan, ruler } = sheet;
  const mass = ruler.unit('mass');
  const rows: RecordRow[] = [];
  const events = sheet.walk.entries.flatMap((entry) => entry.events);
  const total = (name: string, subject?: string): Sentence => {
    const figure = sheet.totals(name).find((each) => subject === undefined || each.subject === subject);
    const shown = figure ? ruler.figure(figure) : null;
    return shown ? sentence(shown) : forTheRecord;
  };
  const recovered = new Map<string, Sentence>();
  const charged = new Map<string, Sentence>();
  for (const event of events) {
    if (event.type === 'recovers' && event.spaces.length > 0)
      for (const held of event.held)
        if (held.refrigerant)
          recovered.set(
            held.refrigerant,
            held.refrigerant === plan.system.refrigerant.before && plan.system.recoverCharge && recoversWhole(sheet)
              ? sentence(ruler.stated(plan.system.recoverCharge))
              : forTheRecord,
          );
    if (event.type === 'charges') {
      const planned = chargedOf(sheet, event.refrigerant);
      charged.set(event.refrigerant, planned ? sentence(planned) : forTheRecord);
    }
  }
  for (const [gas, planned] of recovered) rows.push({ what: `${gas} recovered`, unit: mass, planned });
  for (const [gas, planned] of charged) rows.push({ what: `${gas} charged`, unit: mass, planned });
  if (charged.size > 0 || events.some((event) => event.type === 'lets-in'))
    rows.push({ what: 'Full charge, as on the plate', unit: mass, planned: fullCharge(sheet) });
  for (const figure of sheet.totals('solvent-in-job'))
    rows.push({ what: `${figure.subject} used`, unit: mass, planned: total('solvent-in-job', figure.subject) });
  if (events.some((event) => event.type === 'flows' || event.type === 'pressurises'))
    rows.push({
      what: 'Nitrogen left in the last cylinder',
      unit: ruler.unit('pressure'),
      planned: nitrogenLeft(sheet),
    });
  for (const figure of sheet.totals('oil-in-all'))
    rows.push({
      what: `${figure.subject} oil filled`,
      unit: ruler.unit('volume'),
      planned: total('oil-in-all', figure.subject),
    });
  return rows;
}

function nitrogenLeft(sheet: Sheet): Sentence {
  const last = sheet.view.takeOff.nitrogen.cylinders.at(-1);
  if (!last) return forTheRecord;
  const left = sheet.ruler.computed(exactly('pressure', last.left), 'psig', 2);
  return sentence(`${last.name}: at least `, left);
}

function fullCharge(sheet: Sheet): Sentence {
  const figures = sheet.walk.entries.flatMap((entry) => sheet.figuresOf(entry.slot.step, 'total-charge'));
  const shown = figures.flatMap((figure) => sheet.ruler.figure(figure) ?? [])[0];
  return shown ? sentence(shown) : forTheRecord;
}

/** How the machine ran before and after: what the owner compares. */
function readings(sheet: Sheet): readonly RecordRow[] {
  const { plan, ruler } = sheet;
  const { superheat, subcooling } = plan.system;
  const pressure = ruler.unit('pressure');
  const difference = ruler.unit('temperature-difference');
  if (!sheet.walk.entries.some((entry) => entry.events.some((event) => event.type === 'starts'))) return [];
  return [
    { what: 'Suction pressure', unit: pressure, planned: forTheRecord },
    { what: 'Discharge pressure', unit: pressure, planned: forTheRecord },
    { what: 'Superheat', unit: difference, planned: superheat ? sentence(ruler.stated(superheat)) : forTheRecord },
    { what: 'Subcooling', unit: difference, planned: subcooling ? sentence(ruler.stated(subcooling)) : forTheRecord },
    { what: 'Compressor current', unit: 'A', planned: sentence('not over its plate') },
    { what: 'Outdoors', unit: ruler.unit('temperature'), planned: forTheRecord },
  ];
}

function serials(sheet: Sheet): readonly string[] {
  const parts = sheet.plan.graph.parts.filter(
    (part) =>
      (part.standing === 'new' || part.standing === 'added') &&
      ['compressor', 'condenser', 'evaporator', 'branch-box', 'coaxial-coil', 'plate-exchanger'].includes(
        part.kind.kind,
      ),
  );
  const cylinders = (sheet.plan.bring ?? [])
    .filter((item) => item.word === 'recovery')
    .map((item) => `recovery cylinder ${item.label ?? item.name}`);
  return [...parts.map((part) => part.name), ...cylinders];
}
