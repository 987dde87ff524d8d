import type { Change } from '../../engine/define/changes';
import { custom } from '../../trade/bibliography/common';
import { orderSheet } from '../../trade/bibliography/options-fit';

const without = (fact: string, says: string): Change => ({
  kind: 'set',
  fact,
  to: { option: 'no' },
  says,
  asks: 4,
  onlyIf: { fact, is: 'yes' },
  source: orderSheet,
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
  without('wish.generator', 'Order it without the generator.'),
  without('wish.secondBattery', 'Order it without the second battery.'),
  without('wish.outsideKitchen', 'Order it without the outside kitchen.'),
  without('wish.recliners', 'Order it with another seat than the two recliners.'),
  without('wish.lithiumBank', 'Order it without the lithium bank.'),
  without('wish.secondRoofAir', 'Order it without the second air conditioner.'),
  without('wish.doubleGlazing', 'Order it without the double-glazed windows.'),
  without('wish.bicycleRack', 'Order it without the bicycle rack.'),
  without('wish.spareOnBumper', 'Order it without the spare tire on the rear.'),
  without('wish.roofRack', 'Order it without the roof rack.'),
];
