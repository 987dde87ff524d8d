import type { Graph, Ref } from './graph';

/**
 * Inputs that may be ranges, as bits of two words: those with both ends, and those without an end.
 * With more inputs than a word has bits some share one; what they do is then taken for what one of
 * them does, which may cost a question to the engine and never an answer.
 */
export type Keys = { readonly closed: Ref; readonly endless: Ref };

const wordBits = 32;

export function noKeys(g: Graph): Keys {
  const none = g.bits(0);
  return { closed: none, endless: none };
}

/** The so-manieth input. */
export function keyAt(g: Graph, at: number, isEndless: Ref): Keys {
  const [bit, none] = [g.bits(1 << (at % wordBits)), g.bits(0)];
  return { closed: g.choose(isEndless, none, bit), endless: g.choose(isEndless, bit, none) };
}

export const joinKeys = (g: Graph, a: Keys, b: Keys): Keys => ({
  closed: g.bitsOr(a.closed, b.closed),
  endless: g.bitsOr(a.endless, b.endless),
});

export const pickKeys = (g: Graph, when: Ref, a: Keys, b: Keys): Keys => ({
  closed: g.choose(when, a.closed, b.closed),
  endless: g.choose(when, a.endless, b.endless),
});

/**
 * Inputs over which a value jumps. One without an end cannot be held anywhere, so the engine can do
 * nothing with it either.
 */
export const jumpingOn = (g: Graph, { closed }: Keys): Keys => ({ closed, endless: g.bits(0) });

export const keysMeet = (g: Graph, a: Keys, b: Keys): Ref =>
  g.not(
    g.and(
      g.bitsAre(g.bitsAnd(a.closed, b.closed), 0),
      g.bitsAre(g.bitsAnd(a.endless, b.endless), 0),
    ),
  );
