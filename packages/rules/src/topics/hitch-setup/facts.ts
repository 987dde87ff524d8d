import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';

const height = { kind: 'quantity', unit: 'in', least: 2, most: 60 } as const;
const length = { kind: 'quantity', unit: 'in', least: 0, most: 120 } as const;
const spring = { kind: 'quantity', unit: 'lb/in', least: 20, most: 20_000 } as const;
const tape = 'a tape measure, on level ground';
const restedFirst =
  'a tape measure to the same mark, on level ground, after rolling a length forward';

/** Heights at the coupler and at the receiver, and how far the springs give. */
export const heightFacts = part({
  facts: {
    'trailer.couplerHeight': {
      ...height,
      label: 'Coupler height, trailer level',
      noun: 'the coupler’s height',
      instead: 'Measure the coupler with the trailer level',
      ask: 'With the trailer level, how high above the road is the top of the ball inside the coupler?',
      where: `the label by that trailer’s coupler, or ${tape}`,
      means: 'Level the trailer by its floor or its frame, not by eye.',
    },
    'hitch.receiverHeightEmpty': {
      ...height,
      label: 'Receiver height, vehicle empty',
      noun: 'the empty receiver’s height',
      instead: 'Measure the receiver with the vehicle empty',
      ask: 'How high above the road is the upper inside face of the receiver, with the vehicle empty?',
      where: tape,
    },
    'hitch.receiverHeightLoaded': {
      ...height,
      label: 'Receiver height, loaded for the road',
      noun: 'the loaded receiver’s height',
      instead: 'Measure the receiver loaded for the road',
      ask: 'Hitched and loaded as for the road, how high above the ground is the receiver?',
      where: tape,
      means: 'To the upper inside face of the opening; this is the height that counts.',
    },
    'vehicle.springFront': {
      ...spring,
      label: 'Front springs, both together at the wheels',
      noun: 'the front springs’ rate',
      ask: 'How many pounds settle the front axle by an inch?',
      where: 'the maker’s service data; or weigh and measure twice',
    },
    'vehicle.springRear': {
      ...spring,
      label: 'Rear springs, both together at the wheels',
      noun: 'the rear springs’ rate',
      ask: 'How many pounds settle the rear axle by an inch?',
      where: 'the maker’s service data; or weigh and measure twice',
    },
  },
});

/** The mount and the ball on it. */
export const mountFacts = part({
  facts: {
    'hitch.ballHeight': {
      kind: 'quantity',
      unit: 'in',
      least: 1,
      most: 8,
      label: 'Ball height, platform to crown',
      noun: 'the ball’s height',
      instead: 'Measure the ball from platform to crown',
      ask: 'How high does the ball stand, from the platform to its crown?',
      where: tape,
    },
    'hitch.mountRise': {
      kind: 'quantity',
      unit: 'in',
      least: -24,
      most: 24,
      label: 'Rise of the mount in hand',
      noun: 'the mount’s rise',
      ask: 'How far does the mount at hand rise, or drop?',
      where: 'its label, or a tape measure from the shank to the ball’s platform',
      means: 'Rise is above zero, drop below: a drop of 4 in is written −4 in.',
    },
    'hitch.riseFrom': {
      kind: 'choice',
      options: ['shank-top', 'shank-bottom'],
      label: 'Where the mount’s rise is counted from',
      ask: 'Is the mount’s rise or drop counted from the top of the shank or from the bottom?',
      where: 'the drawing on its label',
      silent: {
        value: 'shank-top',
        says: 'Rise and drop counted from the top of the shank.',
        source: custom,
        quiet: true,
      },
    },
    'hitch.shankHeight': {
      kind: 'quantity',
      unit: 'in',
      least: 1,
      most: 4,
      label: 'Height of the shank',
      ask: 'How high is the shank of the mount?',
      where: tape,
      silent: { value: 2, says: 'A shank of 2 in.', source: custom, quiet: true },
    },
  },
});

/** Bars, the height of the front fender, and what turns or opens near the trailer. */
export const barFacts = part({
  facts: {
    'hitch.barsMost': {
      kind: 'quantity',
      unit: 'lb',
      least: 50,
      most: 5_000,
      exact: true,
      label: 'Spring bars, rated up to',
      noun: 'the bars’ rating',
      ask: 'Up to what tongue weight are the spring bars rated?',
      where: 'stamp or label on the bars or the head',
    },
    'hitch.barsLeast': {
      kind: 'quantity',
      unit: 'lb',
      least: 0,
      most: 5_000,
      exact: true,
      label: 'Spring bars, made for at least',
      noun: 'the least the bars are made for',
      ask: 'From what tongue weight on are the bars meant to be used?',
      where: 'the hitch maker’s table of bars',
    },
    'vehicle.fenderUnhitched': {
      ...height,
      label: 'Front fender, not hitched',
      noun: 'the fender, not hitched',
      instead: 'Measure the fender, not hitched',
      ask: 'How high is the front fender’s edge above the road, loaded but not hitched?',
      where: restedFirst,
    },
    'vehicle.fenderSlack': {
      ...height,
      label: 'Front fender, hitched, bars slack',
      noun: 'the fender with slack bars',
      instead: 'Measure the fender with slack bars',
      ask: 'How high is the front fender hitched, with the bars slack?',
      where: restedFirst,
    },
    'vehicle.fenderTight': {
      ...height,
      label: 'Front fender, hitched, bars set',
      noun: 'the fender with the bars set',
      instead: 'Measure the fender with the bars set',
      ask: 'How high is the front fender hitched, with the bars set?',
      where: restedFirst,
    },
    'hitch.ballBehindBumper': {
      ...length,
      label: 'Ball behind the bumper',
      ask: 'How far behind the bumper does the ball stand?',
      where: tape,
    },
    'vehicle.width': {
      ...length,
      least: 40,
      label: 'Width of the vehicle at the bumper',
      ask: 'How wide is the vehicle at the rear bumper?',
      where: tape,
    },
    'trailer.width': {
      ...length,
      least: 30,
      label: 'Width of the trailer’s front',
      ask: 'How wide is the trailer’s front wall?',
      where: tape,
    },
    'trailer.frontBehindBall': {
      ...length,
      label: 'Trailer’s front wall behind the ball',
      ask: 'How far behind the ball is the trailer’s front wall, or a box as wide ahead of it?',
      where: tape,
    },
    'vehicle.tailgateReach': {
      ...length,
      label: 'Open tailgate, past the bumper',
      ask: 'How far past the bumper does the open tailgate or door reach?',
      where: tape,
    },
    'trailer.jackBehindBall': {
      ...length,
      label: 'Jack behind the ball',
      ask: 'How far behind the ball does the first tall thing on the trailer’s A-frame stand, such as the jack?',
      where: tape,
    },
  },
});
