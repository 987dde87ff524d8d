import type { Change } from '../../engine/define/changes';
import type { Source } from '../../engine/define/source';
import { custom, statics } from '../../trade/bibliography/common';
import { ballSizes, makersRating } from '../../trade/bibliography/rig';

/** What is asked of people is a matter of manners, not of weights. */
const manners: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'The order in which changes are proposed: things before people, people before another trailer.',
};

const weighAgain = {
  remind: {
    known: 'trailer.measuredTongueWeight',
    says: 'The tongue was weighed as it is loaded now: weigh it again afterwards.',
  },
} as const;

const notMoved = {
  unlessKnown: {
    fact: 'trailer.measuredTongueWeight',
    says: 'The tongue was weighed as it is loaded now, and what this does to it cannot be reckoned: weigh it again afterwards.',
  },
} as const;

/**
 * How far load can be moved: in the trailer from over the axles to the A-frame, never behind them,
 * since a light tail is what sways; in the vehicle from over the rear axle to half of the wheelbase
 * ahead of it.
 */
const moved: readonly Change[] = [
  {
    kind: 'shift',
    fact: 'trailer.cargo',
    column: 'ahead',
    step: 0.5,
    within: { of: 'trailer.ballToAxle', least: 0, most: 0.8 },
    says: 'Move {row} in the trailer: from {from} to {to}.',
    sides: {
      above: 'ahead of the axles',
      at: 'over the axles',
      below: 'behind the axles',
    },
    asks: 1,
    source: statics,
    rights: ['tongue-share'],
    ...notMoved,
  },
  {
    kind: 'shift',
    fact: 'load.cargo',
    column: 'ahead',
    step: 1,
    within: { of: 'vehicle.wheelbase', least: 0, most: 0.5 },
    says: 'Move {row} in the vehicle: from {from} to {to}.',
    sides: {
      above: 'ahead of the rear axle',
      at: 'over the rear axle',
      below: 'behind the rear axle',
    },
    asks: 1,
    source: statics,
  },
  {
    kind: 'shift',
    fact: 'hitch.restored',
    step: 1,
    onlyIf: { fact: 'hitch.distribution', is: 'yes' },
    says: 'Set the bars to restore {to} of the front axle’s loss (now {from}), within what the hitch’s and the vehicle’s makers allow.',
    asks: 2,
    source: statics,
  },
];

const tanks: readonly Change[] = [
  {
    kind: 'less',
    fact: 'trailer.freshWater',
    step: 0.1,
    says: 'Carry {to} of fresh water instead of {from}, and fill up where you camp.',
    asks: 3,
    source: manners,
    ...weighAgain,
  },
  {
    kind: 'less',
    fact: 'trailer.grayWater',
    step: 0.1,
    says: 'Drain the gray tank to {to} at a dump station before you leave; now {from}.',
    asks: 3,
    source: manners,
    ...weighAgain,
  },
  {
    kind: 'less',
    fact: 'trailer.blackWater',
    step: 0.1,
    says: 'Drain the black tank to {to} at a dump station before you leave; now {from}.',
    asks: 3,
    source: manners,
    ...weighAgain,
  },
];

const less = (fact: string, remind: Pick<Change, 'remind'>): readonly Change[] => [
  {
    kind: 'less',
    fact,
    column: 'weight',
    step: 1,
    says: 'Take at most {to} of {row} along instead of {from}; what cannot be parted stays at home.',
    asks: 4,
    source: manners,
    ...remind,
  },
  {
    kind: 'leave',
    fact,
    column: 'weight',
    says: 'Leave {row} at home, {amount}.',
    asks: 4,
    source: manners,
    ...remind,
  },
];

const propane: Change = {
  kind: 'less',
  fact: 'trailer.propane',
  step: 1,
  says: 'Travel with {to} of propane instead of {from}.',
  asks: 5,
  source: manners,
  ...weighAgain,
};

/** Hitch and wiring. */
const fitted: readonly Change[] = [
  {
    kind: 'set',
    fact: 'hitch.distribution',
    to: { option: 'yes' },
    says: 'Use a weight-distributing hitch, if the vehicle’s maker allows one, and set it up as both makers say; it weighs more than a plain ball mount, so count that too.',
    asks: 7,
    source: makersRating,
  },
  {
    kind: 'set',
    fact: 'hitch.distribution',
    to: { option: 'no' },
    says: 'Tow without the bars of the weight-distributing hitch.',
    asks: 7,
    source: makersRating,
  },
  {
    kind: 'set',
    fact: 'vehicle.brakeController',
    to: { option: 'yes' },
    says: 'Have a brake controller fitted, or make sure that there is one.',
    asks: 7,
    source: custom,
  },
  {
    kind: 'set',
    fact: 'vehicle.sevenWay',
    to: { option: 'yes' },
    says: 'Have a seven-way connector fitted, or make sure that there is one.',
    asks: 7,
    source: custom,
  },
  {
    kind: 'set',
    fact: 'hitch.ballSize',
    to: { sameAs: 'trailer.couplerSize' },
    says: 'Fit a ball of {to}, rated for the loaded trailer, instead of {from}.',
    asks: 7,
    source: ballSizes,
  },
];

const built: readonly Change[] = [
  {
    kind: 'leave',
    fact: 'trailer.options',
    column: 'weight',
    says: 'Order it without {row}, {amount}.',
    asks: 8,
    source: manners,
    ...weighAgain,
  },
];

/** Whoever stands first drives. */
const people: Change = {
  kind: 'leave',
  fact: 'load.occupants',
  column: 'weight',
  keepFirst: 1,
  says: 'Let {row} ({amount}) ride in another vehicle.',
  asks: 9,
  source: manners,
};

/**
 * A lighter trailer, loaded as lightly in proportion: its share on the tongue stays what it is, and
 * its own ratings are taken to be no less than the present one's.
 */
const another: Change = {
  kind: 'scale',
  fact: 'trailer.dryWeight',
  scaled: [
    'trailer.dryWeight',
    'trailer.dryTongueWeight',
    'trailer.measuredTongueWeight',
    'trailer.options.weight',
    'trailer.cargo.weight',
    'trailer.freshWater',
    'trailer.grayWater',
    'trailer.blackWater',
    'trailer.propane',
  ],
  shown: 'trailer.loaded',
  step: 10,
  least: 0.5,
  says: 'Another trailer: one that weighs {to} at the most as loaded for the road, with the same share on its tongue; the present one comes to {from}.',
  asks: 10,
  source: statics,
  rights: ['tongue-share'],
};

/** What a person can change, from what asks least to what asks most. */
export const changes: readonly Change[] = [
  ...moved,
  ...tanks,
  ...less('trailer.cargo', weighAgain),
  ...less('load.cargo', {}),
  propane,
  ...fitted,
  ...built,
  people,
  another,
];
