export { type Again, type AgainOptions, type AgainState, again } from './again';
export { type Ledger, type LedgerEntry, LedgerError, mergeLedgers, readLedger } from './ledger';
export { type Pasted, splitBunch } from './questions/bunch';
export type { AskedBefore } from './questions/likeness';
export { type LineMark, lineReader, type ReadLine } from './questions/line';
export { loadsOf } from './questions/loads';
export { numbersSaid } from './questions/number-words';
export { peopleOf } from './questions/people';
export { masked, personalIn } from './questions/personal';
export { type ReadOptions, reader, readMessages } from './questions/read';
export {
  type Message,
  type QuestionPart,
  type ReadMessage,
  type Urgency,
  urgencies,
} from './questions/shapes';
export {
  type MessageColumns,
  type MessagesRead,
  messageColumns,
  messagesOf,
} from './questions/table';
export { urgentIn } from './questions/urgent';
export { askedIn, type Findable, type Hit, searchOver, type TopicHit, topicsIn } from './search';
export { tellingWords, termsOf } from './terms';
