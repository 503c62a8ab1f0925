import type { BringItem } from '../../plan/plan';
import type { Declaration } from '../../plan/scope';
import type { Amount as Authored, Name } from '../../plan/term';
import type { Figure } from '../../takeoff/figure';
import { priceOf } from '../../takeoff/stock-data';
import type { Material } from '../document';
import { type Amount, type Run, sentence } from '../sentence';
import { recoversWhole } from './recovered';
import { chargedOf, type Sheet } from './sheet';
import { uncountedToFill } from './uncounted';
import { counted, listed } from './words';

/** What is used up or filled: whole containers, with the bare need that they come from. */
export function materialsOf(sheet: Sheet): readonly Material[] {
  const { bring } = sheet.plan;
  return [...(bring === null ? toBring(sheet) : bring.flatMap((item) => brought(sheet, item))), ...parts(sheet)];
}

const shown = (sheet: Sheet, figure: Figure | undefined): Amount | null => (figure ? sheet.ruler.figure(figure) : null);

const total = (sheet: Sheet, name: string, subject?: string): Amount | null =>
  shown(
    sheet,
    sheet.totals(name).find((figure) => subject === undefined || figure.subject === subject),
  );

const times = (item: BringItem): string => `${item.number} x `;

function brought(sheet: Sheet, item: BringItem): readonly Material[] {
  const { plan, ruler } = sheet;
  const values = item.bound.values;
  const title = item.declaration?.title;
  const described: readonly (string | Run)[] = title ? [` (${title})`] : [];
  const price = priced(item.declaration);
  switch (item.word) {
    case 'solvent':
      return [
        {
          take: sentence(`${times(item)}${item.name}`, ...described, ...price),
          needed: total(sheet, 'solvent-in-job', item.name),
          why: 'flushing, at the most rounds',
        },
      ];
    case 'nitrogen': {
      const at = values['at'] as Authored | undefined;
      return [
        {
          take: sentence(
            `${times(item)}nitrogen ${item.label ?? item.name}`,
            ...(at ? [' at ', ruler.authored(at)] : [', full']),
            ...price,
          ),
          needed: total(sheet, 'nitrogen-in-all'),
          why: nitrogenWhy(sheet),
        },
      ];
    }
    case 'recovery': {
      const holding = (values['holding'] as Name | undefined)?.text;
      const state = values['empty'] === true ? ', empty and evacuated' : holding ? `, holding ${holding}` : '';
      return [
        {
          take: sentence(
            `${times(item)}recovery cylinder ${item.name}${item.label ? ` as ${item.label}` : ''}${state}`,
          ),
          needed: recoveredInto(sheet, item),
          why: `${item.label ? `for what goes into ${item.label}` : `for the ${plan.system.refrigerant.before ?? 'old gas'}`}`,
        },
      ];
    }
    case 'refrigerant': {
      const mass = values['mass'] as Authored | undefined;
      return [
        {
          take: sentence(item.name, ...(mass ? [', ', ruler.authored(mass)] : [])),
          needed: chargedOf(sheet, item.name),
          why: 'charging',
        },
      ];
    }
    case 'oil': {
      const volume = values['volume'] as Authored | undefined;
      return [
        {
          take: sentence(
            `${item.name} oil`,
            ...(volume ? [', ', ruler.authored(volume)] : []),
            ', cans unopened',
            ...price,
          ),
          needed: total(sheet, 'oil-in-all', item.name),
          why: 'oil rounds and filling',
        },
      ];
    }
    case 'swabs':
      return [
        { take: sentence(counted(item.number, 'lint-free swab')), needed: null, why: 'as many come out as went in' },
      ];
    default:
      return [];
  }
}

/** The shop's own price, as it is written there. */
function priced(declaration: Declaration | null | undefined): readonly string[] {
  const price = priceOf(declaration);
  return price === null ? [] : [`, ${price}`];
}

function nitrogenWhy(sheet: Sheet): string {
  const { changes, short } = sheet.view.takeOff.nitrogen;
  if (short) return `falls short at step ${sheet.numberOf(short.entry.slot.step) ?? '?'}`;
  const [change] = changes;
  return change
    ? `purging, test, brazing; change cylinders at step ${sheet.numberOf(change.entry.slot.step) ?? '?'}`
    : `purging, test, brazing${uncountedToFill(sheet).length > 0 ? onTop(sheet) : '; one is enough'}`;
}

/** Coils and vessels that nitrogen fills and whose volume nobody states: the bare need is without them. */
const onTop = (sheet: Sheet): string => {
  const names = uncountedToFill(sheet);
  return names.length > 0
    ? `; on top what ${listed(names)} hold${names.length > 1 ? '' : 's'}: no volume is stated`
    : '';
};

/** What goes into a cylinder by the plan: the stated charge where the system is recovered into it. */
function recoveredInto(sheet: Sheet, item: BringItem): Amount | null {
  const charge = sheet.plan.system.recoverCharge;
  return charge && recoversWhole(sheet, item.label) ? sheet.ruler.stated(charge) : null;
}

/** Without a stated stock the take-off says what to bring. */
function toBring(sheet: Sheet): readonly Material[] {
  const rows: Material[] = [];
  const add = (
    containers: string,
    need: string,
    what: (subject: string) => string,
    why: string,
    kind: string | null = null,
  ): void => {
    for (const figure of sheet.totals(need)) {
      const count = sheet
        .totals(containers)
        .find((each) => containers === 'cylinders-to-bring' || each.subject === figure.subject);
      const whole = count?.quantity
        ? `${Math.ceil(count.quantity.high - 1e-9)} x ${what(count.subject)}`
        : what(figure.subject);
      const declared = kind && sheet.plan.scope.find(kind, count?.subject ?? figure.subject);
      rows.push({ take: sentence(whole, ...priced(declared || null)), needed: shown(sheet, figure), why });
    }
  };
  add('solvent-containers', 'solvent-in-job', (subject) => subject, 'flushing, at the most rounds', 'solvent');
  add(
    'cylinders-to-bring',
    'nitrogen-in-all',
    (subject) => (subject.includes('nitrogen') ? subject : `nitrogen ${subject}, full`),
    `purging, test, brazing${onTop(sheet)}`,
    'nitrogen-cylinder',
  );
  add(
    'recovery-cylinders-needed',
    'recovery-in-all',
    (subject) => `recovery cylinder for ${subject}`,
    'the old charge',
  );
  add('', 'refrigerant-in-all', (subject) => subject, 'charging');
  add('', 'oil-in-all', (subject) => `${subject} oil, cans unopened`, 'filling', 'oil');
  return rows;
}

/** New parts of the circuit, and what joints are made with. */
function parts(sheet: Sheet): readonly Material[] {
  const { graph } = sheet.plan;
  const fresh = graph.parts.filter((part) => part.standing === 'new' || part.standing === 'added');
  const rows: Material[] = [];
  if (fresh.length > 0)
    rows.push({
      take: sentence(`New: ${fresh.map((part) => part.name).join(', ')}`),
      needed: null,
      why: 'go in; read each plate against the plan',
    });
  const joins = sheet.walk.entries.flatMap((entry) =>
    entry.events.flatMap((event) => (event.type === 'joins' ? [event] : [])),
  );
  if (joins.some((event) => event.torch))
    rows.push({
      take: sentence('Brazing rod and flux, free of cadmium; heat paste and wet cloth'),
      needed: null,
      why: 'brazed joints',
    });
  if (joins.some((event) => /gasket/.test(event.with ?? '')))
    rows.push({ take: sentence('New gaskets'), needed: null, why: 'flanged joints' });
  const words = new Set(sheet.walk.entries.map((entry) => entry.slot.step.word.word));
  if (words.has('flare'))
    rows.push({
      take: sentence('Flare nuts of the new size'),
      needed: null,
      why: 'old nuts do not go on again where the pressure is higher',
    });
  if (words.has('cap'))
    rows.push({ take: sentence('Caps and tape for every open end'), needed: null, why: 'air and water stay out' });
  if (words.has('hold') || words.has('flush'))
    rows.push({ take: sentence('White cloths'), needed: null, why: 'show whether a line is clean' });
  if (
    sheet.walk.entries.some((entry) =>
      entry.events.some((event) => event.type === 'pressurises' && event.purpose === 'test'),
    )
  )
    rows.push({ take: sentence('Leak-search fluid'), needed: null, why: 'bubbles on the joints' });
  return rows;
}
