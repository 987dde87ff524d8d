import { part } from '../../engine/define/topic';
import { custom, insurers } from '../../trade/bibliography/common';
import { money } from '../../trade/bibliography/theft-deterrence';

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
      options: ['agreed', 'actual', 'nothing'],
      ask: 'Does the policy pay an agreed value, what it is worth on the day, or nothing for theft?',
      where: 'declarations page: agreed value, actual cash value, liability only',
      means: 'Agreed: the figure in the policy. Actual: what a like trailer costs on that day.',
    },
    'policy.agreedValue': {
      kind: 'quantity',
      label: 'Agreed value',
      unit: 'USD',
      least: 0,
      most: 1_000_000,
      exact: true,
      ask: 'What value is agreed?',
      where: 'declarations page',
    },
    'policy.deductible': {
      kind: 'quantity',
      label: 'Deductible',
      unit: 'USD',
      least: 0,
      most: 50_000,
      exact: true,
      ask: 'How high is the deductible for theft?',
      where: 'declarations page',
      silent: { value: 0, says: 'No deductible is counted.', source: custom, quiet: true },
    },
    'loan.owed': {
      kind: 'quantity',
      label: 'Owed on the loan',
      noun: 'what is owed',
      unit: 'USD',
      least: 0,
      most: 1_000_000,
      ask: 'How much is still owed on it?',
      where: 'last statement of the lender',
    },
  },
  formulas: {
    'policy.pays': {
      label: 'What the policy would pay',
      noun: 'what the policy would pay',
      unit: 'USD',
      is: "choose(policy.basis == 'nothing', 0, max(0, choose(policy.basis == 'agreed', policy.agreedValue, rig.value) - policy.deductible))",
      source: insurers,
    },
    'loan.gap': {
      label: 'Owed, and not paid by the policy',
      unit: 'USD',
      is: 'max(0, loan.owed - policy.pays)',
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
      care: {
        when: {
          all: [{ fact: 'loan.owed', operator: 'greaterThan', value: { fact: 'policy.pays' } }],
        },
        wrong: 'More is owed than would be paid.',
        do: 'Stolen, it would be gone and still to be paid off. Ask lender and insurer for a cover of that gap.',
      },
      otherwise: 'What would be paid covers the loan.',
      open: { wrong: 'More may be owed than would be paid.', do: 'Find out what the policy pays.' },
      source: money,
    },
    'agreed-short': {
      label: 'Agreed value',
      askedBy: ['policy.agreedValue'],
      care: {
        when: {
          all: [
            { fact: 'policy.agreedCounts', operator: 'lessThan', value: { fact: 'rig.value' } },
          ],
        },
        wrong: 'The agreed value is below what a like trailer costs today.',
        do: 'Have it agreed anew.',
      },
      otherwise: 'The agreed value reaches what a like trailer costs.',
      open: { wrong: 'The agreed value may be below what a like trailer costs today.' },
      source: insurers,
    },
    'not-insured': {
      label: 'Insured against theft',
      askedBy: ['policy.basis'],
      care: {
        when: { all: [{ fact: 'policy.basis', operator: 'equal', value: 'nothing' }] },
        wrong: 'Theft is not insured.',
        do: 'The vehicle’s policy pays for what a trailer does to others, not for the trailer.',
      },
      otherwise: 'Theft is insured.',
      open: { wrong: 'Look in the policy whether theft is insured at all.' },
      source: insurers,
    },
  },
});
