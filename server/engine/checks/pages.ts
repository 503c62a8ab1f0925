import { checks } from './all';
import type { Page } from './page';
import { acceptancePages } from './pages-acceptance';
import { planPages } from './pages-plan';
import { quantityPages } from './pages-quantity';
import { textPages } from './pages-text';

/** Faults that are found before there is a plan to check: by the grammar, by the words, by the numbers, by putting together. */
export const faultPages: readonly Page[] = [...textPages, ...quantityPages, ...planPages, ...acceptancePages];

/** The page of every name that a finding can bear: `explain` and the editor's link show it. */
export const pages: readonly Page[] = [...checks, ...faultPages];

const byName = new Map(pages.map((page) => [page.name, page]));
export const pageNamed = (name: string): Page | undefined => byName.get(name);
