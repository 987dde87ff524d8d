import type { Decision } from '../../engine/define/shapes';
import { insurers as policyWording } from '../../trade/bibliography/common';

/**
 * Claim, or pay for it? The first row that fits counts.
 *
 *     whose fault ──► a slow leak, another’s: money does not decide
 *     nothing to price, or no deductible told ──► find out first
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
  on: [
    'damage.cause',
    'claim.isPriced',
    'cost.pastWriteOff',
    'claim.surelyCheaper',
    'claim.surelyDearer',
  ],
  rows: [
    { when: ['slow-leak', '-', '-', '-', '-'], gives: 'seldom-covered' },
    { when: ['other-party', '-', '-', '-', '-'], gives: 'from-the-other' },
    { when: ['-', '-', 'yes', '-', '-'], gives: 'written-off' },
    { when: ['-', 'no', '-', '-', '-'], gives: 'find-out' },
    { when: ['-', '-', '-', 'yes', '-'], gives: 'claim' },
    { when: ['-', '-', '-', '-', 'yes'], gives: 'pay' },
    { when: ['-', '-', '-', '-', '-'], gives: 'close' },
  ],
  results: {
    claim: {
      label: 'claim it',
      level: 'care',
      says: 'By money alone, claim: the repair may come to {cost.range}, over a claim’s cost of {breakEven.range}.',
      because: 'Even at the least it costs more than deductible and dearer premiums together.',
      do: 'Let a shop look, tell the insurer at once, and keep every part that comes off.',
    },
    pay: {
      label: 'pay for it yourself',
      level: 'care',
      says: 'By money alone, pay yourself: the repair may come to {cost.range}, under a claim’s cost of {breakEven.range}.',
      because: 'Even at the most it costs less than deductible and dearer premiums together.',
      do: 'Let a shop look first; what is found behind the skin may turn it.',
    },
    close: {
      label: 'undecided, the inspection first',
      level: 'care',
      says: 'Undecided: the repair may come to {cost.range}, and a claim, with dearer premiums, costs {breakEven.range}.',
      because:
        'Claiming may cost up to {claim.mayCost} or save up to {claim.maySave} beside paying.',
      do: 'Get the inspection first, before you call the insurer; a call may be counted as a claim.',
    },
    'find-out': {
      label: 'price and deductible first',
      level: 'care',
      says: 'Whether to claim hangs on the repair’s cost, against deductible and dearer premiums.',
      do: 'Have a shop look and write an estimate; the deductible stands on the declarations page.',
    },
    'from-the-other': {
      label: 'claim from the other’s insurer',
      level: 'care',
      says: 'Another is liable: claim from the other’s insurer.',
      do: 'Send the report and your photographs; your own insurer steps in if it drags on.',
    },
    'seldom-covered': {
      label: 'reckon with paying for it',
      level: 'care',
      says: 'Water that came in slowly is usually not covered; what comes suddenly is.',
      because: 'Most insurers count a slow leak as wear.',
      do: 'Read the policy, ask in writing, and reckon with paying for it.',
    },
    'written-off': {
      label: 'claim it, it is likely a write-off',
      level: 'care',
      says: 'Even at the least it comes to where insurers write off.',
      do: 'Claim, and have nothing repaired before they have seen it. Know what it was worth, with proofs.',
    },
  },
  source: policyWording,
};
