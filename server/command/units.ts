import { Option } from 'commander';
import { atmosphereAt, isProblem, readLiteral, standardAtmosphere, toQuantity } from '../engine/quantity';
import type { Words } from './description';
import { Trouble } from './trouble';

export const altitudeOption = new Option(
  '--altitude <length>',
  'of the site: gauge readings count from its air; sea level if left out',
);

/** Pressure of the air, Pa, at the altitude that is asked for. */
export function atmosphereIn(words: Words): number {
  const text = words.option('altitude');
  if (text === undefined) return standardAtmosphere;
  const literal = readLiteral(text);
  if (isProblem(literal)) throw new Trouble(`--altitude: ${literal.message}`);
  const quantity = toQuantity(literal, 'altitude', standardAtmosphere);
  if (isProblem(quantity)) throw new Trouble(`--altitude: ${quantity.message}`);
  return atmosphereAt(quantity.low);
}
