import { livingSayings } from './living';
import { paperSayings } from './papers';
import { rigSayings } from './rig';
import type { Sayings } from './shapes';
import { troubleSayings } from './trouble';

const parts: readonly Sayings[] = [rigSayings, paperSayings, livingSayings, troubleSayings];

const together = <T>(part: (of: Sayings) => Readonly<Record<string, T>> | undefined) =>
  Object.fromEntries(parts.flatMap((each) => Object.entries(part(each) ?? {})));

/** How people say facts, whichever topic asks them. */
export const sayings: Required<Sayings> = {
  numbers: together(({ numbers }) => numbers),
  values: together(({ values }) => values),
  only: together(({ only }) => only),
  home: together(({ home }) => home),
  first: together(({ first }) => first),
  unless: together(({ unless }) => unless),
};
