import { unitOfName } from '../answer/named';
import type { Node } from '../formula/grammar/nodes';
import { reckon } from '../formula/reckon';
import { valueSaid, working } from '../formula/words';
import { message } from '../words/message';
import type { Sayable } from '../words/value';
import { termsOf } from './apart';
import { factorsTold, headOf } from './factors';
import { nameTold, nounOf, type Telling, tableTold } from './nouns';
import { isExactly, pruned } from './prune';

/** `x × (1 + p)`: x, and p on top. */
function raised(telling: Telling, node: Node): Sayable | undefined {
  if (node.kind !== 'arithmetic' || node.op !== '*' || node.a.kind !== 'name') return undefined;
  if (node.b.kind !== 'arithmetic') return undefined;
  const { op, a, b } = node.b;
  if ((op !== '+' && op !== '-') || a.kind !== 'number' || a.value !== 1) return undefined;
  if (b.kind !== 'name') return undefined;
  const { compiled, scope } = telling;
  const share = valueSaid(scope.value(b.id), unitOfName(compiled, b.id));
  return message('raised', { of: nameTold(telling, node.a.id), share, up: op === '+' });
}

/** Nothing else than a name, a number, or a name and so many % of it. */
const isPlain = (telling: Telling, node: Node): boolean =>
  node.kind === 'name' || node.kind === 'number' || raised(telling, node) !== undefined;

/** “the part of the tongue (760 lb × 50 in ÷ 145 in = 262.1 lb)” */
function partTold(telling: Telling, node: Node, unit: string): Sayable {
  return message('part-of', {
    of: headOf(telling, node, unit) ?? null,
    working: working(node, telling),
    value: valueSaid(reckon(node, telling.scope), unit),
  });
}

function extremeTold(telling: Telling, node: Node & { of: readonly Node[] }, unit: string) {
  return message('extreme-told', {
    of: node.of.map((part) => termTold(telling, part, unit)),
    least: node.kind === 'min',
    plain: node.of.every((part) => isPlain(telling, part)),
  });
}

function termTold(telling: Telling, node: Node, unit: string): Sayable {
  switch (node.kind) {
    case 'name':
      return nameTold(telling, node.id);
    case 'sum': {
      const value = valueSaid(reckon(node, telling.scope), unit);
      const noun = nounOf(telling.compiled, node.list);
      return node.of.kind === 'name'
        ? message('noun-is', { noun, value, from: null })
        : message('part-is', { noun, value });
    }
    case 'lookup':
    case 'pick':
      return tableTold(telling, node);
    case 'min':
    case 'max':
    case 'largestKnown':
      return extremeTold(telling, node, unit);
    case 'between':
      return message('from-to', {
        from: termTold(telling, node.a, unit),
        to: termTold(telling, node.b, unit),
      });
    case 'choose':
      return message('either-told', {
        a: termTold(telling, node.chosen, unit),
        b: termTold(telling, node.otherwise, unit),
      });
    case 'arithmetic':
      return node.op === '+' || node.op === '-'
        ? sumTold(telling, node, unit, true)
        : productTold(telling, node, unit);
    default:
      return working(node, telling);
  }
}

function productTold(telling: Telling, node: Node & { kind: 'arithmetic' }, unit: string): Sayable {
  const lifted = raised(telling, node);
  if (lifted) return lifted;
  const { a, b, op } = node;
  if (!isPlain(telling, a) || !isPlain(telling, b)) return partTold(telling, node, unit);
  const [first, second] = [termTold(telling, a, unit), termTold(telling, b, unit)];
  return message('two-told', { a: first, b: second, times: op === '*', apart: false });
}

/** Terms one after another: “a, b and c, less d”; inside another, “a plus b less c”. */
function sumTold(telling: Telling, node: Node, unit: string, inside = false): Sayable {
  const terms = termsOf(node);
  const told = (minus: boolean) =>
    terms.flatMap((each) => (each.minus === minus ? [termTold(telling, each.node, unit)] : []));
  const [plus, minus] = [told(false), told(true)];
  const [only, more] = plus;
  if (only && !more && minus.length === 0) return only;
  return message('terms-told', { plus, minus, inside });
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
export function told(telling: Telling, formula: Node, unit: string): Sayable | undefined {
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
      return message('two-told', {
        a: sumTold(telling, node.a, unit, true),
        b: termTold(telling, node.b, unit),
        times: node.op === '*',
        apart: true,
      });
    }
  }
  return factorsTold(telling, node);
}
