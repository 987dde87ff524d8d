import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { overhangHouse, wheelbaseRule } from '../../trade/bibliography/sway';

/**
 * Which one leads: length of the trailer against the wheelbase, the ball’s overhang against it, and
 * the weight of the one against the other.
 *
 *     front ──── wheelbase ──── rear ─ overhang ─ ball ──────── length ────────
 *     110 in carry 20 ft; 4 in more for each further foot
 */
export const shape = part({
  parameters: {
    'length.first': {
      label: 'Trailer length that the least wheelbase carries',
      unit: 'ft',
      values: [{ from: '2020-01-01', value: 20 }],
      source: wheelbaseRule,
    },
    'length.wheelbase': {
      label: 'Wheelbase that carries it',
      unit: 'in',
      values: [{ from: '2020-01-01', value: 110 }],
      source: wheelbaseRule,
    },
    'length.each': {
      label: 'Wheelbase for each further foot of trailer',
      unit: 'in/ft',
      values: [{ from: '2020-01-01', value: 4 }],
      source: wheelbaseRule,
    },
    'overhang.careAbove': {
      label: 'Overhang above which care is due, of the wheelbase',
      noun: 'the overhang above which care is due',
      unit: '1',
      values: [{ from: '2020-01-01', value: 0.45 }],
      range: [0.35, 0.45],
      source: overhangHouse,
    },
  },
  formulas: {
    'length.carried': {
      label: 'Trailer length that the wheelbase carries, by the rule of thumb',
      noun: 'the length that the wheelbase carries',
      unit: 'ft',
      is: 'max(0, length.first + (vehicle.wheelbase - length.wheelbase) / length.each)',
      source: wheelbaseRule,
    },
    'vehicle.withoutTrailer': {
      label: 'Vehicle with people and things, without the trailer',
      noun: 'the loaded vehicle',
      unit: 'lb',
      is: 'vehicle.curb + load.aboard',
      source: custom,
    },
  },
  findings: {
    length: {
      label: 'Trailer length against the wheelbase',
      first: true,
      askedByKnown: ['trailer.length', 'vehicle.wheelbase'],
      askedWhen: 'coupling.isBall',
      care: {
        when: 'trailer.length > length.carried',
        wrong:
          'The trailer is longer than its vehicle’s wheelbase carries by the rule of thumb: {trailer.length} behind {vehicle.wheelbase}, where {length.carried} is usual.',
        because: 'A long side catches the wind, and a short vehicle is turned by it.',
        do: 'Go slower; next time a longer vehicle or a shorter trailer.',
      },
      open: {
        wrong: 'The trailer may be longer than the wheelbase carries.',
        do: 'Measure both.',
      },
      otherwise: 'The wheelbase carries a trailer of this length, by the rule of thumb.',
      source: wheelbaseRule,
    },
    overhang: {
      label: 'Overhang against the wheelbase',
      first: true,
      askedByKnown: ['vehicle.overhang', 'vehicle.wheelbase'],
      askedWhen: 'coupling.isBall',
      care: {
        when: 'hitch.lever > overhang.careAbove',
        wrong:
          'The ball stands far behind the rear axle: {hitch.lever} of the wheelbase, and above {overhang.careAbove} it is a care.',
        because: 'The longer that lever, the more a swing of the trailer steers the vehicle.',
        do: 'Leave out an extension if there is one, and go slower.',
      },
      open: { wrong: 'The ball may stand far behind the rear axle.', do: 'Measure it.' },
      otherwise: 'The ball stands near enough to the rear axle.',
      source: overhangHouse,
    },
    'lighter-vehicle': {
      label: 'Vehicle lighter than the trailer',
      first: true,
      askedBy: ['vehicle.curbWeight', 'vehicle.curbFront', 'vehicle.placardPayload'],
      askedWhen: 'coupling.isBall',
      care: {
        when: 'trailer.loaded > vehicle.withoutTrailer',
        wrong:
          'The trailer weighs more than the vehicle: {trailer.loaded} behind {vehicle.withoutTrailer}.',
        because: 'The heavier one leads when it swings.',
        do: 'Go slower, keep the share and the trailer’s brakes right, and take less along.',
      },
      open: {
        wrong: 'The trailer may weigh more than the vehicle.',
        do: 'Weigh both.',
      },
      otherwise: 'The vehicle is the heavier of the two.',
      source: custom,
    },
  },
});
