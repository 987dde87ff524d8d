export { type Dimension, dimensionName, joined, plain, sameDimension } from './dimension';
export * from './interval';
export { type Misread, readQuantity, wasMisread, type Written } from './read';
export { type Shown, show, showNumber, showParts, shownUnit, type UnitSystem } from './show';
export { convert, findUnit, fromBase, toBase, type Unit, unitOf, unitSymbols } from './units';
