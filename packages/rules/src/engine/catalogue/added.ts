import type { Catalogue } from '../define/catalogue';
import { buildsOf, certainIn, type Order, type Part } from './builds';
import { candidates } from './orders';

/**
 * What the options of a build add: their figures, and where.
 *
 *     sure in every order      a row each
 *     a part still to choose   one row: from its lightest way to its heaviest, from the foremost
 *                              middle of a way to the rearmost
 *     several orders           all that is not sure in one row, over all of them
 */
export type Added = {
  /** Undefined for what is still open. */
  readonly option: string | undefined;
  readonly figures: Readonly<Record<string, Ends>>;
  readonly place: Ends;
};

export type Ends = readonly [lo: number, hi: number];

const hullOf = (of: readonly Ends[]): Ends =>
  of.length === 0
    ? [0, 0]
    : [Math.min(...of.map(([lo]) => lo)), Math.max(...of.map(([, hi]) => hi))];

const sumOf = (of: readonly Ends[]): Ends =>
  of.reduce<Ends>(([lo, hi], each) => [lo + each[0], hi + each[1]], [0, 0]);

/** The figures of options that the rows take. */
const figuresAdded = ({ rows }: Catalogue): readonly string[] => Object.values(rows?.figures ?? {});

const placeOf = ({ models, options }: Catalogue, model: string, option: string): number =>
  models[model]?.places[options[option]?.place ?? ''] ?? 0;

const figureOf = ({ options }: Catalogue, option: string, figure: string): number =>
  options[option]?.figures[figure] ?? 0;

/** A way of filling a part: the weight, or another figure, of each option, and where it stands. */
type Way = readonly { readonly figures: readonly number[]; readonly place: string }[];

/** A part that is still open, less what is told apart: what it adds, whichever model it is of. */
type Open = { readonly ways: readonly Way[]; readonly figures: readonly Ends[] };

const plus = (a: number, b: number): number => a + b;

function openParts(
  catalogue: Catalogue,
  parts: readonly Part[],
  apart: ReadonlySet<string>,
): readonly Open[] {
  const names = figuresAdded(catalogue);
  const open = parts.map((part): Open => {
    const ways = part.map((way) =>
      [...way]
        .filter((option) => !apart.has(option))
        .map((option) => ({
          figures: names.map((name) => figureOf(catalogue, option, name)),
          place: catalogue.options[option]?.place ?? '',
        })),
    );
    const sums = names.map((_, i) =>
      ways.map((way) => way.map(({ figures }) => figures[i] ?? 0).reduce(plus, 0)),
    );
    return { ways, figures: sums.map((each) => hullOf(each.map((sum) => [sum, sum]))) };
  });
  return open.filter(({ figures }) => !figures.every(isNothing));
}

/** From the foremost middle of a way to the rearmost, the places weighed by each figure. */
function placeIn(catalogue: Catalogue, model: string, { ways, figures }: Open): Ends {
  const places = catalogue.models[model]?.places ?? {};
  const middles = figures.flatMap((_, i) =>
    ways.flatMap((way): Ends[] => {
      let [sum, moment] = [0, 0];
      for (const option of way) {
        const figure = option.figures[i] ?? 0;
        sum += figure;
        moment += figure * (places[option.place] ?? 0);
      }
      return sum === 0 ? [] : [[moment / sum, moment / sum]];
    }),
  );
  return hullOf(middles);
}

const isNothing = ([lo, hi]: Ends): boolean => lo === 0 && hi === 0;

const named = (names: readonly string[], figures: readonly Ends[]): Added['figures'] =>
  Object.fromEntries(names.map((name, i) => [name, figures[i] ?? [0, 0]]));

/** All that is open in one row, over all orders. */
function openOverAll(
  catalogue: Catalogue,
  among: readonly Built[],
  sure: ReadonlySet<string>,
): readonly Added[] {
  const names = figuresAdded(catalogue);
  const open = among.map(({ parts }) => openParts(catalogue, parts, sure));
  const sums = open.map((each) =>
    names.map((_, i) => sumOf(each.map((o) => o.figures[i] ?? [0, 0]))),
  );
  const places = among.flatMap(({ models }, i) =>
    models.flatMap((model) => (open[i] ?? []).map((each) => placeIn(catalogue, model, each))),
  );
  const figures = names.map((_, i) => hullOf(sums.map((each) => each[i] ?? [0, 0])));
  if (figures.every(isNothing)) return [];
  return [{ option: undefined, figures: named(names, figures), place: hullOf(places) }];
}

/**
 * Never empty: an order that adds nothing is one row of nothing, so that a formula that counts the
 * rows finds some whatever is ordered.
 *
 * @param orders those that are possible; undefined when there are too many, and then anything may
 *   be built in
 */
export function addedBy(
  catalogue: Catalogue,
  orders: readonly Order[] | undefined,
): readonly Added[] {
  const rows = rowsFor(catalogue, orders);
  const nothing = figuresAdded(catalogue).map((): Ends => [0, 0]);
  const none = { option: undefined, figures: named(figuresAdded(catalogue), nothing) };
  return rows.length > 0 ? rows : [{ ...none, place: [0, 0] }];
}

/** What orders come to, and of which models. */
type Built = { readonly parts: readonly Part[]; readonly models: readonly string[] };

function builtBy(catalogue: Catalogue, orders: readonly Order[]): readonly Built[] {
  const found = new Map<readonly Part[], Set<string>>();
  for (const order of orders) {
    const { parts } = buildsOf(catalogue, order);
    const models = found.get(parts) ?? new Set<string>();
    found.set(parts, models.add(order.model));
  }
  return [...found].map(([parts, models]) => ({ parts, models: [...models] }));
}

function rowsFor(catalogue: Catalogue, orders: readonly Order[] | undefined): readonly Added[] {
  const names = figuresAdded(catalogue);
  if (!orders) return [anything(catalogue, names)];
  const possible = candidates(catalogue, orders);
  const among = builtBy(catalogue, possible);
  const certain = among.map(({ parts }) => new Set(parts.flatMap((part) => [...certainIn(part)])));
  const sure = new Set(
    [...(certain[0] ?? [])].filter((option) => certain.every((each) => each.has(option))),
  );
  const all = [...new Set(among.flatMap(({ models }) => models))];
  const rows = [...sure].map((option): Added => {
    const places = all.map((model) => placeOf(catalogue, model, option));
    const figures = names.map((name): Ends => {
      const value = figureOf(catalogue, option, name);
      return [value, value];
    });
    const place = hullOf(places.map((at) => [at, at]));
    return { option, figures: named(names, figures), place };
  });
  if (possible.length > 1) return [...rows, ...openOverAll(catalogue, among, sure)];
  const [model = ''] = all;
  const parts = among.flatMap((each) => each.parts);
  const apart = openParts(catalogue, parts, sure).map((open) => ({
    option: undefined,
    figures: named(names, open.figures),
    place: placeIn(catalogue, model, open),
  }));
  return [...rows, ...apart];
}

function anything(catalogue: Catalogue, names: readonly string[]): Added {
  const options = Object.keys(catalogue.options);
  const figures = names.map((name): [string, Ends] => [
    name,
    [0, options.reduce((total, option) => total + figureOf(catalogue, option, name), 0)],
  ]);
  const places = Object.keys(catalogue.models).flatMap((model) =>
    options.map((option) => placeOf(catalogue, model, option)),
  );
  return {
    option: undefined,
    figures: Object.fromEntries(figures),
    place: hullOf(places.map((at) => [at, at])),
  };
}
