const whole = [
  'solvent 2 x shop-flush',
  'nitrogen 3 x n2-250',
  'recovery 1 x rc-125 empty',
  'recovery-machine rm-2',
  'regulator reg-800',
  'leak-detector A2L',
  'pump vp-8 with 2 x vac-3-4',
  'refrigerant R-454B 10 lb',
  'oil POE 600 fl-oz',
];

/** The stock of an example, with its own lines in place of those of the same word; enough of everything else. */
export function bringing(...own: readonly string[]): string {
  const words = own.map((line) => line.split(' ', 1)[0]);
  const all = [...whole.filter((line) => !words.includes(line.split(' ', 1)[0])), ...own];
  return `bring {\n${all.map((line) => `  ${line}`).join('\n')}\n}`;
}
