import type { Kind } from './grammar/kind';
import type { KindName, Node, NodeOf } from './grammar/nodes';
import { arithmetic } from './kinds/arithmetic';
import { between } from './kinds/between';
import { both } from './kinds/both';
import { catalogued } from './kinds/catalogued';
import { choose } from './kinds/choose';
import { compare } from './kinds/compare';
import { count } from './kinds/count';
import { either } from './kinds/either';
import { given } from './kinds/given';
import { known } from './kinds/known';
import { largestKnown } from './kinds/largestKnown';
import { lookup } from './kinds/lookup';
import { max } from './kinds/max';
import { may } from './kinds/may';
import { min } from './kinds/min';
import { name } from './kinds/name';
import { needs } from './kinds/needs';
import { negative } from './kinds/negative';
import { not } from './kinds/not';
import { number } from './kinds/number';
import { over } from './kinds/over';
import { pick } from './kinds/pick';
import { power } from './kinds/power';
import { sum } from './kinds/sum';
import { sunHeight } from './kinds/sunHeight';
import { unlimited } from './kinds/unlimited';
import { whole } from './kinds/whole';
import { word } from './kinds/word';

/** Every kind of formula, each from its file. */
export const kinds: { readonly [K in KindName]: Kind<K> } = {
  number,
  word,
  name,
  unlimited,
  negative,
  arithmetic,
  compare,
  both,
  either,
  not,
  choose,
  min,
  max,
  largestKnown,
  sum,
  count,
  given,
  known,
  may,
  needs,
  lookup,
  pick,
  power,
  whole,
  between,
  sunHeight,
  over,
  catalogued,
};

/** The parts directly below a node, for walks that treat most kinds alike. */
export const below = <K extends KindName>(node: NodeOf<K>): readonly Node[] =>
  kinds[node.kind].parts(node);

function gathered(what: 'mentions' | 'asks', node: Node): readonly string[] {
  const found = new Set<string>();
  const walk = <K extends KindName>(each: NodeOf<K>): void => {
    const kind = kinds[each.kind];
    for (const part of kind.parts(each)) walk(part);
    for (const name of kind[what](each)) found.add(name);
  };
  walk(node);
  return [...found];
}

/** Every name a formula mentions, once, in the order of its text. */
export const namesIn = (node: Node): readonly string[] => gathered('mentions', node);

/** Every table, simulation and catalogue that a formula asks, once. */
export const askedIn = (node: Node): readonly string[] => gathered('asks', node);
