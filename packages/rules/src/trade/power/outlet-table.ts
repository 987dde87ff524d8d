import type { Decision } from '../../engine/define/shapes';
import { outlets } from '../bibliography/power';

/**
 * Which outlet × which inlet of the trailer. A look-alike is never milder than stop.
 *
 *                         30 A inlet            50 A inlet
 *     household 15, 20    household             household
 *     trailer 30          as-made               one-leg
 *     four-pin 50         less-protected        both-legs
 *     generator           generator             generator
 *     dryer, welder       never-240             never-240
 *     no label            measure-first         measure-first
 */
export const outletTable: Decision = {
  label: 'Outlet',
  hit: 'unique',
  on: ['supply.outlet', 'trailer.inlet'],
  rows: [
    { when: [['household-15', 'household-20'], '-'], gives: 'household' },
    { when: ['trailer-30', '30'], gives: 'as-made' },
    { when: ['trailer-30', '50'], gives: 'one-leg' },
    { when: ['four-pin-50', '30'], gives: 'less-protected' },
    { when: ['four-pin-50', '50'], gives: 'both-legs' },
    { when: ['generator', '-'], gives: 'generator' },
    { when: [['dryer', 'welder'], '-'], gives: 'never-240' },
    { when: ['no-label', '-'], gives: 'measure-first' },
  ],
  results: {
    'as-made': {
      label: 'plug in as made',
      level: 'ok',
      says: 'A 30 A trailer on an outlet of 30 A and 120 V made for trailers: that is what it is for.',
    },
    'both-legs': {
      label: 'plug in, with both legs',
      level: 'ok',
      says: 'A 50 A trailer on a four-pin 50 A outlet: two feeds of 50 A, each by itself.',
    },
    household: {
      label: 'plug in with care: a household circuit',
      level: 'care',
      says: 'A household outlet through an adapter gives no more than its own breaker.',
      because: 'It shares that with whatever else hangs on the circuit.',
      do: 'One large thing at a time; if the plug gets warm, switch off.',
    },
    'one-leg': {
      label: 'plug in with care: one feed for both halves',
      level: 'care',
      says: 'A 50 A trailer on a 30 A outlet: both halves of it live on that one feed of 30 A.',
      do: 'Count everything that runs in it together.',
    },
    'less-protected': {
      label: 'plug in with care: the cord is protected at 50 A only',
      level: 'care',
      says: 'A 30 A trailer on a 50 A outlet through an adapter: its cord is protected at 50 A only.',
      because: 'The trailer’s own main breaker holds at 30 A, but the cord before it burns first.',
      do: 'Nothing but the trailer’s own cord, whole and uncoiled, and better an adapter with a 30 A breaker in it.',
    },
    generator: {
      label: 'plug in at the generator',
      level: 'ok',
      says: 'From a generator: what it can give at its height decides what runs.',
    },
    'never-240': {
      label: 'never plug in at 240 V',
      level: 'stop',
      says: 'Do not plug in: it gives 240 V.',
      because:
        'An outlet for a dryer or a welder is made for that, a trailer wants 120 V, and it destroys what is plugged in. No adapter makes it right.',
      do: 'Have an electrician put in a trailer outlet.',
    },
    'measure-first': {
      label: 'do not plug in before it is measured',
      level: 'stop',
      says: 'Do not plug in: what this outlet gives is not known.',
      because: 'One of 240 V looks much like one of 120 V.',
      do: 'Have an electrician measure and label it first.',
    },
  },
  source: outlets,
};
