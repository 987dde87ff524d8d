export { acceptFound } from './accept';
export { judged } from './as-json';
export { askedIn } from './asked';
export {
  addRow,
  removeFact,
  removeRow,
  setCell,
  setFact,
  setValues,
  type ValueChange,
} from './edit';
export { compareWithExpect, type Difference } from './expect';
export type { FrontReader } from './front';
export { askedOf, judgeCaseNow, type Under } from './judge';
export { judgeCase } from './judge-by-engine';
export { liveValue } from './live-value';
export { noteEverybody, noteForms } from './note/forms';
export {
  compareNote,
  type JudgedNote,
  judgedNote,
  judgeNote,
  type Leaning,
  noteSentence,
} from './note/judge';
export { isNote, readNoteWith } from './note/read';
export { readNote } from './note/read-any';
export {
  type About,
  abouts,
  type NoteDocument,
  type NoteLink,
  type NoteOutcome,
  type Saying,
} from './note/shapes';
export { isPlain } from './plain';
export { readCaseFrom } from './read';
export { readCase } from './read-any';
export {
  overBudget,
  type TopicShelf,
} from './read-with';
export { compareRig, judgedAt, judgedRig, judgeRig } from './rig/judge';
export { isRig, readRigWith } from './rig/read';
export { readRig } from './rig/read-any';
export type { RigDocument, RigExpectation } from './rig/shapes';
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
