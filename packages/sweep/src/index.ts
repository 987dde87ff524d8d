export { type Catalogue, type CatalogueFiles, type Entry, readCatalogue } from './catalogue';
export type { Need } from './needs';
export {
  factsAgainst,
  narrowed,
  sidesOf,
  type Which,
  type WhichAsked,
  type WhichRow,
  which,
} from './which';
export { needSaid, whichSaid } from './which-words';
export { readWish, type Wish } from './wishes';
