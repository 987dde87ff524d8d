import { part } from '../../engine/define/topic';
import { insurers } from '../../trade/bibliography/common';
import { money } from '../../trade/bibliography/theft-deterrence';
import { policy } from '../../trade/papers/policy';

/**
 * What would be paid, against what is owed.
 *
 *     agreed value ─┐
 *     today's value ┴─ less deductible ─► paid ├────────────┤
 *                                         owed ├────────────────┤ gap
 */
export const insured = part({
  facts: {
    'policy.basis': {
      kind: 'choice',
      label: 'What the policy pays',
      noun: 'what the policy pays',
      options: ['agreed', 'actual', 'nothing'],
      ask: 'Does the policy pay an agreed value, what the trailer is worth on the day, or nothing for theft?',
      where: 'declarations page: agreed value, actual cash value, liability only',
      means: 'Agreed: the figure in the policy. Actual: what a like trailer costs on that day.',
    },
    'policy.agreedValue': {
      kind: 'quantity',
      label: 'Agreed value',
      noun: 'the agreed value',
      unit: 'USD',
      least: 0,
      most: 1_000_000,
      exact: true,
      ask: 'What value is agreed?',
      where: 'declarations page',
    },
    'policy.deductible': policy.facts['policy.deductible'],
    'loan.owed': {
      kind: 'quantity',
      label: 'Owed on the loan',
      noun: 'what is owed',
      unit: 'USD',
      least: 0,
      most: 1_000_000,
      ask: 'How much is still owed on the trailer?',
      where: 'last statement of the lender',
    },
  },
  formulas: {
    'deductible.counted': {
      label: 'Deductible that is counted',
      unit: 'USD',
      is: 'choose(given(policy.deductible), policy.deductible, 0)',
      source: insurers,
    },
    'assumed.deductible': {
      label: 'No deductible was told',
      unit: 'yes-no',
      is: '(given(policy.basis) || given(loan.owed)) && !given(policy.deductible)',
      source: insurers,
    },
    'loan.overValue': {
      label: 'Owed, over what the trailer is worth',
      noun: 'what is owed over its worth',
      unit: 'USD',
      is: 'max(0, loan.owed - rig.value)',
      source: money,
    },
    'loan.isOverValue': {
      label: 'More is owed than it is worth, and the policy was not told',
      unit: 'yes-no',
      is: 'given(loan.owed) && loan.owed > rig.value && !given(policy.basis) && !given(policy.agreedValue)',
      source: money,
    },
    'loan.hasGap': {
      label: 'More is owed than would be paid',
      unit: 'yes-no',
      is: 'given(loan.owed) && given(policy.basis) && loan.owed > policy.pays',
      source: money,
    },
    'policy.pays': {
      label: 'What the policy would pay',
      noun: 'what the policy would pay',
      unit: 'USD',
      is: "choose(policy.basis == 'nothing', 0, max(0, choose(policy.basis == 'agreed', policy.agreedValue, rig.value) - deductible.counted))",
      source: insurers,
    },
    'loan.gap': {
      label: 'Owed, and not paid by the policy',
      unit: 'USD',
      is: 'max(0, loan.owed - policy.pays)',
      source: money,
    },
    'policy.coversLoan': {
      label: 'The policy pays all that is owed',
      unit: 'yes-no',
      is: 'loan.gap <= 0',
      source: money,
    },
    'policy.isNothing': {
      label: 'The policy has no theft in it, and nothing is told to be owed',
      unit: 'yes-no',
      is: "policy.basis == 'nothing' && !given(loan.owed)",
      source: insurers,
    },
    'policy.paysSome': {
      label: 'The policy pays something',
      unit: 'yes-no',
      is: 'policy.pays > 0',
      source: money,
    },
    'policy.paysNothing': {
      label: 'The policy pays nothing',
      unit: 'yes-no',
      is: 'policy.pays <= 0',
      source: money,
    },
    'policy.shortfall': {
      label: 'What is missing for a like trailer',
      unit: 'USD',
      is: 'max(0, rig.value - policy.pays)',
      source: money,
    },
    'policy.agreedCounts': {
      label: 'Value that the policy goes by',
      unit: 'USD',
      is: "choose(policy.basis == 'agreed', policy.agreedValue, rig.value)",
      source: insurers,
    },
  },
  findings: {
    'loan-gap': {
      label: 'Loan against the policy',
      askedBy: ['loan.owed'],
      care: [
        {
          when: 'loan.isOverValue',
          wrong:
            'If it is stolen, {loan.overValue} would still be owed, even if the policy paid all that it is worth.',
          because: '{loan.owed} is owed on it, and it is worth {rig.value}.',
          do: 'Read on the declarations page what the policy pays for theft, and ask lender and insurer for a cover of that gap.',
        },
        {
          when: 'loan.owed > policy.pays && policy.paysNothing',
          wrong:
            'If it is stolen, all of the {loan.owed} would still be owed: the policy pays nothing.',
          because: 'It would be gone and still to be paid off.',
          do: 'Ask lender and insurer for a cover of that gap; without theft in the policy, insure the trailer itself first.',
        },
        {
          when: 'loan.owed > policy.pays',
          wrong:
            'If it is stolen, {loan.gap} would still be owed: {loan.owed} is owed on it, and the policy would pay {policy.pays}.',
          because: 'It would be gone and still to be paid off.',
          do: 'Ask lender and insurer for a cover of that gap; without theft in the policy, insure the trailer itself first.',
        },
      ],
      otherwise: 'What would be paid covers the loan.',
      open: {
        wrong: 'Whether the policy would pay what is owed is not known.',
        do: 'Read on the declarations page whether the policy pays for theft, and by what value. What the loan is above that you go on paying, unless you bought a cover of that gap.',
      },
      source: money,
    },
    'agreed-short': {
      label: 'Agreed value',
      askedBy: ['policy.agreedValue'],
      care: {
        when: 'policy.agreedCounts < rig.value',
        wrong:
          'The agreed value of {policy.agreedValue} is below the {rig.value} that a like trailer costs today.',
        because: 'With the deductible {policy.shortfall} would be missing for the next one.',
        do: 'Have it agreed anew.',
      },
      otherwise: 'The agreed value reaches what a like trailer costs.',
      open: {
        wrong: 'The agreed value may be below what a like trailer costs today.',
        do: 'Look up offers of like trailers.',
      },
      source: insurers,
    },
    'not-insured': {
      label: 'Insured against theft',
      askedBy: ['policy.basis'],
      care: {
        when: "policy.basis == 'nothing'",
        wrong: 'Theft is not insured.',
        because:
          'The vehicle’s policy pays for what a trailer does to others, not for the trailer.',
        do: 'Ask for a policy of its own, with theft in it.',
      },
      otherwise: 'Theft is insured.',
      open: {
        wrong: 'Whether theft is insured at all is not known.',
        do: 'Look on the declarations page.',
      },
      source: insurers,
    },
  },
});
