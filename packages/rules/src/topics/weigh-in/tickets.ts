import { part } from '../../engine/define/topic';
import { custom, statics } from '../../trade/bibliography/common';
import { intervals } from '../../trade/bibliography/weigh-in';

/**
 * Tickets that cannot all be of this rig are refused with the reason: nothing is read off them, so
 * that what follows from them stays unknown.
 */
export const tickets = part({
  parameters: {
    'printed.figures': {
      label: 'Figures on two hitched tickets',
      noun: 'the figures on both',
      unit: '',
      values: [{ from: '2020-01-01', value: 6 }],
      source: intervals,
    },
  },
  formulas: {
    'tickets.hitchedAndAlone': {
      label: 'A hitched ticket and one of the vehicle alone are there',
      unit: 'yes-no',
      is: 'known(alone.front, alone.rear) && (known(slack.front, slack.rear, slack.trailer) || known(tight.front, tight.rear, tight.trailer))',
      source: statics,
    },
    'tickets.impossible': {
      label: 'The tickets cannot all be of this rig',
      unit: 'yes-no',
      is: 'tickets.hitchedAndAlone && printed.hitched <= printed.alone || known(tight.front, tight.rear, tight.trailer, slack.front, slack.rear, slack.trailer) && printed.drift > printed.driftAllowed || known(tight.front, slack.front) && slack.front > most.tightFrontSeen',
      source: statics,
    },
    'printed.tight': {
      label: 'Ticket with bars tight, in all',
      noun: 'the ticket with bars tight',
      unit: 'lb',
      is: 'tight.front + tight.rear + tight.trailer',
      source: statics,
    },
    'printed.slack': {
      label: 'Ticket with bars slack, in all',
      noun: 'the ticket with bars slack',
      unit: 'lb',
      is: 'slack.front + slack.rear + slack.trailer',
      source: statics,
    },
    'printed.hitched': {
      label: 'Hitched, in all',
      noun: 'the hitched ticket',
      unit: 'lb',
      is: 'choose(known(slack.front, slack.rear, slack.trailer), choose(known(tight.front, tight.rear, tight.trailer), min(printed.slack, printed.tight), printed.slack), printed.tight)',
      within: ['0', 'unlimited'],
      source: statics,
    },
    'printed.alone': {
      label: 'Vehicle alone, in all',
      noun: 'the ticket of the vehicle alone',
      unit: 'lb',
      is: 'alone.front + alone.rear',
      source: statics,
    },
    'printed.drift': {
      label: 'Difference between the two hitched tickets',
      noun: 'the difference between the hitched tickets',
      unit: 'lb',
      is: 'max(0, printed.tight - printed.slack, printed.slack - printed.tight)',
      source: statics,
    },
    'printed.driftAllowed': {
      label: 'Most that rounding and scale can make of it',
      noun: 'what rounding and scale can make of it',
      unit: 'lb',
      is: 'printed.figures * scale.step / 2 + scale.tolerance * (printed.tight + printed.slack)',
      source: intervals,
    },
    'most.tightFrontSeen': {
      label: 'Front axle with tight bars and what rounding can add on both tickets',
      noun: 'the front axle with tight bars, and rounding',
      unit: 'lb',
      is: 'tight.front + scale.step + scale.tolerance * (tight.front + slack.front)',
      source: intervals,
    },
  },
  findings: {
    'ticket-parts': {
      label: 'Rig against its parts',
      stop: {
        when: {
          all: [
            {
              fact: 'printed.hitched',
              operator: 'lessThanInclusive',
              value: { fact: 'printed.alone' },
            },
          ],
        },
        wrong: 'The tickets cannot be right.',
        do: 'The whole rig weighs no more than the vehicle alone: an axle stood off the platform, or a ticket is another rig’s. Go over the scale again before you set out.',
      },
      open: {
        wrong: 'Weigh twice, each with every axle: hitched, and the vehicle alone.',
      },
      otherwise: 'The rig weighs more than the vehicle alone, as it must.',
      source: statics,
    },
    'ticket-drift': {
      label: 'The two hitched passes',
      askedByKnown: [
        'tight.front',
        'tight.rear',
        'tight.trailer',
        'slack.front',
        'slack.rear',
        'slack.trailer',
      ],
      stop: {
        when: {
          all: [
            {
              fact: 'printed.drift',
              operator: 'greaterThan',
              value: { fact: 'printed.driftAllowed' },
            },
          ],
        },
        wrong: 'The tickets cannot be right.',
        do: 'Bars move weight from axle to axle and change no sum, yet the two hitched passes differ by more than rounding. Somebody or something got on or off: go over the scale again before you set out.',
      },
      otherwise: 'The two hitched passes agree as far as the scale can tell.',
      source: statics,
    },
    'ticket-swapped': {
      label: 'Tight and slack',
      askedByKnown: ['tight.front', 'slack.front'],
      stop: {
        when: {
          all: [
            {
              fact: 'slack.front',
              operator: 'greaterThan',
              value: { fact: 'most.tightFrontSeen' },
            },
          ],
        },
        wrong: 'The tickets cannot be right.',
        do: 'With tight bars the front axle weighs less than with slack ones. They have probably been swapped: look at their times, and go over the scale again if in doubt.',
      },
      otherwise: 'The front axle is no lighter with the bars tight.',
      source: statics,
    },
    'same-load': {
      label: 'The pass alone',
      askedBy: ['alone.sameLoad'],
      care: {
        when: { all: [{ fact: 'alone.sameLoad', operator: 'equal', value: 'no' }] },
        wrong: 'The pass alone was not made with the hitch head on and the same people and fuel.',
        do: 'Tongue and trailer are wrong by what was missing. Weigh it again.',
      },
      open: {
        wrong:
          'Find out whether the head stayed on for the pass alone, with the same people and fuel.',
      },
      otherwise: 'The pass alone was made with the same load.',
      source: custom,
    },
  },
});
