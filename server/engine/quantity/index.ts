export * from './atmosphere';
export { fromSI, kindInWords, toQuantity, toSI } from './convert';
export * from './literal';
export * from './nearest';
export * from './quantity';
export { type ShowOptions, show, showLiteral } from './show';
export * from './units';
