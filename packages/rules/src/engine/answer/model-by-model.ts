import { hull, subtract } from '../../quantity';
import { isSold } from '../catalogue/offers';
import { type ConditionRule, conditionRules } from '../condition/rules';
import { holds, type Look } from '../condition/walk';
import type { Condition, Finding, Limit, Topic } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import { type ParameterValues, type Run, runLike } from '../formula/run';
import type { Input, Inputs } from '../value/values';
import { type Holding, isAsked } from './levels';
import type { Rooms } from './listed';
import { endsOf, lookIn } from './named';

/** More models and years than this are not looked through one by one. */
const mostModels = 200;

const optionsOf = (input: Input | undefined): readonly string[] =>
  input?.kind === 'among' ? input.options : [];

type One = { readonly inputs: Inputs; readonly years: readonly Inputs[] };

/** The inputs with one model each, and of each with one year; none where there is only one, or too many. */
function oneByOne(topic: Topic, inputs: Inputs): readonly One[] {
  return Object.values(topic.catalogues ?? {}).flatMap((catalogue) => {
    const { model, year } = catalogue;
    const [models, years] = [optionsOf(inputs.get(model)), optionsOf(inputs.get(year))];
    const only = (among: Inputs, fact: string, options: readonly string[]): Inputs => {
      const before = among.get(fact);
      if (before?.kind !== 'among') throw new Error(`“${fact}” is no choice.`);
      return new Map([...among, [fact, { ...before, options }]]);
    };
    const each = models.flatMap((name): One[] => {
      const sold = years.filter((y) => isSold(catalogue, name, y));
      if (sold.length === 0) return [];
      const chosen = only(inputs, model, [name]);
      return [
        { inputs: only(chosen, year, sold), years: sold.map((y) => only(chosen, year, [y])) },
      ];
    });
    const count = each.reduce((total, one) => total + one.years.length, 0);
    return count < 2 || count > mostModels ? [] : each;
  });
}

/** How many models are reckoned by themselves; none where one is meant, or too many. */
export const modelsOpen = (topic: Topic, inputs: Inputs): number => oneByOne(topic, inputs).length;

/** A run of a model in whichever year, and of each of its years; each looked into when it is wanted. */
type Looked = { readonly look: Look; readonly years: () => readonly Look[] };

/** Of a model: what holds in whichever year need not be asked year by year. */
const inEvery = (condition: Condition, { look, years }: Looked): boolean =>
  holds(condition, 'certain', look) || years().every((each) => holds(condition, 'certain', each));

const inAny = (condition: Condition, { look, years }: Looked): boolean =>
  holds(condition, 'possible', look) && years().some((each) => holds(condition, 'possible', each));

/** Made when first wanted. */
function kept<K extends object, V>(make: (key: K) => V): (key: K) => V {
  const before = new Map<K, V>();
  return (key) => {
    const found = before.get(key) ?? make(key);
    before.set(key, found);
    return found;
  };
}

/** What is asked, and may or may not hold while it is open which model is meant. */
function openRules(topic: Topic, { certain, possible }: Holding, run: Run) {
  const { limits, findings } = topic;
  const asked = (id: string, kind: string, all: Readonly<Record<string, Limit | Finding>>) =>
    all[id] && isAsked(all[id], run) ? [`${kind}.${id}`] : [];
  const of = new Set([
    ...Object.keys(limits).flatMap((id) => asked(id, 'limit', limits)),
    ...Object.keys(findings).flatMap((id) => asked(id, 'finding', findings)),
  ]);
  return conditionRules(topic).filter(
    ({ name, event }) => of.has(event.params.of) && possible.has(name) && !certain.has(name),
  );
}

/**
 * Where it is open which model is meant, each is reckoned by itself: the weight of one is never held
 * against the rating of another. What holds of every model holds; what holds of none may not. What is
 * certain, or cannot be, whichever it is, is so of each and is not asked again.
 */
export function modelByModel(
  compiled: Compiled,
  inputs: Inputs,
  parameters: ParameterValues,
  holding: Holding,
  like: Run,
): { readonly holding: Holding; readonly rooms: Rooms } {
  const { topic } = compiled;
  const all = oneByOne(topic, inputs);
  if (all.length === 0) return { holding, rooms: () => undefined };
  const runOf = (one: Inputs) => runLike(like, compiled, one, parameters);
  const runsOf = kept(({ years }: One) => years.map(runOf));
  const lookOf = kept((run: Run) => lookIn(compiled, run));
  const models = all.map(
    (one): Looked => ({
      look: lookIn(compiled, runOf(one.inputs)),
      years: () => runsOf(one).map(lookOf),
    }),
  );
  const open = openRules(topic, holding, like);
  const inAll = ({ conditions }: ConditionRule): boolean =>
    models.every((each) => inEvery(conditions, each));
  const inSome = ({ conditions }: ConditionRule): boolean =>
    models.some((each) => inAny(conditions, each));
  const namesOf = (rules: readonly ConditionRule[]) => rules.map(({ name }) => name);
  const inNone = new Set(namesOf(open.filter((rule) => !inSome(rule))));
  return {
    holding: {
      certain: new Set([...holding.certain, ...namesOf(open.filter(inAll))]),
      possible: new Set([...holding.possible].filter((name) => !inNone.has(name))),
    },
    rooms: ({ used, limit }) =>
      all
        .flatMap(runsOf)
        .map((run) => subtract(endsOf(compiled, run, limit), endsOf(compiled, run, used)))
        .reduce(hull),
  };
}
