import type { Catalogue, OptionRule } from '../define/catalogue';
import { type Clause, components, countWays, leastWays } from './count';
import { isSold, type Offered, offeredIn } from './offers';

/** One model of one year, and what is wanted of it. */
export type Order = {
  readonly model: string;
  readonly year: string;
  readonly wanted: readonly string[];
  readonly unwanted: readonly string[];
};

type Wish = Pick<Order, 'wanted' | 'unwanted'>;

export type Builds = {
  /** Sold that year at all. */
  readonly sold: boolean;
  readonly offered: Offered;
  /** Wanted and offered, as a choice or as standard. */
  readonly met: number;
  /** Unwanted, and coming with it all the same. */
  readonly imposed: number;
  /** How many different builds have all that is wanted and nothing that may be left out unwanted. */
  readonly count: bigint;
  /**
   * Builds that have what is wanted and no more than that needs, in parts that do not touch one
   * another: each part has its ways, and every choice of one way a part is such a build. Of an order
   * that cannot be built, what of it is offered: what it would add.
   */
  readonly parts: readonly Part[];
};

/** The ways in which one part of a build may be filled, by the options in each. */
export type Part = readonly ReadonlySet<string>[];

const isIn = (part: Part, option: string): boolean => part.some((way) => way.has(option));

/** The options that a part has whichever way it is filled. */
export const certainIn = (part: Part): ReadonlySet<string> =>
  new Set([...(part[0] ?? [])].filter((option) => part.every((way) => way.has(option))));

/** Whether an option is in the build: always, in some way of filling it, or not at all. */
export function isBuilt({ parts }: Builds, option: string): 'yes' | 'unknown' | 'no' {
  const part = parts.find((each) => isIn(each, option));
  if (!part) return 'no';
  return certainIn(part).has(option) ? 'yes' : 'unknown';
}

const leastParts = (clauses: readonly Clause[], optional: readonly string[]): readonly Part[] =>
  components(clauses).flatMap((each): Part[] => {
    const ways = leastWays(each).map(
      (way) => new Set([...way].flatMap((variable) => optional[variable - 1] ?? [])),
    );
    return ways.every((way) => way.size === 0) ? [] : [ways];
  });

/** A rule over what is offered: what is standard holds, what is not offered fails. */
function clausesOf(rule: OptionRule, { standard, optional }: Offered): readonly Clause[] {
  const literal = (option: string, yes: boolean): number | boolean => {
    if (standard.has(option)) return yes;
    const at = optional.indexOf(option);
    return at < 0 ? !yes : yes ? at + 1 : -(at + 1);
  };
  const clause = (parts: readonly (number | boolean)[]): readonly Clause[] =>
    parts.includes(true) ? [] : [parts.filter((part) => typeof part === 'number')];
  const yes = (option: string) => literal(option, true);
  const no = (option: string) => literal(option, false);
  switch (rule.kind) {
    case 'requires':
      return clause([no(rule.option), ...rule.others.map(yes)]);
    case 'excludes':
      return rule.others.flatMap((other) => clause([no(rule.option), no(other)]));
    case 'one-of': {
      const here = rule.others.filter((each) => standard.has(each) || optional.includes(each));
      const pairs = here.flatMap((a, i) =>
        here.slice(i + 1).flatMap((b) => clause([no(a), no(b)])),
      );
      return here.length === 0 ? [] : [...clause(here.map(yes)), ...pairs];
    }
  }
}

/** What must hold of the options that may be chosen, for an order; variables are numbered from 1. */
export function orderClauses(
  { rules }: Catalogue,
  offered: Offered,
  { wanted, unwanted }: Wish,
): readonly Clause[] {
  const { standard, optional } = offered;
  const wish = (option: string): readonly Clause[] => {
    const at = optional.indexOf(option);
    return at >= 0 ? [[at + 1]] : standard.has(option) ? [] : [[]];
  };
  const without = (option: string): readonly Clause[] => {
    const at = optional.indexOf(option);
    return at >= 0 ? [[-(at + 1)]] : [];
  };
  return [
    ...rules.flatMap((rule) => clausesOf(rule, offered)),
    ...wanted.flatMap(wish),
    ...unwanted.flatMap(without),
  ];
}

/** What is wanted and may be chosen, each by itself. */
const alone = ({ optional }: Offered, { wanted }: Wish): readonly Part[] =>
  wanted.flatMap((option) => (optional.includes(option) ? [[new Set([option])]] : []));

function reckonBuilds(catalogue: Catalogue, sold: boolean, offered: Offered, wish: Wish): Builds {
  const { wanted, unwanted } = wish;
  const { standard, optional } = offered;
  const has = (option: string) => standard.has(option) || optional.includes(option);
  const clauses = orderClauses(catalogue, offered, wish);
  const count = sold ? countWays(optional.length, clauses) : 0n;
  return {
    sold,
    offered,
    met: wanted.filter(has).length,
    imposed: unwanted.filter((option) => standard.has(option)).length,
    count,
    parts: count > 0n ? leastParts(clauses, optional) : alone(offered, wish),
  };
}

/** More than this are not kept at a time for what is offered. */
const mostKept = 2000;
const kept = new WeakMap<Catalogue, Map<Offered, Map<string, Builds>>>();

/** Reckoned once for what is offered and wished for, on whichever models and in whichever years. */
export function buildsOf(catalogue: Catalogue, order: Order): Builds {
  const { model, year, wanted, unwanted } = order;
  const offered = offeredIn(catalogue, model, year);
  const lists = kept.get(catalogue) ?? new Map<Offered, Map<string, Builds>>();
  kept.set(catalogue, lists);
  const before = lists.get(offered) ?? new Map<string, Builds>();
  lists.set(offered, before);
  const key = `${wanted.join(' ')}|${unwanted.join(' ')}`;
  const found = before.get(key);
  if (found) return found;
  const made = reckonBuilds(catalogue, isSold(catalogue, model, year), offered, order);
  if (before.size >= mostKept) before.clear();
  before.set(key, made);
  return made;
}
