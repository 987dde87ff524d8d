import jsep, { type Expression } from 'jsep';
import type { Call, Form } from './grammar/form';
import type { Node } from './grammar/nodes';
import { FormulaError } from './grammar/problem';
import { kinds, namesIn } from './kinds';

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

type By<W extends Form<Node>['by']> = Extract<Form<Node>, { by: W }>;

const forms: readonly Form<Node>[] = Object.values(kinds).map(({ form }) => form);
const formsBy = <W extends Form<Node>['by']>(by: W): readonly By<W>[] =>
  forms.filter((form): form is By<W> => form.by === by);
const byKey = <F>(all: readonly F[], keys: (form: F) => readonly string[]) =>
  new Map(all.flatMap((form) => keys(form).map((key) => [key, form] as const)));

const calls = byKey(formsBy('call'), ({ names }) => names);
const between = byKey(formsBy('sign between'), ({ signs }) => signs);
const before = byKey(formsBy('sign before'), ({ sign }) => [sign]);
const names = byKey(formsBy('name'), ({ only = '' }) => [only]);
const [number] = formsBy('number');
const [word] = formsBy('word');

function call(node: Expression, text: string): Node {
  const name = nameOf(expression(node.callee, text), text);
  const args = Array.isArray(node.arguments) ? node.arguments : [];
  const at = (i: number): Expression => expression(args[i], text);
  const all = args.map((_, i) => i);
  const form = calls.get(name);
  if (!form) throw new FormulaError(`“${text}”: there is no function ${name}.`);
  const read: Call = {
    name,
    count: args.length,
    wants: (right, written) => {
      if (!right) throw new FormulaError(`“${text}”: write ${written}.`);
    },
    node: (i) => build(at(i), text),
    nodes: () => all.map((i) => build(at(i), text)),
    nameAt: (i) => nameOf(at(i), text),
    names: (from) => all.slice(from).map((i) => nameOf(at(i), text)),
    words: () =>
      all.map((i) => {
        const { type, value } = at(i);
        return type === 'Literal' && typeof value === 'string' ? value : nameOf(at(i), text);
      }),
    mentioned: namesIn,
  };
  return form.read(read);
}

function build(node: Expression, text: string): Node {
  switch (node.type) {
    case 'Literal':
      if (typeof node.value === 'number' && number) return number.read(node.value);
      if (typeof node.value === 'string' && word) return word.read(node.value);
      break;
    case 'Identifier':
    case 'MemberExpression': {
      const id = nameOf(node, text);
      const form = names.get(id) ?? names.get('');
      if (form) return form.read(id);
      break;
    }
    case 'UnaryExpression': {
      const of = build(expression(node.argument, text), text);
      const form = before.get(String(node.operator));
      if (form) return form.read(of);
      break;
    }
    case 'BinaryExpression': {
      const a = build(expression(node.left, text), text);
      const b = build(expression(node.right, text), text);
      const sign = String(node.operator);
      const form = between.get(sign);
      if (form) return form.read(a, b, sign);
      throw new FormulaError(`“${text}”: ${sign} is not used in formulas.`);
    }
    case 'CallExpression':
      return call(node, text);
  }
  const what = node.type === 'Compound' ? `a gap between two things${comparing}` : node.type;
  throw new FormulaError(`“${text}”: ${what} is not used in formulas.`);
}

/** What people mean who write “is” or one sign. */
const comparing = " (write == 'word' to compare)";

/** @throws FormulaError when the text is not a formula. */
export function parseFormula(text: string): Node {
  let tree: Expression;
  try {
    tree = jsep(text);
  } catch (problem) {
    const reason = problem instanceof Error ? problem.message : String(problem);
    const hint = /(?<![=!<>])=(?!=)/.test(text) ? comparing : '';
    throw new FormulaError(`“${text}” cannot be read: ${reason}${hint}.`);
  }
  return build(tree, text);
}
