import { describe, expect, it } from 'vitest';
import { Workspace } from '../../../server/engine/workspace';

/** A cold room whose drier is renewed between the liquid line's stop valve and the expansion valve. */
const plan = `plan room "Cold room, drier" {
  revision 1
  date 2027-05-18
  kind repair
  site {
    altitude 0 ft
    outdoors 60 degF
    work-space yard open-air
    smallest-room 9600 ft3
  }
  crew {
    lead certified universal
  }
  system {
    refrigerant R-448A
    oil POE
    recover-charge 20 lb
    charge 20 lb
    superheat 8..12 Δ°F
    design-pressure low 250 psig, high 400 psig
  }
  circuit {
    compressor kept
    condenser kept {
      rated 400 psig
    }
    receiver kept {
      rated 400 psig
    }
    king: service-valve kept
    liquid-line kept {
      tube 1/2 in ACR
      length 40 ft
      joint brazed
    }
    stop: ball-valve kept
    drier: filter-drier new {
      joint brazed
      valves open
    }
    txv: expansion-valve kept
    evaporator kept {
      rated 250 psig
    }
    suction-line kept {
      tube 1-1/8 in ACR
      length 40 ft
    }
    suction-valve: service-valve kept
  }
  steps {
    survey system
    stop system
    lock-out power
    close king, suction-valve
    recover liquid-line, drier, evaporator to 0 inHg
    prove-zero drier, evaporator
    cut-out drier
    install drier with nitrogen at 5 cfh
    pressure-test drier to 10 psig for 10 min, bubbles on every joint
    pressure-test drier to 250 psig for 60 min
    release nitrogen outdoors
    evacuate drier to 500 micron
    decay-test drier for 15 min, rise at most 300 micron
    open king, suction-valve
    restore power
    start system
    leak-check system
    adjust charge with R-448A to sight-glass clear after 15 min, at most 22 lb
    label system
    record quantities, readings
  }
}
`;

function found(...instead: readonly (readonly [string, string])[]): readonly string[] {
  const workspace = new Workspace();
  let text = plan;
  for (const [from, to] of instead) {
    expect(text).toContain(from);
    text = text.replace(from, to);
  }
  workspace.setFile('room.jobplan', text);
  return workspace
    .snapshot()
    .findings('room.jobplan')
    .filter(({ severity }) => severity !== 'information')
    .map(({ name, severity }) => `${severity} ${name}`);
}

const afterwards = (...lines: readonly string[]): readonly [string, string] => [
  'record quantities, readings',
  `record quantities, readings\n    ${lines.join('\n    ')}`,
];

// Liquid between two shut valves bursts its pipe as it warms (common practice, no source; checks of the hold and the visit as well).
describe('liquid that is shut in', () => {
  it('is none where the line is emptied with the rest', () => {
    expect(found()).toEqual([]);
  });

  it('is told under a torch at the valve that shuts it in', () => {
    const shut = found(
      ['close king, suction-valve', 'close king, stop, suction-valve'],
      ['recover liquid-line, drier', 'recover drier'],
      ['open king, suction-valve', 'open king, stop, suction-valve'],
    );
    expect(shut).toEqual(['error torch-hazard']);
  });

  it('is told once where the recovery names the line and does not reach it', () => {
    const missed = found(
      ['close king, suction-valve', 'close king, stop, suction-valve'],
      ['open king, suction-valve', 'open king, stop, suction-valve'],
    );
    expect(missed).toEqual(['error section-not-recovered']);
  });

  it('is told in the housing of a drier, at the end of a visit and for good', () => {
    const visit = afterwards('visit "Cores" within 2 days {', 'stop system', 'close valves of drier', '}');
    const back = 'visit "Start" within 2 days {\n      open valves of drier\n      start system\n    }';
    expect(found([visit[0], `${visit[1]}\n    ${back}`])).toEqual(['error left-unattended']);
    expect(found(visit)).toContain('error valve-left-shut');
  });
});
