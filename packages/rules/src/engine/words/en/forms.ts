import type { Quantity, Say, Sayable } from '../value';
import { bullets, capital, inLetters, listed, small } from './grammar';

type Figure = { readonly noun: Sayable; readonly value: Sayable };
type Several = { readonly of: readonly Sayable[] };

type List = Several & {
  readonly label: Sayable;
  readonly groups: readonly Sayable[];
  readonly count: number;
};

/** The words of the forms in which an answer leaves. */
export const forms = {
  'figure-is': ({ noun, value }: Figure, say: Say) => `${capital(say(noun))}: ${say(value)}.`,
  figure: ({ noun, value }: Figure, say: Say) => `${say(value)}, ${say(noun)}`,
  'count-of': ({ label, count }: { readonly label: Sayable; readonly count: number }, say: Say) =>
    `${count} ${count === 1 ? 'item' : 'items'}, ${small(say(label))}`,

  'limit-left': (
    values: {
      readonly short: Sayable;
      readonly several: boolean;
      readonly left: Quantity | null;
      readonly of: Quantity;
    },
    say: Say,
  ) => {
    const { short, several, left, of } = values;
    return `${capital(say(short))} ${several ? 'have' : 'has'} ${left ? say(left) : 'nothing'} left of ${say(of)}.`;
  },

  /**
   * Whoever only hears “with care” does not know of what: it is what is said next, the gravest first,
   * or was just said.
   */
  'with-care': (
    values: {
      readonly sentence: Sayable;
      readonly plain: Sayable;
      /** So many things are said next; none: they have been said. */
      readonly count: number;
      /** Whether there are more than are said. */
      readonly more: boolean;
    },
    say: Say,
  ) => {
    const { sentence, plain, count, more } = values;
    if (say.medium !== 'spoken') return say(sentence);
    if (count === 0) return `${say(plain)}, if you do that.`;
    if (more) return `${say(plain)}, but mind this first.`;
    return count === 1
      ? `${say(plain)}, but mind one thing.`
      : `${say(plain)}, but mind ${inLetters(count)} things.`;
  },

  'add-nothing': () => 'Add nothing more, and weigh the loaded rig before the trip.',
  'open-until': ({ of }: { readonly of: Sayable }, say: Say) =>
    `For that, ${say(of)} must be known first.`,
  'rated-at': ({ short, of }: { readonly short: Sayable; readonly of: Quantity }, say: Say) =>
    `${say(short)} of ${say(of)}`,
  'falls-short': (
    values: {
      readonly short: Sayable;
      readonly several: boolean;
      readonly by: Quantity;
      readonly same: readonly Sayable[];
      readonly over: readonly Sayable[];
      /** Ratings, which are exceeded. */
      readonly exceeded: readonly Sayable[];
    },
    say: Say,
  ) => {
    const { short, several, by, same, over, exceeded } = values;
    const too =
      same.length === 0
        ? ''
        : `, and so ${same.length === 1 ? 'does' : 'do'} ${listed(same.map(say))}`;
    const beside = (word: string, of: readonly Sayable[]): string =>
      of.length === 0 ? '' : `; ${word}, too: ${listed(of.map(say))}`;
    const also = `${beside('over', over)}${beside('exceeded', exceeded)}`;
    return `${capital(say(short))} ${several ? 'fall' : 'falls'} short by ${say(by)}${too}${also}.`;
  },
  'over-and-short': (
    { said, of }: { readonly said: Sayable; readonly of: readonly Sayable[] },
    say: Say,
  ) =>
    `${say(said).replace(/\.$/, '')}; ${listed(of.map(say))} ${of.length === 1 ? 'falls' : 'fall'} short too.`,
  'may-fall-short': (
    values: { readonly short: Sayable; readonly by: Quantity; readonly left: Quantity },
    say: Say,
  ) =>
    `${capital(say(values.short))} may fall short by as much as ${say(values.by)}, or have up to ${say(values.left)} left.`,

  /** Little left of what there is sounds as if it were nearly empty now. */
  enough: (
    values: {
      readonly said: Sayable;
      readonly short: Sayable;
      readonly several: boolean;
      readonly just: boolean;
      readonly used: Quantity;
      readonly of: Quantity;
    },
    say: Say,
  ) => {
    const { said, short, several, just, used, of } = values;
    if (say.medium !== 'spoken') return say(said);
    const is = several ? 'are' : 'is';
    return `${capital(say(short))} ${is} ${just ? 'only just ' : ''}enough. The need is ${say(used)}, and there are ${say(of)}.`;
  },

  /** A listener does not see the figures; a reader has them beside it. */
  'with-both': (
    values: {
      readonly said: Sayable;
      readonly supply: boolean;
      readonly used: Quantity;
      readonly of: Quantity;
    },
    say: Say,
  ) => {
    const { said, supply, used, of } = values;
    if (say.medium !== 'spoken') return say(said);
    if (supply) return `${say(said)} The need is ${say(used)}, and there are ${say(of)}.`;
    return `${say(said).replace(/\.$/, '')}: ${say(used)}, and at most ${say(of)} will do.`;
  },

  /** Of which nothing is to be done; a listener forgets what is to be done over it. */
  'also-close': ({ of }: Several, say: Say) =>
    say.medium === 'spoken' ? '' : `Also close: ${listed(of.map(say))}.`,

  /** At most five things, the groups they belong to, and how many there are. */
  'list-short': ({ label, of, groups, count }: List, say: Say) => {
    const named = of.map((each) => small(say(each)));
    const head = `${capital(say(label))}: `;
    const by =
      groups.length > 1 && say.medium !== 'spoken'
        ? `${count} things, for ${listed(groups.map((each) => small(say(each))))}; first `
        : '';
    if (count <= of.length) return `${head}${by}${named.join('; ')}.`;
    // Whoever hears a number of things waits for all of them.
    if (say.medium === 'spoken') return `${head}${named.join('; ')}.`;
    const rest = groups.length > 1 ? '' : `, ${count} things in all`;
    return `${head}${by}${named.join('; ')}${rest}.`;
  },

  /** A reader has the number of things beside it. */
  'list-rest': (_: object, say: Say) =>
    say.medium === 'spoken' ? 'The whole list can be sent to you.' : '',

  'perhaps-one': ({ of }: { readonly of: Sayable }, say: Say) => `perhaps ${small(say(of))}`,

  'list-whole': ({ label, of }: List, say: Say) => {
    return `${say(label)}\n${bullets(of.map(say))}`;
  },

  'order-told': (
    values: {
      readonly label: Sayable;
      readonly first: Sayable;
      readonly value: Quantity;
      readonly next: Sayable | null;
      readonly after: boolean;
    },
    say: Say,
  ) => {
    const { first, value, next, after } = values;
    const then = next ? `; next ${small(say(next))}` : '';
    return after
      ? `After ${say(value)} ${small(say(first))}${then}.`
      : `${capital(say(first))} brings most, ${say(value)}${then}.`;
  },

  /** A sentence of a topic where it follows a colon. */
  'asks-where': (
    { ask, where }: { readonly ask: Sayable; readonly where: Sayable | null },
    say: Say,
  ) => (where === null ? say(ask) : `${say(ask)} (${say(where)})`),

  /** The one thing to do next; a listener is told where to look, a reader sees it beside. */
  'next-asked': (
    { ask, where }: { readonly ask: Sayable; readonly where: Sayable | null },
    say: Say,
  ) => {
    const head = `Find out next: ${small(say(ask))}`;
    if (where === null) return head;
    return say.medium === 'spoken'
      ? `${head} Where to look: ${say(where)}.`
      : `${head} (${say(where)})`;
  },

  /** What was told, where no more can be made of it. */
  'told-so-far': ({ of }: Several, say: Say) =>
    `${say.medium === 'spoken' ? 'You told me' : 'Told so far:'} ${of.map(say).join('; ')}.`,
  'named-with': ({ noun, value }: Figure, say: Say) => `${say(noun)}, ${say(value)}`,

  'it-hangs-on': ({ of }: Several, say: Say) => `The answer hangs on ${listed(of.map(say))}.`,
  'hangs-and-tips': (
    values: {
      readonly of: Sayable;
      readonly at: Quantity;
      readonly above: boolean;
      readonly stop: Sayable;
    },
    say: Say,
  ) => {
    const { of, at, above, stop } = values;
    return `The answer hangs on ${say(of)}: ${above ? 'above' : 'below'} ${say(at)}, ${small(say(stop))}`;
  },

  'hangs-and-counts': (
    values: {
      readonly of: Sayable;
      readonly count: number;
      readonly above: boolean;
      readonly stop: Sayable;
    },
    say: Say,
  ) => {
    const { of, count, above, stop } = values;
    const more = above ? ' or more' : count > 1 ? ' or fewer' : '';
    return `The answer hangs on ${say(of)}: with ${count}${more}, ${small(say(stop))}`;
  },

  'at-least': ({ of }: { readonly of: Quantity }, say: Say) => `at least ${say(of)}`,
  'at-most': ({ of }: { readonly of: Quantity }, say: Say) => `at most ${say(of)}`,
  'it-is': ({ noun, value }: Figure, say: Say) => `${say(noun)} is ${say(value)}`,
  'it-is-from': (
    values: { readonly noun: Sayable; readonly from: Sayable; readonly to: Sayable },
    say: Say,
  ) => `${say(values.noun)} is anything from ${say(values.from)} to ${say(values.to)}`,
  'if-then': (
    { ifs, says }: { readonly ifs: readonly Sayable[]; readonly says: Sayable },
    say: Say,
  ) => `If ${listed(ifs.map(say), 'or')}: ${small(say(says))}`,
  'is-over': (
    values: {
      readonly short: Sayable;
      readonly several: boolean;
      readonly exceeded: boolean;
      readonly supply: boolean;
    },
    say: Say,
  ) => {
    const { short, several, exceeded, supply } = values;
    if (supply) return `${capital(say(short))} ${several ? 'fall' : 'falls'} short.`;
    return `${capital(say(short))} ${several ? 'are' : 'is'} ${exceeded ? 'exceeded' : 'over'}.`;
  },
  'is-close': (
    values: {
      readonly short: Sayable;
      readonly several: boolean;
      readonly exceeded: boolean;
      readonly supply: boolean;
    },
    say: Say,
  ) => `${capital(say(values.short))} ${values.several ? 'come' : 'comes'} close.`,
  'may-be-close': (
    values: {
      readonly short: Sayable;
      readonly several: boolean;
      readonly exceeded: boolean;
      readonly supply: boolean;
    },
    say: Say,
  ) => `${capital(say(values.short))} may come close.`,
  presuming: ({ of }: { readonly of: Sayable }, say: Say) => `That holds ${say(of)}.`,
  'found-there': ({ noun, where }: { readonly noun: Sayable; readonly where: Sayable }, say: Say) =>
    `Where to find ${say(noun)}: ${say(where)}.`,
};
