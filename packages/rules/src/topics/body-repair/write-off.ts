import { part } from '../../engine/define/topic';
import { writeOffShare, writeOffSum } from '../../trade/bibliography/body-repair';
import { insurers as policyWording } from '../../trade/bibliography/common';
import { policy } from '../../trade/papers/policy';

/**
 * When the insurer would rather pay what it was worth than have it repaired.
 *
 *     ├──────────── worth before ────────────┤
 *     ├── repair up to here ──┼── salvage ───┤      or a share of the worth, salvage untold
 */
export const writeOff = part({
  facts: {
    'rig.value': policy.facts['rig.value'],
    'rig.salvage': {
      kind: 'quantity',
      label: 'What it is worth as it stands',
      unit: 'USD',
      least: 0,
      most: 1_000_000,
      ask: 'What would a buyer give for the trailer as it stands?',
      where: 'the insurer’s offer for it',
    },
  },
  parameters: {
    'writeOff.share': {
      label: 'Share of the value above which insurers seldom repair',
      unit: '%',
      values: [{ from: '2020-01-01', value: 70 }],
      range: [60, 80],
      source: writeOffShare,
    },
  },
  formulas: {
    'writeOff.at': {
      label: 'Repair from which it would be written off',
      noun: 'where insurers write off',
      unit: 'USD',
      is: 'choose(known(rig.salvage), max(0, rig.value - rig.salvage), rig.value * writeOff.share)',
      within: ['0', 'rig.value'],
      source: writeOffSum,
    },
    'writeOff.paid': {
      label: 'What a write-off would pay',
      unit: 'USD',
      is: 'max(0, rig.value - policy.deductible)',
      source: policyWording,
    },
    'cost.pastWriteOff': {
      label: 'Even the least is past the write-off',
      unit: 'yes-no',
      is: 'given(rig.value) && cost.low > writeOff.at',
      source: writeOffSum,
    },
  },
  findings: {
    'write-off': {
      label: 'Write-off',
      askedBy: ['rig.value'],
      stop: {
        when: 'cost.low > writeOff.at',
        wrong:
          'Have nothing repaired yet: even the least, {cost.low}, is past the {writeOff.at} from which insurers write off.',
        because: 'What is begun now may never be paid.',
        do: 'Let the insurer see it first, and prove what it was worth.',
      },
      care: {
        when: 'cost.high > writeOff.at',
        wrong: 'At the most it comes past the {writeOff.at} from which insurers write off.',
        do: 'Have the wall opened before anything is ordered.',
      },
      otherwise: 'Even at the most it stays below where insurers write off.',
      open: {
        wrong: 'Above {writeOff.share} of its worth, not known yet, insurers seldom repair.',
        do: 'Find out what it was worth before anything is ordered.',
      },
      source: writeOffSum,
    },
  },
});
