import { showNumber } from '../../../quantity';
import type { Quantity, Say, Sayable } from '../value';

type Two = { readonly a: Sayable; readonly b: Sayable };
type One = { readonly of: Sayable };
type Several = { readonly of: readonly Sayable[] };

/** A sign between two numbers; nobody says a sign aloud. */
const sign =
  (written: string, spoken: string) =>
  ({ a, b }: Two, say: Say): string =>
    `${say(a)} ${say.medium === 'spoken' ? spoken : written} ${say(b)}`;

const overSteps = {
  least: 'the least',
  most: 'the most',
  total: 'the sum',
  last: 'the last value',
} as const;

/** The workings of formulas: `430 lb × (1 + 10 %)`. */
export const working = {
  plus: sign('+', 'plus'),
  minus: sign('−', 'minus'),
  times: sign('×', 'times'),
  over: sign('÷', 'divided by'),

  'give-or-take': ({ a, far }: { readonly a: Sayable; readonly far: Quantity }, say: Say) =>
    `${say(a)} ${say.medium === 'spoken' ? 'plus or minus' : '±'} ${say(far)}`,
  'either-way': ({ of }: { readonly of: Quantity }, say: Say) =>
    say.medium === 'spoken' ? `${say(of)} either way` : `±${say(of)}`,

  negative: ({ of }: One, say: Say) => `${say.medium === 'spoken' ? 'minus ' : '−'}${say(of)}`,
  bracket: ({ of }: One, say: Say) => (say.medium === 'spoken' ? say(of) : `(${say(of)})`),
  power: ({ base, exponent }: { readonly base: Sayable; readonly exponent: Sayable }, say: Say) =>
    say.medium === 'spoken'
      ? `${say(base)} to the power of ${say(exponent)}`
      : `${say(base)}^${say(exponent)}`,
  number: ({ value }: { readonly value: number }) => showNumber(value, 6),

  'sum-of': ({ of }: Several, say: Say) =>
    of.map(say).join(say.medium === 'spoken' ? ' plus ' : ' + '),
  'sum-of-rows': ({ rows }: { readonly rows: number }) => `the sum of ${rows} rows`,
  nothing: () => 'nothing',

  'least-of': ({ of }: Several, say: Say) => `the least of ${of.map(say).join(', ')}`,
  'most-of': ({ of }: Several, say: Say) => `the most of ${of.map(say).join(', ')}`,
  'from-to': ({ from, to }: { readonly from: Sayable; readonly to: Sayable }, say: Say) => {
    const [a, b] = [say(from), say(to)];
    return a === b ? a : `from ${a} to ${b}`;
  },
  rounded: ({ of, up }: One & { readonly up: boolean }, say: Say) =>
    `(${say(of)}, rounded ${up ? 'up' : 'down'})`,

  'table-at': ({ value, at }: { readonly value: Sayable; readonly at: Sayable }, say: Say) =>
    `${say(value)} (table at ${say(at)})`,
  'no-limit-stated': () => 'no limit stated',
  'is-not-known': () => 'not known',
  'sun-height': (
    values: { readonly latitude: Sayable; readonly day: Sayable; readonly hour: Sayable },
    say: Say,
  ) => `the sun’s height at ${say(values.latitude)}, day ${say(values.day)}, ${say(values.hour)} h`,
  'over-steps': ({
    how,
    steps,
  }: {
    readonly how: keyof typeof overSteps;
    readonly steps: number;
  }) => (steps === 1 ? 'reckoned in one step' : `${overSteps[how]} over ${steps} steps`),
  'as-catalogue': ({ catalogue }: { readonly catalogue: Sayable }, say: Say) =>
    `as ${say(catalogue)} has it`,
  'counted-in': ({ catalogue }: { readonly catalogue: Sayable }, say: Say) =>
    `counted in ${say(catalogue)}`,
};
