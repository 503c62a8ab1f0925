/** The verb that goes with so many things: "txv-1 is", "txv-1 and txv-2 are". */
export const isOrAre = (count: number): string => (count > 1 ? 'are' : 'is');
