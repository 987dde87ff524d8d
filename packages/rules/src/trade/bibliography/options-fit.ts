import type { Source } from '../../engine/define/shapes';

/** Where the numbers and reckonings of options-fit come from. */
export const catalogueOfTheYard: Source = {
  class: 'invented',
  cite: 'The catalogue of Sallowbridge Trailers, Marrow Vale',
  note: 'Made up for demonstration: no such trailer and no such option exists.',
};

export const propositions: Source = {
  class: 'published',
  cite: 'Propositional logic',
  note: 'Requires is an implication, excludes is not both; a build is a setting in which every rule holds. Any textbook of logic.',
};

export const orderSheet: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'The order sheet of that very model year decides what is standard, optional and not offered.',
};

export const dryWeightMeans: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'A brochure’s dry weight counts standard equipment and no options.',
};
