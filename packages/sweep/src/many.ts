export { programAtHand } from './at-hand';
export type { Entry } from './catalogue';
export { chancing, type Hits } from './chances';
export { entriesFrom, type StreamedRow } from './entry-stream';
export type { Found } from './kernel/found';
export type { Assemble } from './kernel/in-memory';
export type { RefusedRow } from './sheet';
export { type Pair, type SweepAsked, type Sweeper, type Swept, sweeping } from './sweep';
