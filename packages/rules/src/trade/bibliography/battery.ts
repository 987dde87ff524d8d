import type { Source } from '../../engine/define/shapes';

/** Where the house battery's numbers and reckonings come from. */
export const restingVoltage: Source = {
  class: 'published',
  cite: 'BCI open-circuit voltage table for lead-acid batteries',
  section: 'at 80 °F',
};

export const otherVoltages: Source = {
  class: 'from-memory',
  cite: 'Open-circuit voltage by state of charge, as makers print it',
  note: 'From memory, and makers differ by a tenth of a volt; the battery’s own sheet wins.',
};

export const chosenVoltages: Source = {
  class: 'from-memory',
  cite: 'Voltage table of the battery’s chemistry',
  note: 'Published for flooded batteries (BCI, at 80 °F); from memory for AGM, gel and LiFePO₄.',
};

export const temperatureVoltage: Source = {
  class: 'from-memory',
  cite: 'Temperature correction of a resting voltage',
  note: 'One handbook prints 0.024 V for each 10 °F, the chemistry gives about 0.007 V, and they differ on its sign: it is carried as a range to either side.',
};

export const restHours: Source = {
  class: 'from-memory',
  cite: 'Hours of rest before a voltage is read',
  note: 'From memory; the battery’s own sheet wins.',
};

export const notAtRest: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'How far a voltage that is not at rest may be off; wide on purpose.',
};

export const depthLead: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'Lead-acid, AGM and gel are never taken below half.',
};

export const depthLithium: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'LiFePO₄: 80 to 90 % by maker; the lower figure unless the maker states one.',
};

export const depthAllowed: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'Half for lead-acid, AGM and gel; 80 to 90 % by maker for LiFePO₄.',
};

export const coldCapacity: Source = {
  class: 'from-memory',
  cite: 'Capacity by temperature, as makers print it',
  note: 'From memory, rounded; the battery’s own sheet wins.',
};

export const circuits: Source = {
  class: 'published',
  cite: 'Ohm’s and Kirchhoff’s laws',
  note: 'Series adds volts, parallel adds ampere-hours; power is volts times amperes.',
};

export const peukertLaw: Source = {
  class: 'published',
  cite: 'Peukert’s law in its rated-hour form',
  note: 't = H·(C/(I·H))^k; below the rated current C/H never more than the rated capacity is granted.',
};

export const peukertExponents: Source = {
  class: 'from-memory',
  cite: 'Peukert exponents by chemistry',
  note: 'From memory: flooded 1.2 to 1.5, AGM 1.05 to 1.2, gel 1.1 to 1.3, carried as ranges; a maker’s own exponent wins.',
};

export const chargeHabits: Source = {
  class: 'from-memory',
  cite: 'Charging of lead-acid and LiFePO₄ batteries',
  note: 'Efficiency, acceptance and where the current begins to taper; from memory, the maker’s figures win.',
};

export const taper: Source = {
  class: 'house',
  cite: 'Choice of the dealer',
  note: 'The current falls in proportion to what is missing once absorption begins: an exponential, as a simple model of it.',
};

export const mathematics: Source = { class: 'published', cite: 'Exponential and logarithm' };

export const energyBalance: Source = {
  class: 'published',
  cite: 'Balance of charge',
  note: 'What was there, and what came in, less what was taken, is what is left.',
};

export const sunShape: Source = {
  class: 'published',
  cite: 'Height of the sun by latitude, day and hour',
  note: 'Only the shape of the day is taken from it; the peak-sun hours give its size.',
};

export const definition: Source = {
  class: 'published',
  cite: 'NIST SP 811',
  section: 'hour and day',
};

export const dataPlate: Source = {
  class: 'common-practice',
  cite: 'Rating stated by the maker',
  note: 'On the part itself or in its manual.',
};

export const ampacityTable: Source = {
  class: 'from-memory',
  cite: 'NEC table 310.16, copper, 75 °C',
  note: 'From memory; 16 to 10 AWG by the small-conductor rule of 240.4(D). The wire’s own rating, its insulation and where it runs decide.',
};

export const freezingTable: Source = {
  class: 'from-memory',
  cite: 'Freezing point of battery acid by state of charge',
  note: 'From memory, rounded; tables differ by several degrees.',
};

export const makersManual: Source = {
  class: 'common-practice',
  cite: 'Makers’ manuals',
  note: 'Battery, charger and inverter: that very part’s manual wins.',
};

export const lithiumCold: Source = {
  class: 'common-practice',
  cite: 'Makers’ manuals for LiFePO₄ batteries',
  note: 'Charging with cells below freezing plates lithium and ruins them.',
};

export const chargeVolts: Source = {
  class: 'from-memory',
  cite: 'Largest charging voltage by chemistry, as makers print it',
  note: 'From memory: about 14.6 V for LiFePO₄, 15 V for flooded outside an equalizing charge; the battery’s own manual wins.',
};

export const lithiumColdest: Source = {
  class: 'from-memory',
  cite: 'Working range of LiFePO₄, as makers print it',
  note: 'From memory: below −20 °C it neither charges nor discharges.',
};

export const labelVolts: Source = {
  class: 'common-practice',
  cite: 'Labels in watt-hours',
  note: 'Watt-hours of a label are its ampere-hours times the nominal voltage of its cells: 12 V for lead, 12.8 V for four cells of LiFePO₄.',
};

export const absorptionTime: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade: absorption',
  note: 'A lead battery takes 8 to 12 hours from half to full, whatever the charger.',
};

export const deadCell: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade: a battery with a dead cell',
  note: 'Five of six cells at rest after a full charge show about 10.5 V; how far above that still means it is a choice of the dealer.',
};

export const selfDischarge: Source = {
  class: 'from-memory',
  cite: 'Self-discharge of batteries, a month',
  note: 'From memory: flooded 5 to 15 %, AGM and gel 1 to 3 %, LiFePO₄ 1 to 3 %; faster in the heat.',
};

export const interrupting: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade: main fuse of a lithium bank',
  note: 'A short circuit of LiFePO₄ is thousands of amperes; a fuse of class T breaks it. The battery’s and the fuse’s data sheets decide.',
};

export const alternators: Source = {
  class: 'common-practice',
  cite: 'Makers’ manuals of LiFePO₄ batteries and tow vehicles',
  note: 'A lithium bank takes all that an alternator gives until it overheats: a DC-DC charger goes between.',
};
