import type { Decision } from '../../engine/define/shapes';
import { insurers as policyWording } from '../../trade/bibliography/common';

/**
 * Claim, or pay for it? The first row that fits counts.
 *
 *     whose fault ──► a slow leak, another’s: money does not decide
 *     even the least is past the write-off ──► do not repair on your own
 *     even the least is over the break-even ──► claim
 *     even the most is under it ──► pay
 *     between the two ──► close
 *
 * None of them is milder than care: it is money on an unopened wall, and never a promise.
 */
export const claimTable: Decision = {
  label: 'Claim or pay',
  hit: 'first',
  on: ['damage.cause', 'cost.pastWriteOff', 'claim.surelyCheaper', 'claim.surelyDearer'],
  rows: [
    { when: ['slow-leak', '-', '-', '-'], gives: 'seldom-covered' },
    { when: ['other-party', '-', '-', '-'], gives: 'from-the-other' },
    { when: ['-', 'yes', '-', '-'], gives: 'written-off' },
    { when: ['-', '-', 'yes', '-'], gives: 'claim' },
    { when: ['-', '-', '-', 'yes'], gives: 'pay' },
    { when: ['-', '-', '-', '-'], gives: 'close' },
  ],
  results: {
    claim: {
      label: 'claim',
      level: 'care',
      says: 'Even at the least it costs more than deductible and dearer premiums together: claim it, as far as money goes, once a shop has looked.',
    },
    pay: {
      label: 'pay for it',
      level: 'care',
      says: 'Even at the most it costs less than deductible and dearer premiums together: pay for it, as far as money goes, once a shop has looked.',
    },
    close: {
      label: 'too close',
      level: 'care',
      says: 'The break-even lies within what it may cost: let a shop look before you call the insurer, for a call may be counted as a claim.',
    },
    'from-the-other': {
      label: 'from the other’s insurer',
      level: 'care',
      says: 'Another is liable: claim from the other’s insurer, with the report and your photographs; your own steps in if it drags on.',
    },
    'seldom-covered': {
      label: 'seldom covered',
      level: 'care',
      says: 'A slow leak counts as wear with most insurers, and is not paid: read the policy, ask in writing, and reckon with paying for it.',
    },
    'written-off': {
      label: 'likely a write-off',
      level: 'care',
      says: 'Even at the least it comes to where insurers write off: claim, and have nothing repaired before they have seen it. Know what it was worth, with proofs.',
    },
  },
  source: policyWording,
};
