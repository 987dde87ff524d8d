import type { Catalogue } from '../define/catalogue';
import type { Order } from './builds';
import { isSold, offeredIn } from './offers';

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
  /** One of all for which the same is offered and wished for; in any year, one of all models. */
  readonly unlike: readonly Order[] | undefined;
  readonly ofOneModel: readonly Order[] | undefined;
  /** The facts that leave it open. */
  readonly open: ReadonlySet<string>;
};

type Wish = Pick<Order, 'wanted' | 'unwanted'>;

/** Each with one more option wanted or unwanted. */
const withWish = (wishes: readonly Wish[], option: string, said: readonly string[]) =>
  wishes.flatMap((wish) =>
    said.map((word) =>
      word === 'yes'
        ? { ...wish, wanted: [...wish.wanted, option] }
        : { ...wish, unwanted: [...wish.unwanted, option] },
    ),
  );

/** What the orders hang on, in one line: the same line, the same orders. */
function markOf({ model, year, wishes }: Catalogue, read: Read, held: Held): string {
  const named = (fact: string, only: string | undefined): string =>
    only === undefined ? read(fact).options.join(' ') : `=${only}`;
  const wished = Object.values(wishes).map((fact) => {
    const { options, given } = read(fact);
    return given ? options.join(' ') : '';
  });
  return [named(model, held.model), named(year, held.year), ...wished].join('|');
}

/** Lists kept for a catalogue hold no more orders than this between them; the oldest go first. */
const mostKept = 60_000;
type Kept = { readonly lists: Map<string, Orders>; held: number };
const keptFor = new WeakMap<Catalogue, Kept>();

const sizeOf = ({ orders }: Orders): number => 1 + (orders?.length ?? 0);

function keep(kept: Kept, mark: string, made: Orders): void {
  kept.lists.set(mark, made);
  kept.held += sizeOf(made);
  for (const [oldest, list] of kept.lists) {
    if (kept.held <= mostKept || oldest === mark) return;
    kept.lists.delete(oldest);
    kept.held -= sizeOf(list);
  }
}

/**
 * The orders that what is known of model, year and wishes leaves possible. Where these stand as they
 * stood before, the very same list, so that what was found of it can be kept by it.
 */
export function ordersOf(catalogue: Catalogue, read: Read, held: Held = {}): Orders {
  const kept = keptFor.get(catalogue) ?? { lists: new Map(), held: 0 };
  keptFor.set(catalogue, kept);
  const mark = markOf(catalogue, read, held);
  const before = kept.lists.get(mark);
  if (before) return before;
  const made = listOrders(catalogue, read, held);
  keep(kept, mark, made);
  return made;
}

function listOrders(catalogue: Catalogue, read: Read, held: Held): Orders {
  const open = new Set<string>();
  const optionsOf = (fact: string): readonly string[] => {
    const { options } = read(fact);
    if (options.length > 1) open.add(fact);
    return options;
  };
  const models = held.model === undefined ? optionsOf(catalogue.model) : [held.model];
  const years = held.year === undefined ? optionsOf(catalogue.year) : [held.year];
  const listed = models.flatMap((model) => years.map((year) => ({ model, year })));
  let wishes: readonly Wish[] = [{ wanted: [], unwanted: [] }];
  for (const [option, fact] of Object.entries(catalogue.wishes)) {
    if (!read(fact).given) continue;
    const said = optionsOf(fact);
    if (listed.length * wishes.length * said.length > mostOrders) {
      return { orders: undefined, unlike: undefined, ofOneModel: undefined, open };
    }
    wishes = withWish(wishes, option, said);
  }
  const wished = (among: typeof listed): readonly Order[] =>
    among.flatMap((each) => wishes.map((wish) => ({ ...each, ...wish })));
  const byOffer = new Map(
    listed.toReversed().map((each) => [offeredIn(catalogue, each.model, each.year), each]),
  );
  const ofOneModel = wished(listed.filter(({ model }) => model === models[0]));
  return { orders: wished(listed), unlike: wished([...byOffer.values()]), ofOneModel, open };
}

/** The same without a word of wishes: which model, of which year. */
export const modelsOf = (catalogue: Catalogue, read: Read, held: Held = {}): Orders =>
  ordersOf(withoutWishes(catalogue), read, held);

const bare = new WeakMap<Catalogue, Catalogue>();

function withoutWishes(catalogue: Catalogue): Catalogue {
  const before = bare.get(catalogue);
  if (before) return before;
  const made: Catalogue = { ...catalogue, wishes: {} };
  bare.set(catalogue, made);
  return made;
}

/** A model that is not sold that year is no candidate, as long as another is. */
export function candidates(catalogue: Catalogue, orders: readonly Order[]): readonly Order[] {
  const sold = orders.filter(({ model, year }) => isSold(catalogue, model, year));
  return sold.length > 0 ? sold : orders;
}
