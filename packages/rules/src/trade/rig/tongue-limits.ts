import { part } from '../../engine/define/topic';
import { house, statics, tongueBand } from '../bibliography/common';
import { fifthWheelBand, makersRating, pinAdapters } from '../bibliography/rig';

const byCoupling = (pin: string, ball: string): string => `choose(coupling.isPin, ${pin}, ${ball})`;

/** The bands that the tongue’s share should stay in, on a ball and on a pin. */
export const tongueBands = part({
  parameters: {
    'tongue.leastShare': {
      label: 'Least usual tongue share, ball',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.1 }],
      source: tongueBand,
    },
    'tongue.mostShare': {
      label: 'Most usual tongue share, ball',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.15 }],
      source: tongueBand,
    },
    'tongue.leastPinShare': {
      label: 'Least usual pin share, fifth-wheel',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.15 }],
      source: fifthWheelBand,
    },
    'tongue.mostPinShare': {
      label: 'Most usual pin share, fifth-wheel',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.25 }],
      source: fifthWheelBand,
    },
    'tongue.stopBelow': {
      label: 'Tongue share below which it is not towed, ball',
      unit: '%',
      values: [{ from: '2020-01-01', value: 7 }],
      range: [5, 9],
      source: house,
    },
    'tongue.stopBelowPin': {
      label: 'Pin share below which it is not towed, fifth-wheel',
      unit: '%',
      values: [{ from: '2020-01-01', value: 10 }],
      range: [8, 15],
      source: house,
    },
    'tongue.heavyBallShare': {
      label: 'A heavy but common tongue share, ball',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.13 }],
      source: house,
    },
    'tongue.heavyPinShare': {
      label: 'A heavy but common pin share, fifth-wheel',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.2 }],
      source: house,
    },
    'tongue.none': {
      label: 'No weight on the ball',
      noun: 'nothing',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 0 }],
      source: statics,
    },
  },
  formulas: {
    'tongue.lowEdge': {
      label: 'Least usual share',
      noun: 'the least usual share',
      unit: '1',
      is: byCoupling('tongue.leastPinShare', 'tongue.leastShare'),
      source: tongueBand,
    },
    'tongue.highEdge': {
      label: 'Most usual share',
      noun: 'the most usual share',
      unit: '1',
      is: byCoupling('tongue.mostPinShare', 'tongue.mostShare'),
      source: tongueBand,
    },
    'tongue.stopEdge': {
      label: 'Share below which it is not towed',
      noun: 'the share below which it is not towed',
      unit: '1',
      is: byCoupling('tongue.stopBelowPin', 'tongue.stopBelow'),
      source: house,
    },
    'tongue.heavyOnBall': {
      label: 'Tongue weight at a heavy but common share, ball',
      noun: 'a tongue of heavy but common share',
      unit: 'lb',
      is: 'trailer.loaded * tongue.heavyBallShare',
      source: house,
    },
    'tongue.heavyOnPin': {
      label: 'Pin weight at a heavy but common share, fifth-wheel',
      noun: 'a pin of heavy but common share',
      unit: 'lb',
      is: 'trailer.loaded * tongue.heavyPinShare',
      source: house,
    },
    'tongue.heavy': {
      label: 'Tongue or pin weight at a heavy but common share',
      noun: 'a tongue of heavy but common share',
      unit: 'lb',
      is: byCoupling('tongue.heavyOnPin', 'tongue.heavyOnBall'),
      source: house,
    },
    'tongue.lightShare': {
      label: 'Tongue share, if the water aboard sits behind the axles',
      noun: 'its share with the water behind the axles',
      unit: '1',
      is: '(tongue.loaded - trailer.waterWeight * tank.share) / trailer.loaded',
      source: house,
    },
    'tongue.withBars': {
      label: 'Tongue rating with weight distribution',
      noun: 'the tongue rating with weight distribution',
      unit: 'lb',
      is: 'choose(given(vehicle.maxTongueDistributed), choose(known(vehicle.maxTongueDistributed), vehicle.maxTongueDistributed, max(vehicle.maxTongueDistributed, vehicle.maxTongueCarried)), vehicle.maxTongueCarried)',
      source: makersRating,
    },
    'tongue.limit': {
      label: 'Tongue rating that counts',
      noun: 'the tongue rating',
      unit: 'lb',
      is: 'choose(distribution.isUsed, tongue.withBars, vehicle.maxTongueCarried)',
      source: makersRating,
    },
    'tongue.mayBeMore': {
      label: 'Bars would count with the tongue rating',
      unit: 'yes-no',
      is: 'distribution.mayBe && known(vehicle.maxTongueDistributed)',
      source: makersRating,
    },
    'pin.limit': {
      label: 'Pin rating that counts',
      noun: 'the pin rating',
      unit: 'lb',
      is: 'choose(given(vehicle.maxPin) && given(hitch.pinRating), min(vehicle.maxPin, hitch.pinRating), choose(given(vehicle.maxPin), vehicle.maxPin, hitch.pinRating))',
      source: pinAdapters,
    },
    'tongue.limitKnown': {
      label: 'The tongue rating is known',
      unit: 'yes-no',
      is: 'known(tongue.limit)',
      source: makersRating,
    },
    'pin.limitKnown': {
      label: 'The pin rating is known',
      unit: 'yes-no',
      is: 'known(pin.limit)',
      source: pinAdapters,
    },
  },
  limits: {
    tongue: {
      label: 'Tongue weight',
      short: 'the tongue weight',
      do: 'Take load from the trailer’s nose, keep a tenth of the trailer on the ball, and weigh it again.',
      used: 'tongue.loaded',
      limit: 'tongue.limit',
      margin: 'margin.other',
      askedWhen: 'coupling.isBall',
      relief: {
        when: 'tongue.mayBeMore',
        limit: 'vehicle.maxTongueDistributed',
      },
      cautious: { when: 'tongue.isEstimate', used: 'tongue.heavy' },
      source: makersRating,
    },
  },
});

/** A pin’s weight, by the vehicle’s own rating for it and that of the hitch in the bed. */
export const pinWeight = part({
  limits: {
    pin: {
      label: 'Pin weight',
      short: 'the pin weight',
      do: 'Take load from the trailer’s nose, keep 15 % of the trailer on the pin, and weigh it again.',
      used: 'tongue.loaded',
      limit: 'pin.limit',
      margin: 'margin.other',
      askedBy: ['vehicle.maxPin', 'hitch.pinRating'],
      askedWhen: 'coupling.isPin',
      source: pinAdapters,
    },
  },
});
