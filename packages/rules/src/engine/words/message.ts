import type { words } from './en';
import type { Said, Values } from './value';

/** What English has words for; any other language must have the same. */
export type Code = keyof typeof words;
export type ValuesOf<C extends Code> =
  Parameters<(typeof words)[C]> extends readonly [infer V extends Values, ...unknown[]]
    ? V
    : Readonly<Record<never, never>>;

/** A message: a code that exists, with the values it wants. */
export const message = <C extends Code>(code: C, values: ValuesOf<C>): Said => ({ code, values });
