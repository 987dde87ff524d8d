import type { Source } from '../../engine/define/shapes';

/** Where shore power's numbers and reckonings come from. */
export const circuits: Source = {
  class: 'published',
  cite: 'Ohm’s and Kirchhoff’s laws',
  note: 'Power is volts times amperes; a neutral carries the difference of its two legs.',
};

export const siteSupply: Source = {
  class: 'published',
  cite: 'NEC 551.73',
  note: 'A 30 A site is reckoned at 3,600 VA and a 20 A site at 2,400 VA, that is 120 V times its amperes; the 12,000 VA of a 50 A, 120/240 V site are from memory.',
};

export const lastingLoads: Source = {
  class: 'from-memory',
  cite: 'NEC 210.19 and 210.20',
  note: 'From memory: a load that lasts three hours or more is continuous, and is counted at 125 %, that is, a circuit carries 80 % of its rating.',
};

export const cordTable: Source = {
  class: 'from-memory',
  cite: 'NEC table 400.5(A)(1), flexible cords with two current-carrying wires',
  note: 'From memory; the amperes printed on the cord itself win.',
};

export const dropAdvice: Source = {
  class: 'from-memory',
  cite: 'NEC 210.19, informational note',
  note: 'From memory: 3 % on a branch circuit and 5 % in all are advised, not demanded.',
};

export const thinAir: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'A gasoline generator loses 3.5 % of its power for every 1,000 ft.',
};

export const lowVolts: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade: motors want their voltage within 10 % of what the plate says',
  note: '108 V of 120 V; what the compressor’s own plate says wins.',
};

export const lowestVolts: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'Below it a compressor is shut off; what its own plate says wins.',
};

export const highVolts: Source = {
  class: 'from-memory',
  cite: 'Ten per cent over 120 V',
  note: 'From memory: supply standards end at 127 V, and no appliance is made for more than about 132 V.',
};

export const neutralSigns: Source = {
  class: 'common-practice',
  cite: 'Custom of electricians',
  note: 'With the neutral open the two legs divide 240 V between them by what they carry.',
};

export const neutralSpread: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'How far two legs may differ before the neutral is doubted.',
};

export const exhaust: Source = {
  class: 'from-memory',
  cite: 'Public advice on carbon monoxide: a generator outdoors, 20 ft from any opening',
  note: 'From memory.',
};

export const outlets: Source = {
  class: 'from-memory',
  cite: 'Plug and outlet patterns of NEMA WD 6',
  note: 'From memory: trailer 30 A is TT-30, 120 V; four-pin 50 A is 14-50, 120/240 V; dryer 10-30 or 14-30 and welder 6-50 give 240 V between their blades.',
};

export const breakers: Source = {
  class: 'from-memory',
  cite: 'NEC 210.21 and 240.4',
  note: 'From memory: a breaker protects outlet and wire alike; several 15 A outlets may hang on one of 20 A.',
};

export const cordBehind: Source = {
  class: 'from-memory',
  cite: 'NEC 240.4(D) and 240.5',
  note: 'From memory: 10 AWG behind 30 A, 6 AWG behind 50 A; a listed set of 16 or 14 AWG is permitted behind 15 and 20 A for what it is rated to carry. What is printed on the cord wins.',
};

export const bonding: Source = {
  class: 'from-memory',
  cite: 'NEC 551.54 and 250.34',
  note: 'From memory: the neutral stays unbonded in the trailer; it is bonded at the service or, on a generator of its own, there alone.',
};
