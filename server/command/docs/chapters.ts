import { figureChecks } from '../../engine/checks/group-figures';
import { flowChecks } from '../../engine/checks/group-flow';
import { nameChecks } from '../../engine/checks/group-names';
import { orderChecks } from '../../engine/checks/group-order';
import { shopChecks } from '../../engine/checks/group-shop';
import { suitabilityChecks } from '../../engine/checks/group-suitability';
import { faultPages } from '../../engine/checks/pages';
import type { Chapter } from './checks';

/** The manual's chapters, in the order in which people look things up. */
export const chapters: readonly Chapter[] = [
  { title: 'Order and state', pages: orderChecks },
  { title: 'What the flush and the gas pass through', pages: flowChecks },
  { title: 'Suitability', pages: suitabilityChecks },
  { title: 'Figures', pages: figureChecks },
  { title: 'Standards, names and references', pages: nameChecks },
  { title: 'House rules and records', pages: shopChecks },
  { title: 'Text, words, numbers', pages: faultPages },
];
