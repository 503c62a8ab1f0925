import { describe, expect, it } from 'vitest';
import { isProblem } from '../../../../server/engine/quantity';
import { relations } from '../../../../server/engine/takeoff/figures';
import { type Given, type InputKind, readGiven } from '../../../../server/engine/takeoff/given';

const read = (kind: InputKind, text: string): Given => {
  const given = readGiven(kind, text);
  if (isProblem(given)) throw new Error(given.message);
  return given;
};

/** Each relation brings examples with the source of what is expected; they are run here over the whole registry. */
describe.each(relations.map((one) => [one.name, one] as const))('%s', (_, one) => {
  it('has an example or says why it is only arithmetic', () => {
    expect(one.examples.length).toBeGreaterThan(0);
  });

  it.each(one.examples.map((example) => [example.expect, example.source, example] as const))(
    'gives %s (%s)',
    (_expect, _source, example) => {
      const given = Object.fromEntries(
        Object.entries(example.inputs).map(([key, text]) => {
          const spec = one.inputs[key];
          if (spec === undefined) throw new Error(`no input ${key}`);
          return [key, typeof text === 'string' ? read(spec.kind, text) : text.map((each) => read(spec.kind, each))];
        }),
      );
      const figure = one.figure('example', given);
      const expected = read(one.output, example.expect).quantity!;
      expect([figure.missing, figure.notes.length > 0 && figure.quantity === null ? figure.notes : []]).toEqual([
        [],
        [],
      ]);
      const off = (actual: number, wanted: number): number =>
        wanted === 0 ? Math.abs(actual) : Math.abs(actual / wanted - 1);
      const { low, high } = figure.quantity!;
      expect({
        low,
        high,
        expected,
        lowOff: off(low, expected.low) <= example.tolerance + 1e-12,
        highOff: off(high, expected.high) <= example.tolerance + 1e-12,
      }).toMatchObject({
        lowOff: true,
        highOff: true,
      });
      expect(figure.workings.length).toBeGreaterThan(0);
      for (const line of figure.workings) expect(line).not.toMatch(/NaN|Infinity|undefined|null/);
    },
  );
});

describe('workings in SI', () => {
  it.each(relations.map((one) => [one.name, one] as const))('%s shows no inch-pound unit', (_, one) => {
    const given = Object.fromEntries(
      Object.entries(one.examples[0]!.inputs).map(([key, text]) => {
        const { kind } = one.inputs[key]!;
        return [key, typeof text === 'string' ? read(kind, text) : text.map((each) => read(kind, each))];
      }),
    );
    const { workings } = one.figure('example', given, { system: 'si' });
    expect(workings.length).toBeGreaterThan(0);
    for (const line of workings)
      expect(line).not.toMatch(/\d (in|ft|in2|ft3|fl-oz|gal|psi|psig|psia|lb|oz|cfm|cfh|scfm|scf|degF|Δ°F|°R|Btu)\b/);
  });
});
