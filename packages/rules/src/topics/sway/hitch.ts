import { part } from '../../engine/define/topic';
import { custom, house, restoredBound } from '../../trade/bibliography/common';
import { swayControl } from '../../trade/bibliography/sway';

/**
 * How the two are joined and what they stand on: nose, bars, sway control, tires.
 *
 *     fender lower than alone    the bars give the front more than it lost; the rear tires go light
 *     half of its rise taken back, or all    by the maker’s own share, as weigh-in has it
 *     less than half             care where bars are in use; without bars there is nothing to set
 *     nose high                  what rides in it leans back, behind the axles
 *     no sway control            care behind a trailer that is not light; slack, behind any
 */
export const hitch = part({
  parameters: {
    'swayControl.notBelow': {
      label: 'Weight up to which a trailer is towed without sway control as a matter of course',
      noun: 'the weight up to which a trailer needs none',
      unit: 'lb',
      values: [{ from: '2020-01-01', value: 2000 }],
      range: [1000, 3500],
      source: house,
    },
  },
  formulas: {
    'pressures.areUntold': {
      label: 'Nobody told the tire pressures',
      unit: 'yes-no',
      is: '!known(tires.pressures)',
      source: custom,
    },
    'rides.isKnown': {
      label: 'It is known how the trailer stands',
      unit: 'yes-no',
      is: 'known(trailer.rides)',
      source: custom,
    },
    'fender.isKnown': {
      label: 'It is known how high the front fender stands',
      unit: 'yes-no',
      is: 'known(hitch.frontFender)',
      source: custom,
    },
    'fender.isAsked': {
      label: 'Bars may press the front axle: it rides on a ball, or that is not known',
      unit: 'yes-no',
      is: '!known(trailer.coupling) || coupling.isBall',
      source: custom,
    },
    'bars.areUntold': {
      label: 'Nobody told whether bars are in use',
      unit: 'yes-no',
      is: '!known(hitch.distribution)',
      source: custom,
    },
    'swayControl.isKnown': {
      label: 'It is known whether there is sway control',
      unit: 'yes-no',
      is: 'known(hitch.swayControl)',
      source: custom,
    },
    'swayControl.isMissed': {
      label: 'There is no sway control, and the trailer is not a light one',
      unit: 'yes-no',
      is: "known(hitch.swayControl) && hitch.swayControl == 'none' && trailer.loaded > swayControl.notBelow",
      source: house,
    },
    'tireKind.isKnown': {
      label: 'The kind of the trailer’s tires is known',
      unit: 'yes-no',
      is: "known(trailer.tireKind) || (known(tire.kind) && tire.place == 'trailer')",
      source: custom,
    },
  },
  findings: {
    'nose-high': {
      label: 'Nose',
      first: true,
      askedBy: ['trailer.rides'],
      care: {
        when: "rides.isKnown && trailer.rides == 'nose-high'",
        wrong: 'The trailer stands nose high.',
        because: 'Weight moves behind the axles, and it sways sooner.',
        do: 'Lower the ball until it stands level or a little nose low; on a pin the hitch, with room kept above the bed’s rails.',
      },
      open: { wrong: 'The trailer may stand nose high.', do: 'Measure it in front and behind.' },
      otherwise: 'The trailer does not stand nose high.',
      source: custom,
    },
    'front-fender': {
      label: 'Bars and the front axle',
      first: true,
      askedBy: ['hitch.frontFender'],
      askedWhen: 'fender.isAsked',
      stop: {
        when: "fender.isKnown && hitch.frontFender == 'lower'",
        wrong: 'The bars press the front axle beyond what it weighs alone.',
        because: 'The rear tires go light, and the rear of the vehicle follows the trailer.',
        do: 'Slacken them a step, by the hitch’s instructions, and measure again before you tow.',
      },
      care: {
        when: "fender.isKnown && hitch.frontFender == 'hardly-back' && hitch.distribution == 'yes'",
        wrong: 'The bars give the front wheels back less than half of what the tongue took.',
        because: 'A light front steers late.',
        do: 'Set them to the share that the makers of hitch and vehicle name: often half to all of it, and never more.',
      },
      if: {
        when: "fender.isKnown && hitch.frontFender == 'hardly-back' && bars.areUntold",
        wrong: 'Whether bars are in use is not known yet.',
        do: 'Look for spring bars from the ball mount to the trailer’s frame: in use, they are set to their makers’ share.',
        proviso: 'no bars are in use, and the vehicle’s maker asks for none at this tongue',
      },
      stopOpen: 'care',
      open: {
        wrong: 'The front wheels may have lost load, or been given too much.',
        do: 'Measure the front fender with the trailer and without.',
      },
      otherwise:
        'The front wheels carry what they do alone or have half or more of it back, or there are no bars to set.',
      source: restoredBound,
    },
    'sway-control': {
      label: 'Sway control',
      first: true,
      askedBy: ['hitch.swayControl'],
      askedWhen: 'coupling.isBall',
      care: [
        {
          when: "swayControl.isKnown && hitch.swayControl == 'slack'",
          wrong: 'The sway control is slack: it does nothing.',
          do: 'Set it by its maker’s instructions; it damps a swing, and mends no wrong load.',
        },
        {
          when: 'swayControl.isMissed',
          wrong: 'There is no sway control on the hitch.',
          because: 'A right load tows without; a swing that begins has less to damp it.',
          do: 'Get the share and the pressures right first; then ask which one both makers allow.',
        },
      ],
      open: {
        wrong: 'There may be no sway control that works, on a trailer that is not light.',
        do: 'Look at the hitch, and weigh the loaded trailer.',
      },
      otherwise:
        'Sway control is set, or the trailer is light; it hides a wrong load and does not mend it.',
      source: swayControl,
    },
    'tire-pressures': {
      label: 'Tire pressures',
      first: true,
      askedByKnown: ['tires.pressures'],
      care: {
        when: "!pressures.areUntold && tires.pressures == 'below'",
        wrong: 'Tires stand below the pressures of their labels.',
        because: 'Soft sidewalls let trailer and vehicle lean and come back, which feeds a swing.',
        do: 'Fill them cold to what the labels state before you tow.',
      },
      otherwise: 'The tires are at the pressures of their labels.',
      source: custom,
    },
    'pressures-untold': {
      label: 'Tire pressures, not told',
      if: {
        when: 'pressures.areUntold',
        wrong: 'The tire pressures are not known yet.',
        because: 'Soft sidewalls feed a swing.',
        do: 'Read them cold, of trailer and vehicle, against their labels.',
        proviso: 'all tires are at their labels’ pressures',
      },
      otherwise: 'The tire pressures were told.',
      source: custom,
    },
    'tire-kind': {
      label: 'Kind of the trailer’s tires',
      first: true,
      askedBy: ['trailer.tireKind', 'tire.kind'],
      care: {
        when: 'tireKind.isKnown && tire.trailerIsPassenger',
        wrong: 'The trailer runs on passenger tires.',
        because:
          'Their sidewalls give way sideways, and their rating counts for less on a trailer.',
        do: 'Ask the trailer’s maker which kind of tire it wants.',
      },
      open: { wrong: 'The trailer may run on passenger tires.', do: 'Read the sidewall.' },
      otherwise: 'The trailer’s tires are of a kind made for its load.',
      source: custom,
    },
  },
});
