import { addedBy } from '../catalogue/added';
import { buildsOf, isBuilt, type Order } from '../catalogue/builds';
import { standsAgainst } from '../catalogue/conflict';
import { becameStandard } from '../catalogue/offers';
import { type Held, ordersOf, type Read } from '../catalogue/orders';
import { ruleSaid } from '../catalogue/words';
import type { Catalogue, Tells } from '../define/catalogue';
import type { Topic } from '../define/shapes';
import type { Run } from '../formula/run';
import { message } from '../words/message';
import { heading, type Say, type Sayable, text } from '../words/value';
import type { Ends, RankingAnswer, SelectionAnswer } from './shapes';

type Told = SelectionAnswer['items'][number];
type Chosen = Told['chosen'];

/** An item and a list before they are put into words. */
type Item = Pick<Told, 'id' | 'chosen' | 'amounts' | 'source'> & {
  readonly label: Sayable;
  readonly because: Sayable;
};
type List = Pick<SelectionAnswer, 'id' | 'totals'> & {
  readonly title: string;
  readonly items: readonly Item[];
};

function inWords({ id, title, items, totals }: List, say: Say): SelectionAnswer {
  const said = items.map(({ label, because, ...item }) => ({
    ...item,
    label: say(label),
    because: say(because),
    message: because,
  }));
  return { id, label: say(text(title)), items: said, totals };
}

const readerOf =
  (run: Run): Read =>
  (fact) => {
    const value = run.value(fact);
    return { options: value.kind === 'among' ? value.options : [], given: run.given(fact) };
  };

/** Every order that is still possible; none, where wishes leave too many to look through. */
const possible = (catalogue: Catalogue, read: Read, held: Held = {}): readonly Order[] =>
  ordersOf(catalogue, read, held).orders ?? [];

const among = (found: readonly boolean[]): Chosen =>
  found.every((each) => each) ? 'yes' : found.some((each) => each) ? 'unknown' : 'no';

const span = (values: readonly number[], unit: string): Ends =>
  values.length === 0
    ? { lo: 0, hi: 0, unit }
    : { lo: Math.min(...values), hi: Math.max(...values), unit };

/** What the chosen things come to; one that is only perhaps chosen adds nothing, or all it has. */
function totalOf(items: readonly Item[], amount: string, unit: string): Ends {
  const sum = (of: readonly (number | undefined)[]) => of.reduce<number>((a, b) => a + (b ?? 0), 0);
  const sure = items.filter(({ chosen }) => chosen === 'yes');
  const maybe = items.filter(({ chosen }) => chosen !== 'no');
  return {
    lo: sum(sure.map((item) => item.amounts[amount]?.lo)),
    hi: sum(maybe.map((item) => item.amounts[amount]?.hi)),
    unit,
  };
}

function listOf(
  id: string,
  title: string,
  items: readonly Item[],
  amount: string,
  unit: string,
): List {
  return { id, title, items, totals: { [amount]: totalOf(items, amount, unit) } };
}

/** Why an option is built in: it is wanted, or what is wanted needs it, or one of several must be. */
function reasonFor(catalogue: Catalogue, option: string, isWanted: boolean, told: Tells['build']) {
  if (isWanted) return told.wanted;
  const isOneOf = catalogue.rules.some(
    (rule) => rule.kind === 'one-of' && rule.others.includes(option),
  );
  return isOneOf ? told.oneOf : told.needed;
}

function buildList(catalogue: Catalogue, read: Read, { build }: Tells): List {
  const { options, source, figures } = catalogue;
  const unit = figures[build.amount] ?? '';
  const orders = possible(catalogue, read);
  const built = orders.map((order) => buildsOf(catalogue, order));
  const items = Object.entries(options).map(([id, option]): Item => {
    const value = option.figures[build.amount] ?? 0;
    const isWanted = orders.some(({ wanted }) => wanted.includes(id));
    const found = built.map((each) => isBuilt(each, id));
    const isSame = found.length > 0 && found.every((each) => each === found[0]);
    const chosen = isSame ? (found[0] ?? 'unknown') : 'unknown';
    return {
      id,
      label: text(option.label),
      chosen,
      amounts: { [build.amount]: { lo: value, hi: value, unit } },
      because: text(reasonFor(catalogue, id, isWanted, build)),
      source,
    };
  });
  const added = addedBy(catalogue, orders).map((each) => each.figures[build.amount] ?? [0, 0]);
  const [lo, hi] = added.reduce(([a, b], each) => [a + each[0], b + each[1]], [0, 0]);
  return { id: 'build', title: build.title, items, totals: { [build.amount]: { lo, hi, unit } } };
}

/** Whether an order can be built, and in how many ways. */
function orderItem(catalogue: Catalogue, id: string, label: string, read: Read, held: Held) {
  const counts = possible(catalogue, read, held).map((order) =>
    Number(buildsOf(catalogue, order).count),
  );
  return {
    id,
    label: text(label),
    chosen: counts.length === 0 ? ('unknown' as const) : among(counts.map((count) => count > 0)),
    amounts: { builds: span(counts, '') },
    source: catalogue.source,
  };
}

function modelList(catalogue: Catalogue, read: Read, { models }: Tells): List {
  const items = Object.entries(catalogue.models).map(([id, { label }]) => ({
    ...orderItem(catalogue, id, label, read, { model: id }),
    because: text(models.because),
  }));
  return listOf('models', models.title, items, 'builds', '');
}

function yearList(catalogue: Catalogue, read: Read, { years }: Tells): List {
  const items = catalogue.years.map((year) => {
    const { amounts, ...item } = orderItem(catalogue, year, year, read, { year });
    const because = text(years.because, { ways: amounts.builds });
    return { ...item, amounts: {}, because };
  });
  return { id: 'years', title: years.title, items, totals: {} };
}

/** What stands against the one order that is asked about. */
function againstList(catalogue: Catalogue, read: Read, { against }: Tells): List {
  const [order, more] = possible(catalogue, read);
  const found = order && !more ? standsAgainst(catalogue, order) : [];
  const because = {
    'not-offered': against.notOffered,
    wanted: against.wanted,
    unwanted: against.unwanted,
    rule: against.rule,
  } as const;
  const items = found.map((each, i): Item => {
    const label =
      each.kind === 'rule'
        ? ruleSaid(catalogue, each.rule)
        : text(catalogue.options[each.option]?.label ?? each.option);
    const id = each.kind === 'rule' ? `rule-${i + 1}` : each.option;
    const { source } = catalogue;
    return { id, label, chosen: 'yes', amounts: {}, because: text(because[each.kind]), source };
  });
  return { id: 'against', title: against.title, items, totals: {} };
}

/** What stands against the order by name: the wishes, not the rules between them. */
export function namedAgainst(topic: Topic, run: Run): readonly Sayable[] {
  const read = readerOf(run);
  return Object.values(topic.catalogues ?? {}).flatMap((catalogue) => {
    const orders = possible(catalogue, read);
    const found = orders.map((order) =>
      standsAgainst(catalogue, order).flatMap((each) =>
        each.kind === 'rule' ? [] : [each.option],
      ),
    );
    const [first = []] = found;
    const inAll = first.filter((option) => found.every((each) => each.includes(option)));
    return inAll.map((option) => heading(catalogue.options[option]?.label ?? option));
  });
}

function standardList(catalogue: Catalogue, read: Read, { standard }: Tells): List {
  const unit = catalogue.figures[standard.amount] ?? '';
  const none: Read = (fact) => ({ ...read(fact), given: false });
  const orders = possible(catalogue, none);
  const items = Object.entries(catalogue.options).flatMap(([id, option]): Item[] => {
    const since = orders.map(({ model }) => becameStandard(catalogue, model, id));
    const value = option.figures[standard.amount] ?? 0;
    return [...new Set(since)].toSorted().flatMap((year) => {
      if (year === undefined) return [];
      const chosen = among(orders.map((order, i) => since[i] === year && year <= order.year));
      return {
        id: `${id}-${year}`,
        label: message('since-year', { label: text(option.label), year }),
        chosen,
        amounts: { [standard.amount]: { lo: value, hi: value, unit } },
        because: text(standard.because),
        source: catalogue.source,
      };
    });
  });
  return listOf('standard', standard.title, items, standard.amount, unit);
}

/** What is built in, which models and years can be had so, and what came to be standard. */
export function catalogueLists(
  { catalogues = {} }: Topic,
  run: Run,
  say: Say,
): readonly SelectionAnswer[] {
  const read = readerOf(run);
  return Object.values(catalogues).flatMap((catalogue) => {
    const { tells } = catalogue;
    if (!tells) return [];
    const make = [againstList, buildList, modelList, yearList, standardList];
    return make.map((list) => inWords(list(catalogue, read, tells), say));
  });
}

type Ranked = { readonly id: string; readonly of: readonly Sayable[]; readonly value: Ends };

/** Those that certainly have the same number share a place. */
function equalsTogether(sorted: readonly Ranked[]): readonly Ranked[] {
  const found: Ranked[] = [];
  for (const each of sorted) {
    const last = found.at(-1);
    const { lo, hi } = each.value;
    if (last && lo === hi && last.value.lo === lo && last.value.hi === hi) {
      found[found.length - 1] = { ...last, of: [...last.of, ...each.of] };
    } else found.push(each);
  }
  return found;
}

/** Models by how many options each leaves open, most first; models not sold are left out. */
export function catalogueRankings(
  { catalogues = {} }: Topic,
  run: Run,
  say: Say,
): readonly RankingAnswer[] {
  const read = readerOf(run);
  const none: Read = (fact) => ({ ...read(fact), given: false });
  return Object.values(catalogues).flatMap((catalogue) => {
    if (!catalogue.tells) return [];
    const ranked = Object.entries(catalogue.models).flatMap(([id, { label }]) => {
      const builds = possible(catalogue, none, { model: id }).map((o) => buildsOf(catalogue, o));
      const value = span(
        builds.map(({ offered }) => offered.optional.length),
        '',
      );
      return builds.some(({ sold }) => sold) ? [{ id, of: [text(label)], value }] : [];
    });
    const sorted = ranked.toSorted((a, b) => b.value.lo + b.value.hi - a.value.lo - a.value.hi);
    const merged = equalsTogether(sorted);
    const entries = merged.map(({ id, of, value }, i) => {
      const next = merged[i + 1];
      const told = message('one-by-one', { of });
      const apart = !next || value.lo > next.value.hi;
      return { id, says: say(told), message: told, value, apart, out: false };
    });
    const { tells, source } = catalogue;
    return { id: 'choices', label: say(text(tells.choices.title)), entries, rest: '', source };
  });
}
