import { part } from '../../engine/define/topic';
import { custom, house, payloadLabel } from '../../trade/bibliography/common';

/**
 * What a usual trailer comes to, where little was told of it, and what a vehicle must bring that is
 * bought to tow one. No limit and no finding stands on it: it is said as an example, or presumed and
 * said as such.
 *
 *     dry ──► about a tenth more on the road ──► some of it on the ball
 */
export const usual = part({
  parameters: {
    'usual.loadedShare': {
      label: 'Weight of a usual trailer on the road, of its unloaded weight',
      unit: '1',
      values: [{ from: '2020-01-01', value: 1.12 }],
      source: custom,
    },
    'usual.grossShare': {
      label: 'Gross rating of a usual trailer, of its unloaded weight',
      unit: '1',
      values: [{ from: '2020-01-01', value: 1.2 }],
      source: custom,
    },
  },
  formulas: {
    'trailer.rest': {
      label: 'Options, cargo, water and gas told of the trailer',
      unit: 'lb',
      is: 'sum(trailer.options.weight) + sum(trailer.cargo.weight) + trailer.waterWeight + trailer.propane',
      source: custom,
    },
    'trailer.bare': {
      label: 'Dry weight that what was told of the trailer comes to',
      unit: 'lb',
      is: 'max(0, trailer.loaded - trailer.rest)',
      source: custom,
    },
    'shopping.bare': {
      label: 'Dry weight of a trailer in the shopping window, with what was told aboard',
      unit: 'lb',
      is: 'max(0, shopping.from - trailer.rest)',
      source: custom,
    },
    'wanted.bare': {
      label: 'Dry weight of the trailer wanted, with what was told aboard',
      unit: 'lb',
      is: 'max(0, wanted.weight - trailer.rest)',
      source: custom,
    },
    'usual.loaded': {
      label: 'What it usually comes to on the road',
      noun: 'what it usually comes to on the road',
      unit: 'lb',
      is: 'max(trailer.loaded, trailer.unloaded * usual.loadedShare)',
      source: custom,
    },
    'usual.gross': {
      label: 'Gross rating that a trailer of this weight usually has',
      noun: 'its usual gross rating',
      unit: 'lb',
      is: 'choose(known(trailer.gvwr), trailer.gvwr, max(usual.loaded, trailer.unloaded * usual.grossShare))',
      source: custom,
    },
    'usual.share': {
      label: 'A heavy but common share on ball or pin',
      noun: 'a heavy but common share',
      unit: '1',
      is: 'choose(coupling.isPin, tongue.heavyPinShare, tongue.heavyBallShare)',
      source: house,
    },
    'usual.tongue': {
      label: 'Tongue weight at a heavy but common share, where it is not known',
      noun: 'its usual tongue weight',
      unit: 'lb',
      is: 'choose(tongue.isKnown, tongue.loaded, usual.loaded * usual.share)',
      source: house,
    },
    'shopping.tongue': {
      label: 'Tongue weight of a trailer in the shopping window',
      noun: 'the tongue of such a trailer',
      unit: 'lb',
      is: 'choose(tongue.isKnown, tongue.loaded, shopping.from * usual.share)',
      source: house,
    },
    'payload.stillLeft': {
      label: 'Payload left, once the tongue is known',
      noun: 'the payload left',
      unit: 'lb',
      is: 'needs(payload.left, tongue.loaded)',
      source: custom,
    },
    'wanted.weight': {
      label: 'Trailer weight that a vehicle is bought for',
      noun: 'the trailer weight wanted',
      unit: 'lb',
      is: 'choose(known(trailer.gvwr), trailer.gvwr, usual.gross)',
      source: custom,
    },
    'maximum.ofRating': {
      label: 'The trailer’s own maximum, of the tow rating',
      noun: 'its maximum as a share of the tow rating',
      unit: '1',
      is: 'trailer.gvwr / vehicle.maxTrailerWeight',
      source: custom,
    },
    'wanted.rating': {
      label: 'Tow rating wanted for this trailer',
      noun: 'the tow rating wanted',
      unit: 'lb',
      is: 'wanted.weight / shopping.toShare',
      source: custom,
    },
    'wanted.tongue': {
      label: 'Tongue rating wanted for this trailer',
      noun: 'the tongue rating wanted',
      unit: 'lb',
      is: 'choose(tongue.isKnown, max(tongue.loaded, wanted.weight * usual.share), wanted.weight * usual.share)',
      source: house,
    },
    'wanted.left': {
      label: 'What the label leaves beside such a tongue',
      noun: 'what the label leaves',
      unit: 'lb',
      is: 'max(0, vehicle.placardPayload - wanted.tongue)',
      source: payloadLabel,
    },
    'wanted.payload': {
      label: 'Payload wanted for this trailer, with who and what rides along',
      noun: 'the payload wanted',
      unit: 'lb',
      is: 'load.aboard + wanted.tongue',
      source: house,
    },
  },
});
