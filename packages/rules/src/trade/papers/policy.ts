import { part } from '../../engine/define/topic';

/** What a policy is held against: one meaning each, whoever asks. */
export const policy = part({
  facts: {
    'rig.value': {
      kind: 'quantity',
      label: 'What the trailer is worth',
      noun: 'what the trailer is worth',
      unit: 'USD',
      least: 0,
      most: 1_000_000,
      ask: 'What does a like trailer cost, of the same year and in the same state?',
      where: 'offers of like trailers, as it was just before any damage',
    },
    'policy.deductible': {
      kind: 'quantity',
      label: 'Deductible',
      noun: 'the deductible',
      unit: 'USD',
      least: 0,
      most: 50_000,
      exact: true,
      ask: 'How high is the deductible for that kind of loss?',
      where: 'the first page of the policy',
    },
  },
});
