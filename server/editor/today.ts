/** The local date as `2027-05-18`: the engine has no clock, and rules of law depend on the day of the work. */
export function today(): string {
  const now = new Date();
  const two = (number: number): string => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
