import type { Tool } from '../document';
import { sentence } from '../sentence';
import { classOf, flammable } from './hazards';
import type { Sheet } from './sheet';

/** What people wear, and the papers that the job needs: by what really happens in it. */
export function protectionOf(sheet: Sheet): readonly Tool[] {
  const { plan } = sheet;
  const events = sheet.walk.entries.flatMap((entry) => entry.events);
  const words = new Set(sheet.walk.entries.map((entry) => entry.slot.step.word.word));
  const has = (type: (typeof events)[number]['type']): boolean => events.some((event) => event.type === type);
  const torch = events.some((event) => event.type === 'joins' && event.torch);
  const solvent = events.some((event) => event.type === 'flows' && event.medium === 'solvent');
  const nitrogenIndoors =
    plan.site.workSpace !== null &&
    !plan.site.workSpace.open &&
    events.some((event) => event.type === 'flows' && !event.outdoors);
  const after = plan.system.refrigerant.after;
  const burns = after !== null && flammable(after);
  const rows: readonly (readonly [asks: boolean, take: string, rating: string, why: string])[] = [
    [has('recovers') || has('charges'), 'Goggles and gloves', 'for cold liquid', 'recovery, charging'],
    [
      solvent,
      'Gloves and face shield',
      `as the data sheet of ${sheet.totals('solvent-in-job')[0]?.subject ?? 'the solvent'} says`,
      'flush',
    ],
    [plan.kinds.includes('burnout'), 'Rubber gloves, face shield, soda', 'for acid', 'burnt oil'],
    [
      nitrogenIndoors,
      'Oxygen meter',
      'warns at 19.5 %',
      `nitrogen in ${plan.site.workSpace?.where.replaceAll('-', ' ') ?? 'the room'}`,
    ],
    [solvent && nitrogenIndoors, 'Fan with duct', 'out of the room', 'solvent vapour'],
    [torch, 'Extinguisher, fire blanket', 'within reach of the joint', 'hot work'],
    [torch, 'Hot-work permit', 'signed for this place and day', 'where the owner or the authority asks for one'],
    [solvent, 'Data sheet of the solvent', 'in its last edition', 'law'],
    [has('recovers') || has('charges'), 'Certificates of the crew', 'for these gases', 'law'],
    [has('recovers'), 'Labels for recovered gas', 'one for each cylinder', 'return'],
    [
      words.has('label'),
      `New plates${after ? `: ${after}${burns ? ` (${classOf(after)}), with the mark for gas that burns` : ''}` : ''}`,
      'weatherproof',
      'label',
    ],
    [
      words.has('bypass') || words.has('lock-out') || words.has('tag'),
      'Tags',
      'name and date',
      'what is out of action',
    ],
    [words.has('record') || words.has('label'), 'Leak and charge record of the owner', 'at hand', 'entries at the end'],
  ];
  return rows
    .filter(([asks]) => asks)
    .map(([, take, rating, why]) => ({ take: sentence(take), rating: sentence(rating), why }));
}
