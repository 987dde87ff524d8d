import { unitOfName } from '../answer/named';
import { listed, lowered } from '../answer/phrases';
import type { Formula } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import { type Node, namesIn } from '../formula/nodes';
import { reckon, type Scope } from '../formula/reckon';
import { branchTaken, inWords, type Wording, working } from '../formula/words';
import { isExactly, pruned } from './prune';

/** What telling a formula in words needs beside its numbers. */
export type Telling = Wording & {
  readonly compiled: Compiled;
  readonly readFrom: Readonly<Record<string, string>>;
};

/** How a name is called inside a sentence. */
export function nounOf({ topic, formulas }: Compiled, name: string): string {
  const list = name.slice(0, name.lastIndexOf('.'));
  const entry =
    formulas.get(name)?.formula ?? topic.facts[name] ?? topic.parameters[name] ?? topic.facts[list];
  if (!entry) return name;
  return entry.noun ?? lowered(entry.label);
}

/** What a formula came down to, once every decided choice is made: that other formula, or itself. */
export function shownFormula(
  compiled: Compiled,
  scope: Scope,
  name: string,
): { readonly node: Node; readonly formula: Formula } | undefined {
  const found = compiled.formulas.get(name);
  if (!found) return undefined;
  const node = branchTaken(found.node, scope);
  const inner = node.kind === 'name' ? shownFormula(compiled, scope, node.id) : undefined;
  return inner ?? { node, formula: found.formula };
}

/** Where a name was read, if it is a fact or a formula that came down to one. */
export function origin(telling: Telling, name: string): string | undefined {
  const { compiled, scope, readFrom } = telling;
  const shown = shownFormula(compiled, scope, name);
  if (!shown) return readFrom[name];
  const node = pruned(shown.node, scope);
  return node.kind === 'name' ? origin(telling, node.id) : undefined;
}

/** “the dry tongue (430 lb, brochure)” */
function nameTold(telling: Telling, name: string): string {
  const { compiled, scope, system } = telling;
  const value = scope.value(name);
  const isOpen = value.kind === 'number' && value.lo <= 0 && value.hi === Infinity;
  if (isOpen) return `${nounOf(compiled, name)} (not known)`;
  const from = origin(telling, name);
  const shown = inWords(value, unitOfName(compiled, name), system);
  return `${nounOf(compiled, name)} (${shown}${from ? `, ${lowered(from)}` : ''})`;
}

type Term = { readonly minus: boolean; readonly node: Node };

/** A sum taken apart. */
function termsOf(node: Node, minus = false): Term[] {
  if (node.kind === 'arithmetic' && (node.op === '+' || node.op === '-')) {
    return [...termsOf(node.a, minus), ...termsOf(node.b, node.op === '-' ? !minus : minus)];
  }
  return node.kind === 'negative' ? termsOf(node.of, !minus) : [{ minus, node }];
}

/** `x × (1 + p)`: x, and p on top. */
function raised(telling: Telling, node: Node): string | undefined {
  if (node.kind !== 'arithmetic' || node.op !== '*' || node.a.kind !== 'name') return undefined;
  if (node.b.kind !== 'arithmetic') return undefined;
  const { op, a, b } = node.b;
  if ((op !== '+' && op !== '-') || a.kind !== 'number' || a.value !== 1) return undefined;
  if (b.kind !== 'name') return undefined;
  const { compiled, scope, system } = telling;
  const share = inWords(scope.value(b.id), unitOfName(compiled, b.id), system);
  return `${nameTold(telling, node.a.id)} ${op === '+' ? `and ${share} on top` : `less ${share}`}`;
}

/** Nothing else than a name, a number, or a name and so many % of it. */
const isPlain = (telling: Telling, node: Node): boolean =>
  node.kind === 'name' || node.kind === 'number' || raised(telling, node) !== undefined;

/** What a product is named for: what has the unit of the whole, or else what stands first. */
function mainName({ compiled }: Telling, node: Node, unit: string): string | undefined {
  const { topic, formulas } = compiled;
  // What stands inside a simulation or a list has many values, and so none to be named with.
  const single = (name: string) =>
    formulas.has(name) || topic.facts[name]?.kind === 'quantity' || name in topic.parameters;
  const names = namesIn(node).filter(single);
  return names.find((each) => unitOfName(compiled, each) === unit) ?? names[0];
}

/** “the part of the tongue (760 lb × 50 in ÷ 145 in = 262.1 lb)” */
function partTold(telling: Telling, node: Node, unit: string): string {
  const { compiled, scope, system } = telling;
  const value = inWords(reckon(node, scope), unit, system);
  const name = mainName(telling, node, unit);
  const shown = `${working(node, telling)} = ${value}`;
  return name === undefined ? shown : `the part of ${nounOf(compiled, name)} (${shown})`;
}

function extremeTold(telling: Telling, node: Node & { of: readonly Node[] }, unit: string): string {
  const word = node.kind === 'min' ? 'lower' : 'larger';
  const told = node.of.map((part) => termTold(telling, part, unit));
  return node.of.every((part) => isPlain(telling, part))
    ? `the ${word} of ${listed(told)}`
    : `whichever is ${word}: ${told.join(', or ')}`;
}

function termTold(telling: Telling, node: Node, unit: string): string {
  switch (node.kind) {
    case 'name':
      return nameTold(telling, node.id);
    case 'sum': {
      const value = inWords(reckon(node, telling.scope), unit, telling.system);
      const noun = nounOf(telling.compiled, node.list);
      return node.of.kind === 'name' ? `${noun} (${value})` : `the part of ${noun} (${value})`;
    }
    case 'min':
    case 'max':
    case 'largestKnown':
      return extremeTold(telling, node, unit);
    case 'choose':
      return `either ${termTold(telling, node.chosen, unit)} or ${termTold(telling, node.otherwise, unit)}`;
    case 'arithmetic':
      return node.op === '+' || node.op === '-'
        ? sumTold(telling, node, unit, ' plus ')
        : productTold(telling, node, unit);
    default:
      return working(node, telling);
  }
}

function productTold(telling: Telling, node: Node & { kind: 'arithmetic' }, unit: string): string {
  const lifted = raised(telling, node);
  if (lifted) return lifted;
  const { a, b, op } = node;
  if (!isPlain(telling, a) || !isPlain(telling, b)) return partTold(telling, node, unit);
  const [first, second] = [termTold(telling, a, unit), termTold(telling, b, unit)];
  return `${first} ${op === '*' ? 'times' : 'divided by'} ${second}`;
}

/** Terms one after another: “a, b and c, less d”, or with a joint of one’s own. */
function sumTold(telling: Telling, node: Node, unit: string, joint?: string): string {
  const terms = termsOf(node);
  const join = (minus: boolean) => {
    const of = terms.filter((each) => each.minus === minus);
    const told = of.map((each) => termTold(telling, each.node, unit));
    return joint ? told.join(joint) : listed(told);
  };
  const [plus, minus] = [join(false), join(true)];
  if (minus === '') return plus;
  return plus === '' ? `less ${minus}` : `${plus}${joint ? '' : ','} less ${minus}`;
}

/**
 * What a formula came from, in words: “the dry tongue (430 lb, brochure) and 10 % on top”.
 * Undefined where there is nothing to tell: one fact, the rows of one list, a yes or no, nothing.
 */
export function told(telling: Telling, formula: Node, unit: string): string | undefined {
  const node = pruned(formula, telling.scope);
  const plain: readonly Node['kind'][] = ['name', 'number', 'sum', 'catalogued'];
  if (plain.includes(node.kind)) return undefined;
  if (unit === 'yes-no' || isExactly(telling.scope, node, 0)) return undefined;
  const isProduct = node.kind === 'arithmetic' && (node.op === '*' || node.op === '/');
  if (!isProduct || raised(telling, node)) return sumTold(telling, node, unit);
  if (isPlain(telling, node.b)) {
    if (isPlain(telling, node.a)) return productTold(telling, node, unit);
    if (termsOf(node.a).every((term) => isPlain(telling, term.node))) {
      const by = node.op === '*' ? 'times' : 'divided by';
      return `${sumTold(telling, node.a, unit, ' plus ')}, ${by} ${termTold(telling, node.b, unit)}`;
    }
  }
  const main = mainName(telling, node, unit);
  const from = main === undefined ? '' : `${nameTold(telling, main)}, `;
  return `${from}${working(node, telling)}`;
}
