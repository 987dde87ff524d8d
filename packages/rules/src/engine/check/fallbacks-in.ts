import type { Node, NodeOf } from '../formula/grammar/nodes';
import { below, namesIn } from '../formula/kinds';

/** What takes the place of something that was not told. */
export type Fallback = {
  readonly untold: readonly string[];
  readonly taken: Node;
  /** The fact whose place it takes, where it takes the place of just that. */
  readonly fact?: string;
};

/** The facts and columns of which a part asks whether they are told. */
export const testedIn = (node: Node): readonly string[] => [
  ...(node.kind === 'given' || node.kind === 'known' ? node.names : []),
  ...below(node).flatMap(testedIn),
];

/** How a condition comes out where nothing that it asks for is told; undefined: either way. */
function whereUntold(node: Node): boolean | undefined {
  switch (node.kind) {
    case 'given':
    case 'known':
      return false;
    case 'not': {
      const is = whereUntold(node.of);
      return is === undefined ? undefined : !is;
    }
    case 'both': {
      const [a, b] = [whereUntold(node.a), whereUntold(node.b)];
      return a === false || b === false ? false : a && b ? true : undefined;
    }
    case 'either': {
      const [a, b] = [whereUntold(node.a), whereUntold(node.b)];
      return a || b ? true : a === false && b === false ? false : undefined;
    }
    default:
      return undefined;
  }
}

type Place = {
  readonly formulas: ReadonlyMap<string, Node>;
  /** What is not told where this part counts. */
  readonly untold: readonly string[];
};

/**
 * Whether a part is a range of its own accord: it has what was not told in it, which may be anything,
 * or says itself between what it lies.
 */
function isRange(node: Node, { formulas, untold: names }: Place): boolean {
  const inside = (each: Node): boolean => isRange(each, { formulas, untold: names });
  switch (node.kind) {
    case 'unlimited':
    case 'between':
    case 'needs':
      return true;
    case 'negative':
    case 'may':
      return inside(node.of);
    case 'choose':
      return inside(node.chosen) && inside(node.otherwise);
    case 'name': {
      if (names.includes(node.id)) return true;
      const formula = formulas.get(node.id);
      return formula !== undefined && inside(formula);
    }
    default:
      return namesIn(node).some((name) => names.includes(name));
  }
}

const same = (a: Node, b: Node): boolean => JSON.stringify(a) === JSON.stringify(b);

/** Whether what is told only narrows what stands there without it: `min(told, other)`, else `other`. */
const onlyNarrows = (node: Node, other: Node): boolean =>
  node.kind === 'choose'
    ? onlyNarrows(node.chosen, other) || onlyNarrows(node.otherwise, other)
    : (node.kind === 'min' || node.kind === 'max') && node.of.some((each) => same(each, other));

/** Two plain numbers count rows or switch something on, and replace no figure. */
const isSwitch = ({ chosen, otherwise }: NodeOf<'choose'>): boolean =>
  chosen.kind === 'number' && otherwise.kind === 'number';

function fallbackOf(node: NodeOf<'choose'>, place: Place): readonly Fallback[] {
  const names = testedIn(node.when);
  if (names.length === 0 || isSwitch(node)) return [];
  const { chosen, otherwise } = node;
  const is = whereUntold(node.when);
  const sides: readonly (readonly [taken: Node, instead: Node])[] = [
    ...(is === false ? [] : [[chosen, otherwise] as const]),
    ...(is === true ? [] : [[otherwise, chosen] as const]),
  ];
  const around = { ...place, untold: [...place.untold, ...names] };
  return sides.flatMap(([taken, instead]): Fallback[] => {
    // A choice in a choice is looked at by itself.
    if (taken.kind === 'choose' || isRange(taken, around) || onlyNarrows(instead, taken)) return [];
    const fact = instead.kind === 'name' && names.includes(instead.id) ? instead.id : undefined;
    return [{ untold: names, taken, ...(fact !== undefined && { fact }) }];
  });
}

/** Every place of a formula where something stands in for what was not told. */
export function fallbacksIn(node: Node, place: Place): readonly Fallback[] {
  const names = node.kind === 'choose' ? testedIn(node.when) : [];
  const inside = { ...place, untold: [...place.untold, ...names] };
  const own = node.kind === 'choose' ? fallbackOf(node, place) : [];
  return [...own, ...below(node).flatMap((each) => fallbacksIn(each, inside))];
}
