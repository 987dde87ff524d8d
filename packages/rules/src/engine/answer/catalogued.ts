import { show } from '../../quantity';
import { addedBy } from '../catalogue/added';
import { buildsOf, isBuilt, type Order } from '../catalogue/builds';
import { standsAgainst } from '../catalogue/conflict';
import { becameStandard } from '../catalogue/offers';
import { type Held, ordersOf, type Read } from '../catalogue/orders';
import { ruleInWords } from '../catalogue/words';
import type { Catalogue, Tells } from '../define/catalogue';
import type { Topic } from '../define/shapes';
import type { Run } from '../formula/run';
import type { Ends, RankingAnswer, SelectionAnswer } from './shapes';

type Item = SelectionAnswer['items'][number];
type Chosen = Item['chosen'];

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
): SelectionAnswer {
  return { id, label: title, items, totals: { [amount]: totalOf(items, amount, unit) } };
}

/** Why an option is built in: it is wanted, or what is wanted needs it, or one of several must be. */
function reasonFor(catalogue: Catalogue, option: string, isWanted: boolean, told: Tells['build']) {
  if (isWanted) return told.wanted;
  const isOneOf = catalogue.rules.some(
    (rule) => rule.kind === 'one-of' && rule.others.includes(option),
  );
  return isOneOf ? told.oneOf : told.needed;
}

function buildList(catalogue: Catalogue, read: Read, { build }: Tells): SelectionAnswer {
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
      label: option.label,
      chosen,
      amounts: { [build.amount]: { lo: value, hi: value, unit } },
      because: reasonFor(catalogue, id, isWanted, build),
      source,
    };
  });
  const added = addedBy(catalogue, orders).map((each) => each.figures[build.amount] ?? [0, 0]);
  const [lo, hi] = added.reduce(([a, b], each) => [a + each[0], b + each[1]], [0, 0]);
  return { id: 'build', label: build.title, items, totals: { [build.amount]: { lo, hi, unit } } };
}

/** Whether an order can be built, and in how many ways. */
function orderItem(catalogue: Catalogue, id: string, label: string, read: Read, held: Held) {
  const counts = possible(catalogue, read, held).map((order) =>
    Number(buildsOf(catalogue, order).count),
  );
  return {
    id,
    label,
    chosen: counts.length === 0 ? ('unknown' as const) : among(counts.map((count) => count > 0)),
    amounts: { builds: span(counts, '') },
    source: catalogue.source,
  };
}

function modelList(catalogue: Catalogue, read: Read, { models }: Tells): SelectionAnswer {
  const items = Object.entries(catalogue.models).map(([id, { label }]) => ({
    ...orderItem(catalogue, id, label, read, { model: id }),
    because: models.because,
  }));
  return listOf('models', models.title, items, 'builds', '');
}

function yearList(catalogue: Catalogue, read: Read, { years }: Tells): SelectionAnswer {
  const items = catalogue.years.map((year) => {
    const { amounts, ...item } = orderItem(catalogue, year, year, read, { year });
    const because = years.because.replace('{ways}', show(amounts.builds, ''));
    return { ...item, amounts: {}, because };
  });
  return { id: 'years', label: years.title, items, totals: {} };
}

/** What stands against the one order that is asked about. */
function againstList(catalogue: Catalogue, read: Read, { against }: Tells): SelectionAnswer {
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
        ? ruleInWords(catalogue, each.rule)
        : (catalogue.options[each.option]?.label ?? each.option);
    const id = each.kind === 'rule' ? `rule-${i + 1}` : each.option;
    const { source } = catalogue;
    return { id, label, chosen: 'yes', amounts: {}, because: because[each.kind], source };
  });
  return { id: 'against', label: against.title, items, totals: {} };
}

function standardList(catalogue: Catalogue, read: Read, { standard }: Tells): SelectionAnswer {
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
        label: `${option.label}, ${year}`,
        chosen,
        amounts: { [standard.amount]: { lo: value, hi: value, unit } },
        because: standard.because,
        source: catalogue.source,
      };
    });
  });
  return listOf('standard', standard.title, items, standard.amount, unit);
}

/** What is built in, which models and years can be had so, and what came to be standard. */
export function catalogueLists({ catalogues = {} }: Topic, run: Run): readonly SelectionAnswer[] {
  const read = readerOf(run);
  return Object.values(catalogues).flatMap((catalogue) => {
    const { tells } = catalogue;
    if (!tells) return [];
    const make = [againstList, buildList, modelList, yearList, standardList];
    return make.map((list) => list(catalogue, read, tells));
  });
}

type Ranked = { readonly id: string; readonly says: string; readonly value: Ends };

/** Those that certainly have the same number share a place. */
function equalsTogether(sorted: readonly Ranked[]): readonly Ranked[] {
  const found: Ranked[] = [];
  for (const each of sorted) {
    const last = found.at(-1);
    const { lo, hi } = each.value;
    if (last && lo === hi && last.value.lo === lo && last.value.hi === hi) {
      found[found.length - 1] = { ...last, says: `${last.says}, ${each.says}` };
    } else found.push(each);
  }
  return found;
}

/** Models by how many options each leaves open, most first; models not sold are left out. */
export function catalogueRankings({ catalogues = {} }: Topic, run: Run): readonly RankingAnswer[] {
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
      return builds.some(({ sold }) => sold) ? [{ id, says: label, value }] : [];
    });
    const sorted = ranked.toSorted((a, b) => b.value.lo + b.value.hi - a.value.lo - a.value.hi);
    const merged = equalsTogether(sorted);
    const entries = merged.map((entry, i) => {
      const next = merged[i + 1];
      return { ...entry, apart: !next || entry.value.lo > next.value.hi, out: false };
    });
    const { tells, source } = catalogue;
    return { id: 'choices', label: tells.choices.title, entries, rest: '', source };
  });
}
