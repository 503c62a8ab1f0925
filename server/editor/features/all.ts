import type { Feature } from './feature';

/** Every feature that the server offers; a new one is a file beside this one and a line here. */
export const features: readonly Feature[] = [];
