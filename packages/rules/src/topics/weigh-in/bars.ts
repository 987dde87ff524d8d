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
      care: {
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
      otherwise:
        'The bars restore a sound share of the front axle’s loss, or it loses next to none.',
      source: restoredBound,
    },
  },
});
