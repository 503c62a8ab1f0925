import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import { bubblePressure, refrigerantNamed } from '../../properties';
import { type PressureClass, pressureClass } from '../../reference/recovery-levels';
import { fahrenheit } from '../../reference/table-units';
import { ventingExempt } from '../../reference/venting-exempt';
import { defineCheck } from '../define';
import { authority } from '../support';

/** The temperature by which the rule sorts refrigerants into pressure classes (40 CFR 82.152). */
const sorted = fahrenheit(104);

/** What a certificate covers: 40 CFR 82.161, as the types are named there. */
const covers: Readonly<Record<string, (group: PressureClass, small: boolean) => boolean>> = {
  universal: () => true,
  'type-I': (_group, small) => small,
  'type-II': (group, small) => group !== 'low' && !small,
  'type-III': (group) => group === 'low',
};

/** Nobody of the crew may open this machine. */
export const certificateDoesNotCover = defineCheck({
  name: 'certificate-does-not-cover',
  severity: 'error',
  title: 'No certificate of the crew covers this machine',
  acceptable: false,
  reads: 'figure',
  ground: 'law',
  meaning:
    'The plan states its crew, and nobody in it holds a certificate for this pressure class and kind of appliance.',
  why: 'Opening, recovering or charging by somebody without it is against the law, however well it is done.',
  source: '40 CFR 82.161 (technician certification, handbook 2.1); pressure classes of 82.152',
  wrong: { base: 'split', plan: 'crew {\n  lead certified type-III # <- here\n}' },
  right: { base: 'split', plan: 'crew {\n  lead certified type-II\n  helper\n}' },
  plan(whole) {
    const { plan } = whole;
    if (plan.crew.length === 0) return;
    const handles = whole.entries.find((entry) =>
      entry.events.some((event) => (event.type === 'recovers' && event.held.length > 0) || event.type === 'charges'),
    );
    if (!handles) return;
    const name = plan.system.refrigerant.before ?? plan.system.refrigerant.after;
    const tables = name === null ? undefined : refrigerantNamed(name);
    if (name === null || !tables || ventingExempt.includes(name)) return;
    const group = pressureClass(bubblePressure(tables, sorted));
    const small = plan.system.smallAppliance !== null;
    if (plan.crew.some(({ certificates }) => certificates.some((each) => covers[each]?.(group, small)))) return;
    const crew = child(plan.declaration.bound.block, 'crew');
    const holder = crew?.block.find((each) => each.spans['certificates']);
    const at = holder ?? crew;
    if (!at) return;
    const held = plan.crew.flatMap(({ certificates }) => certificates);
    whole.reportAt(at, holder?.spans['certificates'] ?? wordSpan(at), {
      message: `${name} in ${small ? 'a small appliance' : `a machine of ${group.replace('-', ' ')} pressure`} asks for a certificate ${small ? 'type-I' : group === 'low' ? 'type-III' : 'type-II'} or universal, and the crew holds ${held.length > 0 ? held.join(', ') : 'none'}; ${authority}.`,
      related: [{ cause: handles.cause, message: 'refrigerant is handled here' }],
    });
  },
});
