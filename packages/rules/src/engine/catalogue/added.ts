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

const placeOf = ({ models, options }: Catalogue, model: string, option: string): number =>
  models[model]?.places[options[option]?.place ?? ''] ?? 0;

const figureOf = ({ options }: Catalogue, option: string, figure: string): number =>
  options[option]?.figures[figure] ?? 0;

/** A way's sum of a figure, and the middle of its places weighed by that figure. */
function wayOf(catalogue: Catalogue, model: string, way: readonly string[], figure: string) {
  const each = way.map((option) => figureOf(catalogue, option, figure));
  const sum = each.reduce((a, b) => a + b, 0);
  const moment = way.reduce(
    (total, option, i) => total + (each[i] ?? 0) * placeOf(catalogue, model, option),
    0,
  );
  return { sum, middle: sum === 0 ? undefined : moment / sum };
}

/** One row for the ways of a part, less what is told apart. */
function openRow(
  catalogue: Catalogue,
  model: string,
  part: Part,
  apart: ReadonlySet<string>,
): Added {
  const figures = Object.keys(catalogue.rows?.figures ?? {}).map(
    (column) => catalogue.rows?.figures[column] ?? '',
  );
  const ways = part.map((way) => [...way].filter((option) => !apart.has(option)));
  const sums: [string, Ends][] = [];
  const middles: Ends[] = [];
  for (const figure of figures) {
    const found = ways.map((way) => wayOf(catalogue, model, way, figure));
    sums.push([figure, hullOf(found.map(({ sum }) => [sum, sum]))]);
    for (const { middle } of found) if (middle !== undefined) middles.push([middle, middle]);
  }
  return { option: undefined, figures: Object.fromEntries(sums), place: hullOf(middles) };
}

const addsNothing = ({ figures }: Added): boolean =>
  Object.values(figures).every(([lo, hi]) => lo === 0 && hi === 0);

/** Several rows as one, for an order that is itself one of several. */
function together(rows: readonly Added[], names: readonly string[]): Added {
  const figures = names.map((name): [string, Ends] => [
    name,
    sumOf(rows.map((row) => row.figures[name] ?? [0, 0])),
  ]);
  const place = hullOf(rows.filter((row) => !addsNothing(row)).map((row) => row.place));
  return { option: undefined, figures: Object.fromEntries(figures), place };
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
  return rows.length > 0 ? rows : [together([], Object.values(catalogue.rows?.figures ?? {}))];
}

function rowsFor(catalogue: Catalogue, orders: readonly Order[] | undefined): readonly Added[] {
  const names = Object.values(catalogue.rows?.figures ?? {});
  if (!orders) return [anything(catalogue, names)];
  const among = candidates(catalogue, orders).map((order) => ({
    model: order.model,
    parts: buildsOf(catalogue, order).parts,
  }));
  const certain = among.map(({ parts }) => new Set(parts.flatMap((part) => [...certainIn(part)])));
  const sure = new Set(
    [...(certain[0] ?? [])].filter((option) => certain.every((each) => each.has(option))),
  );
  const rows = [...sure].map((option): Added => {
    const places = among.map(({ model }) => placeOf(catalogue, model, option));
    const figures = names.map((name): [string, Ends] => {
      const value = figureOf(catalogue, option, name);
      return [name, [value, value]];
    });
    const place = hullOf(places.map((at) => [at, at]));
    return { option, figures: Object.fromEntries(figures), place };
  });
  const open = among.map(({ model, parts }) =>
    parts.map((part) => openRow(catalogue, model, part, sure)).filter((row) => !addsNothing(row)),
  );
  const [only = []] = open;
  if (open.length <= 1) return [...rows, ...only];
  const merged = open.map((each) => together(each, names));
  const figures = names.map((name): [string, Ends] => [
    name,
    hullOf(merged.map((each) => each.figures[name] ?? [0, 0])),
  ]);
  const place = hullOf(merged.filter((each) => !addsNothing(each)).map((each) => each.place));
  const rest: Added = { option: undefined, figures: Object.fromEntries(figures), place };
  return addsNothing(rest) ? rows : [...rows, rest];
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
