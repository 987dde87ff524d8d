import { part } from '../../engine/define/topic';
import { grossRatings, payloadLabel, statics, tongueBand } from '../../trade/bibliography/common';
import { combinedRating, makersRating } from '../../trade/bibliography/rig';

const asked = (by: string, limit: string): string => `choose(${by}, ${limit}, unlimited)`;
const given = (rating: string, limit = rating): string => asked(`given(${rating})`, limit);

/**
 * The largest trailer, as loaded, that keeps every asked limit of vehicle and hitch within its
 * rating. What belongs to the present trailer is left out. Its tongue is the present share, but not
 * under the least usual one:
 *
 *     weight ≤ what may be pulled          ≤ combined, receiver, mount, ball …
 *     tongue ≤ what may rest in front      ≤ payload, rear axle, receiver's tongue …
 *     largest = the smaller of weight and tongue ÷ share
 */
export const largestShared = part({
  formulas: {
    'largest.shareOnBall': {
      label: 'Tongue share of the largest trailer, ball',
      noun: 'its tongue’s share',
      unit: '1',
      is: 'max(tongue.share, tongue.leastShare)',
      source: tongueBand,
    },
    'largest.shareOnPin': {
      label: 'Pin share of the largest trailer, fifth-wheel',
      noun: 'its pin’s share',
      unit: '1',
      is: 'max(tongue.share, tongue.leastPinShare)',
      source: tongueBand,
    },
    'largest.weightOnAny': {
      label: 'Largest trailer by the combined rating and that without brakes',
      unit: 'lb',
      is: `min(${given('vehicle.gcwr', 'combined.limit - vehicle.curb - load.aboard')}, ${asked('brakes.areNone && given(vehicle.maxUnbraked)', 'vehicle.maxUnbraked')})`,
      source: combinedRating,
    },
    'largest.tongueOnAny': {
      label: 'Heaviest tongue by payload and the vehicle’s gross rating',
      unit: 'lb',
      is: `min(payload.available - load.aboard, ${given('vehicle.gvwr', 'vehicle.gvwr - vehicle.curb - load.aboard')})`,
      source: payloadLabel,
    },
    'largest.weightOnBall': {
      label: 'Largest trailer by ball mount and ball',
      unit: 'lb',
      is: `min(${given('hitch.mountRating')}, ${given('hitch.ballRating')})`,
      source: makersRating,
    },
    'largest.tongueOnBall': {
      label: 'Heaviest tongue by ball mount and extension',
      unit: 'lb',
      is: `min(${given('hitch.mountTongueRating')}, ${asked('extension.isTold', 'hitch.extensionRating')})`,
      source: makersRating,
    },
    'rear.isAsked': {
      label: 'A rating of the rear axle or its tires was mentioned',
      unit: 'yes-no',
      is: 'given(vehicle.gawrRear) || given(vehicle.tireCapacityRear)',
      source: grossRatings,
    },
    'rear.room': {
      label: 'What the rear axle and its tires leave for the tongue',
      unit: 'lb',
      is: `choose(rear.isAsked, min(${given('vehicle.gawrRear')}, ${given('vehicle.tireCapacityRear', 'tire.rearCapacity * tire.rearCount')}) - rear.withoutTongue, unlimited)`,
      source: grossRatings,
    },
    'front.isAsked': {
      label: 'A rating of the front axle or its tires was mentioned',
      unit: 'yes-no',
      is: 'given(vehicle.gawrFront) || given(vehicle.tireCapacityFront)',
      source: grossRatings,
    },
    'front.allowed': {
      label: 'What front axle and tires may carry',
      unit: 'lb',
      is: `min(${given('vehicle.gawrFront')}, ${given('vehicle.tireCapacityFront', 'tire.frontCapacity * 2')})`,
      source: grossRatings,
    },
    'front.isLightened': {
      label: 'The tongue takes load off the front axle',
      unit: 'yes-no',
      is: 'hitch.lever >= 0',
      source: statics,
    },
  },
});

type Way = {
  /** `onPin`, as it stands in names. */
  readonly id: string;
  readonly label: string;
  readonly share: string;
  readonly weight: readonly string[];
  readonly tongue: readonly string[];
  /** What a pound of tongue puts on the rear axle, and takes off the front one. */
  readonly onRear: string;
  readonly offFront: string;
};

/**
 * One way of towing. A tongue behind the rear axle only lightens the front one: if that is too heavy
 * with the largest trailer, it is with any. A pin ahead of the rear axle loads the front too.
 */
function solved({ id, label, share, weight, tongue, onRear, offFront }: Way) {
  const name = (what: string) => `largest.${what}${id}`;
  const front = `front.isAsked && !front.isLightened, (front.allowed - front.withoutTongue) / max(0, -(${offFront})), unlimited`;
  const rear = `rear.isAsked, rear.room / (${onRear}), unlimited`;
  const all = [...tongue, 'largest.tongueOnAny', `choose(${rear})`, `choose(${front})`];
  const fits = `!front.isAsked || !front.isLightened || front.withoutTongue - ${name('heaviest')} * (${offFront}) <= front.allowed`;
  return {
    [name('weight')]: {
      label: `Largest trailer by what may be pulled ${label}`,
      unit: 'lb',
      is: `min(${[...weight, 'largest.weightOnAny'].join(', ')})`,
      source: makersRating,
    },
    [name('tongue')]: {
      label: `Heaviest tongue ${label}`,
      unit: 'lb',
      is: `min(${all.join(', ')})`,
      source: statics,
    },
    [name('heaviest')]: {
      label: `Tongue of the largest trailer ${label}`,
      unit: 'lb',
      is: `min(${name('tongue')}, ${name('weight')} * ${share})`,
      source: statics,
    },
    [name('trailer')]: {
      label: `Largest trailer ${label}`,
      unit: 'lb',
      is: `choose(${fits}, min(${name('weight')}, ${name('tongue')} / ${share}), 0)`,
      source: statics,
    },
  };
}

const bare = { onRear: '1 + hitch.lever', offFront: 'hitch.lever' } as const;
const carriedAtMost = given(
  'vehicle.maxTrailerCarried',
  'min(vehicle.maxTrailerWeight, vehicle.maxTrailerCarried)',
).replace('unlimited', 'vehicle.maxTrailerWeight');
/** A rating of which only a least is known is not known here. */
const read = (rating: string): string => `needs(${rating}, ${rating})`;
const receiver = (which: string) =>
  asked('given(hitch.receiverRating) || given(hitch.receiverCarried)', read(`receiver.${which}`));
const receiverTongue = (which: string) =>
  asked(
    'given(hitch.receiverTongueRating) || given(hitch.receiverTongueCarried)',
    read(`receiverTongue.${which}`),
  );

export const largest = part({
  formulas: {
    ...solved({
      id: 'OnPin',
      label: 'on a pin',
      share: 'largest.shareOnPin',
      weight: ['trailerWeight.onPin'],
      tongue: [asked('given(vehicle.maxPin) || given(hitch.pinRating)', 'pin.limit')],
      ...bare,
    }),
    ...solved({
      id: 'WithBars',
      label: 'with weight distribution',
      share: 'largest.shareOnBall',
      weight: ['vehicle.maxTrailerWeight', 'largest.weightOnBall', receiver('withBars')],
      tongue: [read('tongue.withBars'), 'largest.tongueOnBall', receiverTongue('withBars')],
      onRear: '1 + hitch.lever * (1 - bars.restoredShare) - bars.restoredShare * bars.reach',
      offFront: 'hitch.lever * (1 - bars.restoredShare)',
    }),
    ...solved({
      id: 'Bare',
      label: 'without weight distribution',
      share: 'largest.shareOnBall',
      weight: [
        carriedAtMost,
        'largest.weightOnBall',
        receiver('bare'),
        given('vehicle.distributionRequiredAbove'),
      ],
      tongue: ['vehicle.maxTongueCarried', 'largest.tongueOnBall', receiverTongue('bare')],
      ...bare,
    }),
    'largest.trailer': {
      label: 'Largest trailer that fits, as loaded',
      unit: 'lb',
      is: 'max(0, needs(choose(towPackage.isNoBar, choose(coupling.isPin, largest.trailerOnPin, choose(distribution.isUsed, choose(front.isAsked || rear.isAsked, needs(largest.trailerWithBars, trailer.ballToAxle), largest.trailerWithBars), largest.trailerBare)), 0), tongue.share))',
      source: statics,
    },
    'largest.isSome': {
      label: 'Some trailer fits for sure',
      unit: 'yes-no',
      is: 'largest.trailer > 0',
      source: statics,
    },
  },
});
