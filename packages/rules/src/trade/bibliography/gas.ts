import type { Source } from '../../engine/define/shapes';

/** Where gas supply's numbers and reckonings come from. */
export const fillingDensity: Source = {
  class: 'published',
  cite: '29 CFR 1910.110',
  section: '(b)(12)',
  note: 'A cylinder is filled by weight: 42 % of the water it would hold, so 47.6 lb of water make 20 lb of propane. The section’s number is from memory.',
};

export const propaneTables: Source = {
  class: 'published',
  cite: 'LP-gas property tables, as in the annex of NFPA 58',
  note: '21,548 Btu/lb, 91,502 Btu/gal, 4.20 lb/gal at 60 °F; they do not multiply out exactly, so pounds are reckoned per pound and gallons per gallon.',
};

export const tankFill: Source = {
  class: 'published',
  cite: 'NFPA 58',
  note: 'A tank rated in gallons of water is filled to 80 % of its volume; the place in the standard is not looked up.',
};

export const weighing: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'On the scale, less the tare stamped on the collar.',
};

export const balance: Source = {
  class: 'published',
  cite: 'Balance of energy',
  note: 'Input in Btu/h, times the hours it burns.',
};

export const boilRule: Source = {
  class: 'from-memory',
  cite: 'Rule for vaporization from a tank: diameter × length × K × temperature factor',
  note: 'Common practice, its figures from memory; made for tanks of hundreds of gallons, so for a cylinder an order of magnitude; above 20 °F its straight line is carried on, and it ends at −20 °F, where that line does. A maker’s table wins.',
};

export const boilSpread: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'How far the rule may be off for a small cylinder, either way.',
};

export const usualSizes: Source = {
  class: 'from-memory',
  cite: 'Usual size of a steel cylinder by its rated pounds',
  note: 'From memory, the shell without collar and foot ring, twenties taken from 19 lb on; a tape on the cylinder wins.',
};

export const vaporPressure: Source = {
  class: 'published',
  cite: 'Vapor pressure of pure propane, by CoolProp 8.0.0',
  note: 'Zero at the normal boiling point, about −44 °F. Propane as sold is a mixture and differs; pressure alone does not tell whether enough boils off.',
};

export const pipeTable: Source = {
  class: 'published',
  cite: 'NFPA 54, sizing of propane pipe at 11 inWC with a drop of 0.5 inWC',
  section: 'as printed in an appliance manual: 60 ft',
};

export const pipeLaw: Source = {
  class: 'from-memory',
  cite: 'Low-pressure pipe equation of NFPA 54',
  note: 'Capacity goes with length to the power −0.206 ÷ 0.381; exponents from memory.',
};

export const connectionCustom: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade, after the makers’ manuals',
  note: 'What the appliance’s data plate asks for at its inlet decides; in doubt it is not connected until it is identified.',
};

export const datesFromMemory: Source = {
  class: 'from-memory',
  cite: 'Requalification of cylinders, 49 CFR 180.209',
  note: 'From memory: 12 years from the making; after a requalification 12 years, 7 with the suffix S (newer texts may say 10: the shorter is carried), 5 with the suffix E. The mark on the collar and the filler decide.',
};

export const regulatorLife: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'Makers of regulators name ten to fifteen years, from memory; the shorter is taken, and what the maker of that very one writes wins.',
};

export const alarmDates: Source = {
  class: 'from-memory',
  cite: 'Life of gas and carbon monoxide alarms, as makers print it',
  note: 'From memory; the date printed on the alarm itself wins.',
};
