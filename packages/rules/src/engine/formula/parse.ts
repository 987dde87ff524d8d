import type { Call, Form } from './grammar/form';
import type { Node } from './grammar/nodes';
import { FormulaError, type FormulaMistake } from './grammar/problem';
import { comparing, type Token, tokensOf } from './grammar/tokens';
import { kinds, namesIn } from './kinds';

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

/** How tightly a sign holds what stands on its two sides; of equals the left one comes first. */
const bonds: Readonly<Record<string, number>> = {
  ...{ '||': 1, '&&': 2, '==': 3, '!=': 3 },
  ...{ '<': 4, '<=': 4, '>': 4, '>=': 4, '+': 5, '-': 5, '*': 6, '/': 6 },
};
/** What stands behind a sign of its own holds tighter than any sign between two. */
const tightest = 7;

/** Words that mean something elsewhere, and would pass here as names nobody has. */
const foreign: readonly string[] = ['true', 'false', 'null', 'this'];

/** More brackets in one another nobody writes. */
const mostDeep = 100;

const end: Token = { kind: 'end', text: '' };

/**
 * A reader of our own, as the smallest kept library for it (jsep) adds 2.9 KiB to whatever answers in a
 * browser; `tests/differential/formula-reader.test.ts` holds it to that library.
 *
 * @throws FormulaError when the text is not a formula.
 */
export function parseFormula(text: string): Node {
  const tokens = tokensOf(text);
  let at = 0;
  let deep = 0;
  const here = (): Token => tokens[at] ?? end;
  const refuse = (says: string, code?: FormulaMistake): never => {
    throw new FormulaError(`“${text}”${says}.`, code);
  };
  const isSign = (sign: string): boolean => here().kind === 'sign' && here().text === sign;
  const pass = (sign: string): void => {
    if (isSign(sign)) at += 1;
    else if (here().kind === 'end') refuse(' ends too soon');
    else if (here().kind === 'sign') refuse(`: “${here().text}” cannot stand there`);
    else refuse(`: a gap between two things${comparing} is not used in formulas`);
  };

  const call = (name: string): Node => {
    pass('(');
    const args: Node[] = [];
    while (!isSign(')')) {
      if (args.length > 0) pass(',');
      args.push(whole(0));
    }
    pass(')');
    const form = calls.get(name) ?? refuse(`: there is no function ${name}`, 'no-such-function');
    const node = (i: number): Node => args[i] ?? refuse(' ends too soon');
    const nameAt = (i: number): string => {
      const each = node(i);
      return each.kind === 'name' ? each.id : refuse(`: a name was wanted in ${name}(…)`);
    };
    const read: Call = {
      name,
      count: args.length,
      wants: (right, written) => {
        if (!right) refuse(`: write ${written}`);
      },
      node,
      nodes: () => args,
      nameAt,
      names: (from) => args.flatMap((_, i) => (i < from ? [] : [nameAt(i)])),
      words: () => args.map((each, i) => (each.kind === 'word' ? each.text : nameAt(i))),
      mentioned: namesIn,
    };
    return form.read(read);
  };

  const alone = (): Node => {
    const { kind, text: is } = here();
    at += 1;
    if (kind === 'number' && number) return number.read(Number(is));
    if (kind === 'word' && word) return word.read(is);
    if (kind === 'name') {
      if (isSign('(')) return call(is);
      if (foreign.includes(is)) refuse(`: ${is} is not used in formulas`);
      const form = names.get(is) ?? names.get('');
      if (form) return form.read(is);
    }
    if (kind === 'sign' && is === '(') {
      const inner = whole(0);
      pass(')');
      return inner;
    }
    const sign = kind === 'sign' ? before.get(is) : undefined;
    if (sign) return sign.read(whole(tightest));
    return refuse(kind === 'end' ? ' ends too soon' : `: “${is}” cannot stand there`);
  };

  const whole = (least: number): Node => {
    deep += 1;
    if (deep > mostDeep) refuse(' has too many brackets in one another');
    let left = alone();
    for (;;) {
      const { kind, text: sign } = here();
      const bond = kind === 'sign' ? bonds[sign] : undefined;
      const form = between.get(sign);
      if (bond === undefined || !form || bond <= least) break;
      at += 1;
      left = form.read(left, whole(bond), sign);
    }
    deep -= 1;
    return left;
  };

  const node = whole(0);
  if (here().kind !== 'end') pass('');
  return node;
}
