import { part } from '../../engine/define/topic';
import { manual } from '../../trade/bibliography/common';

/** What people do when they are cold, and must not. */
export const flames = part({
  facts: {
    'heat.portable': {
      kind: 'yes-no',
      label: 'A stove or portable gas heater warms the sleeping space',
      ask: 'Is anything with a flame but the furnace used to keep warm?',
      where: 'told by the owner',
    },
  },
  findings: {
    'portable-heat': {
      label: 'Flames for warmth',
      first: true,
      askedBy: ['heat.portable'],
      stop: {
        when: { all: [{ fact: 'heat.portable', operator: 'equal', value: 'yes' }] },
        wrong: 'Never heat a sleeping space with a stove or a portable gas heater.',
        do: 'They use up the air and give off carbon monoxide, which kills sleepers. Only the built-in furnace with its own flue.',
      },
      otherwise: 'Nothing with a flame but the furnace warms it.',
      open: {
        wrong: 'Make sure that nothing with a flame but the furnace warms the sleeping space.',
      },
      source: manual,
    },
  },
});
