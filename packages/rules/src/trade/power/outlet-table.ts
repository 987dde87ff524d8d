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
      label: 'as made',
      level: 'ok',
      says: 'A 30 A trailer on a 30 A, 120 V outlet made for trailers: that is what it is for.',
    },
    'both-legs': {
      label: 'both legs',
      level: 'ok',
      says: 'A 50 A trailer on a four-pin 50 A outlet: two legs of 50 A, each by itself.',
    },
    household: {
      label: 'on a household outlet',
      level: 'care',
      says: 'A household outlet through an adapter gives no more than its own breaker, and shares it with whatever else hangs on that circuit: one thing at a time, and feel the plug after a quarter of an hour.',
    },
    'one-leg': {
      label: 'one feed for both legs',
      level: 'care',
      says: 'A 50 A trailer on a 30 A outlet: both of its legs together live on that one feed of 30 A.',
    },
    'less-protected': {
      label: 'cord protected at 50 A only',
      level: 'care',
      says: 'A 30 A trailer on a 50 A outlet through an adapter: the trailer’s own main breaker holds at 30 A, but the cord between is protected at 50 A only. Keep it short, whole and uncoiled.',
    },
    generator: {
      label: 'from a generator',
      level: 'ok',
      says: 'From a generator: what it can give is reckoned below.',
    },
    'never-240': {
      label: 'never: 240 V',
      level: 'stop',
      says: 'Do not plug in, it gives 240 V: an outlet for a dryer or a welder is made for that, a trailer wants 120 V, and it destroys what is plugged in. No adapter makes it right; have an electrician put in a trailer outlet.',
    },
    'measure-first': {
      label: 'measure first',
      level: 'stop',
      says: 'Do not plug in, nobody knows what this outlet gives: 240 V looks much like 120 V. Have an electrician measure and label it first.',
    },
  },
  source: outlets,
};
