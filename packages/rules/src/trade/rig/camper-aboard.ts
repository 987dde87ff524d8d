import { part } from '../../engine/define/topic';
import { camperLabel, camperLoading } from '../bibliography/truck-camper';

/** What a camper in the bed means where something is towed, and nobody weighed it. */
export const camperAboard = part({
  formulas: {
    'camper.isWeighed': {
      label: 'It is known what the camper weighs',
      unit: 'yes-no',
      is: 'known(camper.weight)',
      source: camperLabel,
    },
  },
  findings: {
    'camper-weight': {
      label: 'Camper that nobody weighed',
      first: true,
      askedWhen: 'camper.isTold',
      unknown: {
        when: '!camper.isWeighed',
        wrong: 'The camper in the bed counts as cargo, and its weight is not known yet.',
        because:
          'It takes from the payload, the rear axle and the combined rating before any tongue does.',
        do: 'Read its label, add its options and what is packed in it, or weigh the loaded truck.',
      },
      otherwise: 'It is told what the camper in the bed weighs.',
      source: camperLoading,
    },
  },
});
