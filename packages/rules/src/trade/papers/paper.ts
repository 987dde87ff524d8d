import { part } from '../../engine/define/topic';
import { recalls, warrantyBooklet } from '../bibliography/service-triage';

/** Warranty and recall: who pays, and who must be asked before anyone touches it. */
export const paper = part({
  facts: {
    'trailer.owned': {
      kind: 'quantity',
      unit: 'yr',
      least: 0,
      most: 60,
      label: 'Since the day of sale',
      noun: 'the time since the sale',
      ask: 'When was the trailer sold new?',
      where: 'bill of sale, or the registration card of the warranty',
    },
    'warranty.length': {
      kind: 'quantity',
      unit: 'yr',
      least: 0,
      most: 20,
      exact: true,
      label: 'Warranty on that part',
      noun: 'the warranty',
      ask: 'How long does the booklet give on that part?',
      where: 'warranty booklet; chassis, appliances and tires have makers of their own',
    },
    'recall.found': {
      kind: 'choice',
      options: ['none', 'open', 'do-not-drive'],
      label: 'Open recall',
      noun: 'whether a recall is open',
      ask: 'Is a recall open on the trailer, by its identification number?',
      where:
        'the government’s recall site, or the maker; the number is on the label at the front left',
      silent: {
        value: 'none',
        says: 'No open recall counted; it was not looked up yet.',
        source: recalls,
      },
    },
  },
  formulas: {
    'warranty.left': {
      label: 'Warranty left',
      noun: 'what is left of the warranty',
      unit: 'yr',
      is: 'max(0, warranty.length - trailer.owned)',
      source: warrantyBooklet,
    },
    'warranty.runs': {
      label: 'Warranty still runs',
      unit: 'yes-no',
      is: '(given(warranty.length) || given(trailer.owned)) && trailer.owned <= warranty.length',
      source: warrantyBooklet,
    },
    'warranty.asksFirst': {
      label: 'The warranty is asked before anyone works on it',
      unit: 'yes-no',
      is: "warranty.runs && trouble.degree != 'upkeep'",
      source: warrantyBooklet,
    },
  },
  findings: {
    warranty: {
      label: 'Warranty',
      askedBy: ['warranty.length', 'trailer.owned'],
      care: {
        when: 'warranty.asksFirst',
        wrong: 'The warranty still runs.',
        because: 'Work done without the maker’s consent may not be paid.',
        do: 'Ask who must agree before anyone works on it, you included, and keep what you write and pay.',
      },
      otherwise:
        'The warranty does not decide it: it has run out, or this is upkeep, which is the owner’s.',
      open: {
        wrong: 'The warranty may still run.',
        do: 'Look at the day of sale and the booklet before anyone works on it.',
      },
      source: warrantyBooklet,
    },
    recall: {
      label: 'Open recall',
      noun: 'whether a recall is open',
      askedBy: ['recall.found'],
      stop: {
        when: "recall.found == 'do-not-drive'",
        wrong: 'The recall says not to drive or use it until it is mended.',
        do: 'Leave it where it is; the maker comes, or has it fetched.',
      },
      care: {
        when: "recall.found == 'open'",
        wrong: 'A recall is open on it.',
        because: 'It is mended free of charge, warranty or not.',
        do: 'Book it with a dealer of that make.',
      },
      otherwise: 'No recall is open on it.',
      open: {
        wrong: 'Whether a recall is open is not known.',
        do: 'Look it up by the identification number; it takes a minute.',
      },
      source: recalls,
    },
  },
});
