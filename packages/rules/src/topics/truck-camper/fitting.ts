import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';

/** How the camper holds in the bed, and whether the bed is long enough for it. */
export const fitting = part({
  findings: {
    'tie-downs': {
      label: 'Tie-downs',
      stop: {
        when: "camper.tieDowns == 'none'",
        wrong: 'The camper is not tied down.',
        because: 'It leaves the bed in a hard turn or stop.',
        do: 'Do not drive it so: tie it down at the points both makers name.',
        proviso: 'the camper is tied down at the points both makers name',
      },
      stopOpen: 'if',
      care: {
        when: "camper.tieDowns == 'bed'",
        wrong: 'The tie-downs hold at the bed.',
        because: 'They can tear its metal.',
        do: 'Use them only where both makers say so, and look at the metal around them.',
      },
      open: {
        wrong: 'Where the tie-downs hold is not known yet.',
        because: 'A camper that is not tied down leaves the bed in a hard turn or stop.',
        do: 'Look before it drives.',
      },
      otherwise: 'The tie-downs hold at the frame.',
      source: custom,
    },
    'bed-length': {
      label: 'Bed length',
      askedBy: ['camper.floorLength'],
      care: {
        when: 'camper.floorLength > vehicle.bedLength',
        wrong:
          'The camper’s floor of {camper.floorLength} is longer than the bed of {vehicle.bedLength}.',
        because: 'The tailgate comes off and the center of gravity moves back.',
        do: 'Ask the camper’s maker whether this bed is allowed, and measure where its mark stands.',
      },
      open: {
        wrong: 'The camper’s floor may be longer than the bed.',
        do: 'Measure the bed inside, tailgate shut.',
      },
      otherwise: 'The camper’s floor is no longer than the bed.',
      source: custom,
    },
  },
});
