import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { warrantyBooklet } from '../../trade/bibliography/retrofit';
import { paper as triage } from '../../trade/papers/paper';

/** Warranty, and whether it can be undone. */
export const paper = part({
  facts: {
    'trailer.owned': triage.facts['trailer.owned'],
    'warranty.length': triage.facts['warranty.length'],
  },
  formulas: {
    'warranty.runs': triage.formulas['warranty.runs'],
    'warranty.left': triage.formulas['warranty.left'],
  },
  findings: {
    warranty: {
      label: 'Warranty',
      askedBy: ['trailer.owned', 'warranty.length'],
      care: {
        when: {
          all: [
            { fact: 'warranty.runs', operator: 'equal', value: 'yes' },
            { fact: 'work.any', operator: 'equal', value: 'yes' },
          ],
        },
        wrong: 'The warranty still runs.',
        do: 'Ask its maker in writing whether this, fitted by these hands, ends it for what it touches.',
      },
      otherwise: 'The warranty has run out, or nothing it covers is touched.',
      open: {
        wrong: 'The warranty may still run.',
        do: 'Look at the day of sale and the booklet first.',
      },
      source: warrantyBooklet,
    },
    reversible: {
      label: 'Can it be undone',
      care: {
        when: { all: [{ fact: 'work.stays', operator: 'equal', value: 'yes' }] },
        wrong: 'It cannot be undone.',
        do: 'A hole in roof or structure stays a hole. Keep drawing, sealant and bill for whoever owns it next.',
      },
      otherwise: 'It can be taken out again.',
      source: custom,
    },
  },
});
