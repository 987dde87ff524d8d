import type { Quantity, Say, Sayable } from '../value';
import { listed, quoted } from './grammar';

/** The words of an outcome go into no sentence, so they are told apart from it. */
const then = (answer: Sayable, say: Say): string => `the answer is ${quoted(answer, say)}`;

const whatever = (always: boolean): string => (always ? ', whatever else is found' : '');

export const missing = {
  'not-known': () => 'unknown',
  decides: (
    values: {
      readonly of: readonly Sayable[];
      /** Where it tips; null where that cannot be told. */
      readonly tip: Sayable | null;
      /** Facts with which alone it decides. */
      readonly together: readonly Sayable[];
    },
    say: Say,
  ) => {
    const names = listed(values.of.map((each) => quoted(each, say)));
    // More than two names in a line, and nobody asks for any.
    const isMany = values.together.length > 2;
    const partners = isMany ? 'other figures' : listed(values.together.map(say));
    const tip = values.tip ? say(values.tip) : '';
    if (partners === '') return `Decides ${names}${tip === '' ? '' : `: ${tip}`}.`;
    return tip === ''
      ? `Decides ${names} only together with ${partners}.`
      : `Decides ${names} together with ${partners}: ${tip}.`;
  },

  /** “above 484 lb the answer is “does not fit”” */
  'tips-at': (
    values: {
      readonly at: Quantity;
      readonly above: boolean;
      readonly answer: Sayable;
      readonly always: boolean;
    },
    say: Say,
  ) => {
    const side = values.above ? 'above' : 'below';
    return `${side} ${say(values.at)} ${then(values.answer, say)}${whatever(values.always)}`;
  },

  'tips-between': (
    values: {
      readonly holds: Quantity;
      readonly stops: Quantity;
      readonly above: boolean;
      readonly answer: Sayable;
    },
    say: Say,
  ) => {
    const { holds, stops, above, answer } = values;
    const [near, side] = above ? ['up to', 'above'] : ['from', 'below'];
    return `${near} ${say(holds)} it holds and ${side} ${say(stops)} ${then(answer, say)}${whatever(true)}`;
  },

  /** Between two counts there is none: “1 or fewer”, “3 or more”. */
  'tips-count': (
    values: {
      readonly count: number;
      readonly above: boolean;
      readonly answer: Sayable;
      readonly always: boolean;
    },
    say: Say,
  ) => {
    const { count, above, answer, always } = values;
    const more = above ? ' or more' : count > 1 ? ' or fewer' : '';
    return `with ${count}${more} ${then(answer, say)}${whatever(always)}`;
  },

  'tips-with': (
    values: {
      readonly of: readonly Sayable[];
      /** Whether these are the options that would not stop it. */
      readonly others: boolean;
      readonly answer: Sayable;
    },
    say: Say,
  ) => {
    const named = listed(
      values.of.map((each) => quoted(each, say)),
      'or',
    );
    return `with ${values.others ? 'anything but ' : ''}${named} ${then(values.answer, say)}`;
  },
};
