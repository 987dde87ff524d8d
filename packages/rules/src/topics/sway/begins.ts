import { part } from '../../engine/define/topic';
import { swayControl, whenItBegins } from '../../trade/bibliography/sway';

/**
 * What to do when it begins, in this order, and what a rig that has swayed means.
 *
 *     off the pedal ─► trailer brakes by hand ─► wheel straight ─► no vehicle brakes ─► stop, look
 *
 * The second needs the lever of a brake controller: surge brakes have none, nor has a light trailer.
 */
export const begins = part({
  formulas: {
    'sway.isUntold': {
      label: 'Nobody told whether it has swayed',
      unit: 'yes-no',
      is: '!known(sway.felt)',
      source: whenItBegins,
    },
    'sway.isOver': {
      label: 'It does not sway at this moment, as far as anybody told',
      unit: 'yes-no',
      is: "sway.isUntold || sway.felt != 'now'",
      source: whenItBegins,
    },
  },
  selections: {
    steps: {
      label: 'When the trailer sways',
      amounts: {},
      items: {
        pedal: {
          label: 'Off the pedal',
          amounts: {},
          because: 'Going slower is what lets a swing die out.',
          source: whenItBegins,
        },
        byHand: {
          label: 'Trailer brakes by their lever, if any',
          amounts: {},
          because: 'Trailer brakes alone pull the rig straight, like a string.',
          source: whenItBegins,
        },
        wheel: {
          label: 'Wheel held straight',
          amounts: {},
          because: 'Steering against it comes late and feeds the swing.',
          source: whenItBegins,
        },
        noBrakes: {
          label: 'No vehicle brakes, no speeding up',
          amounts: {},
          because:
            'Those brakes let the trailer push, and the swing grows; speed pulls straight for a moment, and the next swing is worse.',
          source: whenItBegins,
        },
        stop: {
          label: 'Then stop in a safe place',
          amounts: {},
          because: 'What began once begins again, and a little slower is no cure.',
          source: whenItBegins,
        },
      },
      source: whenItBegins,
    },
  },
  findings: {
    'sway-now': {
      label: 'It sways now',
      askedBy: ['sway.felt'],
      first: true,
      stop: {
        when: "!sway.isUntold && sway.felt == 'now'",
        wrong:
          'Off the pedal, trailer brakes by their lever if there is one, wheel straight. No vehicle brakes, no speeding up.',
        do: 'Then stop where it is safe, and find the cause before you go on.',
      },
      otherwise: 'It does not sway at this moment.',
      open: {
        wrong: 'The trailer may be swaying.',
        do: 'Off the pedal, trailer brakes by their lever if there is one, wheel straight. Then stop where that is safe.',
      },
      source: whenItBegins,
    },
    'sway-felt': {
      label: 'It has swayed',
      askedWhen: 'sway.isOver',
      stop: {
        when: "!sway.isUntold && sway.felt == 'by-itself'",
        wrong: 'The trailer has swayed by itself.',
        because:
          'A gust, a truck or a dip sets it off again, at a lower speed too; slowing down is no cure.',
        do: 'Find the cause first: weigh the tongue, look at load and tires.',
      },
      if: {
        when: 'sway.isUntold',
        wrong: 'Whether the trailer has swayed, loaded as it is, is not known yet.',
        do: 'Ask the person who towed the trailer last.',
        proviso: 'the trailer has not swayed by itself',
      },
      care: [
        {
          when: "!sway.isUntold && sway.felt == 'mended'",
          wrong: 'The trailer swayed earlier, and the cause was found and mended.',
          because: 'A cause that was only guessed comes back.',
          do: 'Weigh the tongue again, and try the rig slowly first.',
        },
        {
          when: "!sway.isUntold && sway.felt == 'with-trucks'",
          wrong: 'Passing trucks nudge it.',
          because: 'A nudge that is gone at once is wind; one that comes a second time is sway.',
          do: 'Go slower, give trucks room; stop if the nudge returns.',
        },
      ],
      otherwise: 'It has not been felt to sway.',
      source: swayControl,
    },
  },
});
