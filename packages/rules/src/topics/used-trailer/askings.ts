import type { Asking } from '../../engine/define/shapes';

/** What people ask about a used trailer. */
export const askings = {
  look: {
    label: 'What do I look at, and in which order?',
    results: ['round'],
  },
  cost: {
    label: 'What must be spent before the first trip?',
    results: ['first.cost', 'offer.most', 'finding.price'],
    impliedBy: ['price.asked', 'price.dry'],
    says: 'Before the first trip {first.cost} must be spent.',
  },
  walk: {
    label: 'Do I walk away?',
    results: ['verdict'],
    impliedBy: ['frame.state', 'soft.zones', 'structure.moves', 'title.state', 'gas.tested'],
    says: [
      { when: 'walk.isOn', says: 'Walk away: that is no matter of price.' },
      {
        when: 'walk.isOff',
        says: 'No: frame, floor, walls and title are such that it need not end there; the rest is a price.',
      },
      {
        says: 'A cracked frame, more than one soft zone, a title that is branded, missing or another’s, or gas that leaks while the seller shrugs: then walk away.',
      },
    ],
  },
} satisfies Record<string, Asking>;
