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
 *     over    'orders'       what it comes to hangs on the model itself
 *             'unlike'       only on what is offered and wished for
 *             'ofOneModel'   only on the year and what is wished for
 */
export type Ask = {
  readonly yields: 'number' | 'truth';
  readonly about: 'figure' | 'model' | 'nothing' | 'year' | 'option' | 'change';
  readonly over: 'orders' | 'unlike' | 'ofOneModel';
};

const count = { yields: 'number', about: 'model', over: 'unlike' } as const;
const is = { yields: 'truth', about: 'model', over: 'unlike' } as const;
export const asks = {
  figure: { yields: 'number', about: 'figure', over: 'orders' },
  wishes: count,
  wishesMet: count,
  wishesMissing: count,
  imposed: count,
  brought: count,
  choices: count,
  builds: count,
  buildsInAll: count,
  sold: is,
  orderable: is,
  clash: is,
  modelsOrderable: { yields: 'number', about: 'nothing', over: 'ofOneModel' },
  orderableIn: { yields: 'truth', about: 'year', over: 'unlike' },
  inBuild: { yields: 'truth', about: 'option', over: 'unlike' },
  comesWith: { yields: 'truth', about: 'option', over: 'unlike' },
  becameStandard: { yields: 'truth', about: 'change', over: 'orders' },
} as const satisfies Record<string, Ask>;

export type AskName = keyof typeof asks;
export const isAsk = (name: string): name is AskName => Object.hasOwn(asks, name);
