import { describe, expect, it } from 'vitest';
import { exampleText } from '../../../server/engine/checks/bases';
import { bringing } from '../../../server/engine/checks/example-stock';
import { Workspace } from '../../../server/engine/workspace';

const burnout = (...stock: readonly string[]): string => `kind conversion, burnout\n${bringing(...stock)}`;
const alone = (into: string): string =>
  `close valve-s, valve-d\n    lock-out comp\n    recover comp to 0 inHg${into}\n    open valve-s, valve-d\n    `;
const two = ['burnt: recovery 1 x rc-30 empty', 'rest: recovery 1 x rc-125 empty'];

/** What is said of burnt and good gas in the rack with other first steps. */
function said(plan: string, instead: readonly (readonly [string, string])[]): readonly string[] {
  const workspace = new Workspace();
  workspace.setFile('rack.jobplan', exampleText({ base: 'rack', plan, instead }));
  return workspace
    .snapshot()
    .findings('rack.jobplan')
    .filter(({ name }) => name === 'burnt-gas-mixed')
    .map(({ message }) => message);
}

// Common practice: burnt gas goes into a cylinder of its own, marked (handbook 4.5).
describe('burnt gas', () => {
  it('may go into a cylinder of its own, before or after the rest', () => {
    const before = said(burnout(...two), [
      ['lock-out power\n', `${alone(' into burnt')}lock-out power\n`],
      ['recover system to 0 inHg', 'recover system to 0 inHg into rest'],
    ]);
    const after = said(burnout(...two), [
      ['recover system to 0 inHg', 'close valve-s, valve-d\n    recover liquid-main to 0 inHg into rest'],
      ['prove-zero system', 'recover comp to 0 inHg into burnt\n    open valve-s, valve-d\n    prove-zero system'],
    ]);
    expect([before, after]).toEqual([[], []]);
  });

  it('is told where it goes to good gas, whichever comes first', () => {
    const before = said(burnout(...two), [
      ['lock-out power\n', `${alone(' into rest')}lock-out power\n`],
      ['recover system to 0 inHg', 'recover system to 0 inHg into rest'],
    ]);
    const after = said(burnout(...two), [
      ['recover system to 0 inHg', 'close valve-s, valve-d\n    recover liquid-main to 0 inHg into rest'],
      ['prove-zero system', 'recover comp to 0 inHg into rest\n    open valve-s, valve-d\n    prove-zero system'],
    ]);
    expect(before).toEqual([expect.stringMatching(/^rest holds burnt gas since .*: recover the rest/)]);
    expect(after).toEqual([expect.stringMatching(/^rest holds good gas since .*: recover the burnt gas/)]);
  });

  it('is told where its cylinder comes with gas in it', () => {
    const plan = burnout('burnt: recovery 1 x rc-30 holding R-22 5 lb', 'rest: recovery 1 x rc-125 empty');
    const first = [['lock-out power\n', `${alone(' into burnt')}lock-out power\n`]] as const;
    const rest = ['recover system to 0 inHg', 'recover system to 0 inHg into rest'] as const;
    expect(said(plan, [...first, rest])).toEqual([expect.stringContaining('comes with R-22 in it')]);
  });

  it('is told from the gas of a circuit whose compressor stays', () => {
    const circuit = (name: string, standing: string): string =>
      `${name}: circuit {\n  comp-${name}: compressor ${standing}\n  cond-${name}: condenser kept\n  drier-${name}: filter-drier new\n  txv-${name}: expansion-valve kept\n  coil-${name}: evaporator kept\n}`;
    const text = (into: string): string =>
      `${exampleText({ base: 'rack', plan: burnout(...two) }).split('plan ')[0]}plan two "Two circuits" {\n  revision 1\n  date 2027-05-18\n  kind repair, burnout\n  system {\n    refrigerant R-22\n    oil mineral\n  }\n${circuit('a', 'new')}\n${circuit('b', 'kept')}\n${bringing(...two)}\n  steps {\n    lock-out power\n    recover a to 0 inHg into burnt\n    recover b to 0 inHg into ${into}\n  }\n}\n`;
    const names = (into: string): readonly string[] => {
      const workspace = new Workspace();
      workspace.setFile('two.jobplan', text(into));
      return workspace
        .snapshot()
        .findings('two.jobplan')
        .map(({ name }) => name);
    };
    expect(names('burnt').filter((name) => name === 'burnt-gas-mixed')).toHaveLength(1);
    expect(names('rest')).not.toContain('burnt-gas-mixed');
  });
});
