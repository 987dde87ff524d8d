import type { Catalogue } from '../define/catalogue';

/** What a model offers in a year. */
export type Offered = {
  readonly standard: ReadonlySet<string>;
  /** In the order of the list; the variables of the rules. */
  readonly optional: readonly string[];
};

const nothing: Offered = { standard: new Set(), optional: [] };

export function isSold({ models }: Catalogue, model: string, year: string): boolean {
  const sold = models[model]?.sold;
  return sold !== undefined && sold[0] <= year && year <= sold[1];
}

export function offeredIn(catalogue: Catalogue, model: string, year: string): Offered {
  const list = catalogue.models[model]?.offers ?? '';
  if (!isSold(catalogue, model, year)) return nothing;
  const now = (catalogue.offers[list] ?? []).filter(
    ({ from, to }) => from <= year && (to === undefined || year <= to),
  );
  const standard = new Set(now.flatMap(({ option, as }) => (as === 'standard' ? [option] : [])));
  const optional = now.flatMap(({ option, as }) => (as === 'optional' ? [option] : []));
  return { standard, optional };
}

/** The first year in which an option comes with a model without being asked for; after its first. */
export function becameStandard(
  catalogue: Catalogue,
  model: string,
  option: string,
): string | undefined {
  const sold = catalogue.years.filter((year) => isSold(catalogue, model, year));
  const is = (year: string) => offeredIn(catalogue, model, year).standard.has(option);
  return sold.find((year, i) => i > 0 && is(year) && !is(sold[i - 1] ?? year));
}

/** A figure of a model in a year; undefined where the catalogue has none. */
export function figureIn(
  { models }: Catalogue,
  model: string,
  year: string,
  figure: string,
): number | undefined {
  const found = models[model];
  return found?.inYear?.[year]?.[figure] ?? found?.figures[figure];
}
