import { part } from '../../engine/define/topic';
import { gustHouse, speedSigns } from '../../trade/bibliography/sway';
import { tireFacts } from '../../trade/tires/facts';

const speed = (label: string, noun: string, value: number) => ({
  label,
  noun,
  unit: 'mph',
  values: [{ from: '2020-01-01', value }],
});

/**
 * Speed and wind.
 *
 *     0 ────────── 55 ───── 65 ─────► mph     the faster, the longer a swing takes to die out
 */
export const road = part({
  facts: { 'trip.speed': tireFacts.facts['trip.speed'] },
  parameters: {
    'speed.careAbove': {
      ...speed('Speed above which first signs come', 'the speed at which first signs come', 55),
      source: speedSigns,
    },
    'speed.graveAbove': {
      ...speed('Speed above which most rigs damp little', 'the speed at which little damps it', 65),
      source: speedSigns,
    },
    'gusts.careFrom': {
      ...speed('Gusts from which care is due', 'the gusts from which care is due', 25),
      range: [15, 25],
      source: gustHouse,
    },
    'gusts.stopFrom': {
      ...speed('Gusts in which not to set out', 'the gusts in which not to set out', 45),
      range: [30, 45],
      source: gustHouse,
    },
  },
  findings: {
    speed: {
      label: 'Speed',
      first: true,
      askedBy: ['trip.speed'],
      care: [
        {
          when: 'trip.speed > speed.graveAbove',
          wrong:
            '{trip.speed} is fast for any trailer; above {speed.graveAbove} little damps a swing.',
          because: 'The damping falls as speed grows, and with it the time there is to act.',
          do: 'Plan no more than {speed.careAbove}, and never more than the slowest tire allows.',
        },
        {
          when: 'trip.speed > speed.careAbove',
          wrong: 'Above {speed.careAbove} first signs come; {trip.speed} is planned.',
          because: 'The damping falls as speed grows; a slower rig forgives more.',
          do: 'Go slower, downhill and in wind above all.',
        },
      ],
      open: {
        wrong: 'The speed may be more than the rig damps a swing at.',
        do: 'Plan no more than {speed.careAbove}.',
      },
      otherwise: 'The speed is below that at which first signs come.',
      source: speedSigns,
    },
    gusts: {
      label: 'Wind',
      first: true,
      askedBy: ['trip.gusts'],
      stop: {
        when: 'trip.gusts >= gusts.stopFrom',
        wrong: 'With gusts of {trip.gusts} do not set out with a trailer.',
        because: 'They push the trailer’s side harder than anything can damp.',
        do: 'Wait for it to pass, parked with the nose into the wind.',
      },
      care: {
        when: 'trip.gusts >= gusts.careFrom',
        wrong: 'Gusts reach {trip.gusts} on the way.',
        because: 'A gust from the side begins what a light tongue keeps going.',
        do: 'Go slower, both hands on the wheel, and wait if it grows.',
      },
      open: {
        wrong: 'Gusts may be too strong to tow in.',
        do: 'Look up the gusts for the hours and the road before you set out.',
      },
      otherwise: 'The gusts are no reason to wait.',
      source: gustHouse,
    },
  },
});
