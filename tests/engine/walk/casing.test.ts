import { expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { Workspace } from '../../../server/engine/workspace';

const inside = `  circuit {
    unit outdoor {
      compressor new
      condenser new {
        holds R-454B 6 lb
        valves closed
      }
      inner: liquid-line new {
        tube 3/8 in ACR
        length 1 ft
      }
      outdoor-drier: filter-drier new
    }
    liquid-line kept {`;

/** The split with a unit drawn as one casing; everything above information, and the parts by their names. */
function looked() {
  const workspace = new Workspace();
  const text = exampleText({
    base: 'split',
    instead: [
      [
        '  circuit {\n    compressor new\n    condenser new {\n      holds R-454B 6 lb\n      valves closed\n    }\n    liquid-line kept {',
        inside,
      ],
      ['    filter-drier new\n', '    indoor-drier: filter-drier new\n'],
      ['cut-out filter-drier', 'cut-out indoor-drier'],
      ['install filter-drier', 'install indoor-drier'],
    ],
  });
  workspace.setFile('casing.jobplan', text);
  const snapshot = workspace.snapshot();
  const [view] = snapshot.plans('casing.jobplan');
  const { parts } = view!.plan.graph;
  const state = (name: string, step: string) => {
    const entry = view!.walk.entries.find((each) => each.slot.step.text.startsWith(step))!;
    return entry.after.parts[parts.find((part) => part.name === name)!.index]!;
  };
  return { found: snapshot.findings('casing.jobplan').filter(({ severity }) => severity !== 'information'), state };
}

// Handbook 13.2: a unit comes as one casing with its own charge; its inside is the factory's, and stays behind its valves.
it('what stands in a casing leaves, comes and keeps its charge as one', () => {
  const { found, state } = looked();
  expect(found.map(({ name, message }) => `${name}: ${message}`)).toEqual([]);
  for (const name of ['compressor', 'condenser', 'inner', 'outdoor-drier']) {
    expect(state(name, 'remove old equipment').mounted, name).toBe('none');
    expect(state(name, 'place new equipment'), name).toMatchObject({ mounted: 'new', ownCharge: true });
    expect(state(name, 'pressure-test').tested, name).toBeNull();
    expect(state(name, 'open service-valves').contents[0], name).toMatchObject({ gas: 'refrigerant' });
  }
  expect(state('indoor-drier', 'place new equipment').mounted).toBe('none');
});
