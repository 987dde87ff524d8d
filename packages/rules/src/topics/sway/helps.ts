import { part } from '../../engine/define/topic';
import { custom, statics, tongueBand } from '../../trade/bibliography/common';
import { gustHouse, speedSigns, swayControl, yawInertia } from '../../trade/bibliography/sway';

const item = <const M extends object>(label: string, because: string, more: M) => ({
  label,
  amounts: {},
  because,
  ...more,
});
const away = { group: 'toward sway' } as const;
const against = { group: 'against it' } as const;

/** What pushes which way, and what helps most, in this order; a list, and never a promise. */
export const helps = part({
  formulas: {
    'share.isLight': {
      label: 'The share is light',
      unit: 'yes-no',
      is: 'tongue.share < tongue.lowEdge',
      source: tongueBand,
    },
    'ball.isLight': {
      label: 'The share on the ball is light',
      unit: 'yes-no',
      is: 'coupling.isBall && share.isLight && tongue.share >= 0',
      source: tongueBand,
    },
    'ball.isPlainlyLight': {
      label:
        'The share on the ball is light, and no mere estimate or perhaps so light that it is not towed',
      unit: 'yes-no',
      is: 'ball.isLight && (!tongue.isEstimate || may(tongue.share < tongue.stopEdge))',
      source: tongueBand,
    },
    'tongue.isLifting': {
      label: 'The tongue lifts',
      unit: 'yes-no',
      is: 'tongue.loaded < 0',
      source: statics,
    },
    'gross.isAllTold': {
      label: 'Of the trailer’s weight only its maximum was told, beside a weighed tongue',
      unit: 'yes-no',
      is: 'coupling.isBall && known(trailer.measuredTongueWeight, trailer.gvwr) && !known(trailer.loaded)',
      source: tongueBand,
    },
    'share.atGross': {
      label: 'The weighed tongue’s share of the trailer at its maximum',
      noun: 'its share of the trailer at its maximum',
      unit: '1',
      is: 'trailer.measuredTongueWeight / trailer.gvwr',
      source: tongueBand,
    },
    'weight.forLeast': {
      label: 'Trailer of which the weighed tongue is the least share',
      noun: 'the trailer of which it is the least share',
      unit: 'lb',
      is: 'trailer.measuredTongueWeight / tongue.leastShare',
      source: tongueBand,
    },
    'share.isUsual': {
      label: 'The share is in its band or above',
      unit: 'yes-no',
      is: 'tongue.share >= tongue.lowEdge',
      source: tongueBand,
    },
    'ends.areHeavy': {
      label: 'Much weight rides at the ends',
      unit: 'yes-no',
      is: 'given(trailer.length) && yaw.share > yaw.careAbove',
      source: yawInertia,
    },
    'trailer.isLong': {
      label: 'The trailer is long for the wheelbase',
      unit: 'yes-no',
      is: 'given(trailer.length) && given(vehicle.wheelbase) && coupling.isBall && trailer.length > length.carried',
      source: custom,
    },
    'ball.isFar': {
      label: 'The ball stands far behind the axle',
      unit: 'yes-no',
      is: 'coupling.isBall && given(vehicle.overhang) && given(vehicle.wheelbase) && hitch.lever > overhang.careAbove',
      source: custom,
    },
    'vehicle.isLighter': {
      label: 'The trailer is the heavier of the two',
      unit: 'yes-no',
      is: 'coupling.isBall && (given(vehicle.curbWeight) || given(vehicle.curbFront) || given(vehicle.placardPayload)) && trailer.loaded > vehicle.withoutTrailer',
      source: custom,
    },
    'vehicle.isOutsized': {
      label: 'The vehicle is short or light for the trailer',
      unit: 'yes-no',
      is: 'trailer.isLong || vehicle.isLighter',
      source: custom,
    },
    'speed.isHigh': {
      label: 'The speed is high',
      unit: 'yes-no',
      is: 'given(trip.speed) && trip.speed > speed.careAbove',
      source: speedSigns,
    },
    'gusts.areStrong': {
      label: 'Gusts are strong',
      unit: 'yes-no',
      is: 'given(trip.gusts) && trip.gusts >= gusts.careFrom',
      source: gustHouse,
    },
    'nose.isHigh': {
      label: 'The nose stands high',
      unit: 'yes-no',
      is: "given(trailer.rides) && trailer.rides == 'nose-high'",
      source: custom,
    },
    'tires.areSoft': {
      label: 'Tires are soft',
      unit: 'yes-no',
      is: "given(tires.pressures) && tires.pressures == 'below'",
      source: custom,
    },
    'fender.isOff': {
      label: 'The bars give the front more than it lost, or next to nothing',
      unit: 'yes-no',
      is: "coupling.isBall && given(hitch.frontFender) && (hitch.frontFender == 'lower' || (hitch.frontFender == 'hardly-back' && hitch.distribution == 'yes'))",
      source: custom,
    },
    'swayControl.isSet': {
      label: 'Sway control is set',
      unit: 'yes-no',
      is: "given(hitch.swayControl) && hitch.swayControl == 'set'",
      source: swayControl,
    },
    'swayControl.isWanting': {
      label: 'Sway control is slack or missing',
      unit: 'yes-no',
      is: "coupling.isBall && given(hitch.swayControl) && (hitch.swayControl == 'slack' || (hitch.swayControl == 'none' && trailer.loaded > swayControl.notBelow))",
      source: swayControl,
    },
    'tongue.isWeighed': {
      label: 'The loaded tongue has been weighed',
      unit: 'yes-no',
      is: 'known(trailer.measuredTongueWeight)',
      source: tongueBand,
    },
    'tongue.isUnweighed': {
      label: 'The loaded tongue has not been weighed',
      unit: 'yes-no',
      is: '!known(trailer.measuredTongueWeight)',
      source: tongueBand,
    },
  },
  selections: {
    pushes: {
      label: 'What pushes which way, the strongest first',
      amounts: {},
      items: {
        light: item('A light tongue', 'The trailer’s center lies too far back.', {
          ...away,
          when: 'share.isLight',
          source: tongueBand,
        }),
        ends: item('Weight at the ends', 'It counts with the square of its distance.', {
          ...away,
          when: 'ends.areHeavy',
          source: yawInertia,
        }),
        fast: item('Speed', 'Damping falls as it grows.', {
          ...away,
          when: 'speed.isHigh',
          source: speedSigns,
        }),
        soft: item('Soft tires', 'Sidewalls that give way feed a swing.', {
          ...away,
          when: 'tires.areSoft',
          source: custom,
        }),
        nose: item('A high nose', 'Weight moves back.', {
          ...away,
          when: 'nose.isHigh',
          source: custom,
        }),
        front: item('Bars set wrong', 'One axle of the vehicle goes light.', {
          ...away,
          when: 'fender.isOff',
          source: custom,
        }),
        wind: item('Wind from the side', 'It begins the swing.', {
          ...away,
          when: 'gusts.areStrong',
          source: gustHouse,
        }),
        lighter: item('A vehicle lighter than the trailer', 'The heavier one leads.', {
          ...away,
          when: 'vehicle.isLighter',
          source: custom,
        }),
        long: item('A trailer long for the wheelbase', 'Its side turns a short vehicle.', {
          ...away,
          when: 'trailer.isLong',
          source: custom,
        }),
        overhang: item('A ball far behind the axle', 'A longer lever steers it.', {
          ...away,
          when: 'ball.isFar',
          source: custom,
        }),
        usual: item('A tongue that is heavy enough', 'The center lies ahead of the axles.', {
          ...against,
          when: 'share.isUsual',
          source: tongueBand,
        }),
        control: item('Sway control that is set', 'It damps a swing; it mends no load.', {
          ...against,
          when: 'swayControl.isSet',
          source: swayControl,
        }),
      },
      source: custom,
    },
    helps: {
      label: 'What helps, the most first',
      amounts: {},
      items: {
        forward: item(
          'Load moved from behind the axles to just ahead of them',
          'Nothing else does as much.',
          { when: 'share.isLight', source: statics },
        ),
        weigh: item('The loaded tongue weighed', 'A measured share beats every estimate.', {
          when: 'tongue.isUnweighed',
          source: tongueBand,
        }),
        ends: item(
          'Heavy things off racks and out of the ends',
          'At half the distance it counts a quarter.',
          {
            when: 'ends.areHeavy',
            source: yawInertia,
          },
        ),
        pressures: item('Tires at the pressures of their labels, cold', 'It costs nothing.', {
          when: 'tires.areSoft',
          source: custom,
        }),
        level: item('Ball or hitch lowered until it stands level', 'Weight comes forward again.', {
          when: 'nose.isHigh',
          source: custom,
        }),
        bars: item('The bars set to their makers’ share', 'No axle may go light.', {
          when: 'fender.isOff',
          source: custom,
        }),
        slower: item('Slower', 'It helps at once, whatever the cause.', { source: speedSigns }),
        wait: item('The wind waited out', 'It passes.', {
          when: 'gusts.areStrong',
          source: gustHouse,
        }),
        control: item('Sway control, set, once the load is right', 'It damps what is left.', {
          when: 'swayControl.isWanting',
          source: swayControl,
        }),
        other: item('A longer and heavier vehicle, or a shorter trailer', 'For the next one.', {
          when: 'vehicle.isOutsized',
          source: custom,
        }),
      },
      source: custom,
    },
  },
});
