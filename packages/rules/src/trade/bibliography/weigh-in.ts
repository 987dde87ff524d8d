import type { Source } from '../../engine/define/shapes';

export const printedSteps: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'Public scales commonly print in steps of 20 lb: a figure stands for ten pounds either way.',
};

export const intervals: Source = {
  class: 'published',
  cite: 'Interval arithmetic',
  note: 'A difference of two rounded figures is off by as much as both together; any textbook.',
};
