export * from './gas';
export { type Component, type Refrigerant, refrigerantNamed, refrigerantNames, whyLeftOut } from './refrigerant';
export * from './saturation';
export * from './superheated';
export * from './trust';
export * from './water';
