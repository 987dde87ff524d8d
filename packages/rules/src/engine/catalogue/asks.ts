import type { Catalogue } from '../define/catalogue';
import { buildsOf, isBuilt, type Order } from './builds';
import { becameStandard, figureIn, isSold } from './offers';

/**
 * What a formula can ask of a catalogue, as `builds(yard)` or `orderable(yard, 'osier-19')`: what it
 * yields, what may follow the catalogue's name, and its value for one order.
 *
 *     about   'figure'   a figure, by name
 *             'model'    a model instead of the chosen one, or nothing
 *             'nothing'  nothing more: it is asked over all models
 *             'year'     a year instead of the chosen one
 *             'option'   an option
 *             'change'   an option and a year
 */
export type Ask = {
  readonly yields: 'number' | 'truth';
  readonly about: 'figure' | 'model' | 'nothing' | 'year' | 'option' | 'change';
};

const count = { yields: 'number', about: 'model' } as const;
export const asks = {
  figure: { yields: 'number', about: 'figure' },
  wishes: count,
  wishesMet: count,
  wishesMissing: count,
  imposed: count,
  brought: count,
  choices: count,
  builds: count,
  buildsInAll: count,
  sold: { yields: 'truth', about: 'model' },
  orderable: { yields: 'truth', about: 'model' },
  clash: { yields: 'truth', about: 'model' },
  modelsOrderable: { yields: 'number', about: 'nothing' },
  orderableIn: { yields: 'truth', about: 'year' },
  inBuild: { yields: 'truth', about: 'option' },
  comesWith: { yields: 'truth', about: 'option' },
  becameStandard: { yields: 'truth', about: 'change' },
} as const satisfies Record<string, Ask>;

export type AskName = keyof typeof asks;
export const isAsk = (name: string): name is AskName => Object.hasOwn(asks, name);

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

/** What is wrong with what a formula asks of a catalogue; undefined when nothing is. */
export function askedWrongly(
  catalogue: Catalogue | undefined,
  { catalogue: name, ask, args }: { catalogue: string; ask: AskName; args: readonly string[] },
): string | undefined {
  if (!catalogue) return `there is no catalogue “${name}”`;
  const [first, second] = args;
  if (first === undefined) return undefined;
  const missing = (kind: string, word: string) => `catalogue ${name} has no ${kind} “${word}”`;
  const { about } = asks[ask];
  if (about === 'figure' && !Object.hasOwn(catalogue.figures, first)) {
    return missing('figure', first);
  }
  if (about === 'model' && !Object.hasOwn(catalogue.models, first)) return missing('model', first);
  if (about === 'year' && !catalogue.years.includes(first)) return missing('year', first);
  if (about !== 'option' && about !== 'change') return undefined;
  if (!Object.hasOwn(catalogue.options, first)) return missing('option', first);
  const isYear = second === undefined || catalogue.years.includes(second);
  return isYear ? undefined : missing('year', second);
}
