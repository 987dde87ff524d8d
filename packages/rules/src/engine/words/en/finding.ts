import type { Say, Sayable } from '../value';
import { listed, quoted, small } from './grammar';

/** A sentence of more words than these is lost before its end is heard. */
const mostHeard = 24;

/** More alternatives than these nobody keeps in mind. */
const mostAlternatives = 3;

export const finding = {
  'not-asked': () => 'Not asked.',

  /** Several results are possible, and none of them is spoken as if it were so. */
  'hangs-on': (
    { on, of }: { readonly on: Sayable | null; readonly of: readonly Sayable[] },
    say: Say,
  ) => {
    const [first, last] = [of[0], of.at(-1)];
    const isMany = of.length > mostAlternatives && first !== undefined && last !== undefined;
    if (isMany) {
      const ends = `anything from ${quoted(first, say)} to ${quoted(last, say)}`;
      return on === null ? `Still open: ${ends}.` : `The answer hangs on ${say(on)}: ${ends}.`;
    }
    const either = listed(of.map(say), 'or');
    if (on === null) return `Still open: ${either}.`;
    const whole = `The answer hangs on ${say(on)}: ${either}.`;
    // Whoever only hears it loses the end of a long sentence.
    const isLong = say.medium === 'spoken' && whole.split(' ').length > mostHeard;
    return isLong ? `The answer hangs on ${say(on)}. Either ${either}.` : whole;
  },

  perhaps: ({ of }: { readonly of: readonly Sayable[] }, say: Say) =>
    `Perhaps ${of.map((each) => small(say(each))).join(' Or perhaps ')}`,

  all: ({ of }: { readonly of: readonly Sayable[] }, say: Say) => listed(of.map(say)),
};
