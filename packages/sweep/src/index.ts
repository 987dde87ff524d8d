export {
  type Accessories,
  type Accessory,
  type AccessoryFiles,
  effectOf,
  readAccessories,
} from './accessories';
export { accessoryMeant, effectSaid, fitSaid, standingSaid } from './accessory-words';
export {
  type Catalogue,
  type CatalogueFiles,
  type Entry,
  ownColumns,
  readCatalogue,
} from './catalogue';
export { catalogueFile } from './catalogue-file';
export { columnsFor, type Side, sideOfSheet } from './columns';
export { underHeads } from './heads';
export { type Matrix, type MatrixRow, matrixOf, type Settled } from './matrix';
export { catalogueMoves, type EntryMove, entryMoves, factsMoved } from './moves';
export type { Need } from './needs';
export {
  type OfferChange,
  type OfferFiles,
  type Offers,
  offerChanges,
  offerSaid,
  optionMeant,
  readOffers,
} from './offers';
export { judgedThen, type Resting, restingOn } from './resting';
export { type RefusedRow, readSheet } from './sheet';
export { columnsOfTable, type TableFile, tableOfSheet, unknownInTable } from './tables';
export {
  factsAgainst,
  narrowed,
  sidesOf,
  type Which,
  type WhichAsked,
  type WhichRow,
  which,
} from './which';
export { needSaid, sleepsSaid, whichSaid } from './which-words';
export { isAsWished, isSold, nameSaid, numberIn, readWish, type Wish } from './wishes';
