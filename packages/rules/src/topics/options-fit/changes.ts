import { yard } from 'virtual:yard';
import type { Change } from '../../engine/define/changes';
import { custom } from '../../trade/bibliography/common';
import { orderSheet } from '../../trade/bibliography/options-fit';

const wish = (fact: string, from: 'yes' | 'no', says: string): Change => ({
  kind: 'set',
  fact,
  to: { option: from === 'yes' ? 'no' : 'yes' },
  says,
  asks: 4,
  onlyIf: { fact, is: from },
  source: orderSheet,
});

/** Each wish given up, and each that was to be left out taken after all. */
const wishes: readonly Change[] = Object.entries(yard.wishes).flatMap(([option, fact]) => {
  const label = yard.options[option]?.label ?? option;
  const inside = label.charAt(0).toLowerCase() + label.slice(1);
  return [
    wish(fact, 'yes', `Order it without this: ${inside}.`),
    wish(fact, 'no', `Take this after all: ${inside}.`),
  ];
});

/** What a buyer can change of an order and its load; never a rating. */
export const changes: readonly Change[] = [
  {
    kind: 'leave',
    fact: 'trailer.cargo',
    column: 'weight',
    says: 'Leave {row} at home.',
    asks: 1,
    source: custom,
  },
  {
    kind: 'leave',
    fact: 'load.cargo',
    column: 'weight',
    says: 'Leave {row} at home.',
    asks: 1,
    source: custom,
  },
  {
    kind: 'less',
    fact: 'trailer.freshWater',
    step: 1,
    says: 'Carry {to} of fresh water instead of {from}; fill up where you camp.',
    asks: 2,
    source: custom,
  },
  ...wishes,
];
