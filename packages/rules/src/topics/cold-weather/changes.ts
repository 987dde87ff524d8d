import type { Change } from '../../engine/define/changes';
import { frostCustom } from '../../trade/bibliography/cold-weather';
import { custom } from '../../trade/bibliography/common';

/** What a person can change of a cold night; never a rating, and never less heat. */
export const changes: readonly Change[] = [
  {
    kind: 'less',
    fact: 'inside.humidity',
    step: 5,
    says: 'Bring the humidity down to {to} from {from}: a roof vent a little open, lids on pots, wet clothes out.',
    asks: 1,
    source: custom,
  },
  {
    kind: 'less',
    fact: 'trip.nights',
    step: 1,
    says: 'Refill after {to} nights instead of {from}.',
    asks: 4,
    source: custom,
  },
  {
    kind: 'set',
    fact: 'power.hookup',
    to: { option: 'yes' },
    says: 'Take a site with shore power, so that the converter keeps the battery full.',
    asks: 3,
    source: custom,
  },
  {
    kind: 'set',
    fact: 'battery.recharged',
    to: { option: 'yes' },
    says: 'Charge the battery full every day: a generator outdoors for some hours, or the tow vehicle.',
    asks: 3,
    source: custom,
  },
  {
    kind: 'set',
    fact: 'water.state',
    to: { option: 'drained' },
    says: 'Drain tanks and lines, blow them out, and carry drinking water inside.',
    asks: 5,
    source: frostCustom,
  },
  {
    kind: 'set',
    fact: 'water.state',
    to: { option: 'winterized' },
    says: 'Winterize it: heater drained, bypassed and off, then blow the lines out or fill the lines with propylene glycol antifreeze made for drinking water.',
    asks: 5,
    source: frostCustom,
  },
  {
    kind: 'set',
    fact: 'heat.portable',
    to: { option: 'no' },
    says: 'Heat with the built-in furnace alone.',
    asks: 6,
    source: custom,
  },
];
