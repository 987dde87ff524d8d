export { type Again, type AgainOptions, type AgainState, again } from './again';
export { type Ledger, type LedgerEntry, LedgerError, mergeLedgers, readLedger } from './ledger';
