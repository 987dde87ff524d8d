import type { Change } from '../../engine/define/changes';
import { looked, walkRule } from '../../trade/bibliography/used-trailer';

/** What a buyer can do; nothing of what was seen is talked away. */
export const changes: readonly Change[] = [
  {
    kind: 'set',
    fact: 'gas.sellerMends',
    to: { option: 'yes' },
    says: 'Have the seller mend the leak and show a licensed shop’s test before you pay.',
    asks: 2,
    source: walkRule,
  },
  {
    kind: 'less',
    fact: 'price.asked',
    step: 100,
    says: 'Offer {to} instead of {from}.',
    asks: 1,
    source: looked,
  },
];
