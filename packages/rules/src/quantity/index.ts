export { type Dimension, dimensionName, joined, plain, sameDimension } from './dimension';
export * from './interval';
export { type Misread, readQuantity, type Written, wasMisread } from './read';
export {
  type Between,
  type Closeness,
  type End,
  type Figures,
  figuresOf,
  isFarApart,
  marginParts,
  type Shown,
  show,
  showEnd,
  showFigures,
  showMargin,
  showNumber,
  shownUnit,
  showParts,
  showRound,
  type UnitSystem,
} from './show';
export { convert, findUnit, fromBase, toBase, type Unit, unitOf, unitSymbols } from './units';
