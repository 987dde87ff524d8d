import type { Quantity, Say, Sayable } from '../value';

export const house = {
  'known-to-change': (
    values: {
      readonly label: Sayable;
      readonly day: string;
      readonly is: Quantity;
      readonly until: string | null;
      readonly from: string | null;
      readonly later: Quantity | null;
    },
    say: Say,
  ) => {
    const { label, day, is, until, from, later } = values;
    const ends = until === null ? [] : [`this holds until ${until}`];
    const after =
      from === null || later === null
        ? 'no later value is known'
        : `from ${from} it is ${say(later)}`;
    return `${say(label)}: ${say(is)} on ${day}; ${[...ends, after].join(', and ')}.`;
  },

  'house-instead': (
    values: {
      readonly label: Sayable;
      readonly is: Quantity;
      readonly instead: Quantity;
      readonly reason: Sayable;
    },
    say: Say,
  ) =>
    `${say(values.label)}: ${say(values.is)} instead of ${say(values.instead)}. ${say(values.reason)}`,
};
