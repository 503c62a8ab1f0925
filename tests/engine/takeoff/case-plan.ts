import type { Quantity } from '../../../server/engine/quantity';
import type { Figure } from '../../../server/engine/takeoff/figure';
import type { PlanView } from '../../../server/engine/view';
import { Workspace } from '../../../server/engine/workspace';

/** What a case of a small split's take-off may say otherwise. */
export interface Case {
  readonly altitude?: string;
  readonly outdoors?: string;
  readonly workSpace?: string;
  readonly refrigerant?: string;
  readonly oil?: string;
  readonly recovered?: string;
  readonly charge?: string;
  readonly kind?: string;
  readonly system?: string;
  readonly liquid?: string;
  readonly suction?: string;
  readonly length?: string;
  readonly room?: string;
  readonly hose?: 'thin' | 'wide';
  readonly weighs?: string;
  readonly crimp?: string;
  readonly purge?: string;
  readonly vacuum?: string;
  readonly test?: string;
}

const stock = `solvent flush {
  density 1.25 kg/L
  boils 100 degF
  removes mineral, POE
  suits R-22, R-410A, R-454B, R-32, R-407C, R-134a, R-404A, R-744
  delivers 18 fl-oz/min at 90 psig
  container 12 lb, upright
  share-of-volume 15 %
  least-per-pass 8 fl-oz
}
nitrogen-cylinder n2 {
  water-volume 1.55 ft3
  full 2265 psig
}
recovery-cylinder rc {
  water-capacity 26.2 lb
  tare 24 lb
  service-pressure 400 psig
  retest-by 2029-06
}
recovery-machine rm {
  made 2021
  suits R-22, R-410A, R-454B, R-32, R-407C, R-134a, R-404A, R-744
}
pump vp {
  flow 6 cfm
  ultimate 0 micron
  suits A1, A2L
}
hose thin {
  bore 0.17 in
  length 5 ft
}
hose wide {
  bore 3/4 in
  length 3 ft
}
`;

/** A changeout of a small split, line set kept, as a plan of its own. */
export function casePlan(of: Case = {}): string {
  const length = of.length ?? '50 ft';
  return `${stock}
plan job "Job" {
  revision 1
  date 2027-05-18
  kind ${of.kind ?? 'changeout'}
  site {
    altitude ${of.altitude ?? '0 ft'}
    outdoors ${of.outdoors ?? '70 degF'}
    indoors 75 degF, wet-bulb 63 degF
    work-space ${of.workSpace ?? 'yard open-air'}
    smallest-room ${of.room ?? '9600 ft3'}
  }
  system {
    refrigerant ${of.refrigerant ?? 'R-22 -> R-454B'}
    oil ${of.oil ?? 'mineral -> POE'}
    recover-charge ${of.recovered ?? '7 lb'}
    charge ${of.charge ?? '6 lb for 15 ft of line'}
    capacity 36000 Btu/h
    design-pressure low 250 psig, high 450 psig
    ${of.system ?? 'subcooling 10 Δ°F'}
  }
  circuit {
    compressor new
    condenser new {
      holds R-454B 6 lb
      valves closed
    }
    liquid-line kept {
      ${of.liquid ?? 'tube 3/8 in ACR'}
      length ${length}
    }
    filter-drier new
    expansion-valve new
    evaporator new {
      rated 500 psig
      volume 0 ft3
    }
    suction-line kept {
      ${of.suction ?? 'tube 7/8 in ACR'}
      length ${length}
    }
  }
  bring {
    solvent 2 x flush
    nitrogen 1 x n2
    recovery 1 x rc empty
    recovery-machine rm
    pump vp with 1 x ${of.hose ?? 'thin'}
    refrigerant R-454B 25 lb
  }
  test-pressure ${of.test ?? '450 psig'}
  solvent flush
  steps {
    lock-out power
    recover: recover system to 0 inHg
    prove-zero system
    break-vacuum with nitrogen to 0 psig
    disconnect each kept line at both ends
    cut-out filter-drier
    remove old equipment
    ${of.crimp ?? 'crimp each kept line at far end, leaving 1/8 in'}
    blow-out each kept line at 50 psig for 30 s into container
    repeat until clear, at least 2, at most 4 {
      flush each kept line into container
      purge each kept line at 50 psig for 15 s into container
    }
    final-purge: purge each kept line at ${of.purge ?? '100 psig'} for 60 s into container
    trim each kept line at far end
    place new equipment
    connect each kept line at both ends with nitrogen at 5 cfh
    install filter-drier with nitrogen at 5 cfh
    test: pressure-test each open part to test-pressure for 30 min
    release nitrogen outdoors
    evacuate: evacuate each open part to ${of.vacuum ?? '500 micron'}
    decay-test each open part for 15 min, rise at most 300 micron {
      if-fails back to evacuate, at most 3 times
    }
    open service-valves
    charge: charge system${of.weighs ?? ''}
    restore power
    start system
    adjust charge after 15 min
    label system
  }
}
`;
}

/** The view of a plan text that stands alone. */
export function viewOf(text: string): PlanView {
  const workspace = new Workspace();
  workspace.setFile('job.jobplan', text);
  const [view] = workspace.snapshot().plans('job.jobplan');
  if (!view) throw new Error('no plan');
  return view;
}

/** All findings of a plan text, as `name: message`. */
export function findingsOf(text: string): readonly string[] {
  const workspace = new Workspace();
  workspace.setFile('job.jobplan', text);
  return workspace
    .snapshot()
    .findings('job.jobplan')
    .map(({ name, message }) => `${name}: ${message}`);
}

/** The first figure of a relation at the first step whose text holds some words, of a subject where one is named. */
export function figureAt(view: PlanView, step: string, name: string, subject?: string): Figure {
  for (const [at, entry] of view.walk.entries.entries()) {
    if (!entry.slot.step.text.includes(step)) continue;
    const found = view.takeOff.steps[at]!.find(
      (each) => each.name === name && (subject === undefined || each.subject === subject),
    );
    if (found) return found;
  }
  throw new Error(`no ${name} at ${step}`);
}

/** Both ends of a figure in a unit of so many SI units. */
export function endsIn({ quantity, missing, notes }: Figure, unit: number): readonly [number, number] {
  if (quantity === null) throw new Error([...missing, ...notes].join());
  return [quantity.low / unit, quantity.high / unit];
}

export const total = (view: PlanView, name: string): Quantity | null =>
  view.takeOff.totals.find((each) => each.name === name)?.quantity ?? null;
