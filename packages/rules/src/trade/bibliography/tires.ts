import type { Source } from '../../engine/define/shapes';

/** Where the numbers and reckonings on tires come from. */
export const loadIndices: Source = {
  class: 'published',
  cite: 'ISO 4000-1 / ETRTO',
  section: 'load index',
  note: 'What each load index from 0 to 125 stands for, in kilograms.',
};

export const speedSymbols: Source = {
  class: 'published',
  cite: 'ISO 4000-1 / ETRTO',
  section: 'speed symbol',
  note: 'What speed each symbol stands for, in kilometers an hour.',
};

export const speedSymbolsRemembered: Source = {
  class: 'from-memory',
  cite: 'ISO 4000-1 / ETRTO',
  section: 'speed symbol',
  note: 'N to Y stand so in the published lists; A1 to M are from memory.',
};

export const unmarkedTires: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'Special-trailer tires without a speed symbol are run at 65 mph at the most, unless their maker writes something else.',
};

export const passengerTires: Source = {
  class: 'published',
  cite: '49 CFR 571.120',
  section: 'S5.1.2',
  note: 'Passenger-car tires on trailers, trucks and multipurpose vehicles count with their rating ÷ 1.10; light vehicles by 49 CFR 571.110, section from memory.',
};

export const dateCode: Source = {
  class: 'published',
  cite: '49 CFR 574.5',
  note: 'The tire identification number ends in the week and the year of making; that three digits mean before 2000 is from memory.',
};

export const tireAge: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'A closer look from the fifth year, replaced by the sixth to seventh, whatever the tread.',
};

export const trailerTireAge: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'On a trailer a closer look from the fourth year and replaced by the sixth, on a vehicle from the fifth and by the sixth to seventh, whatever the tread.',
};

export const softTire: Source = {
  class: 'from-memory',
  cite: '29 CFR 1910.177',
  note: 'A tire that ran at 80 % of its pressure or less is taken off and looked into before it is filled; written for large vehicles, from memory, and custom of the trade for all.',
};

export const weighed: Source = {
  class: 'common-practice',
  cite: 'Custom of the trade',
  note: 'A weighed wheel wins over a reckoned one; wheels not weighed count as the reckoning has them.',
};

export const makersRating: Source = {
  class: 'common-practice',
  cite: 'Rating stated by the maker',
  note: 'On the sidewall, the wheel or in the tire maker’s tables; the lowest-rated part counts.',
};

export const calendar: Source = {
  class: 'published',
  cite: 'Gregorian calendar',
  note: 'A mean year has 365.2425 days, 52.1775 weeks.',
};
