import type { Decision } from '../../engine/define/shapes';
import { findingOf, part } from '../../engine/define/topic';
import { house } from '../../trade/bibliography/common';
import { couplerHeights, geometry, noseBand } from '../../trade/bibliography/hitch-setup';

const mountWay: Decision = {
  label: 'Rise or drop',
  hit: 'first',
  on: ['mount.tooFar', 'mount.rises', 'mount.drops'],
  rows: [
    { when: ['yes', '-', '-'], gives: 'too-far' },
    { when: ['no', 'yes', '-'], gives: 'rise' },
    { when: ['no', 'no', 'yes'], gives: 'drop' },
    { when: ['no', 'no', 'no'], gives: 'flat' },
  ],
  results: {
    'too-far': {
      label: 'too far',
      says: 'Ball and receiver stand too far apart in height for a ball mount.',
      do: 'Measure both again, loaded and level. If that is right, this vehicle and this trailer do not belong together as they stand.',
      level: 'stop',
    },
    rise: {
      label: 'rise',
      says: 'The mount must rise: its platform stands above the shank.',
      level: 'ok',
    },
    drop: {
      label: 'drop',
      says: 'The mount must drop: its platform hangs below the shank.',
      level: 'ok',
    },
    flat: {
      label: 'neither',
      says: 'The mount is a straight one: no rise and no drop.',
      level: 'ok',
    },
  },
  source: geometry,
};

/**
 * The mount that carries the trailer level, and where the nose stands on the one in hand.
 *
 *     receiver, upper inside face ──┐
 *                                   │ rise (+) or drop (−)
 *                      platform ────┘
 *                                   │ ball, platform to crown
 *                       coupler ────┘      all above the road
 */
export const mount = part({
  parameters: {
    'mount.most': {
      label: 'Most rise or drop of a ball mount',
      noun: 'the most a ball mount reaches',
      unit: 'in',
      values: [{ from: '2020-01-01', value: 12 }],
      range: [6, 16],
      source: house,
    },
    'nose.lowest': {
      label: 'How low the nose may stand',
      unit: 'in',
      values: [{ from: '2020-01-01', value: 0.5 }],
      source: noseBand,
    },
    'nose.aim': {
      label: 'How low the nose is aimed at, the middle of what is right',
      unit: 'in',
      values: [{ from: '2020-01-01', value: 0.25 }],
      source: noseBand,
    },
    'inch.one': {
      label: 'Step in which ball mounts are made',
      unit: 'in',
      values: [{ from: '2020-01-01', value: 1 }],
      source: noseBand,
    },
    'nose.level': {
      label: 'A level nose',
      unit: 'in',
      values: [{ from: '2020-01-01', value: 0 }],
      source: noseBand,
    },
    'coupler.usual': {
      label: 'Usual coupler height',
      unit: 'in',
      values: [{ from: '2020-01-01', value: 17.75 }],
      source: couplerHeights,
    },
    'coupler.spread': {
      label: 'How far from the usual a coupler height is worth a second look',
      unit: 'in',
      values: [{ from: '2020-01-01', value: 6 }],
      range: [2, 12],
      source: house,
    },
  },
  decisions: { 'mount.way': mountWay },
  formulas: {
    'mount.counted': {
      label: 'What counting from the shank’s bottom adds',
      unit: 'in',
      is: "choose(hitch.riseFrom == 'shank-bottom', hitch.shankHeight, 0)",
      source: geometry,
    },
    'mount.needed': {
      label: 'Rise that carries the trailer level (below zero: drop)',
      noun: 'the rise that is needed',
      unit: 'in',
      is: 'trailer.couplerHeight - receiver.height - hitch.ballHeight + mount.counted',
      source: geometry,
    },
    'mount.made': {
      label: 'Ball mount that is made, in whole inches of rise (below zero: drop)',
      noun: 'the mount that is made',
      unit: 'in',
      is: 'whole((mount.needed - nose.aim) / inch.one + 1 / 2) * inch.one',
      source: noseBand,
    },
    'mount.madeDrop': {
      label: 'Drop of the mount that is made',
      unit: 'in',
      is: 'max(0, -mount.made)',
      source: noseBand,
    },
    'mount.madeRise': {
      label: 'Rise of the mount that is made',
      unit: 'in',
      is: 'max(0, mount.made)',
      source: noseBand,
    },
    'nose.onMade': {
      label: 'Nose above level on the mount that is made (below zero: low)',
      noun: 'the nose on that mount',
      unit: 'in',
      is: 'mount.made - mount.needed',
      source: noseBand,
    },
    'nose.madeLow': {
      label: 'How low the nose stands on the mount that is made',
      unit: 'in',
      is: 'max(0, -nose.onMade)',
      source: noseBand,
    },
    'nose.madeHigh': {
      label: 'How high the nose stands on the mount that is made',
      unit: 'in',
      is: 'max(0, nose.onMade)',
      source: noseBand,
    },
    'mount.dropsLow': {
      label: 'The mount that is made drops and leaves the nose level or low',
      unit: 'yes-no',
      is: 'mount.drops && nose.onMade <= 0',
      source: noseBand,
    },
    'mount.dropsHigh': {
      label: 'The mount that is made drops and leaves the nose high',
      unit: 'yes-no',
      is: 'mount.drops && nose.onMade > 0',
      source: noseBand,
    },
    'mount.risesLow': {
      label: 'The mount that is made rises and leaves the nose level or low',
      unit: 'yes-no',
      is: 'mount.rises && nose.onMade <= 0',
      source: noseBand,
    },
    'mount.risesHigh': {
      label: 'The mount that is made rises and leaves the nose high',
      unit: 'yes-no',
      is: 'mount.rises && nose.onMade > 0',
      source: noseBand,
    },
    'mount.dropNeeded': {
      label: 'Drop that carries the trailer level',
      noun: 'the drop that is needed',
      unit: 'in',
      is: 'max(0, -mount.needed)',
      source: geometry,
    },
    'mount.least': {
      label: 'Least rise that will do, the nose half an inch low',
      noun: 'the least rise that will do',
      unit: 'in',
      is: 'mount.needed - nose.lowest',
      source: noseBand,
    },
    'mount.tooFar': {
      label: 'Further than a ball mount reaches',
      unit: 'yes-no',
      is: 'max(mount.needed, -mount.needed) > mount.most',
      source: house,
    },
    'mount.rises': {
      label: 'The mount rises',
      unit: 'yes-no',
      is: 'mount.needed > 0',
      source: geometry,
    },
    'mount.drops': {
      label: 'The mount drops',
      unit: 'yes-no',
      is: 'mount.needed < 0',
      source: geometry,
    },
    'nose.height': {
      label: 'Nose above level on the mount in hand',
      noun: 'the nose above level',
      unit: 'in',
      is: 'hitch.mountRise - mount.needed',
      source: geometry,
    },
    'nose.lowEdge': {
      label: 'Nose as low as is right',
      unit: 'in',
      is: '-nose.lowest',
      source: noseBand,
    },
    'coupler.lowEdge': {
      label: 'Coupler low enough for a second look',
      unit: 'in',
      is: 'coupler.usual - coupler.spread',
      source: house,
    },
    'coupler.highEdge': {
      label: 'Coupler high enough for a second look',
      unit: 'in',
      is: 'coupler.usual + coupler.spread',
      source: house,
    },
  },
  findings: {
    'mount-reach': {
      ...findingOf('mount.way', mountWay, {
        open: {
          wrong: 'Which mount it takes cannot be told yet.',
          do: 'Find out the heights first.',
        },
      }),
      otherwise: 'A ball mount reaches that far.',
    },
    'nose-low': {
      label: 'Nose low',
      askedBy: ['hitch.mountRise'],
      care: {
        when: {
          all: [{ fact: 'nose.height', operator: 'lessThan', value: { fact: 'nose.lowEdge' } }],
        },
        wrong: 'On the mount you have the nose stands more than half an inch low.',
        because:
          'The front axle of a tandem takes more than its half, and the jack comes near the road.',
        do: 'Take a mount with less drop, or more rise, before the trip.',
      },
      open: {
        wrong: 'Whether the nose stands too low is not known yet.',
        do: 'Measure the heights again, loaded.',
      },
      otherwise: 'The nose stands no more than half an inch low.',
      source: noseBand,
    },
    'nose-high': {
      label: 'Nose high',
      askedBy: ['hitch.mountRise'],
      care: {
        when: {
          all: [{ fact: 'nose.height', operator: 'greaterThan', value: { fact: 'nose.level' } }],
        },
        wrong: 'With the mount you have the nose stands high; lower the ball.',
        do: 'Lower the ball before the trip: with a high nose the trailer sways sooner.',
      },
      open: {
        wrong:
          'Whether the nose stands high is not known yet; with a high nose a trailer sways sooner.',
        do: 'Measure the heights again, loaded.',
      },
      otherwise: 'The nose does not stand high.',
      source: noseBand,
    },
    'coupler-height': {
      label: 'Coupler height as told',
      askedByKnown: ['trailer.couplerHeight'],
      care: {
        when: {
          any: [
            {
              fact: 'trailer.couplerHeight',
              operator: 'lessThan',
              value: { fact: 'coupler.lowEdge' },
            },
            {
              fact: 'trailer.couplerHeight',
              operator: 'greaterThan',
              value: { fact: 'coupler.highEdge' },
            },
          ],
        },
        wrong: 'That coupler height is far from the usual 17¾ in.',
        do: 'Measure it again, from the road to the crown, with the trailer level.',
      },
      otherwise: 'The coupler stands at a usual height.',
      source: couplerHeights,
    },
  },
});
