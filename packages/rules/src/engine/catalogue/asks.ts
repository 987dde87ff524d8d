import type { Catalogue } from '../define/catalogue';
import type { AskName } from './ask-names';
import { buildsOf, isBuilt, type Order } from './builds';
import { becameStandard, figureIn, isSold } from './offers';

/** Least and most for one order; undefined where the catalogue has nothing. */
export type Found = readonly [lo: number, hi: number] | undefined;

const exactly = (value: number | undefined): Found =>
  value === undefined ? value : [value, value];

/** The fewest options that a build holds beside those wanted and those one of which it must have. */
function broughtAlong(catalogue: Catalogue, order: Order): number {
  const chosen = catalogue.rules.flatMap((rule) => (rule.kind === 'one-of' ? rule.others : []));
  const aside = new Set([...order.wanted, ...chosen]);
  const fewest = buildsOf(catalogue, order).parts.map((part) =>
    Math.min(...part.map((way) => [...way].filter((option) => !aside.has(option)).length)),
  );
  return fewest.reduce((total, each) => total + each, 0);
}

/** The models of which the same can be ordered in the same year. */
const orderableModels = (catalogue: Catalogue, order: Order): readonly string[] =>
  Object.keys(catalogue.models).filter(
    (model) => buildsOf(catalogue, { ...order, model }).count > 0n,
  );

export function numberFor(
  catalogue: Catalogue,
  ask: AskName,
  args: readonly string[],
  order: Order,
): Found {
  const builds = () => buildsOf(catalogue, order);
  switch (ask) {
    case 'figure':
      return exactly(figureIn(catalogue, order.model, order.year, args[0] ?? ''));
    case 'wishes':
      return exactly(order.wanted.length);
    case 'wishesMet':
      return exactly(builds().met);
    case 'wishesMissing':
      return exactly(order.wanted.length - builds().met);
    case 'imposed':
      return exactly(builds().imposed);
    case 'brought':
      return exactly(broughtAlong(catalogue, order));
    case 'choices':
      return exactly(builds().offered.optional.length);
    case 'builds':
      return exactly(Number(builds().count));
    case 'buildsInAll':
      return exactly(Number(buildsOf(catalogue, { ...order, wanted: [], unwanted: [] }).count));
    case 'modelsOrderable':
      return exactly(orderableModels(catalogue, order).length);
    default:
      return undefined;
  }
}

/** What may be true for one order: more than one, where the build is still open. */
export function truthFor(
  catalogue: Catalogue,
  ask: AskName,
  args: readonly string[],
  order: Order,
): readonly boolean[] {
  const [first = '', second = ''] = args;
  switch (ask) {
    case 'sold':
      return [isSold(catalogue, order.model, order.year)];
    case 'orderable':
    case 'orderableIn':
      return [buildsOf(catalogue, order).count > 0n];
    case 'clash': {
      const { sold, met, count: ways } = buildsOf(catalogue, order);
      return [sold && met === order.wanted.length && ways === 0n];
    }
    case 'inBuild': {
      const is = isBuilt(buildsOf(catalogue, order), first);
      return is === 'unknown' ? [true, false] : [is === 'yes'];
    }
    case 'comesWith':
      return [buildsOf(catalogue, order).offered.standard.has(first)];
    case 'becameStandard':
      return [becameStandard(catalogue, order.model, first) === second];
    default:
      return [];
  }
}
