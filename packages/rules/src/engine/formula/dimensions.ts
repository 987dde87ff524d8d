import type { Topic } from '../define/shapes';
import { declaredUnit } from '../define/topic';
import type { KindName, Node, NodeOf } from './grammar/nodes';
import { alike, clash, type Sort, type Sorting, sortOfUnit } from './grammar/sorts';
import { sorts } from './sorts';

/** Units of the formulas that the topic does not list itself. */
export type NameUnits = ReadonlyMap<string, string>;

function thereIsNo({ facts }: Topic, found: string): never {
  const isWord = Object.values(facts).some(
    (each) => each.kind === 'choice' && each.options.includes(found),
  );
  return clash(`there is no “${found}”`, isWord ? 'word-without-quotes' : 'not-a-value', { found });
}

/** Whether a formula yields what its declared unit says; a FormulaError says how it does not. */
export function checkFormulaUnit(node: Node, declared: string, topic: Topic, all: NameUnits): void {
  const unitOf = (name: string): string =>
    all.get(name) ?? declaredUnit(topic, name) ?? thereIsNo(topic, name);
  const of = <K extends KindName>(each: NodeOf<K>): Sort => sorts[each.kind](each, at);
  const at: Sorting = { topic, unitOf, of };
  alike(of(node), sortOfUnit(declared), `the unit “${declared}”`);
}
