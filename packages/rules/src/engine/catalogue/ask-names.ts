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
