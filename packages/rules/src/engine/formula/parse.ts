import jsep, { type Expression } from 'jsep';
import { asks, isAsk } from '../catalogue/ask-names';
import { type Arithmetic, below, type Catalogued, type Compare, type Node } from './nodes';

/** A formula that cannot be read: which part, and what would be right. */
export class FormulaError extends Error {}

const arithmetic: readonly string[] = ['+', '-', '*', '/'];
const compare: readonly string[] = ['<', '<=', '>', '>=', '==', '!='];
const isArithmetic = (op: unknown): op is Arithmetic =>
  typeof op === 'string' && arithmetic.includes(op);
const isCompare = (op: unknown): op is Compare => typeof op === 'string' && compare.includes(op);
const isExpression = (value: unknown): value is Expression =>
  typeof value === 'object' && value !== null && 'type' in value;

function expression(value: unknown, text: string): Expression {
  if (!isExpression(value)) throw new FormulaError(`“${text}” ends too soon.`);
  return value;
}

/** `trailer.dryWeight` is a member expression to jsep and one name to us. */
function nameOf(node: Expression, text: string): string {
  if (node.type === 'Identifier' && typeof node.name === 'string') return node.name;
  if (node.type === 'MemberExpression' && node.computed === false) {
    const object = nameOf(expression(node.object, text), text);
    return `${object}.${nameOf(expression(node.property, text), text)}`;
  }
  throw new FormulaError(`“${text}”: a name was wanted, found ${node.type}.`);
}

const over = { leastOver: 'least', mostOver: 'most', totalOver: 'total', lastOf: 'last' } as const;

function call(node: Expression, text: string): Node {
  const callee = nameOf(expression(node.callee, text), text);
  const given = Array.isArray(node.arguments) ? node.arguments : [];
  const args = given.map((each) => expression(each, text));
  const wants = (right: boolean, form: string): void => {
    if (!right) throw new FormulaError(`“${text}”: write ${form}.`);
  };
  const nodes = () => args.map((each) => build(each, text));
  const names = (from: readonly Expression[]) => from.map((each) => nameOf(each, text));
  const [first, second, third] = args;
  switch (callee) {
    case 'min':
    case 'max':
    case 'largestKnown':
      wants(args.length > 1, `${callee}(a, b, …)`);
      return { kind: callee, of: nodes() };
    case 'choose':
      wants(args.length === 3, 'choose(when, then, otherwise)');
      return {
        kind: 'choose',
        when: build(expression(first, text), text),
        chosen: build(expression(second, text), text),
        otherwise: build(expression(third, text), text),
      };
    case 'sum': {
      wants(args.length === 1, 'sum(list.column …)');
      const of = build(expression(first, text), text);
      return { kind: 'sum', of, list: listIn(of, text) };
    }
    case 'count':
      wants(args.length === 1, 'count(list)');
      return { kind: 'count', list: nameOf(expression(first, text), text) };
    case 'given':
    case 'known':
      wants(args.length > 0, `${callee}(name, …)`);
      return { kind: callee, names: names(args) };
    case 'needs':
      wants(args.length > 1, 'needs(value, name, …)');
      return {
        kind: 'needs',
        of: build(expression(first, text), text),
        names: names(args.slice(1)),
      };
    case 'lookup':
    case 'pick':
      wants(args.length === 2, `${callee}(table, ${callee === 'pick' ? 'choice' : 'key'})`);
      return {
        kind: callee,
        table: nameOf(expression(first, text), text),
        at: build(expression(second, text), text),
      };
    case 'power':
      wants(args.length === 2, 'power(base, exponent)');
      return {
        kind: 'power',
        base: build(expression(first, text), text),
        exponent: build(expression(second, text), text),
      };
    case 'between':
      wants(args.length === 2, 'between(a, b)');
      return {
        kind: 'between',
        a: build(expression(first, text), text),
        b: build(expression(second, text), text),
      };
    case 'whole':
      wants(args.length === 1, 'whole(value)');
      return { kind: 'whole', of: build(expression(first, text), text) };
    case 'sunHeight':
      wants(args.length === 3, 'sunHeight(latitude, day, hour)');
      return {
        kind: 'sunHeight',
        latitude: build(expression(first, text), text),
        day: build(expression(second, text), text),
        hour: build(expression(third, text), text),
      };
    case 'leastOver':
    case 'mostOver':
    case 'totalOver':
    case 'lastOf':
      wants(args.length === 2, `${callee}(simulation, value)`);
      return {
        kind: 'over',
        how: over[callee],
        simulation: nameOf(expression(first, text), text),
        of: build(expression(second, text), text),
      };
    default:
      if (isAsk(callee)) return catalogued(callee, args, text);
      throw new FormulaError(`“${text}”: there is no function ${callee}.`);
  }
}

const asked = {
  figure: { form: 'catalogue, figure', least: 2, most: 2 },
  model: { form: "catalogue) or (catalogue, 'model'", least: 1, most: 2 },
  nothing: { form: 'catalogue', least: 1, most: 1 },
  year: { form: "catalogue, 'year'", least: 2, most: 2 },
  option: { form: "catalogue, 'option'", least: 2, most: 2 },
  change: { form: "catalogue, 'option', 'year'", least: 3, most: 3 },
} as const;

/** What a catalogue is asked: its name, then names or words. */
function catalogued(
  ask: Catalogued['ask'],
  given: readonly Expression[],
  text: string,
): Catalogued {
  const { form, least, most } = asked[asks[ask].about];
  if (given.length < least || given.length > most) {
    throw new FormulaError(`“${text}”: write ${ask}(${form}).`);
  }
  const [catalogue = '', ...args] = given.map((each) =>
    each.type === 'Literal' && typeof each.value === 'string' ? each.value : nameOf(each, text),
  );
  return { kind: 'catalogued', catalogue, ask, args };
}

/** The list a sum runs over is the one its first column belongs to: all but the last word. */
function listIn(node: Node, text: string): string {
  const first = firstName(node);
  const dot = first?.lastIndexOf('.') ?? -1;
  if (first === undefined || dot < 0) throw new FormulaError(`“${text}”: sum wants list.column.`);
  return first.slice(0, dot);
}

function firstName(node: Node): string | undefined {
  if (node.kind === 'name') return node.id;
  if (node.kind === 'given' || node.kind === 'known') return node.names[0];
  for (const each of below(node)) {
    const found = firstName(each);
    if (found !== undefined) return found;
  }
  return undefined;
}

function binary(node: Expression, text: string): Node {
  const a = build(expression(node.left, text), text);
  const b = build(expression(node.right, text), text);
  const op = node.operator;
  if (isArithmetic(op)) return { kind: 'arithmetic', op, a, b };
  if (isCompare(op)) return { kind: 'compare', op, a, b };
  if (op === '&&') return { kind: 'both', a, b };
  if (op === '||') return { kind: 'either', a, b };
  throw new FormulaError(`“${text}”: ${String(op)} is not used in formulas.`);
}

function build(node: Expression, text: string): Node {
  switch (node.type) {
    case 'Literal':
      if (typeof node.value === 'number') return { kind: 'number', value: node.value };
      if (typeof node.value === 'string') return { kind: 'word', text: node.value };
      break;
    case 'Identifier':
    case 'MemberExpression': {
      const id = nameOf(node, text);
      return id === 'unlimited' ? { kind: 'unlimited' } : { kind: 'name', id };
    }
    case 'UnaryExpression': {
      const of = build(expression(node.argument, text), text);
      if (node.operator === '-') return { kind: 'negative', of };
      if (node.operator === '!') return { kind: 'not', of };
      break;
    }
    case 'BinaryExpression':
      return binary(node, text);
    case 'CallExpression':
      return call(node, text);
  }
  throw new FormulaError(`“${text}”: ${node.type} is not used in formulas.`);
}

/** @throws FormulaError when the text is not a formula. */
export function parseFormula(text: string): Node {
  let tree: Expression;
  try {
    tree = jsep(text);
  } catch (problem) {
    const reason = problem instanceof Error ? problem.message : String(problem);
    throw new FormulaError(`“${text}” cannot be read: ${reason}.`);
  }
  return build(tree, text);
}
