import { unitOfName } from '../answer/named';
import type { Node } from '../formula/grammar/nodes';
import { namesIn } from '../formula/kinds';
import { reckon } from '../formula/reckon';
import { valueSaid, working } from '../formula/words';
import { message } from '../words/message';
import type { Sayable } from '../words/value';
import { factorsOf, termsOf } from './apart';
import { nameTold, nounOf, type Telling, tableTold } from './nouns';

/** What stands inside a simulation or a list has many values, and so none to be named with. */
const isSingle = ({ compiled: { topic, formulas } }: Telling, name: string): boolean =>
  formulas.has(name) || topic.facts[name]?.kind === 'quantity' || name in topic.parameters;

/** The things a factor is: itself, the list that it sums, or the terms of its sum. */
function thingsIn(telling: Telling, factor: Node): readonly string[] {
  if (factor.kind === 'sum') return [factor.list];
  const apart = termsOf(factor);
  // Of what is left of one thing without another it is the part of the first.
  const isLess = apart.some(({ minus }) => minus);
  const terms = (isLess ? apart.slice(0, 1) : apart).map(({ node }) => node);
  const names = terms.flatMap((node) => (node.kind === 'name' ? [node.id] : []));
  return names.length === terms.length && names.every((each) => isSingle(telling, each))
    ? names
    : [];
}

/** What a product is the part of: the factor that has its unit, or else stands first in it. */
export function headOf(telling: Telling, node: Node, unit: string): Sayable | undefined {
  const { compiled } = telling;
  const { over, under } = factorsOf(node);
  const candidates = over
    .map((factor) => thingsIn(telling, factor))
    .filter((names) => names.length > 0);
  const hasUnit = (name: string) => unitOfName(compiled, name) === unit;
  // A length divided by a length is a lever, and no part of the length that comes of it.
  const isCanceled = under.some((factor) => thingsIn(telling, factor).some(hasUnit));
  const isOwn = (name: string) => !isCanceled && hasUnit(name);
  const isGiven = (name: string) => !(name in compiled.topic.parameters);
  const names =
    candidates.find((each) => each.every(isOwn)) ??
    candidates.find((each) => each.every(isGiven)) ??
    namesIn(node)
      .filter((each) => isSingle(telling, each))
      .slice(0, 1);
  const of = names.map((each) => nounOf(compiled, each));
  return of.length === 0 ? undefined : message('all', { of });
}

/** “the distance from ball to axle (20 ft, tape)”, or the numbers where no name says what it is. */
function factorTold(telling: Telling, factor: Node): Sayable {
  const { compiled, scope } = telling;
  switch (factor.kind) {
    case 'name':
      return nameTold(telling, factor.id);
    case 'lookup':
    case 'pick':
      return tableTold(telling, factor);
    case 'sum': {
      const noun = nounOf(compiled, factor.list);
      if (factor.of.kind !== 'name') {
        return message('noun-is', { noun, value: working(factor, telling), from: null });
      }
      const unit = unitOfName(compiled, factor.of.id);
      return message('noun-is', {
        noun,
        value: valueSaid(reckon(factor, scope), unit),
        from: null,
      });
    }
    case 'number':
      return working(factor, telling);
    default: {
      const terms = termsOf(factor);
      const isSum =
        terms.length > 1 && terms.every(({ node, minus }) => !minus && node.kind === 'name');
      if (!isSum) return message('bracket', { of: working(factor, telling) });
      return message('sum-told', { of: terms.map(({ node }) => factorTold(telling, node)) });
    }
  }
}

/** “the tongue (565 lb) times the overhang (49 in), divided by the wheelbase (130 in)” */
export function factorsTold(telling: Telling, node: Node): Sayable {
  const { over, under } = factorsOf(node);
  return message('factors-told', {
    over: over.map((each) => factorTold(telling, each)),
    under: under.map((each) => factorTold(telling, each)),
  });
}
