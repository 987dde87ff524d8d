import { findingOf, part } from '../../engine/define/topic';
import { money, premiumEffect } from '../../trade/bibliography/body-repair';
import { custom, house, insurers as policyWording } from '../../trade/bibliography/common';
import { claimTable } from './claim-table';

/**
 * Money over the years in which a claim is felt.
 *
 *     paying ─── the whole repair ───────────────►
 *     claiming ─ deductible ─┬─ premium × raise × years ─►
 *                            break-even: where the two are alike
 */
export const claim = part({
  facts: {
    'damage.cause': {
      kind: 'choice',
      label: 'What did it',
      options: ['collision', 'weather', 'slow-leak', 'other-party'],
      ask: 'What did it: a collision of your own, weather, water that came in slowly, or somebody else?',
      where: 'told by the owner',
    },
    'policy.deductible': {
      kind: 'quantity',
      label: 'Deductible',
      noun: 'the deductible',
      unit: 'USD',
      least: 0,
      most: 50_000,
      exact: true,
      ask: 'How high is the deductible for this kind of damage?',
      where: 'declarations page of the policy',
    },
    'policy.premium': {
      kind: 'quantity',
      label: 'Premium a year',
      noun: 'the premium',
      unit: 'USD/yr',
      least: 0,
      most: 50_000,
      ask: 'What is the premium for a year?',
      where: 'declarations page of the policy',
    },
    'policy.raise': {
      kind: 'quantity',
      label: 'What a claim adds to the premium',
      noun: 'what a claim adds',
      unit: '%',
      least: 0,
      most: 300,
      ask: 'By how much would a claim raise the premium?',
      where: 'the agent, asked in general and without naming a loss',
    },
    'policy.years': {
      kind: 'quantity',
      label: 'Years a claim is felt',
      unit: 'yr',
      least: 0,
      most: 15,
      ask: 'For how many years?',
      where: 'the agent, asked in general',
    },
    'policy.forgives': {
      kind: 'yes-no',
      label: 'The first claim is forgiven',
      noun: 'whether the first claim is forgiven',
      ask: 'Does the policy forgive a first claim?',
      where: 'the policy, under forgiveness',
      silent: {
        value: 'no',
        says: 'The policy forgives no claim.',
        source: custom,
        quiet: true,
      },
    },
    'policy.claimsBefore': {
      kind: 'quantity',
      label: 'Claims in the last five years',
      unit: '',
      least: 0,
      most: 20,
      counted: true,
      ask: 'How many claims were there in the last five years?',
      where: 'told by the owner',
    },
  },
  parameters: {
    'raise.low': {
      label: 'What a claim adds where nobody told, least',
      unit: '%',
      values: [{ from: '2020-01-01', value: 10 }],
      range: [0, 100],
      source: premiumEffect,
    },
    'raise.high': {
      label: 'What a claim adds where nobody told, most',
      unit: '%',
      values: [{ from: '2020-01-01', value: 30 }],
      range: [0, 100],
      source: premiumEffect,
    },
    'years.low': {
      label: 'Years a claim is felt where nobody told, least',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 3 }],
      range: [1, 10],
      source: premiumEffect,
    },
    'years.high': {
      label: 'Years a claim is felt where nobody told, most',
      unit: 'yr',
      values: [{ from: '2020-01-01', value: 5 }],
      range: [1, 10],
      source: premiumEffect,
    },
    'claims.few': {
      label: 'Claims in five years that insurers let pass',
      unit: '',
      values: [{ from: '2020-01-01', value: 0 }],
      range: [0, 3],
      source: premiumEffect,
    },
  },
  formulas: {
    'premium.low': {
      label: 'Dearer premiums over the years, at the least',
      unit: 'USD',
      is: "choose(policy.forgives == 'yes', 0, policy.premium * choose(given(policy.raise), policy.raise, raise.low) * choose(given(policy.years), policy.years, years.low))",
      source: premiumEffect,
    },
    'premium.high': {
      label: 'Dearer premiums over the years, at the most',
      unit: 'USD',
      is: "choose(policy.forgives == 'yes', 0, policy.premium * choose(given(policy.raise), policy.raise, raise.high) * choose(given(policy.years), policy.years, years.high))",
      source: premiumEffect,
    },
    'breakEven.low': {
      label: 'Break-even, at the least',
      unit: 'USD',
      is: 'policy.deductible + premium.low',
      source: money,
    },
    'breakEven.high': {
      label: 'Break-even, at the most',
      unit: 'USD',
      is: 'policy.deductible + premium.high',
      source: money,
    },
    'breakEven.range': {
      label: 'Break-even: a repair above it is cheaper claimed',
      unit: 'USD',
      is: 'between(breakEven.low, breakEven.high)',
      source: money,
    },
    'claim.gain': {
      label: 'What claiming saves over the years, below zero what it costs',
      unit: 'USD',
      is: 'between(cost.low - breakEven.high, cost.high - breakEven.low)',
      source: money,
    },
    'claim.surelyCheaper': {
      label: 'Claiming is cheaper even for the least',
      unit: 'yes-no',
      is: 'cost.low > breakEven.high',
      source: money,
    },
    'claim.surelyDearer': {
      label: 'Claiming is dearer even for the most',
      unit: 'yes-no',
      is: 'cost.high <= breakEven.low',
      source: money,
    },
    'assumed.raise': {
      label: 'What a claim adds was not told',
      unit: 'yes-no',
      is: "given(policy.premium) && policy.forgives == 'no' && !given(policy.raise, policy.years)",
      source: house,
    },
  },
  decisions: { 'claim.advice': claimTable },
  findings: {
    claim: findingOf('claim.advice', claimTable, {
      askedBy: ['policy.deductible', 'damage.cause'],
      open: {
        wrong:
          'Whether to claim cannot be told before deductible, premium and damage are known better.',
        do: 'Let a shop look first.',
      },
    }),
    'claims-before': {
      label: 'Claims before this one',
      askedBy: ['policy.claimsBefore'],
      care: {
        when: {
          all: [
            { fact: 'policy.claimsBefore', operator: 'greaterThan', value: { fact: 'claims.few' } },
          ],
        },
        wrong: 'It would not be the first claim.',
        do: 'Another may cost the policy itself, which no sum here counts. Ask the agent in general first.',
      },
      otherwise: 'It would be the first claim in five years.',
      source: policyWording,
    },
  },
});
