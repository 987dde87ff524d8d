import type { Source } from '../../engine/define/shapes';

/** Where the numbers and reckonings of towing on battery or hybrid come from. */
export const roadLoad: Source = {
  class: 'published',
  cite: 'Road load of a vehicle',
  section: 'Moran and Shapiro, 8th ed., problem 2.23',
  note: 'Rolling resistance, air drag and grade, as any textbook of vehicle dynamics has them.',
};

export const mechanics: Source = {
  class: 'published',
  cite: 'Mechanics',
  note: 'Work is force times distance, power is work over time.',
};

export const energyBalance: Source = {
  class: 'published',
  cite: 'Balance of energy',
  note: 'What was there, and what came in, less what was taken, is what is left.',
};

export const standardAir: Source = {
  class: 'published',
  cite: 'ISO 2533',
  note: 'Standard atmosphere, and the gas law where a temperature is told.',
};

export const standardGravity: Source = {
  class: 'published',
  cite: 'NIST SP 811',
  section: 'appendix B.8',
  note: 'A pound weighs one pound-force at standard gravity, 9.80665 m/s².',
};

export const gallonEquivalent: Source = {
  class: 'published',
  cite: 'EPA',
  note: '33.7 kWh for each gallon of gasoline.',
};

export const rollingTable: Source = {
  class: 'published',
  cite: 'Rolling resistance on concrete, road-vehicle textbook',
  note: 'Cars 0.015, trucks 0.012.',
};

export const rollingLow: Source = {
  class: 'from-memory',
  cite: 'Rolling resistance of tires made to roll easily',
  note: 'From memory; the tire’s own figure wins.',
};

export const dragHabits: Source = {
  class: 'from-memory',
  cite: 'Drag areas of vehicles and what a trailer adds behind one',
  note: 'From memory and wide, carried as a range; a trial drive with the trailer is better.',
};

export const driveHabits: Source = {
  class: 'from-memory',
  cite: 'Efficiency of electric drives and of engines',
  note: 'From memory, carried as a range; the vehicle’s known consumption without a trailer is better.',
};

export const coldHabits: Source = {
  class: 'from-memory',
  cite: 'Traction batteries and cabins in the cold and the heat',
  note: 'From memory, rounded; a pack warmed at the plug loses less.',
};

export const makersManual: Source = {
  class: 'common-practice',
  cite: 'Makers’ manuals',
  note: 'That very vehicle’s manual wins.',
};

export const display: Source = {
  class: 'common-practice',
  cite: 'The vehicle’s own display',
  note: 'What it used on a drive whose speed is known.',
};

export const towingRule: Source = {
  class: 'from-memory',
  cite: 'What towing takes beside driving alone',
  note: 'From memory and wide: a low, light trailer a third to a half more, a tall one two and a half times and more; twenty miles with the trailer on tell better.',
};
