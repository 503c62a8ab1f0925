/** How sure a row or a constant is. `practice` is common practice with no single authority; `memory` was not looked up. */
export type Confidence = 'published' | 'computed' | 'practice' | 'memory';

const order: readonly Confidence[] = ['published', 'computed', 'practice', 'memory'];

/** The least sure of several: a result is no surer than what it rests on. */
export const weakest = (...all: readonly Confidence[]): Confidence =>
  all.reduce((a, b) => (order.indexOf(b) > order.indexOf(a) ? b : a), 'published');
