import type { Decision } from '../../engine/define/shapes';
import { custom } from '../../trade/bibliography/service-triage';

const running = ['wheel-or-hub', 'tire', 'brakes', 'coupling', 'frame-or-suspension'];
const standing = ['at-camp', 'at-home'];
const failing = ['fails', 'worsens'];
const small = ['steady', 'upkeep'];
const ownHands = ['water', 'electric-appliance', 'furniture'];

/**
 * What the trouble is in × how bad it is × where the trailer stands. One row at the most fits.
 *
 *                            fails        worsens      steady       upkeep
 *     wheels, tires, brakes,
 *     coupling, frame        stop         stop         shop; book   own hands; brakes, hubs,
 *                                                      at home      frame: book
 *     sway                   stop         stop         stop         own hands
 *     lights, on the road    stop         stop         own hands    own hands
 *     12 volt, on the road   stop         shop         own hands    own hands
 *     gas appliance          book         stop         book         book
 *     120 volt               book         stop         book         book
 *     water, appliance, …    book         book         own hands    own hands
 *     roof                   shop         book         book         own hands
 *     doors, awning, road    stop         stop         own hands    own hands
 *     slide-out, jacks       stop         stop; shop   book         own hands
 *
 * Beside gas, an alarm, a sign of danger, a hot hub, a flat tire or a recall that forbids driving,
 * no milder advice stands.
 */
export const troubleTable: Decision = {
  label: 'Trouble',
  hit: 'unique',
  on: ['triage.graver', 'trouble.in', 'trouble.degree', 'trailer.stands'],
  rows: [
    { when: ['yes', '-', '-', '-'], gives: 'after-what-is-graver' },
    { when: ['no', running, failing, '-'], gives: 'stop-now' },
    { when: ['no', running, 'steady', ['on-the-road', 'at-camp']], gives: 'nearest-shop' },
    { when: ['no', running, 'steady', 'at-home'], gives: 'book-with-dealer' },
    {
      when: ['no', ['wheel-or-hub', 'brakes', 'frame-or-suspension'], 'upkeep', '-'],
      gives: 'book-with-dealer',
    },
    { when: ['no', ['tire', 'coupling'], 'upkeep', '-'], gives: 'do-it-yourself' },
    { when: ['no', 'sway', ['fails', 'worsens', 'steady'], '-'], gives: 'stop-now' },
    { when: ['no', 'sway', 'upkeep', '-'], gives: 'do-it-yourself' },
    { when: ['no', 'lights', failing, 'on-the-road'], gives: 'stop-now' },
    { when: ['no', 'lights', failing, standing], gives: 'do-it-yourself' },
    { when: ['no', 'lights', small, '-'], gives: 'do-it-yourself' },
    { when: ['no', 'twelve-volt', 'fails', 'on-the-road'], gives: 'stop-now' },
    { when: ['no', 'twelve-volt', 'worsens', ['on-the-road', 'at-camp']], gives: 'nearest-shop' },
    { when: ['no', 'twelve-volt', 'worsens', 'at-home'], gives: 'book-with-dealer' },
    { when: ['no', 'twelve-volt', 'fails', standing], gives: 'do-it-yourself' },
    { when: ['no', 'twelve-volt', small, '-'], gives: 'do-it-yourself' },
    { when: ['no', ['gas-appliance', 'shore-power'], 'worsens', '-'], gives: 'stop-now' },
    {
      when: ['no', ['gas-appliance', 'shore-power'], ['fails', 'steady', 'upkeep'], '-'],
      gives: 'book-with-dealer',
    },
    { when: ['no', ownHands, failing, '-'], gives: 'book-with-dealer' },
    { when: ['no', ownHands, small, '-'], gives: 'do-it-yourself' },
    { when: ['no', 'roof', 'fails', ['on-the-road', 'at-camp']], gives: 'nearest-shop' },
    { when: ['no', 'roof', 'fails', 'at-home'], gives: 'book-with-dealer' },
    { when: ['no', 'roof', ['worsens', 'steady'], '-'], gives: 'book-with-dealer' },
    { when: ['no', 'roof', 'upkeep', '-'], gives: 'do-it-yourself' },
    { when: ['no', 'doors-or-awning', failing, 'on-the-road'], gives: 'stop-now' },
    { when: ['no', 'doors-or-awning', 'fails', 'at-camp'], gives: 'nearest-shop' },
    { when: ['no', 'doors-or-awning', 'worsens', 'at-camp'], gives: 'book-with-dealer' },
    { when: ['no', 'doors-or-awning', failing, 'at-home'], gives: 'book-with-dealer' },
    { when: ['no', 'doors-or-awning', small, '-'], gives: 'do-it-yourself' },
    { when: ['no', 'slide-or-jacks', failing, 'on-the-road'], gives: 'stop-now' },
    { when: ['no', 'slide-or-jacks', 'fails', 'at-camp'], gives: 'stop-now' },
    { when: ['no', 'slide-or-jacks', 'worsens', 'at-camp'], gives: 'nearest-shop' },
    { when: ['no', 'slide-or-jacks', failing, 'at-home'], gives: 'book-with-dealer' },
    { when: ['no', 'slide-or-jacks', 'steady', '-'], gives: 'book-with-dealer' },
    { when: ['no', 'slide-or-jacks', 'upkeep', '-'], gives: 'do-it-yourself' },
  ],
  results: {
    'stop-now': {
      label: 'stop now',
      level: 'stop',
      says: 'Stop where it is safe, shut off what can be shut off, and neither use nor tow it further: such a part holds the trailer on the road, or may open, burn or poison. Someone qualified comes to it, or it is carried.',
    },
    'after-what-is-graver': {
      label: 'after what is graver',
      level: 'stop',
      says: 'Something graver comes first: do what is said of that, and nothing with this until then.',
    },
    'nearest-shop': {
      label: 'to the nearest qualified shop',
      level: 'care',
      says: 'Drive slowly to the nearest qualified shop and no further, stopping after the first miles to look and to feel; if it grows, stop.',
    },
    'book-with-dealer': {
      label: 'book with the dealer',
      level: 'care',
      says: 'Book it with your dealer and leave it as it is until then: switched off, shut or covered.',
    },
    'do-it-yourself': {
      label: 'do it yourself, with care',
      level: 'ok',
      says: 'You may see to it yourself, by the manual and with care; it does not roll before it works again.',
    },
  },
  source: custom,
};
