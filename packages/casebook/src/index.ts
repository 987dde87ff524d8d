export { acceptFound } from './accept';
export { judged } from './as-json';
export { addRow, removeFact, removeRow, setCell, setFact } from './edit';
export { compareWithExpect, type Difference } from './expect';
export type { FrontReader } from './front';
export { askedOf, judgeCaseNow, liveValue, type Under } from './judge';
export { judgeCase } from './judge-by-engine';
export { treeOf } from './parse';
export { readCaseFrom } from './read';
export { readCase } from './read-any';
export {
  isPlain,
  overBudget,
  readCaseWith,
  type TopicShelf,
  type TreeReader,
  withoutMark,
} from './read-with';
export {
  type Block,
  type CaseDocument,
  type Expectation,
  type FactRow,
  type Front,
  type ListRow,
  liveValueIn,
  type Place,
  type Span,
  type Trouble,
} from './shapes';
export { jsonShownPlainly, onOneLine, shownPlainly } from './unseen';
