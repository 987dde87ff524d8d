import { findingOf, part } from '../../engine/define/topic';
import {
  comprehensiveEffect,
  money,
  premiumEffect,
  usualPremium,
} from '../../trade/bibliography/body-repair';
import { custom, house, insurers as policyWording } from '../../trade/bibliography/common';
import { policy } from '../../trade/papers/policy';
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
      noun: 'what did it',
      options: ['collision', 'weather', 'sudden-water', 'slow-leak', 'other-party'],
      ask: 'What caused the damage: something you hit, weather or a tree, a burst pipe, slow water, or somebody else?',
      where: 'told by the owner',
      means:
        'A collision is paid under collision; weather, animals, fire, theft and water that came suddenly under comprehensive.',
    },
    'policy.deductible': policy.facts['policy.deductible'],
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
      label: 'What a collision claim adds where nobody told, least',
      unit: '%',
      values: [{ from: '2020-01-01', value: 10 }],
      range: [0, 100],
      source: premiumEffect,
    },
    'raise.high': {
      label: 'What a collision claim adds where nobody told, most',
      unit: '%',
      values: [{ from: '2020-01-01', value: 30 }],
      range: [0, 100],
      source: premiumEffect,
    },
    'premium.usualLow': {
      label: 'Premium a year where nobody told, least',
      unit: 'USD/yr',
      values: [{ from: '2020-01-01', value: 300 }],
      range: [50, 5_000],
      source: usualPremium,
    },
    'premium.usualHigh': {
      label: 'Premium a year where nobody told, most',
      unit: 'USD/yr',
      values: [{ from: '2020-01-01', value: 2_000 }],
      range: [50, 5_000],
      source: usualPremium,
    },
    'raise.comprehensiveLow': {
      label: 'What a comprehensive claim adds where nobody told, least',
      unit: '%',
      values: [{ from: '2020-01-01', value: 0 }],
      range: [0, 50],
      source: comprehensiveEffect,
    },
    'raise.comprehensiveHigh': {
      label: 'What a comprehensive claim adds where nobody told, most',
      unit: '%',
      values: [{ from: '2020-01-01', value: 15 }],
      range: [0, 50],
      source: comprehensiveEffect,
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
    'claims.areMany': {
      label: 'This would not be the first claim',
      unit: 'yes-no',
      is: 'given(policy.claimsBefore) && policy.claimsBefore > claims.few',
      source: policyWording,
    },
    'damage.isComprehensive': {
      label: 'It is paid under comprehensive',
      unit: 'yes-no',
      is: "damage.cause == 'weather' || damage.cause == 'sudden-water'",
      source: comprehensiveEffect,
    },
    'raise.least': {
      label: 'What such a claim adds, at the least',
      noun: 'what a claim adds, at the least',
      unit: '%',
      is: 'choose(given(policy.raise), policy.raise, choose(damage.isComprehensive, raise.comprehensiveLow, raise.low))',
      source: premiumEffect,
    },
    'raise.most': {
      label: 'What such a claim adds, at the most',
      noun: 'what a claim adds, at the most',
      unit: '%',
      is: 'choose(given(policy.raise), policy.raise, choose(damage.isComprehensive, raise.comprehensiveHigh, raise.high))',
      source: premiumEffect,
    },
    'premium.low': {
      label: 'Dearer premiums over the years, at the least',
      unit: 'USD',
      is: "choose(policy.forgives == 'yes', 0, choose(given(policy.premium), policy.premium, premium.usualLow) * raise.least * choose(given(policy.years), policy.years, years.low))",
      source: premiumEffect,
    },
    'premium.high': {
      label: 'Dearer premiums over the years, at the most',
      unit: 'USD',
      is: "choose(policy.forgives == 'yes', 0, choose(given(policy.premium), policy.premium, premium.usualHigh) * raise.most * choose(given(policy.years), policy.years, years.high))",
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
    'claim.mayCost': {
      label: 'What claiming may cost beside paying, at the most',
      noun: 'what claiming may cost',
      unit: 'USD',
      is: 'max(0, breakEven.high - cost.low)',
      source: money,
    },
    'claim.maySave': {
      label: 'What claiming may save beside paying, at the most',
      noun: 'what claiming may save',
      unit: 'USD',
      is: 'max(0, cost.high - breakEven.low)',
      source: money,
    },
    'quote.isUnder': {
      label: 'A shop quoted no more than the deductible',
      unit: 'yes-no',
      is: 'known(shop.quote, policy.deductible) && shop.quote <= policy.deductible',
      source: money,
    },
    'quote.isOpen': {
      label: 'A shop may have quoted more or no more than a deductible that is known to the dollar',
      unit: 'yes-no',
      is: 'known(shop.quote, policy.deductible) && !may(policy.deductible < policy.deductible) && may(shop.quote <= policy.deductible) && may(shop.quote > policy.deductible)',
      source: money,
    },
    'quote.mayBeUnder': {
      label: 'A shop may have quoted no more than the deductible',
      unit: 'yes-no',
      is: 'given(shop.quote, policy.deductible) && may(shop.quote <= policy.deductible)',
      source: money,
    },
    'claim.isPriced': {
      label: 'There is something to price, and the deductible was told',
      unit: 'yes-no',
      is: 'estimate.isTold && given(policy.deductible)',
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
    'assumed.premium': {
      label: 'What the premium is was not told',
      unit: 'yes-no',
      is: 'given(policy.deductible) && !given(policy.premium)',
      source: usualPremium,
    },
    'assumed.raise': {
      label: 'What a claim adds was not told',
      unit: 'yes-no',
      is: "given(policy.deductible) && policy.forgives == 'no' && !given(policy.raise, policy.years)",
      source: house,
    },
  },
  decisions: { 'claim.advice': claimTable },
  findings: {
    claim: findingOf('claim.advice', claimTable, {
      askedBy: ['policy.deductible', 'damage.cause'],
      open: {
        wrong:
          'Whether to claim is undecided: the repair may come to {cost.range}, and a claim, with dearer premiums, costs {breakEven.range}.',
        because:
          'Claiming may cost up to {claim.mayCost} or save up to {claim.maySave} beside paying.',
        do: 'Get the inspection first, and read deductible and premium from the declarations page; a call to the insurer may be counted as a claim.',
      },
    }),
    'claims-before': {
      label: 'Claims before this one',
      askedBy: ['policy.claimsBefore'],
      care: {
        when: 'policy.claimsBefore > claims.few',
        wrong: 'This would not be the first claim.',
        because: 'Another may cost the policy itself, which no sum here counts.',
        do: 'Ask the agent in general first, without naming a loss.',
      },
      otherwise: 'It would be the first claim in five years.',
      open: { wrong: 'How many claims there were before is not known.' },
      source: policyWording,
    },
  },
});
