import type { AskName } from '../catalogue/ask-names';

/** What a formula asks of a catalogue; see catalogue/asks.ts. */
export type Catalogued = {
  readonly kind: 'catalogued';
  readonly catalogue: string;
  readonly ask: AskName;
  readonly args: readonly string[];
};

/**
 * The closed set of what a formula can be made of. Every reader of formulas is one walk over these
 * kinds: units.ts, reckon.ts (ranges and slopes), words.ts, names.ts.
 */
export type Node =
  | { readonly kind: 'number'; readonly value: number }
  /** An option of a choice, in quotes. */
  | { readonly kind: 'word'; readonly text: string }
  /** A fact, a column of a list inside `sum`, a parameter or another formula. */
  | { readonly kind: 'name'; readonly id: string }
  /** No bound at all: what a limit that nobody stated allows. */
  | { readonly kind: 'unlimited' }
  | { readonly kind: 'negative'; readonly of: Node }
  | { readonly kind: 'arithmetic'; readonly op: Arithmetic; readonly a: Node; readonly b: Node }
  | { readonly kind: 'compare'; readonly op: Compare; readonly a: Node; readonly b: Node }
  | { readonly kind: 'both' | 'either'; readonly a: Node; readonly b: Node }
  | { readonly kind: 'not'; readonly of: Node }
  /** choose(when, chosen, otherwise) */
  | {
      readonly kind: 'choose';
      readonly when: Node;
      readonly chosen: Node;
      readonly otherwise: Node;
    }
  | { readonly kind: 'min' | 'max'; readonly of: readonly Node[] }
  /** largestKnown(a, b, …): the largest of those that rest on nothing unknown. */
  | { readonly kind: 'largestKnown'; readonly of: readonly Node[] }
  /** sum(list.weight * list.ahead): over the rows of one list. */
  | { readonly kind: 'sum'; readonly of: Node; readonly list: string }
  /** count(list): its number of rows. */
  | { readonly kind: 'count'; readonly list: string }
  /** given(x, …): each is mentioned, if only as unknown. */
  | { readonly kind: 'given'; readonly names: readonly string[] }
  /** known(x, …): each is mentioned and rests on nothing unknown; a column: in every row. */
  | { readonly kind: 'known'; readonly names: readonly string[] }
  /** needs(value, x, …): the value if each x is known, else anything from zero up. */
  | { readonly kind: 'needs'; readonly of: Node; readonly names: readonly string[] }
  /** lookup(table, key): straight lines between the rows of a table. */
  | { readonly kind: 'lookup'; readonly table: string; readonly at: Node }
  /** pick(table, choice): the number that a table of words gives for an option. */
  | { readonly kind: 'pick'; readonly table: string; readonly at: Node }
  /** power(base, exponent): of a base that is never below zero. */
  | { readonly kind: 'power'; readonly base: Node; readonly exponent: Node }
  /** whole(x): the largest whole number not above x. */
  | { readonly kind: 'whole'; readonly of: Node }
  /** between(a, b): anything from the one to the other, such as a figure on which tables disagree. */
  | { readonly kind: 'between'; readonly a: Node; readonly b: Node }
  /** sunHeight(latitude, day of the year, hour of sun time): sine of the sun's height, at least 0. */
  | {
      readonly kind: 'sunHeight';
      readonly latitude: Node;
      readonly day: Node;
      readonly hour: Node;
    }
  /** leastOver, mostOver, totalOver(simulation, x): over its steps; lastOf: once they are done. */
  | {
      readonly kind: 'over';
      readonly how: Over;
      readonly simulation: string;
      readonly of: Node;
    }
  /** builds(catalogue), figure(catalogue, name) …: what a catalogue says; see catalogue/asks.ts. */
  | Catalogued;

export type Arithmetic = '+' | '-' | '*' | '/';
export type Over = 'least' | 'most' | 'total' | 'last';
export type Compare = '<' | '<=' | '>' | '>=' | '==' | '!=';

/** The parts directly below a node, for walks that treat most kinds alike. */
export function below(node: Node): readonly Node[] {
  switch (node.kind) {
    case 'negative':
    case 'not':
    case 'sum':
    case 'needs':
    case 'whole':
    case 'over':
      return [node.of];
    case 'power':
      return [node.base, node.exponent];
    case 'sunHeight':
      return [node.latitude, node.day, node.hour];
    case 'arithmetic':
    case 'compare':
    case 'both':
    case 'either':
    case 'between':
      return [node.a, node.b];
    case 'choose':
      return [node.when, node.chosen, node.otherwise];
    case 'min':
    case 'max':
    case 'largestKnown':
      return node.of;
    case 'lookup':
    case 'pick':
      return [node.at];
    default:
      return [];
  }
}

/** Every name a formula mentions, once, in the order of its text. */
export function namesIn(node: Node): readonly string[] {
  const found = new Set<string>();
  const walk = (each: Node): void => {
    if (each.kind === 'name') found.add(each.id);
    if (each.kind === 'count') found.add(each.list);
    for (const child of below(each)) walk(child);
    if (each.kind === 'given' || each.kind === 'known' || each.kind === 'needs') {
      for (const name of each.names) found.add(name);
    }
  };
  walk(node);
  return [...found];
}
