import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { kitWeights } from '../../trade/bibliography/spares-kit';

const weight = { kind: 'quantity', unit: 'lb', least: 0, most: 60_000 } as const;
const height = { kind: 'quantity', unit: 'in', least: 0, most: 60 } as const;
const told = 'told by the owner';
const tape = 'a tape measure';
const onDevice = 'its label or manual';

/** The trip, and what is meant to come along. */
export const tripFacts = part({
  facts: {
    'trip.days': {
      kind: 'quantity',
      unit: 'd',
      least: 0,
      most: 400,
      label: 'Days on the road',
      noun: 'the days on the road',
      ask: 'How many days will you be away?',
      where: told,
    },
    'trip.remoteness': {
      kind: 'choice',
      options: ['near-help', 'hours-from-help', 'days-from-help'],
      label: 'How far from help',
      ask: 'At the loneliest place, how far is a tire shop or a tow: near, hours, or days?',
      where: 'a map of the route',
    },
    'trailer.brakeKind': {
      kind: 'choice',
      options: ['electric', 'hydraulic', 'none'],
      label: 'Trailer brakes',
      ask: 'Are the trailer’s brakes electric or hydraulic, or are there none?',
      where: 'a look behind a wheel, or the brochure',
    },
    'kit.extent': {
      kind: 'choice',
      options: ['full', 'lean'],
      label: 'How much of the list',
      ask: 'The full list, or only what has to come?',
      where: told,
      silent: { value: 'full', says: 'The full list is packed.', source: custom, quiet: true },
    },
    'kit.added': {
      kind: 'rows',
      columns: {
        weight: { label: 'Weight', unit: 'lb', least: 0, most: 2_000, required: true },
      },
      label: 'Added to the kit',
      ask: 'What else goes with the spares, and what does it weigh?',
      where: 'a bathroom scale',
      silent: { value: 'none', says: 'Nothing added to the kit.', source: custom, quiet: true },
    },
    'kit.place': {
      kind: 'choice',
      options: ['vehicle', 'trailer'],
      label: 'Where the kit rides',
      ask: 'Does the kit ride in the vehicle or in the trailer?',
      where: told,
    },
    'kit.ahead': {
      kind: 'quantity',
      unit: 'ft',
      least: -60,
      most: 60,
      label: 'Kit ahead of the trailer’s axles',
      noun: 'the place of the kit',
      instead: 'Measure where the kit rides',
      ask: 'How far ahead of the middle of the axles does the kit ride, or how far behind?',
      where: tape,
      means: 'Above zero ahead of the axles, below zero behind them.',
    },
    'kit.socketTried': {
      kind: 'yes-no',
      label: 'Socket tried on the wheel nuts',
      noun: 'whether the socket was tried on the wheel nuts',
      ask: 'Has the socket been tried on the trailer’s own wheel nuts?',
      where: 'try it now: often it is not the vehicle’s size',
    },
  },
});

/** What is to lift the trailer, and where. */
export const liftFacts = part({
  facts: {
    'lift.kind': {
      kind: 'choice',
      options: ['bottle-jack', 'scissor-jack', 'vehicle-jack', 'drive-up-ramp', 'none'],
      label: 'Lifting device',
      ask: 'With what is the trailer to be lifted?',
      where: told,
      means: 'Corner stabilizers are none: they steady a trailer and must not lift it.',
    },
    'lift.rating': {
      ...weight,
      exact: true,
      label: 'Rating of the lifting device',
      noun: 'the lifting device’s rating',
      ask: 'What is the jack rated for?',
      where: onDevice,
    },
    'stand.rating': {
      ...weight,
      exact: true,
      label: 'Rating of one jack stand',
      noun: 'the stand’s rating',
      ask: 'What is one of the jack stands rated for?',
      where: 'its label; some labels count a pair',
    },
    'lift.weight': {
      ...weight,
      most: 200,
      label: 'Weight of the lifting device',
      ask: 'What does the lifting device weigh?',
      where: 'a bathroom scale',
      silent: { value: 15, says: 'The lifting device weighs 15 lb.', source: kitWeights },
    },
    'lift.reach': {
      ...height,
      exact: true,
      label: 'Highest it lifts',
      noun: 'the reach of the lifting device',
      ask: 'How high does the jack lift, with what is put under it?',
      where: onDevice,
    },
    'lift.lowest': {
      ...height,
      exact: true,
      label: 'Lowest it stands',
      ask: 'How low does the jack stand, let down?',
      where: onDevice,
    },
    'lift.heightNeeded': {
      ...height,
      label: 'Height at which the wheel comes free',
      noun: 'the height needed',
      instead: 'Measure how high the jack point must go',
      ask: 'How high must the jack point go for a full tire to slip on?',
      where: tape,
    },
    'lift.gapFlat': {
      ...height,
      label: 'Gap below the jack point with the tire flat',
      noun: 'the gap on a flat tire',
      instead: 'Measure the gap below the jack point',
      ask: 'How much room is there below the jack point when that tire is flat?',
      where: `${tape}; take off what a flat tire sinks`,
    },
    'lift.point': {
      kind: 'choice',
      options: ['named-by-maker', 'axle', 'torsion-tube', 'elsewhere'],
      label: 'Where it is lifted',
      ask: 'Where is the jack to stand: at a point the trailer’s maker names, the axle, a torsion tube, or elsewhere?',
      where: 'the trailer’s manual',
    },
    'ramp.tireAllows': {
      kind: 'yes-no',
      label: 'Tire maker allows a drive-up ramp',
      noun: 'whether the tire’s maker allows a drive-up ramp',
      ask: 'Does the tire’s maker allow one tire to carry its whole side on a ramp?',
      where: 'the tire’s maker',
    },
    'ramp.trailerAllows': {
      kind: 'yes-no',
      label: 'Trailer maker allows a drive-up ramp',
      noun: 'whether the trailer’s maker allows a drive-up ramp',
      ask: 'Does the trailer’s maker allow a drive-up ramp?',
      where: 'the trailer’s manual',
    },
  },
});

/** The spare wheel. */
export const spareFacts = part({
  facts: {
    'spare.present': {
      kind: 'yes-no',
      label: 'Spare wheel aboard',
      noun: 'whether a spare wheel is aboard',
      ask: 'Is there a spare wheel for the trailer?',
      where: 'below the rear, or on the bumper',
    },
    'spare.capacity': {
      ...weight,
      exact: true,
      label: 'Load of the spare tire',
      noun: 'the spare’s rating',
      ask: 'What load does the spare’s sidewall state?',
      where: 'the spare’s sidewall',
    },
    'spare.weight': {
      ...weight,
      most: 300,
      label: 'Weight of one spare wheel',
      ask: 'What does a spare wheel weigh?',
      where: 'a bathroom scale',
      silent: { value: 50, says: 'A spare wheel weighs 50 lb.', source: kitWeights, quiet: true },
    },
    'spare.codeWeek': {
      kind: 'quantity',
      unit: '',
      least: 1,
      most: 53,
      exact: true,
      label: 'Spare’s date code, week',
      ask: 'What are the first two of the four digits of the spare’s date code?',
      where: 'the spare’s sidewall, in the oval after DOT',
    },
    'spare.codeYear': {
      kind: 'quantity',
      unit: '',
      least: 0,
      most: 99,
      exact: true,
      label: 'Spare’s date code, year',
      ask: 'What are the last two digits after DOT on the spare: the year?',
      where: 'the spare’s sidewall, in the oval after DOT',
    },
  },
});
