export type { Entry } from './catalogue';
export { entriesFrom, type StreamedRow } from './entry-stream';
export type { RefusedRow } from './sheet';
export { type Pair, type SweepAsked, sweeping } from './sweep';
