import type { Decision } from '../../engine/define/shapes';
import { trades } from '../../trade/bibliography/retrofit';

/**
 * Who has to fit it, by the most demanding thing it touches; the topmost row that fits counts.
 *
 *     gas, 120 V ─► licensed trade      roof seal ─► dealer
 *     structure ──► qualified shop      12 V, plumbing ─► owner, shut off first
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
    { when: ['-', '-', '-', '-', 'yes', '-'], gives: 'owner-battery-off' },
    { when: ['-', '-', '-', '-', '-', 'yes'], gives: 'owner-water-off' },
    { when: ['-', '-', '-', '-', '-', '-'], gives: 'owner' },
  ],
  results: {
    'licensed-trade': {
      label: 'a licensed trade',
      says: 'The new part touches gas or 120 volts: a licensed trade, by the local code.',
    },
    'qualified-shop': {
      label: 'a shop qualified for structure',
      says: 'The new part touches the structure: a shop that may weld or bolt to that frame by its maker.',
    },
    dealer: { label: 'the dealer', says: 'It goes through the roof: the dealer, who seals it.' },
    'owner-battery-off': {
      label: 'the owner, battery off first',
      says: 'The new part touches 12 volts: the owner, battery off first.',
    },
    'owner-water-off': {
      label: 'the owner, water off first',
      says: 'The new part touches water: the owner, water off first.',
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
    { when: [['licensed-trade', 'qualified-shop'], 'owner'], gives: 'never-yourself' },
    { when: ['licensed-trade', 'not-chosen'], gives: 'not-before-licensed' },
    { when: ['licensed-trade', 'dealer'], gives: 'ask-for-the-license' },
    { when: ['licensed-trade', 'licensed-trade'], gives: 'right-hands' },
    { when: ['qualified-shop', 'not-chosen'], gives: 'not-before-qualified' },
    { when: ['qualified-shop', ['dealer', 'licensed-trade']], gives: 'right-hands' },
    { when: ['dealer', 'not-chosen'], gives: 'take-it-to-the-dealer' },
    { when: ['dealer', 'owner'], gives: 'seal-and-watch' },
    { when: ['dealer', ['dealer', 'licensed-trade']], gives: 'right-hands' },
    { when: ['owner-battery-off', ['not-chosen', 'owner']], gives: 'battery-off-first' },
    { when: ['owner-water-off', ['not-chosen', 'owner']], gives: 'water-off-first' },
    {
      when: [
        ['owner-battery-off', 'owner-water-off'],
        ['dealer', 'licensed-trade'],
      ],
      gives: 'right-hands',
    },
    { when: ['owner', '-'], gives: 'right-hands' },
  ],
  results: {
    'never-yourself': {
      label: 'never yourself',
      level: 'stop',
      says: 'Not by the owner’s own hands.',
      because:
        'It touches gas, 120 volts or what holds the trailer together: a fault there burns, poisons or breaks off on the road.',
      do: 'Have a licensed trade do gas and 120 volts, and a shop qualified by the trailer’s maker the structure.',
    },
    'not-before-licensed': {
      label: 'not before a licensed person is chosen',
      level: 'if',
      says: 'The new part touches gas or 120 volts, and who is to fit it is not chosen yet.',
      do: 'Do not begin before a person licensed for that is chosen, by the local code.',
      proviso: 'a person licensed for gas or 120 volts fits it',
    },
    'ask-for-the-license': {
      label: 'the dealer’s licensed people; ask for the license',
      level: 'care',
      says: 'The new part touches gas or 120 volts: the dealer’s people only where one of them is licensed for that.',
      do: 'Ask to see the license.',
    },
    'not-before-qualified': {
      label: 'not before a qualified shop is chosen',
      level: 'if',
      says: 'The new part touches the structure, and who is to fit it is not chosen yet.',
      do: 'Have the dealer or a qualified shop fit it, by the trailer maker’s drawing.',
      proviso: 'a shop qualified for structure fits it by the trailer maker’s drawing',
    },
    'take-it-to-the-dealer': {
      label: 'take it to the dealer',
      level: 'care',
      says: 'The new part goes through the roof or an outer skin.',
      because: 'A hole that is not sealed as the roof’s maker says rots what is under it.',
      do: 'Have the dealer fit it and seal it.',
    },
    'seal-and-watch': {
      label: 'seal it and watch it',
      level: 'care',
      says: 'You would make the hole in the roof yourself.',
      because:
        'What holds a screw there stands on the trailer maker’s drawing; the rest is thin board.',
      do: 'Screw only where the trailer maker’s drawing allows, with the sealant that the roof’s maker names, and look after the first rain.',
    },
    'battery-off-first': {
      label: 'the owner, battery off first',
      level: 'care',
      says: 'The owner may fit the new part.',
      do: 'Battery off and minus first before a wire is touched, and a fuse of its own close to the battery. Where a water line is opened too, water off and drained.',
    },
    'water-off-first': {
      label: 'the owner, water off first',
      level: 'care',
      says: 'The owner may fit the new part.',
      do: 'Shut the water off and drain the line first. Look for drops an hour later and the next day.',
    },
    'right-hands': {
      label: 'the right hands',
      level: 'ok',
      says: 'Those are the right hands for it.',
    },
  },
  source: trades,
};
