import { expect, test } from 'vitest';
import { Shop } from './shop';

const shop = new Shop();

// What is typed | what is said of it. Nothing is computed, and the status says so.
test.each<[readonly string[], string]>([
  [['figure', 'line-volume', 'bore=-1 in', 'length=50 ft'], '`-1 in` is less than nothing, which a length cannot be.'],
  [['figure', 'line-volume', 'bore=0 in', 'length=50 ft'], 'lies outside'],
  [['figure', 'line-volume', 'bore=1 in', 'length=1e309 ft'], 'numbers are written out in full'],
  [['figure', 'line-volume', 'bore=1 in', 'length=NaN ft'], 'cannot be read as a number'],
  [['figure', 'line-volume', 'bore=1 in', 'length=99999999999 ft'], 'lies outside'],
  [['figure', 'line-volume', 'bore=1 1/8 in', 'length=50 ft'], 'write `1-1/8 in`'],
  [['figure', 'line-volume', 'bore=7/8"', 'length=50 ft'], 'perhaps `in` is meant'],
  [
    ['figure', 'tube-working-pressure', 'outsideDiameter=0.375 in', 'wall=0.2 in', 'temperature=150 degF'],
    'leave no tube of this size',
  ],
  [
    ['figure', 'tube-working-pressure', 'outsideDiameter=0.375 in', 'wall=0.03 in', 'temperature=900 degF'],
    'lies outside',
  ],
  [
    ['figure', 'tube-working-pressure', 'outsideDiameter=0.375 in', 'wall=0.03 in', 'temperature=150 Δ°F'],
    'is a temperature difference; a temperature belongs here',
  ],
  [
    ['figure', 'bubble-pressure', 'refrigerant=R-9999', 'temperature=40 degF'],
    'There is no property table for R-9999.',
  ],
  [
    ['figure', 'bubble-pressure', 'refrigerant=R22', 'temperature=40 degF'],
    'There is no property table for R22; perhaps R-22 is meant.',
  ],
  [['figure', 'bubble-pressure', 'refrigerant=R-403B', 'temperature=40 degF'], 'There is no property table for R-403B'],
  [['figure', 'bubble-pressure', 'refrigerant=R-22', 'temperature=-500 degF'], 'below absolute zero'],
  [['figure', 'bubble-pressure', 'refrigerant=R-22', 'temperature=400 degF'], 'do not reach'],
  [['figure', 'bubble-pressure', 'refrigerant=R-744', 'temperature=100 degF'], 'do not reach'],
  [['figure', 'dew-temperature', 'refrigerant=R-22', 'pressure=68 psi'], 'does not say what it counts from'],
  [
    ['figure', 'dew-temperature', 'refrigerant=R-22', 'pressure=31 inHg'],
    'below a perfect vacuum, which here reads 29.9 inHg',
  ],
  [
    ['figure', 'dew-temperature', 'refrigerant=R-22', 'pressure=28 inHg', '--altitude', '7000 ft'],
    'below a perfect vacuum, which here reads 23.1 inHg',
  ],
  [['figure', 'dew-temperature', 'refrigerant=R-22', 'pressure=-20 psig'], 'below a perfect vacuum'],
  [
    ['figure', 'safe-fill', 'refrigerant=R-744', 'waterCapacity=26.2 lb'],
    'R-744 is no liquid at 131 °F, its critical point being',
  ],
  [['figure', 'safe-fill', 'refrigerant=R-22', 'waterCapacity=0 lb'], 'lies outside'],
  [['figure', 'safe-fill', 'refrigerant=R-22', 'waterCapacity=26.2 lb', 'fillShare=180 %'], 'lies outside'],
  [['figure', 'purge-flow', 'pressure=-1 psig', 'opening=1/8 in'], 'nothing flows out'],
  [['figure', 'purge-flow', 'pressure=50 psig', 'opening=1/8'], 'has no unit'],
  [['figure', 'solvent-in-all', 'perPass=0.25 L', 'passes=2.5 rounds'], 'is no number'],
  [
    ['figure', 'pump-down-time', 'volume=30 L', 'pump=6 cfm', 'bore=0.31 in', 'length=5 ft', 'level=20 micron'],
    'out of its reach',
  ],
  [
    ['figure', 'pump-down-time', 'volume=0 L', 'pump=6 CFM', 'bore=0.31 in', 'length=5 ft', 'level=500 micron'],
    'perhaps `cfm` is meant',
  ],
  [['properties', 'R-22', '--at', '-460 degF'], 'below absolute zero'],
  [['properties', 'R-22', '--at', '40 Δ°F'], 'neither a temperature nor a pressure'],
  [['properties', 'R-22', '--at', '31 inHg'], 'below a perfect vacuum'],
  [['properties', 'R-22', '--at', '28 inHg', '--altitude', '7000 ft'], 'which here reads 23.1 inHg'],
  [['properties', 'R-22', '--at', '40 F'], 'perhaps `degF` is meant'],
  [['properties', 'R-22', '--at', '68 psi'], '"68 psig" or "68 psia"'],
  [['properties', 'R-22', '--at', '3 ft'], 'neither a temperature nor a pressure'],
  [['properties', 'R22', '--at', '40 degF'], 'perhaps "R-22" is meant'],
  [['properties', 'r-22', '--at', '40 degF'], 'perhaps "R-22" is meant'],
  [['properties', '410A', '--at', '40 degF'], 'perhaps "R-410A" is meant'],
  [['properties', 'R-403B', '--at', '40 degF'], 'There is no table of R-403B: propane'],
  [['properties', 'freon', '--at', '40 degF'], 'There is no refrigerant "freon"'],
  [['properties', 'R-22', '--at', '40 degF', '--altitude', '7000 psig'], '--altitude: '],
  [['properties', 'R-22', '--at', '40 degF', '--altitude', 'high'], '--altitude: '],
])('%j', async (words, message) => {
  const ended = await shop.type(...words);
  expect(ended.status).toBe(2);
  expect(ended.said + ended.out).toContain(message);
});
