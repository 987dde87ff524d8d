import type { Decision } from '../../engine/define/shapes';
import { trades } from '../../trade/bibliography/retrofit';

/**
 * Who has to fit it, by the most demanding thing it touches; the topmost row that fits counts.
 *
 *     gas, 120 V ─► licensed trade      roof seal ─► dealer
 *     structure ──► qualified shop      12 V, plumbing ─► owner, with care
 */
export const needsTable: Decision = {
  label: 'Who has to fit it',
  hit: 'first',
  on: ['work.gas', 'work.mains', 'work.structure', 'work.roof', 'work.twelveVolt', 'work.plumbing'],
  rows: [
    { when: ['yes', '-', '-', '-', '-', '-'], gives: 'licensed-trade' },
    { when: ['-', 'yes', '-', '-', '-', '-'], gives: 'licensed-trade' },
    { when: ['-', '-', 'yes', '-', '-', '-'], gives: 'qualified-shop' },
    { when: ['-', '-', '-', 'yes', '-', '-'], gives: 'dealer' },
    { when: ['-', '-', '-', '-', 'yes', '-'], gives: 'owner-with-care' },
    { when: ['-', '-', '-', '-', '-', 'yes'], gives: 'owner-with-care' },
    { when: ['-', '-', '-', '-', '-', '-'], gives: 'owner' },
  ],
  results: {
    'licensed-trade': {
      label: 'a licensed trade',
      says: 'It touches gas or 120 volts: a licensed trade, by the local code.',
    },
    'qualified-shop': {
      label: 'a shop qualified for structure',
      says: 'It touches the structure: a shop that may weld or bolt to that frame by its maker.',
    },
    dealer: { label: 'the dealer', says: 'It goes through the roof: the dealer, who seals it.' },
    'owner-with-care': {
      label: 'the owner, with care',
      says: 'It touches water or 12 volts: the owner, with care.',
    },
    owner: { label: 'the owner', says: 'It touches nothing: the owner.' },
  },
  source: trades,
};

/** Who has to fit it × who is to fit it. One row at the most fits. */
export const judgedTable: Decision = {
  label: 'Fitting',
  hit: 'unique',
  on: ['fitting.needs', 'fitting.planned'],
  rows: [
    { when: ['licensed-trade', 'owner'], gives: 'never-yourself' },
    { when: ['qualified-shop', 'owner'], gives: 'never-yourself' },
    { when: ['licensed-trade', 'not-chosen'], gives: 'not-before-licensed' },
    { when: ['licensed-trade', 'dealer'], gives: 'ask-for-the-licence' },
    { when: [['qualified-shop', 'dealer'], 'not-chosen'], gives: 'take-it-to-the-dealer' },
    { when: ['qualified-shop', ['dealer', 'licensed-trade']], gives: 'right-hands' },
    { when: ['licensed-trade', 'licensed-trade'], gives: 'right-hands' },
    { when: ['dealer', 'owner'], gives: 'seal-and-watch' },
    { when: ['dealer', ['dealer', 'licensed-trade']], gives: 'right-hands' },
    { when: ['owner-with-care', ['not-chosen', 'owner']], gives: 'shut-off-first' },
    { when: ['owner-with-care', ['dealer', 'licensed-trade']], gives: 'right-hands' },
    { when: ['owner', '-'], gives: 'right-hands' },
  ],
  results: {
    'never-yourself': {
      label: 'never yourself',
      level: 'stop',
      says: 'Not by the owner: it touches gas, 120 volts or what holds the trailer together, and a fault there burns, poisons or breaks off on the road.',
    },
    'not-before-licensed': {
      label: 'not before a licensed person is chosen',
      level: 'stop',
      says: 'It touches gas or 120 volts: nobody begins before a person licensed for that is chosen, by the local code.',
    },
    'ask-for-the-licence': {
      label: 'a licensed trade; ask for the licence',
      level: 'care',
      says: 'It touches gas or 120 volts: the dealer’s people only if one of them is licensed for that; ask to see the licence.',
    },
    'take-it-to-the-dealer': {
      label: 'take it to the dealer',
      level: 'care',
      says: 'It touches structure or roof: have the dealer or a qualified shop fit it, by the trailer maker’s drawing.',
    },
    'seal-and-watch': {
      label: 'seal it and watch it',
      level: 'care',
      says: 'A hole in the roof by own hands: only where the maker’s drawing shows something to screw to, with the sealant the roof’s maker names, looked at again after the first rain.',
    },
    'shut-off-first': {
      label: 'shut off first',
      level: 'care',
      says: 'The owner may fit it: water off and drained, or battery off and minus first; a fuse of its own close to the battery.',
    },
    'right-hands': {
      label: 'the right hands',
      level: 'ok',
      says: 'Those are the right hands for it.',
    },
  },
  source: trades,
};
