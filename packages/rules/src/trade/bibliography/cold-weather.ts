import type { Source } from '../../engine/define/shapes';

/** Where cold weather's own numbers and reckonings come from; the rest is gas supply's and the battery's. */
export const conduction: Source = {
  class: 'published',
  cite: 'Steady heat loss, UA × temperature difference',
  note: 'Any textbook of heat transfer. Warmth from people, lamps and cooking is left out, which is on the safe side.',
};

export const shellValues: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'What walls, floor and roof of a trailer lose, as a wide range: framing and gaps count more than the insulation’s label. A night of your own tells better.',
};

export const airChange: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'How often an hour the air inside is changed, roof vent a little open.',
};

export const airHeat: Source = {
  class: 'published',
  cite: 'Heat of air, 0.018 Btu for a cubic foot and degree',
  note: '0.075 lb/ft³ times 0.24 Btu/lb/°F, as in air-conditioning handbooks.',
};

export const glassValues: Source = {
  class: 'from-memory',
  cite: 'U of single and double glazing, and of still air at a wall, as ASHRAE’s handbook has them',
  note: 'From memory: 1.04, 0.55 and 1.46 Btu/h/ft²/°F, frames left out.',
};

export const ownNight: Source = {
  class: 'published',
  cite: 'Balance of energy',
  note: 'The gas that held the warmth in a night of your own, over its hours and degrees.',
};

export const furnaceEfficiency: Source = {
  class: 'from-memory',
  cite: 'Output over input of small gas furnaces',
  note: 'From memory, 72 to 82 %; input and output stand on the data plate, and win.',
};

export const freezing: Source = {
  class: 'published',
  cite: 'Freezing point of water',
};

export const frostCustom: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'When water is drained and when a trailer is winterized; its maker’s manual wins.',
};

export const dewFormula: Source = {
  class: 'from-memory',
  cite: 'Dew point by the eighth root of the relative humidity',
  note: 'An approximation good to a degree or so between freezing and room warmth; from memory, checked against the Magnus formula.',
};

export const inches: Source = { class: 'published', cite: 'Geometry of a box' };

export const celsius: Source = {
  class: 'published',
  cite: 'NIST SP 811',
  section: 'appendix B.8, degree Celsius',
};

export const heaterCustom: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade, after the makers’ manuals',
  note: 'The water heater is drained and bypassed before antifreeze goes in, and its element is off before it is dry.',
};

export const antifreezeCustom: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade, after the makers’ manuals',
  note: 'Only antifreeze of propylene glycol, made for drinking water; that for engines is poison.',
};
