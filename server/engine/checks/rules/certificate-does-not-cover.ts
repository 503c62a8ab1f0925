import { child } from '../../plan/bind';
import { wordSpan } from '../../plan/gather';
import { lawOf, lawTaken } from '../../plan/law';
import type { Plan } from '../../plan/plan';
import { bubblePressure, refrigerantNamed } from '../../properties';
import { europeanCertificateSource, europeanCertificates } from '../../reference/jurisdictions';
import { type PressureClass, pressureClass } from '../../reference/recovery-levels';
import { fahrenheit } from '../../reference/table-units';
import { vehicleCertificate } from '../../reference/vehicles';
import { ventingExempt } from '../../reference/venting-exempt';
import { defineCheck } from '../define';
import { isVehicle, statedEquipment } from '../equipment';
import { chargeInAll } from '../plant-facts';
import { amount, authority } from '../support';

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
  noFix: 'Somebody who holds the certificate must come; the plan cannot give it to the crew.',
  reads: 'figure',
  ground: 'law',
  meaning:
    'The plan states its crew, and nobody in it holds a certificate for this machine: by pressure class and kind of appliance under the law of the US, by charge under that of the EU. The air conditioning of a motor vehicle asks for the certificate of its own rule.',
  why: 'Opening, recovering or charging by somebody without it is against the law, however well it is done.',
  source:
    '40 CFR 82.161 (technician certification, handbook 2.1); pressure classes of 82.152; vehicles: 82.34 (from memory); (EU) 2024/2215, certificates A1 and A2, and before it (EU) 2015/2067 article 3, categories I and II',
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
    const asked = askedBy(plan, pressureClass(bubblePressure(tables, sorted)));
    if (!asked || plan.crew.some(({ certificates }) => certificates.some(asked.covers))) return;
    const crew = child(plan.declaration.bound.block, 'crew');
    const holder = crew?.block.find((each) => each.spans['certificates']);
    const at = holder ?? crew;
    if (!at) return;
    const held = plan.crew.flatMap(({ certificates }) => certificates);
    const forVehicles = held.includes(vehicleCertificate.name) && statedEquipment(plan) === null;
    whole.reportAt(at, holder?.spans['certificates'] ?? wordSpan(at), {
      message: `${name} in ${asked.machine} asks for a certificate ${asked.named} (${asked.source}${lawTaken(plan)}), and the crew holds ${held.length > 0 ? held.join(', ') : 'none'}${forVehicles ? '; for the air conditioning of a motor vehicle state it: equipment vehicle' : ''}; ${authority}.`,
      related: [{ cause: handles.cause, message: 'refrigerant is handled here' }],
    });
  },
});

interface Asked {
  /** What the machine is to the rule, in words. */
  readonly machine: string;
  readonly named: string;
  readonly source: string;
  covers(certificate: string): boolean;
}

/** Section 608 and its types end at the motor vehicle. */
const vehicle: Asked = {
  machine: 'a vehicle',
  named: vehicleCertificate.name,
  source: vehicleCertificate.source,
  covers: (certificate) => certificate === vehicleCertificate.name,
};

/** What the law of the site asks for this machine; null where it is none that is known. */
function askedBy(plan: Plan, group: PressureClass): Asked | null {
  const small = plan.system.smallAppliance !== null;
  if (isVehicle(plan)) return lawOf(plan) === 'US' ? vehicle : null;
  switch (lawOf(plan)) {
    case 'US':
      return {
        machine: small ? 'a small appliance' : `a machine of ${group.replace('-', ' ')} pressure`,
        named: `${small ? 'type-I' : group === 'low' ? 'type-III' : 'type-II'} or universal`,
        source: '40 CFR 82.161',
        covers: (certificate) => covers[certificate]?.(group, small) ?? false,
      };
    case 'EU': {
      const charge = Math.max(chargeInAll(plan) ?? 0, plan.system.recoverCharge?.quantity.high ?? 0);
      const suits = (certificate: string): boolean => {
        const rule = europeanCertificates[certificate];
        return rule !== undefined && charge < (small ? rule.mostSealed : rule.most);
      };
      return {
        machine: charge > 0 ? `a machine of ${amount(plan, 'mass', charge)}` : 'this machine',
        named: Object.keys(europeanCertificates).filter(suits).join(' or '),
        source: europeanCertificateSource,
        covers: suits,
      };
    }
    default:
      return null;
  }
}
