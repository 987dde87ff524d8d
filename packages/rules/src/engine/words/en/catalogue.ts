import type { Say, Sayable } from '../value';
import { listed } from './grammar';

type Between = { readonly option: Sayable; readonly of: readonly Sayable[] };
type Several = { readonly of: readonly Sayable[] };

export const catalogue = {
  'only-with': ({ option, of }: Between, say: Say) =>
    `${say(option)}: only with ${listed(of.map(say), 'or')}`,

  'not-with': ({ option, of }: Between, say: Say) =>
    `${say(option)}: not together with ${listed(of.map(say), 'or')}`,

  'one-of': ({ of }: Several, say: Say) =>
    `Of those offered, one and only one: ${listed(of.map(say), 'or')}`,

  'since-year': ({ label, year }: { readonly label: Sayable; readonly year: string }, say: Say) =>
    `${say(label)}, ${year}`,

  'one-by-one': ({ of }: Several, say: Say) => of.map(say).join(', '),
};
