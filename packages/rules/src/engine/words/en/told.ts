import type { Say, Sayable } from '../value';
import { listed } from './grammar';

type Several = { readonly of: readonly Sayable[] };
type Two = { readonly a: Sayable; readonly b: Sayable };
type Is = { readonly noun: Sayable; readonly value: Sayable };

const by = (times: boolean): string => (times ? 'times' : 'divided by');

/** What a number came from, in words. */
export const told = {
  rows: ({ rows }: { readonly rows: number }) => (rows === 0 ? 'none' : `${rows} rows`),
  steps: ({ steps }: { readonly steps: number }) => `${steps} steps`,
  'catalogue-holds': ({ models, options }: { readonly models: number; readonly options: number }) =>
    `${models} models, ${options} options`,

  /** Labels, which may have commas of their own. */
  'any-of': ({ of }: Several, say: Say) => of.map(say).join(' or '),
  'year-now': () => 'the year now',
  'day-now': () => 'the day of the year',

  /** Taken for what a silent fact is taken for. */
  unsaid: ({ value }: { readonly value: Sayable }, say: Say) => `${say(value)} (not said)`,

  'noun-unknown': ({ noun }: { readonly noun: Sayable }, say: Say) => `${say(noun)} (not known)`,

  /** “the dry tongue (430 lb, brochure)” */
  'noun-is': ({ noun, value, from }: Is & { readonly from: Sayable | null }, say: Say) =>
    `${say(noun)} (${say(value)}${from ? `, ${say(from)}` : ''})`,

  'part-is': ({ noun, value }: Is, say: Say) => `the part of ${say(noun)} (${say(value)})`,

  'by-table': ({ noun, value, at }: Is & { readonly at: Sayable }, say: Say) =>
    `${say(noun)} (${say(value)} at ${say(at)})`,

  raised: (
    { of, share, up }: { readonly of: Sayable; readonly share: Sayable; readonly up: boolean },
    say: Say,
  ) => `${say(of)} ${up ? `and ${say(share)} on top` : `less ${say(share)}`}`,

  'part-of': (
    values: { readonly of: Sayable | null; readonly working: Sayable; readonly value: Sayable },
    say: Say,
  ) => {
    const shown = `${say(values.working)} = ${say(values.value)}`;
    return values.of ? `the part of ${say(values.of)} (${shown})` : shown;
  },

  'extreme-told': (
    { of, least, plain }: Several & { readonly least: boolean; readonly plain: boolean },
    say: Say,
  ) => {
    const word = least ? 'lower' : 'larger';
    const all = of.map(say);
    return plain ? `the ${word} of ${listed(all)}` : `whichever is ${word}: ${all.join(', or ')}`;
  },

  'either-told': ({ a, b }: Two, say: Say) => `either ${say(a)} or ${say(b)}`,

  'two-told': (
    { a, b, times, apart }: Two & { readonly times: boolean; readonly apart: boolean },
    say: Say,
  ) => `${say(a)}${apart ? ',' : ''} ${by(times)} ${say(b)}`,

  'terms-told': (
    values: {
      readonly plus: readonly Sayable[];
      readonly minus: readonly Sayable[];
      readonly inside: boolean;
    },
    say: Say,
  ) => {
    const { inside } = values;
    const join = (of: readonly Sayable[]) =>
      inside ? of.map(say).join(' plus ') : listed(of.map(say));
    const [plus, minus] = [join(values.plus), join(values.minus)];
    if (minus === '') return plus;
    return plus === '' ? `less ${minus}` : `${plus}${inside ? '' : ','} less ${minus}`;
  },

  'sum-told': ({ of }: Several, say: Say) => `the sum of ${listed(of.map(say))}`,

  'factors-told': (
    { over, under }: { readonly over: readonly Sayable[]; readonly under: readonly Sayable[] },
    say: Say,
  ) => {
    const above = over.map(say).join(' times ');
    if (under.length === 0) return above;
    return `${above}${over.length > 1 ? ', ' : ' '}divided by ${under.map(say).join(' and by ')}`;
  },
};
