import type { Catalogue } from '../define/catalogue';

/** What a model offers in a year. */
export type Offered = {
  readonly standard: ReadonlySet<string>;
  /** In the order of the list; the variables of the rules. */
  readonly optional: readonly string[];
};

/** What a model offers in a year in which it is not sold. */
const nothing: Offered = { standard: new Set(), optional: [] };

export function isSold({ models }: Catalogue, model: string, year: string): boolean {
  const sold = models[model]?.sold;
  return sold !== undefined && sold[0] <= year && year <= sold[1];
}

const listed = new WeakMap<Catalogue, Map<string, Offered>>();

/** One list of what is offered for all models and years that have the same. */
function offeredOn(catalogue: Catalogue, list: string, year: string): Offered {
  const kept = listed.get(catalogue) ?? new Map<string, Offered>();
  listed.set(catalogue, kept);
  const before = kept.get(`${list} ${year}`);
  if (before) return before;
  const now = (catalogue.offers[list] ?? []).filter(
    ({ from, to }) => from <= year && (to === undefined || year <= to),
  );
  const standard = now.flatMap(({ option, as }) => (as === 'standard' ? [option] : []));
  const optional = now.flatMap(({ option, as }) => (as === 'optional' ? [option] : []));
  const same = `=${standard.join(' ')}|${optional.join(' ')}`;
  const made = kept.get(same) ?? { standard: new Set(standard), optional };
  kept.set(same, made);
  kept.set(`${list} ${year}`, made);
  return made;
}

export const offeredIn = (catalogue: Catalogue, model: string, year: string): Offered =>
  isSold(catalogue, model, year)
    ? offeredOn(catalogue, catalogue.models[model]?.offers ?? '', year)
    : nothing;

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
