import { unitOfName } from '../answer/named';
import { listed } from '../answer/phrases';
import type { Node } from '../formula/grammar/nodes';
import { reckon } from '../formula/reckon';
import { inWords, working } from '../formula/words';
import { termsOf } from './apart';
import { factorsTold, headOf } from './factors';
import { nameTold, nounOf, type Telling, tableTold } from './nouns';
import { isExactly, pruned } from './prune';

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

/** “the part of the tongue (760 lb × 50 in ÷ 145 in = 262.1 lb)” */
function partTold(telling: Telling, node: Node, unit: string): string {
  const { scope, system } = telling;
  const value = inWords(reckon(node, scope), unit, system);
  const of = headOf(telling, node, unit);
  const shown = `${working(node, telling)} = ${value}`;
  return of === undefined ? shown : `the part of ${of} (${shown})`;
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
    case 'lookup':
    case 'pick':
      return tableTold(telling, node);
    case 'min':
    case 'max':
    case 'largestKnown':
      return extremeTold(telling, node, unit);
    case 'between':
      return `from ${termTold(telling, node.a, unit)} to ${termTold(telling, node.b, unit)}`;
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

/** As far below as above: then only one of its ends is worth telling. */
function isEitherWay({ scope }: Telling, node: Node): boolean {
  const value = reckon(node, scope);
  return value.kind === 'number' && value.lo === -value.hi;
}

/**
 * What a formula came from, in words: “the dry tongue (430 lb, brochure) and 10 % on top”.
 * Undefined where there is nothing to tell: one fact, the rows of one list, a yes or no, nothing.
 */
export function told(telling: Telling, formula: Node, unit: string): string | undefined {
  const node = pruned(formula, telling.scope);
  const plain: readonly Node['kind'][] = ['name', 'number', 'sum', 'catalogued'];
  // Two tables that agree are no fact read: it is told which one it is.
  if (formula.kind === 'between' && node.kind === 'name') return nameTold(telling, node.id);
  if (plain.includes(node.kind)) return undefined;
  if (node.kind === 'between' && isEitherWay(telling, node)) return told(telling, node.b, unit);
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
  return factorsTold(telling, node);
}
