import type { Catalogue } from '../define/catalogue';
import type { Order } from './builds';
import { isSold } from './offers';

/** What a fact may be, and whether anybody mentioned it. */
export type Read = (fact: string) => {
  readonly options: readonly string[];
  readonly given: boolean;
};

/** A model or year that is asked about, whatever the facts say. */
export type Held = { readonly model?: string; readonly year?: string };

/** More orders than this are not looked through one by one. */
const mostOrders = 4096;

export type Orders = {
  /** Every order that the facts allow; undefined when there are too many. */
  readonly orders: readonly Order[] | undefined;
  /** The facts that leave it open. */
  readonly open: ReadonlySet<string>;
};

/** Each with one more option wanted or unwanted, or as it was. */
function withWish(orders: readonly Order[], option: string, said: readonly string[]) {
  return orders.flatMap((order) =>
    said.map((word) =>
      word === 'yes'
        ? { ...order, wanted: [...order.wanted, option] }
        : { ...order, unwanted: [...order.unwanted, option] },
    ),
  );
}

/** The orders that what is known of model, year and wishes leaves possible. */
export function ordersOf(catalogue: Catalogue, read: Read, held: Held = {}): Orders {
  const open = new Set<string>();
  const optionsOf = (fact: string): readonly string[] => {
    const { options } = read(fact);
    if (options.length > 1) open.add(fact);
    return options;
  };
  const models = held.model === undefined ? optionsOf(catalogue.model) : [held.model];
  const years = held.year === undefined ? optionsOf(catalogue.year) : [held.year];
  let orders: readonly Order[] = models.flatMap((model) =>
    years.map((year) => ({ model, year, wanted: [], unwanted: [] })),
  );
  for (const [option, fact] of Object.entries(catalogue.wishes)) {
    if (!read(fact).given) continue;
    const said = optionsOf(fact);
    if (orders.length * said.length > mostOrders) return { orders: undefined, open };
    orders = withWish(orders, option, said);
  }
  return { orders, open };
}

/** A model that is not sold that year is no candidate, as long as another is. */
export function candidates(catalogue: Catalogue, orders: readonly Order[]): readonly Order[] {
  const sold = orders.filter(({ model, year }) => isSold(catalogue, model, year));
  return sold.length > 0 ? sold : orders;
}
