import { hull, type Interval, subtract } from '../../quantity';
import { isSold } from '../catalogue/offers';
import { conditionRules } from '../condition/rules';
import { rulesHolding } from '../condition/walk';
import type { Topic } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import { type ParameterValues, type Run, runLike } from '../formula/run';
import type { Input, Inputs } from '../value/values';
import type { Holding } from './levels';
import { endsOf, namedValues } from './named';

/** What each limit leaves, over all models. */
export type Rooms = ReadonlyMap<string, Interval>;

/** More models and years than this are not looked through one by one. */
const mostModels = 200;

const optionsOf = (input: Input | undefined): readonly string[] =>
  input?.kind === 'among' ? input.options : [];

/** The inputs with one model and year each; none where there is only one, or too many. */
function oneByOne(topic: Topic, inputs: Inputs): readonly Inputs[] {
  return Object.values(topic.catalogues ?? {}).flatMap((catalogue) => {
    const { model, year } = catalogue;
    const [models, years] = [optionsOf(inputs.get(model)), optionsOf(inputs.get(year))];
    const sold = models.flatMap((m) =>
      years.flatMap((y) => (isSold(catalogue, m, y) ? [[m, y] as const] : [])),
    );
    if (sold.length < 2 || sold.length > mostModels) return [];
    return sold.map(([m, y]) => {
      const as = (fact: string, option: string): [string, Input] => {
        const before = inputs.get(fact);
        if (before?.kind !== 'among') throw new Error(`“${fact}” is no choice.`);
        return [fact, { ...before, options: [option] }];
      };
      return new Map([...inputs, as(model, m), as(year, y)]);
    });
  });
}

/**
 * Where it is open which model is meant, each is reckoned by itself: the weight of one is never held
 * against the rating of another. What holds of every model holds; what holds of none may not.
 */
export function modelByModel(
  compiled: Compiled,
  inputs: Inputs,
  parameters: ParameterValues,
  holding: Holding,
  like: Run,
): { readonly holding: Holding; readonly rooms: Rooms } {
  const { topic } = compiled;
  const each = oneByOne(topic, inputs);
  if (each.length === 0) return { holding, rooms: new Map() };
  const rules = conditionRules(topic);
  const found = each.map((one) => {
    const run = runLike(like, compiled, one, parameters);
    const values = namedValues(compiled, run);
    const rooms = Object.entries(topic.limits).map(([id, { used, limit }]): [string, Interval] => [
      id,
      subtract(endsOf(compiled, run, limit), endsOf(compiled, run, used)),
    ]);
    return {
      rooms: new Map(rooms),
      certain: rulesHolding(rules, 'certain', values),
      possible: rulesHolding(rules, 'possible', values),
    };
  });
  const inAll = [...(found[0]?.certain ?? [])].filter((id) =>
    found.every(({ certain }) => certain.has(id)),
  );
  const inSome = (id: string) => found.some(({ possible }) => possible.has(id));
  const roomOf = (id: string): Interval =>
    found.flatMap(({ rooms }) => rooms.get(id) ?? []).reduce(hull);
  return {
    holding: {
      certain: new Set([...holding.certain, ...inAll]),
      possible: new Set([...holding.possible].filter(inSome)),
    },
    rooms: new Map(Object.keys(topic.limits).map((id) => [id, roomOf(id)])),
  };
}
