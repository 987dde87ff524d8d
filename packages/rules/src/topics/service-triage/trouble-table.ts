import type { Decision } from '../../engine/define/shapes';
import { custom } from '../../trade/bibliography/service-triage';
import { troubleResults } from './trouble-results';

const running = ['wheel-or-hub', 'tire', 'brakes', 'coupling', 'frame-or-suspension'];
const standing = ['at-camp', 'at-home'];
const failing = ['fails', 'worsens'];
const small = ['steady', 'upkeep'];
const ownHands = ['water', 'electric-appliance', 'furniture'];

/**
 * What the trouble is in × how bad it is × where the trailer stands. The topmost row that fits counts.
 *
 *                            fails        worsens      steady       upkeep
 *     wheels, tires, brakes,
 *     coupling, frame        stop         stop         shop; book   own hands; brakes, hubs,
 *                                                      at home      frame: book
 *     sway                   stop         stop         stop         own hands
 *     lights, on the road    stop         stop         own hands    own hands
 *     12 volt, on the road   stop         shop         own hands    own hands
 *     either, standing       mend before  mend before  own hands    own hands
 *                            it rolls     it rolls
 *     gas appliance          book         stop         book         book
 *     120 volt               book         stop         book         book
 *     electric appliance     book         book         book         own hands
 *     water, furniture       book         book         own hands    own hands
 *     roof                   shop         book         book         own hands
 *     doors, awning, road    stop         stop         own hands    own hands
 *     slide-out, jacks       stop         stop; shop   book         own hands
 *
 * What is stop by itself stays so; beside gas, an alarm, a sign of danger, a hot hub, a flat tire or
 * a recall that forbids driving, no milder advice stands. Where only readings or an alarm were told, they alone are answered.
 */
export const troubleTable: Decision = {
  label: 'Trouble',
  hit: 'first',
  on: ['triage.graver', 'triage.onlyReadings', 'trouble.in', 'trouble.degree', 'trailer.stands'],
  rows: [
    ...beside('-', [
      { when: [running, failing, '-'], gives: 'stop-now' },
      { when: ['sway', ['fails', 'worsens', 'steady'], '-'], gives: 'stop-swaying' },
      { when: ['lights', failing, 'on-the-road'], gives: 'stop-unseen' },
      { when: ['twelve-volt', 'fails', 'on-the-road'], gives: 'stop-unseen' },
      { when: ['gas-appliance', 'worsens', '-'], gives: 'shut-the-gas' },
      { when: ['shore-power', 'worsens', '-'], gives: 'pull-the-plug' },
      { when: ['doors-or-awning', failing, 'on-the-road'], gives: 'stop-open' },
      { when: ['slide-or-jacks', failing, 'on-the-road'], gives: 'stop-open' },
      { when: ['slide-or-jacks', 'fails', 'at-camp'], gives: 'stop-open' },
    ]),
    { when: ['yes', '-', '-', '-', '-'], gives: 'after-what-is-graver' },
    { when: ['no', 'yes', '-', '-', '-'], gives: 'nothing-else-told' },
    ...beside('no', [
      { when: [running, 'steady', ['on-the-road', 'at-camp']], gives: 'nearest-shop' },
      { when: [running, 'steady', 'at-home'], gives: 'book-with-dealer' },
      {
        when: [['wheel-or-hub', 'brakes', 'frame-or-suspension'], 'upkeep', '-'],
        gives: 'book-upkeep',
      },
      { when: [['tire', 'coupling'], 'upkeep', '-'], gives: 'do-it-yourself' },
      { when: ['sway', 'upkeep', '-'], gives: 'do-it-yourself' },
      { when: ['lights', failing, standing], gives: 'mend-before-it-rolls' },
      { when: ['lights', small, '-'], gives: 'do-it-yourself' },
      { when: ['twelve-volt', 'worsens', ['on-the-road', 'at-camp']], gives: 'nearest-shop' },
      { when: ['twelve-volt', 'worsens', 'at-home'], gives: 'book-with-dealer' },
      { when: ['twelve-volt', 'fails', standing], gives: 'mend-before-it-rolls' },
      { when: ['twelve-volt', small, '-'], gives: 'do-it-yourself' },
      {
        when: [['gas-appliance', 'shore-power'], ['fails', 'steady'], '-'],
        gives: 'book-shut-off',
      },
      { when: [['gas-appliance', 'shore-power'], 'upkeep', '-'], gives: 'book-upkeep' },
      { when: [ownHands, failing, '-'], gives: 'book-with-dealer' },
      { when: ['electric-appliance', 'steady', '-'], gives: 'book-shut-off' },
      { when: [ownHands, small, '-'], gives: 'do-it-yourself' },
      { when: ['roof', 'fails', ['on-the-road', 'at-camp']], gives: 'nearest-shop' },
      { when: ['roof', 'fails', 'at-home'], gives: 'book-with-dealer' },
      { when: ['roof', ['worsens', 'steady'], '-'], gives: 'book-with-dealer' },
      { when: ['roof', 'upkeep', '-'], gives: 'do-it-yourself' },
      { when: ['doors-or-awning', 'fails', 'at-camp'], gives: 'nearest-shop' },
      { when: ['doors-or-awning', 'worsens', 'at-camp'], gives: 'book-with-dealer' },
      { when: ['doors-or-awning', failing, 'at-home'], gives: 'book-with-dealer' },
      { when: ['doors-or-awning', small, '-'], gives: 'do-it-yourself' },
      { when: ['slide-or-jacks', 'worsens', 'at-camp'], gives: 'nearest-shop' },
      { when: ['slide-or-jacks', failing, 'at-home'], gives: 'book-with-dealer' },
      { when: ['slide-or-jacks', 'steady', '-'], gives: 'book-with-dealer' },
      { when: ['slide-or-jacks', 'upkeep', '-'], gives: 'do-it-yourself' },
    ]),
  ],
  results: troubleResults,
  source: custom,
};

/** Rows for a trouble that was told; what is stop by itself is so whatever stands beside it. */
function beside(graver: string, own: Decision['rows']): Decision['rows'] {
  return own.map(({ when, gives }) => ({ when: [graver, 'no', ...when], gives }));
}
