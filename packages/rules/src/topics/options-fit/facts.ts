import { yard } from 'virtual:yard';
import type { YesNoFact } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';

const wished = ([option, fact]: [string, string]): [string, YesNoFact] => {
  const label = yard.options[option]?.label ?? option;
  return [
    fact,
    {
      kind: 'yes-no',
      label,
      noun: label.toLowerCase(),
      ask: 'Is it wanted, or wanted left out?',
      where: 'told by the buyer; not said, either will do',
    },
  ];
};

/** One for each option of the catalogue: yes, it must be there; no, it must not. */
const wishes: Readonly<Record<string, YesNoFact>> = Object.fromEntries(
  Object.entries(yard.wishes).map(wished),
);

/** Which floor plan, of which model year, and what the buyer wants on it. */
export const orderFacts = part({
  facts: {
    'plan.name': {
      kind: 'choice',
      options: Object.keys(yard.models),
      label: 'Floor plan',
      noun: 'the floor plan',
      ask: 'Which floor plan do you mean?',
      where: 'the order sheet',
    },
    'plan.year': {
      kind: 'choice',
      options: yard.years,
      label: 'Model year',
      noun: 'the model year',
      ask: 'Of which model year?',
      where: 'the order sheet; a trailer on the lot has it on its label',
      means: 'Not the year it is sold in: last year’s model may still stand on the lot.',
    },
    ...wishes,
  },
});
