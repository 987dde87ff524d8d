import type { Quantity, Say, Sayable } from '../value';
import { capital, inLetters, listed, spaced } from './grammar';

/** “runs” of one thing, “run” of several. */
const agrees = (several: boolean, one: string, more: string): string => (several ? more : one);

/** What is loaded goes over; a rating does not, it is exceeded. */
const over = (exceeded: boolean): string => (exceeded ? 'exceeded' : 'over');

type Limits = { readonly names: readonly Sayable[]; readonly several: boolean };

/** So many in one sentence. */
const mostAtOnce = 2;

/** A sentence of more words than these is lost before its end is heard. */
const mostInOne = 20;

const ordinal = ['First', 'Second', 'Third', 'Fourth', 'Fifth', 'Sixth', 'Seventh', 'Eighth'];

/**
 * What a verdict hangs on, as it is heard: in one sentence where that is short, else one by one, and
 * all of them: whoever goes by it has heard no other answer.
 */
function heard(sentence: string, provisos: readonly string[], whole: string): string {
  const [first = '', second] = provisos;
  const count = provisos.length;
  if (count <= mostAtOnce && whole.split(' ').length <= mostInOne) return whole;
  if (second === undefined) return `${sentence} on one condition. Make sure that ${first}.`;
  const all = provisos.map((each, place) => `${ordinal[place] ?? 'And'}, ${each}.`);
  return spaced([`${sentence} on ${inLetters(count)} conditions.`, ...all]);
}

export const sentence = {
  sentences: ({ of }: { readonly of: readonly Sayable[] }, say: Say) => spaced(of.map(say)),

  either: ({ of }: { readonly of: readonly Sayable[] }, say: Say) => listed(of.map(say), 'or'),

  'fits-if': (
    { sentence, provisos }: { readonly sentence: Sayable; readonly provisos: readonly Sayable[] },
    say: Say,
  ) => {
    const all = provisos.map(say);
    const whole = `${say(sentence)}, if ${listed(all)}.`;
    return say.medium === 'spoken' ? heard(say(sentence), all, whole) : whole;
  },

  /** “Payload is over by 20 lb, and so is the ball; the tow rating is exceeded too.” */
  'limits-over': (
    values: {
      readonly short: Sayable;
      readonly several: boolean;
      readonly exceeded: boolean;
      readonly by: Quantity;
      /** Those that are so as well, and those of which the other word is said. */
      readonly same: readonly Sayable[];
      readonly sameSeveral: boolean;
      readonly other: readonly Sayable[];
      readonly otherSeveral: boolean;
    },
    say: Say,
  ) => {
    const { short, several, exceeded, by } = values;
    const same: Limits = { names: values.same, several: values.sameSeveral };
    const other: Limits = { names: values.other, several: values.otherSeveral };
    const names = (of: Limits) => listed(of.names.map(say));
    const is = (of: Limits) => agrees(of.several, 'is', 'are');
    const head = `${capital(say(short))} ${agrees(several, 'is', 'are')} ${over(exceeded)} by ${say(by)}`;
    const so = same.names.length === 0 ? '' : `, and so ${is(same)} ${names(same)}`;
    const too = `${so === '' ? ', and' : ';'} ${names(other)} ${is(other)} ${over(!exceeded)} too`;
    return `${head}${so}${other.names.length === 0 ? '' : too}.`;
  },

  /** A limit that may hold or not, with both of its ends. */
  straddling: (
    values: {
      readonly short: Sayable;
      readonly exceeded: boolean;
      readonly over: Quantity;
      readonly left: Quantity;
    },
    say: Say,
  ) =>
    `${capital(say(values.short))} may be ${over(values.exceeded)} by as much as ${say(values.over)}, or have up to ${say(values.left)} left.`,

  /** A label may have commas of its own, so what is asked is told one after the other. */
  'find-out': ({ of }: { readonly of: readonly Sayable[] }, say: Say) =>
    `First find out: ${of.map(say).join(say.medium === 'spoken' ? ', then ' : '; then: ')}.`,

  'runs-out': (
    values: {
      readonly short: Sayable;
      readonly several: boolean;
      /** Null: nothing is left. */
      readonly left: Quantity | null;
      readonly of: Quantity;
    },
    say: Say,
  ) => {
    const { short, several, left, of } = values;
    const head = `${capital(say(short))} ${agrees(several, 'runs', 'run')} out first`;
    return `${head}: ${left ? say(left) : 'nothing'} left of ${say(of)}.`;
  },

  'more-cares': ({ count }: { readonly count: number }) =>
    count === 1
      ? 'There is one more thing to take care of.'
      : `There are ${inLetters(count)} more things to take care of.`,

  'not-in-sight': ({ of }: { readonly of: readonly Sayable[] }, say: Say) =>
    `Not in sight, as far as told: ${of.map(say).join('; ')}.`,

  'comes-to-nothing': ({ of }: { readonly of: readonly Sayable[] }, say: Say) =>
    `Nothing, as far as told: ${of.map(say).join('; ')}.`,

  'none-asked': () => 'none asked',
  'limit-unread': () => 'a limit nobody has read',
  'one-of-other': ({ used, of }: { readonly used: Sayable; readonly of: Sayable }, say: Say) =>
    `${say(used)} of ${say(of)}`,

  'rests-on': (
    values: {
      readonly asked: number;
      readonly all: number;
      readonly silent: readonly Sayable[];
      /** Those that are rated, and that nothing told of the rig calls for. */
      readonly uncalledFor: readonly Sayable[];
    },
    say: Say,
  ) => {
    const { asked, all, silent, uncalledFor } = values;
    const left = (why: string, of: readonly Sayable[]) =>
      of.length === 0 ? [] : [`Not asked, ${why}: ${listed(of.map(say))}.`];
    return [
      `This rests on ${inLetters(asked)} of the ${inLetters(all)} limits.`,
      ...left('for want of a rating', silent),
      ...left('as nothing told calls for it', uncalledFor),
    ].join(' ');
  },
};
