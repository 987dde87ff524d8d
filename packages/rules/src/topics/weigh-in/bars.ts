import { part } from '../../engine/define/topic';
import { house, restoredBound, statics } from '../../trade/bibliography/common';
import { intervals } from '../../trade/bibliography/weigh-in';

/** The share at each corner of what the three front readings may truly be. */
const ends = ['least', 'most'] as const;
const corners = ends
  .flatMap((tight) => ends.flatMap((slack) => ends.map((alone) => [tight, slack, alone] as const)))
  .map(
    ([tight, slack, alone]) =>
      `(${tight}.tightFront - ${slack}.slackFront) / (${alone}.aloneFront - ${slack}.slackFront)`,
  )
  .join(', ');

/**
 * What the bars do, from the front axle alone.
 *
 *     alone  ──┬─────────────   restored = (tight − slack) ÷ (alone − slack)
 *     tight  ──┼──┬              as far as three rounded readings can tell: the least and the most
 *     slack  ──┴──┴              over all their corners
 */
export const barsWeighed = part({
  parameters: {
    'restored.least': {
      label: 'Least share of the front’s loss to be restored',
      noun: 'the least share to be restored',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.5 }],
      range: [0, 1],
      source: house,
    },
    'restored.most': {
      label: 'Most share of the front’s loss to be restored',
      noun: 'the whole loss',
      unit: '1',
      values: [{ from: '2020-01-01', value: 1 }],
      source: restoredBound,
    },
  },
  formulas: {
    'slack.isUnread': {
      label: 'The front axle was not weighed with slack bars',
      unit: 'yes-no',
      is: '!known(slack.front) && !tickets.impossible',
      source: intervals,
    },
    'tight.isUnread': {
      label: 'The front axle was not weighed with tight bars',
      unit: 'yes-no',
      is: '!known(tight.front) && !tickets.impossible',
      source: intervals,
    },
    'front.isPressed': {
      label:
        'Tight bars press the front axle beyond what it weighs alone, whatever rounding feigns',
      unit: 'yes-no',
      is: 'known(tight.front, alone.front) && least.tightFront > most.aloneFront',
      source: intervals,
    },
    'front.leastWanted': {
      label: 'Least that the front axle should keep with slack bars',
      noun: 'what the front axle should keep',
      unit: 'lb',
      is: 'least.aloneFront * (1 - front.mostTaken)',
      source: house,
    },
    'front.loses': {
      label: 'The tongue alone takes weight off the front axle, beyond what rounding could feign',
      unit: 'yes-no',
      is: '!tickets.impossible && least.aloneFront > most.slackFront',
      source: intervals,
    },
    'bars.restoredLeast': {
      label: 'Share restored to the front axle, at the least',
      noun: 'the share restored, at the least',
      unit: '1',
      is: `min(${corners})`,
      source: intervals,
    },
    'bars.restoredMost': {
      label: 'Share restored to the front axle, at the most',
      noun: 'the share restored, at the most',
      unit: '1',
      is: `max(${corners})`,
      source: intervals,
    },
    'bars.restoredByTwo': {
      label: 'Share restored to the front axle, by two passes',
      noun: 'the share restored by two passes',
      unit: '1',
      is: '1 + vehicle.wheelbase * (read.tightFront - read.aloneFront) / (vehicle.overhang * tongue.byTwo)',
      source: statics,
    },
    'bars.restoredWeighed': {
      label: 'Share restored to the front axle, as weighed',
      noun: 'the share restored as weighed',
      unit: '1',
      is: 'choose(tickets.impossible, between(-unlimited, unlimited), choose(pass.twoTold && !known(slack.front), bars.restoredByTwo, between(bars.restoredLeast, bars.restoredMost)))',
      assumes: 'assumed.byDistances',
      source: statics,
    },
    'bars.momentWeighed': {
      label: 'Moment of the bars, as weighed',
      noun: 'the moment of the bars as weighed',
      unit: 'lb·ft',
      is: 'choose(known(tight.trailer, slack.trailer), trailer.ballToAxle * (read.tightTrailer - read.slackTrailer), (read.tightFront - read.aloneFront) * (vehicle.wheelbase + vehicle.overhang) + (read.tightRear - read.aloneRear) * vehicle.overhang)',
      assumes: 'assumed.byDistances',
      source: statics,
    },
    'assumed.byDistances': {
      label: 'What the bars do follows from two passes and the distances',
      unit: 'yes-no',
      is: 'pass.twoTold && (!known(slack.front) || !known(tight.trailer, slack.trailer))',
      source: statics,
    },
  },
  findings: {
    'front-pressed': {
      label: 'Front axle with tight bars and alone',
      first: true,
      askedByKnown: ['tight.front', 'alone.front'],
      stop: {
        when: "front.isPressed && alone.sameLoad == 'yes'",
        wrong:
          'With tight bars the front axle carries {read.tightFront}, and alone {read.aloneFront}. The bars press it beyond that.',
        because:
          'That unloads the rear tires, and the rear of the vehicle then follows the trailer.',
        do: 'Slacken the bars a step, as the hitch’s maker says, and weigh again.',
      },
      open: {
        wrong: 'The bars may press the front axle beyond what it weighs alone.',
        do: 'Weigh it alone again, the hitch head on, with the same people and fuel.',
      },
      otherwise:
        'The bars press the front axle no further than it weighs alone, as far as the scale tells.',
      source: restoredBound,
    },
    'front-light': {
      label: 'Front axle with slack bars and alone',
      askedByKnown: ['slack.front', 'alone.front'],
      askedWhen: 'tight.isUnread',
      care: {
        when: 'front.leastWanted > most.slackFront',
        wrong:
          'With slack bars the front axle carries {read.slackFront} of {read.aloneFront} weighed alone: it loses more than {front.mostTaken}.',
        because: 'A light front axle steers and brakes less.',
        do: 'Where both makers allow bars, set them by their manuals and weigh again.',
      },
      otherwise: 'The tongue takes no more from the front axle than is usual.',
      source: house,
    },
    restored: {
      label: 'Share restored to the front axle',
      askedByKnown: ['tight.front', 'slack.front', 'alone.front'],
      stop: {
        when: {
          all: [
            { fact: 'front.loses', operator: 'equal', value: 'yes' },
            {
              fact: 'bars.restoredLeast',
              operator: 'greaterThan',
              value: { fact: 'restored.most' },
            },
          ],
        },
        wrong: 'The bars press the front axle beyond what it weighs alone.',
        do: 'That unloads the rear tires and strains hitch and frame. Slacken them a step and weigh again.',
      },
      care: [
        {
          when: {
            all: [
              { fact: 'front.loses', operator: 'equal', value: 'yes' },
              {
                fact: 'bars.restoredMost',
                operator: 'lessThan',
                value: { fact: 'restored.least' },
              },
            ],
          },
          wrong: 'The bars restore less of the front axle’s loss than is wanted.',
          do: 'Tighten them a step by the makers’ instructions, and weigh again.',
        },
        {
          when: {
            all: [
              { fact: 'front.loses', operator: 'equal', value: 'yes' },
              {
                any: [
                  {
                    fact: 'bars.restoredMost',
                    operator: 'greaterThan',
                    value: { fact: 'restored.most' },
                  },
                  {
                    fact: 'bars.restoredLeast',
                    operator: 'lessThan',
                    value: { fact: 'restored.least' },
                  },
                ],
              },
            ],
          },
          wrong:
            'The bars restore less of the front axle’s loss than is wanted, or perhaps more than all of it.',
          do: 'Set them by the makers’ instructions and weigh again.',
        },
      ],
      otherwise:
        'The bars restore a sound share of the front axle’s loss, or it loses next to none.',
      source: restoredBound,
    },
  },
});
