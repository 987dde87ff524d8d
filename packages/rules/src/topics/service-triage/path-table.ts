import type { Decision } from '../../engine/define/shapes';
import { custom } from '../../trade/bibliography/service-triage';

/**
 * Which way it goes, all in all; the topmost row that fits counts.
 *
 *     gas, alarm ─► danger, hub, tire, recall ─► the trouble itself ─► recall or warranty first
 */
export const pathTable: Decision = {
  label: 'Which way it goes',
  hit: 'first',
  on: [
    'gas.smell',
    'danger.sign',
    'hub.runsHot',
    'tire.runsSoft',
    'recall.found',
    'triage.trouble',
    'warranty.asksFirst',
  ],
  rows: [
    { when: ['yes', '-', '-', '-', '-', '-', '-'], gives: 'out-then-call' },
    {
      when: [
        '-',
        ['smoke-or-burning', 'hot', 'loose', 'tingling', 'water-at-the-wires'],
        '-',
        '-',
        '-',
        '-',
        '-',
      ],
      gives: 'stop-now',
    },
    { when: ['-', '-', 'yes', '-', '-', '-', '-'], gives: 'stop-now' },
    { when: ['-', '-', '-', 'yes', '-', '-', '-'], gives: 'stop-now' },
    { when: ['-', '-', '-', '-', 'do-not-drive', '-', '-'], gives: 'stop-now' },
    { when: ['-', '-', '-', '-', '-', 'stop-now', '-'], gives: 'stop-now' },
    { when: ['-', '-', '-', '-', '-', 'nearest-shop', '-'], gives: 'nearest-shop' },
    { when: ['-', '-', '-', '-', '-', 'book-with-dealer', '-'], gives: 'book-with-dealer' },
    { when: ['-', '-', '-', '-', 'open', '-', '-'], gives: 'book-with-dealer' },
    { when: ['-', '-', '-', '-', '-', '-', 'yes'], gives: 'book-with-dealer' },
    { when: ['-', '-', '-', '-', '-', '-', '-'], gives: 'do-it-yourself' },
  ],
  results: {
    'out-then-call': { label: 'out, then call', says: 'Everybody out; then call.' },
    'stop-now': { label: 'stop now', says: 'Stop where it is safe; it goes no further.' },
    'nearest-shop': {
      label: 'to the nearest qualified shop',
      says: 'Slowly to the nearest qualified shop.',
    },
    'book-with-dealer': { label: 'book with the dealer', says: 'Book it with your dealer.' },
    'do-it-yourself': {
      label: 'do it yourself, with care',
      says: 'See to it yourself, with care.',
    },
  },
  source: custom,
};
