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
        when: 'warranty.runs && work.any',
        wrong: 'The warranty still runs.',
        because: 'An alteration may end it for what it touches.',
        do: 'Ask the trailer’s maker in writing whether this, fitted by these hands, does.',
      },
      otherwise: 'The warranty has run out, or nothing it covers is touched.',
      open: {
        wrong: 'The warranty may still run.',
        do: 'Look at the day of sale and the booklet before anything is opened.',
      },
      source: warrantyBooklet,
    },
    reversible: {
      label: 'Can it be undone',
      askedBy: ['addon.kind', 'touches.structure', 'touches.roof'],
      care: {
        when: 'work.stays',
        wrong: 'The change cannot be undone.',
        because: 'A hole in roof or structure stays a hole.',
        do: 'Keep drawing, sealant and bill for the next owner.',
      },
      otherwise: 'It can be taken out again.',
      open: { wrong: 'Whether it leaves a hole is not told.' },
      source: custom,
    },
  },
});
