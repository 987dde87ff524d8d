import { part } from '../../engine/define/topic';
import { deadCell as practice } from '../../trade/bibliography/battery';

/**
 * A block that rests at five cells’ voltage after a full charge has a dead cell; without that charge
 * it may only be flat.
 *
 *     12.7 V  six cells, full      10.5 V  five of them, full: or six of them, flat
 */
export const deadCell = part({
  facts: {
    'battery.chargedBefore': {
      kind: 'yes-no',
      label: 'It was charged full before that rest',
      noun: 'whether it was charged full before that rest',
      ask: 'Had the battery been charged full before it rested and was read?',
      where: 'told by the owner: the charger had finished by itself',
    },
  },
  parameters: {
    'deadCell.most': {
      label: 'What a twelve-volt block with a dead cell shows at rest, at the most',
      unit: 'V',
      values: [{ from: '2020-01-01', value: 10.8 }],
      range: [10.5, 11.2],
      source: practice,
    },
  },
  formulas: {
    'deadCell.isLow': {
      label: 'A lead block rests as low as one with a dead cell',
      unit: 'yes-no',
      is: "reading.atRest && reading.block <= deadCell.most && (battery.chemistry == 'flooded' || battery.chemistry == 'agm' || battery.chemistry == 'gel')",
      source: practice,
    },
    'deadCell.wasFull': {
      label: 'It had been charged full',
      unit: 'yes-no',
      is: "given(battery.chargedBefore) && battery.chargedBefore == 'yes'",
      source: practice,
    },
    'deadCell.isUntold': {
      label: 'Nobody said whether it had been charged full',
      unit: 'yes-no',
      is: '!given(battery.chargedBefore)',
      source: practice,
    },
  },
  findings: {
    'dead-cell': {
      label: 'Dead cell',
      askedBy: ['battery.chargedBefore', 'battery.voltage'],
      stop: {
        when: 'deadCell.isLow && deadCell.wasFull',
        wrong: 'The battery has a dead cell.',
        because:
          'It was charged full and rests at {reading.block} a block, which is five cells and not a depth of discharge.',
        do: 'Replace it, and what stands beside it with it. Do not go on charging it: the other cells are overcharged.',
      },
      unknown: {
        when: 'deadCell.isLow && deadCell.isUntold',
        wrong: 'The battery is flat, or it has a dead cell.',
        do: 'Charge it full, let it rest, and read it again.',
      },
      care: {
        when: 'deadCell.isLow && !deadCell.wasFull',
        wrong: 'So low it is perhaps only flat.',
        because: 'A flat lead battery ages by the hour, and one with a dead cell shows the same.',
        do: 'Charge it full today, let it rest, and read it again.',
      },
      otherwise: 'The voltage does not speak of a dead cell.',
      source: practice,
    },
  },
});
