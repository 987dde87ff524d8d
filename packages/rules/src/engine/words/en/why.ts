import type { Quantity, Say, Sayable } from '../value';
import { capital, listed, quoted } from './grammar';

type Sourced = { readonly source: Sayable | null };
type Noun = { readonly noun: Sayable };
type Label = { readonly label: Sayable };
type Bare = { readonly bare: boolean };

const kinds: Readonly<Record<string, string>> = {
  published: '',
  'common-practice': 'common practice: ',
  'from-memory': 'from memory: ',
  house: 'a choice of the house: ',
  invented: 'invented: ',
};

const operators: Readonly<Record<string, string>> = {
  greaterThan: 'above',
  greaterThanInclusive: 'at or above',
  lessThan: 'below',
  lessThanInclusive: 'at or below',
  equal: 'the same as',
  notEqual: 'other than',
};

const verbs: Readonly<Record<string, string>> = { holds: 'is', fails: 'is not', open: 'may be' };

const likewise: Readonly<Record<string, string>> = {
  stop: 'Not right either',
  care: 'Care is due there too',
  unknown: 'Open as well',
  if: 'To be made sure of as well',
};

const shares: Readonly<Record<string, string>> = {
  limit: ' of it',
  room: ' of the room above empty',
};

const than: Readonly<Record<string, string>> = {
  more: 'more than',
  less: 'less than',
  'perhaps-less': 'perhaps less than',
};

/** A source after what it is the source of; nobody hears it. */
const sourced = (source: Sayable | null, say: Say): string =>
  source === null || say.medium === 'spoken' ? '' : ` ${say(source)}`;

/** “, and hangs on the dry tongue”: the facts that decide. */
const hanging = (facts: readonly Sayable[], say: Say): string =>
  facts.length === 0 ? '' : `; it hangs on ${listed(facts.map(say))}`;

export const why = {
  cited: ({ kind, cite }: { readonly kind: string; readonly cite: Sayable }, say: Say) =>
    `[${kinds[kind] ?? ''}${say(cite)}]`,

  /** “The tongue comes to 473 lb: the dry tongue (430 lb, brochure) and 10 % on top.” */
  'comes-to': (
    values: Noun & Sourced & { readonly value: Sayable; readonly told: Sayable },
    say: Say,
  ) => {
    const { noun, value, told, source } = values;
    return `${capital(say(noun))} comes to ${say(value)}: ${say(told)}${sourced(source, say)}.`;
  },

  'comes-in-same-way': (
    values: Noun & Sourced & { readonly value: Sayable; readonly from: Sayable },
    say: Say,
  ) => {
    const { noun, value, from, source } = values;
    const head = `${capital(say(noun))} comes to ${say(value)}`;
    return `${head} in the same way, from ${say(from)}${sourced(source, say)}.`;
  },

  'value-read': ({ value, from }: { readonly value: Sayable; readonly from: Sayable }, say: Say) =>
    `${say(value)} (${say(from)})`,

  decided: ({ label, value }: Label & { readonly value: Sayable }, say: Say) =>
    `${quoted(label, say)} comes to ${quoted(value, say)}`,
  'nobody-answered': ({ label }: Label, say: Say) => `nobody answered ${quoted(label, say)}`,
  'is-unknown': ({ label }: Label, say: Say) => `${quoted(label, say)} is unknown`,
  answered: ({ label, value }: Label & { readonly value: Sayable }, say: Say) =>
    `${quoted(label, say)} is answered ${quoted(value, say)}`,
  holds: ({ label }: Label, say: Say) => `${quoted(label, say)} holds`,
  'does-not-hold': ({ label }: Label, say: Say) => `${quoted(label, say)} does not hold`,

  /** “the tongue’s share of the trailer (9.1 %) is below the least usual share (10 %)” */
  compared: (
    values: {
      readonly a: Sayable;
      readonly b: Sayable;
      readonly operator: string;
      readonly stands: string;
    },
    say: Say,
  ) => {
    const { a, b, operator, stands } = values;
    return `${say(a)} ${verbs[stands] ?? 'is'} ${operators[operator] ?? operator} ${say(b)}`;
  },

  reasons: ({ of, source }: Sourced & { readonly of: readonly Sayable[] }, say: Say) =>
    `${capital(listed(of.map(say)))}${sourced(source, say)}.`,

  'does-not-ask': ({ when, label }: Label & { readonly when: Sayable }, say: Say) =>
    `${quoted(when, say)} does not hold; without that ${quoted(label, say)} is not asked.`,
  'nobody-told': ({ by, label }: Label & { readonly by: readonly Sayable[] }, say: Say) => {
    const untold = by.length === 0 ? 'what it takes' : listed(by.map(say), 'or');
    return `Nobody told ${untold}; without that ${quoted(label, say)} is not asked.`;
  },

  /** A share of the whole limit, of the room above empty, or so many pounds. */
  'kept-free': (
    { free, than: which, of }: { readonly free: Quantity; readonly than: string; of: string },
    say: Say,
  ) => `${than[which] ?? ''} the ${say(free)}${shares[of] ?? ''} that is kept free`,
  'no-room': () => 'on a limit that nothing is left of when empty',

  'ends-too-much': ({ by, bare }: Bare & { readonly by: Quantity }, say: Say) =>
    `${bare ? '' : 'is '}${say(by)} too much`,
  'ends-open': (
    { over, left, bare }: Bare & { readonly over: Quantity; readonly left: Quantity },
    say: Say,
  ) =>
    bare
      ? `between ${say(over)} too much and ${say(left)} left`
      : `may be ${say(over)} too much or leave ${say(left)}`,
  'ends-at-limit': ({ bare }: Bare) =>
    `${bare ? 'nothing left' : 'leaves nothing'}, and at the limit is within it`,
  'ends-left': (
    { left, margin, bare }: Bare & { readonly left: Quantity; readonly margin: Sayable | null },
    say: Say,
  ) => {
    const kept = margin ? `, ${say(margin)}` : '';
    return bare ? `${say(left)} left${kept}` : `leaves ${say(left)}${kept}`;
  },

  clause: (
    { noun, value, comes }: Noun & { readonly value: Sayable; readonly comes: boolean },
    say: Say,
  ) => `${say(noun)} ${comes ? 'comes to' : 'is'} ${say(value)}`,
  'clause-unknown': ({ noun }: Noun, say: Say) => `${say(noun)} is not known`,

  'limit-short': (
    values: {
      readonly used: Sayable;
      readonly rating: Sayable;
      readonly ending: Sayable | null;
      readonly hangs: readonly Sayable[];
    },
    say: Say,
  ) => {
    const both = `${capital(say(values.used))} and ${say(values.rating)}`;
    return values.ending
      ? `${both}: ${say(values.ending)}.`
      : `${both}${hanging(values.hangs, say)}.`;
  },

  'both-clauses': (
    { used, rating, source }: Sourced & { readonly used: Sayable; readonly rating: Sayable },
    say: Say,
  ) => `${capital(say(used))}, and ${say(rating)}${sourced(source, say)}.`,

  /** Null: what stands against it is not known. */
  'against-it': (
    { noun, value, source }: Noun & Sourced & { readonly value: Sayable | null },
    say: Say,
  ) =>
    value === null
      ? `${capital(say(noun))} is not known${sourced(source, say)}.`
      : `Against it stands ${say(noun)}, ${say(value)}${sourced(source, say)}.`,

  'cannot-be-said': ({ hangs }: { readonly hangs: readonly Sayable[] }, say: Say) =>
    `So it cannot be said whether that holds${hanging(hangs, say)}.`,
  'that-ends': (
    { ending, hangs }: { readonly ending: Sayable; readonly hangs: readonly Sayable[] },
    say: Say,
  ) => `That ${say(ending)}${hanging(hangs, say)}.`,

  likewise: (
    { of, level }: { readonly of: readonly Sayable[]; readonly level: string },
    say: Say,
  ) => `${likewise[level] ?? ''}: ${of.map(say).join('; ')}.`,

  'matters-most': (
    values: {
      readonly instead: Sayable;
      readonly of: readonly Sayable[];
      readonly by: Quantity | null;
    },
    say: Say,
  ) => {
    const by = values.by ? `, ${say(values.by)} either way` : '';
    return `${say(values.instead)}: it matters most for ${listed(values.of.map(say))}${by}.`;
  },
  'measure-place': ({ of }: { readonly of: Sayable }, say: Say) =>
    `Measure the place of ${say(of)}`,
  'measure-it': ({ of }: { readonly of: Sayable }, say: Say) => `Measure ${say(of)}`,
  'weigh-it': ({ of }: { readonly of: Sayable }, say: Say) => `Weigh ${say(of)}`,
  'look-again': ({ of }: { readonly of: Sayable }, say: Say) => `Look once more at ${say(of)}`,
};
