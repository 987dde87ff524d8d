import { part } from '../../engine/define/topic';
import { geometry } from '../../trade/bibliography/hitch-setup';

/**
 * What may touch when the rig turns or the tailgate opens.
 *
 *                 │ bumper
 *     vehicle W ──┤── e ──● ball ──── d ────┤ trailer's front wall, T wide
 *
 * At a right angle the front wall lies d beside the ball and its near corner T/2 ahead of it. It
 * stays clear of the bumper while T/2 is less than e, and passes beside the vehicle when d is more
 * than W/2.
 */
export const clearance = part({
  parameters: {
    'clear.none': {
      label: 'No room left',
      unit: 'in',
      values: [{ from: '2020-01-01', value: 0 }],
      source: geometry,
    },
  },
  formulas: {
    'turn.room': {
      label: 'Room at a right-angle turn',
      noun: 'the room in a sharp turn',
      unit: 'in',
      is: 'max(hitch.ballBehindBumper - trailer.width / 2, trailer.frontBehindBall - vehicle.width / 2)',
      source: geometry,
    },
    'tailgate.room': {
      label: 'Room behind the open tailgate',
      noun: 'the room behind the tailgate',
      unit: 'in',
      is: 'hitch.ballBehindBumper + trailer.jackBehindBall - vehicle.tailgateReach',
      source: geometry,
    },
  },
  findings: {
    turning: {
      label: 'Sharp turns',
      askedBy: ['trailer.frontBehindBall'],
      care: {
        when: {
          all: [{ fact: 'turn.room', operator: 'lessThan', value: { fact: 'clear.none' } }],
        },
        wrong: 'The trailer’s front corner meets the vehicle before a right angle.',
        do: 'Back up in wide turns, and try it once at walking pace with a helper who watches the corner.',
      },
      open: {
        wrong: 'Whether the trailer’s front corner stays clear in a sharp turn is not known yet.',
        do: 'Try it at walking pace, with a helper.',
      },
      otherwise: 'The trailer’s front corner stays clear of the vehicle up to a right angle.',
      source: geometry,
    },
    tailgate: {
      label: 'Tailgate',
      askedBy: ['vehicle.tailgateReach'],
      care: {
        when: {
          all: [{ fact: 'tailgate.room', operator: 'lessThan', value: { fact: 'clear.none' } }],
        },
        wrong: 'The open tailgate reaches the jack.',
        do: 'Leave it shut while hitched.',
      },
      open: {
        wrong: 'Whether the open tailgate reaches the jack is not known yet.',
        do: 'Open it slowly, by hand, the first time.',
      },
      otherwise: 'The tailgate opens ahead of the jack.',
      source: geometry,
    },
  },
});
