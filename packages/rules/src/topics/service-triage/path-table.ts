import type { Decision } from '../../engine/define/shapes';
import { custom } from '../../trade/bibliography/service-triage';

const stopping = [
  'after-what-is-graver',
  'stop-now',
  'stop-swaying',
  'stop-unseen',
  'stop-open',
  'shut-the-gas',
  'pull-the-plug',
];
const booking = ['book-with-dealer', 'book-shut-off', 'book-upkeep'];
const any = '-';

/**
 * Which way it goes, all in all; the topmost row that fits counts.
 *
 *     gas, alarm ─► danger, hub, tire, recall ─► the trouble itself ─► readings, recall, warranty
 */
export const pathTable: Decision = {
  label: 'Which way it goes',
  hit: 'first',
  on: [
    'gas.comesFirst',
    'alarm.sounds',
    'danger.comesFirst',
    'triage.mustStand',
    'triage.trouble',
    'triage.isWatched',
    'triage.paper',
  ],
  rows: [
    { when: ['yes', any, any, any, any, any, any], gives: 'out-then-call' },
    { when: [any, 'yes', any, any, any, any, any], gives: 'out-then-call' },
    { when: [any, any, 'yes', any, any, any, any], gives: 'stop-now' },
    { when: [any, any, any, 'yes', any, any, any], gives: 'stop-now' },
    { when: [any, any, any, any, stopping, any, any], gives: 'stop-now' },
    { when: [any, any, any, any, 'nearest-shop', any, any], gives: 'nearest-shop' },
    { when: [any, any, any, any, any, 'yes', any], gives: 'nearest-shop' },
    { when: [any, any, any, any, booking, any, any], gives: 'book-with-dealer' },
    { when: [any, any, any, any, any, any, 'yes'], gives: 'book-with-dealer' },
    { when: [any, any, any, any, 'nothing-else-told', any, any], gives: 'go-on-and-measure' },
    { when: [any, any, any, any, any, any, any], gives: 'do-it-yourself' },
  ],
  results: {
    'out-then-call': { label: 'out, then call', says: 'Everybody out; then call.' },
    'stop-now': { label: 'stop now', says: 'Stop now.' },
    'nearest-shop': {
      label: 'to the nearest qualified shop',
      says: 'Slowly to the nearest qualified shop.',
    },
    'book-with-dealer': { label: 'book with the dealer', says: 'Book it with your dealer.' },
    'go-on-and-measure': {
      label: 'go on, and measure again at the next stop',
      says: 'Go on, and measure again at the next stop.',
    },
    'do-it-yourself': {
      label: 'do it yourself, with care',
      says: 'You may see to it yourself, by the manual, with power and gas off.',
    },
  },
  source: custom,
};
