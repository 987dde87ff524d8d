import { part } from '../../engine/define/topic';
import {
  circuits,
  highVolts,
  lowestVolts,
  lowVolts,
  neutralSigns,
  neutralSpread,
} from '../../trade/bibliography/power';

/** What a meter reads, leg to neutral, and what is left of it at the trailer. */
export const voltages = part({
  facts: {
    'voltage.outlet': {
      kind: 'quantity',
      label: 'Voltage at the outlet, hot to neutral',
      noun: 'the voltage at the outlet',
      unit: 'V',
      least: 0,
      most: 300,
      ask: 'What voltage is there at the outlet, between hot and neutral?',
      means: 'At a 30 A trailer outlet: between its two flat blades.',
      where: 'read by a protector with a display, or measured by someone trained to',
    },
    'voltage.secondLeg': {
      kind: 'quantity',
      label: 'Voltage of the second leg to neutral',
      unit: 'V',
      least: 0,
      most: 300,
      ask: 'What voltage is there between the other hot and neutral, of a 50 A outlet?',
      where: 'read by a protector with a display, or measured by someone trained to',
    },
  },
  parameters: {
    'voltage.low': {
      label: 'Voltage at which motors suffer',
      noun: 'the voltage at which motors suffer',
      unit: 'V',
      values: [{ from: '2020-01-01', value: 108 }],
      source: lowVolts,
    },
    'voltage.lowest': {
      label: 'Least voltage at which a compressor may run',
      noun: 'the least voltage at which a compressor may run',
      unit: 'V',
      values: [{ from: '2020-01-01', value: 104 }],
      source: lowestVolts,
    },
    'voltage.highest': {
      label: 'Most voltage at which anything may stay plugged in',
      noun: 'the most voltage at which anything may stay plugged in',
      unit: 'V',
      values: [{ from: '2020-01-01', value: 132 }],
      source: highVolts,
    },
    'legs.apart': {
      label: 'How far the two legs may differ',
      unit: 'V',
      values: [{ from: '2020-01-01', value: 10 }],
      range: [5, 15],
      source: neutralSpread,
    },
  },
  formulas: {
    'voltage.highLeg': {
      label: 'The higher leg',
      unit: 'V',
      is: 'choose(given(voltage.secondLeg), max(voltage.outlet, voltage.secondLeg), voltage.outlet)',
      source: circuits,
    },
    'voltage.lowLeg': {
      label: 'The lower leg',
      unit: 'V',
      is: 'choose(given(voltage.secondLeg), min(voltage.outlet, voltage.secondLeg), voltage.outlet)',
      source: circuits,
    },
    'voltage.apart': {
      label: 'How far the two legs differ',
      unit: 'V',
      is: 'voltage.highLeg - voltage.lowLeg',
      source: circuits,
    },
    'voltage.trailer': {
      label: 'Voltage at the trailer, with everything running',
      noun: 'the voltage at the trailer',
      unit: 'V',
      is: 'max(0, voltage.lowLeg - cord.drop)',
      source: circuits,
    },
    'voltage.isOutletsOwn': {
      label: 'Nothing told is lost in the cord',
      unit: 'yes-no',
      is: 'cord.drop <= 0',
      source: circuits,
    },
    'voltage.isRightThere': {
      label: 'The outlet gives what it should, and nothing told is lost in the cord',
      unit: 'yes-no',
      is: 'voltage.isOutletsOwn && voltage.lowLeg >= voltage.low && voltage.highLeg <= voltage.highest',
      source: lowVolts,
    },
  },
  findings: {
    'high-voltage': {
      label: 'Too much voltage',
      first: true,
      askedBy: ['voltage.outlet', 'voltage.secondLeg'],
      stop: {
        when: 'voltage.highLeg > voltage.highest',
        wrong: 'Shut off the breaker and unplug: there is more than {voltage.highest}.',
        because:
          'It comes from a 240 V outlet, an open neutral or a generator that runs wild, and destroys what is plugged in.',
        do: 'Have an electrician look before anything is plugged in again.',
      },
      otherwise: 'It is not too much voltage.',
      open: {
        wrong: 'The voltage may be far too much.',
        do: 'Have it measured before anything is plugged in.',
      },
      source: highVolts,
    },
    'low-voltage': {
      label: 'Low voltage',
      askedBy: ['voltage.outlet', 'voltage.secondLeg'],
      stop: [
        {
          when: 'voltage.lowLeg < voltage.lowest',
          wrong: 'Shut off air conditioner, heat pump and everything else with a compressor.',
          because: 'Below {voltage.lowest} they draw more, run hot and burn out.',
          do: 'Take another outlet or site: no cord lifts what the outlet itself lacks.',
        },
        {
          when: 'voltage.trailer < voltage.lowest',
          wrong: 'Shut off air conditioner, heat pump and everything else with a compressor.',
          because: 'Below {voltage.lowest} they draw more, run hot and burn out.',
          do: 'Run less at once, take a shorter and thicker cord, or another site.',
        },
      ],
      care: {
        when: 'voltage.trailer < voltage.low',
        wrong: 'The voltage is low.',
        because: 'Compressors run hot below {voltage.low}.',
        do: 'Shut off at once an air conditioner that hums and does not cool. Else shut something else off, and read the voltage again in the afternoon, when the whole park runs its own.',
      },
      otherwise: 'There is voltage enough.',
      open: {
        wrong: 'Whether there is voltage enough is not known.',
        do: 'Read it with everything running.',
      },
      source: lowVolts,
    },
    'legs-apart': {
      label: 'Open neutral, by the meter',
      first: true,
      askedBy: ['voltage.secondLeg'],
      stop: {
        when: 'voltage.apart > legs.apart',
        wrong: 'Shut off the breaker and unplug now: the two halves of the feed are far apart.',
        because: 'So it is when the neutral is open. What hangs on the higher one is burning out.',
        do: 'Tell the park, and have an electrician look.',
      },
      otherwise: 'The two halves of the feed are alike.',
      open: {
        wrong: 'The two halves of the feed may be far apart.',
        do: 'Have both measured before anything is plugged in.',
      },
      source: neutralSigns,
    },
  },
});
