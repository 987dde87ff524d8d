import { type Graph, type Op, operations, type Ref, type Sort, type Step } from './graph';
import { aboveOf, fromOf, fromOver, fromTimes } from './turns';

const rounded = (value: number): number => {
  if (!Number.isFinite(value)) return value;
  return Math.round(value * 1e6) / 1e6 + 0;
};

/** More steps than any graph has. */
const farRef = 2 ** 22;

/** Endless less endless bounds nothing. */
const bound = (value: number, otherwise: number): number =>
  Number.isNaN(value) ? otherwise : value;

type Made = Partial<Omit<Step, 'op' | 'sort'>>;

/** A graph that keeps equal steps once and reckons at once what hangs on nothing. */
export function graph(): Graph {
  const steps: Step[] = [];
  const kept = new Map<number, Map<number, Ref>>();
  const inputs = new Map<string, Ref>();
  const constants = {
    number: new Map<number | string, Ref>(),
    bits: new Map<number | string, Ref>(),
    truth: new Map<number | string, Ref>(),
  };

  const at = (ref: Ref): Step => {
    const step = steps[ref];
    if (!step) throw new Error(`There is no step ${ref}.`);
    return step;
  };

  const added = (op: Op, sort: Sort, made: Made): Ref => {
    const { args = [], value = 0, name = '' } = made;
    const side = made.side ?? args.reduce((sum, each) => sum | at(each).side, 0);
    const { least = -Infinity, most = Infinity, mayBeNone = false } = made;
    steps.push({ op, sort, args, value, name, side, least, most, mayBeNone });
    return steps.length - 1;
  };

  /** Found again by its operation and first part, and by its other parts or its value. */
  const put = (op: Op, sort: Sort, made: Made): Ref => {
    const { args = [], value } = made;
    const [a = 0, b = 0, c = 0] = args;
    const first = operations.indexOf(op) * farRef + a;
    const second = value ?? b * farRef + c;
    const among = kept.get(first) ?? new Map<number, Ref>();
    kept.set(first, among);
    const before = among.get(second);
    if (before !== undefined) return before;
    const ref = added(op, sort, made);
    among.set(second, ref);
    return ref;
  };

  /** A constant of a sort, -0 apart from 0. */
  const constantOf = (sort: Sort, value: number, more: Made = {}): Ref => {
    const among = constants[sort];
    const mark = Object.is(value, -0) ? 'minus zero' : value;
    const before = among.get(mark);
    if (before !== undefined) return before;
    const ref = added('constant', sort, { ...more, value });
    among.set(mark, ref);
    return ref;
  };
  const constant = (value: number): Ref =>
    constantOf('number', value, { least: value, most: value, mayBeNone: Number.isNaN(value) });
  const bits = (value: number): Ref => constantOf('bits', value | 0);
  const truth = (value: boolean): Ref => constantOf('truth', value ? 1 : 0);

  const valueAt = (ref: Ref): number | undefined => {
    const step = at(ref);
    return step.op === 'constant' ? step.value : undefined;
  };
  const isConstant = (ref: Ref, value: number): boolean => valueAt(ref) === value;

  /** Of numbers that are both constants; -0 counts as 0 nowhere, so that quotients keep their sign. */
  const both = (a: Ref, b: Ref, how: (x: number, y: number) => number): Ref | undefined => {
    const [x, y] = [valueAt(a), valueAt(b)];
    return x === undefined || y === undefined ? undefined : constant(how(x, y));
  };
  const isEndless = (step: Step): boolean => step.least === -Infinity || step.most === Infinity;

  const add = (a: Ref, b: Ref): Ref => {
    const folded = both(a, b, (x, y) => x + y);
    if (folded !== undefined) return folded;
    if (isConstant(a, 0)) return b;
    if (isConstant(b, 0)) return a;
    const [p, q] = [at(a), at(b)];
    const clash =
      (p.least === -Infinity && q.most === Infinity) ||
      (q.least === -Infinity && p.most === Infinity);
    return put('add', 'number', {
      args: a < b ? [a, b] : [b, a],
      least: bound(p.least + q.least, -Infinity),
      most: bound(p.most + q.most, Infinity),
      mayBeNone: clash || p.mayBeNone || q.mayBeNone,
    });
  };

  const mul = (a: Ref, b: Ref): Ref => {
    const folded = both(a, b, (x, y) => x * y);
    if (folded !== undefined) return folded;
    if (isConstant(a, 1)) return b;
    if (isConstant(b, 1)) return a;
    const [p, q] = [at(a), at(b)];
    const isPlain = !isEndless(p) && !isEndless(q);
    const corners = [p.least * q.least, p.least * q.most, p.most * q.least, p.most * q.most];
    const isAbove = p.least >= 0 && q.least >= 0;
    return put('mul', 'number', {
      args: a < b ? [a, b] : [b, a],
      least: isPlain ? Math.min(...corners) : isAbove ? 0 : -Infinity,
      most: isPlain ? Math.max(...corners) : Infinity,
      mayBeNone: !isPlain || p.mayBeNone || q.mayBeNone,
    });
  };

  const div = (a: Ref, b: Ref): Ref => {
    const folded = both(a, b, (x, y) => x / y);
    if (folded !== undefined) return folded;
    if (isConstant(b, 1)) return a;
    const [p, q] = [at(a), at(b)];
    const isPlain = q.least > 0 && !isEndless(p) && !isEndless(q);
    const corners = [p.least, p.most].flatMap((x) => [x / q.least, x / q.most]);
    return put('div', 'number', {
      args: [a, b],
      least: isPlain ? Math.min(...corners) : p.least >= 0 && q.least > 0 ? 0 : -Infinity,
      most: isPlain ? Math.max(...corners) : Infinity,
      mayBeNone: !isPlain || p.mayBeNone || q.mayBeNone,
    });
  };

  const neg = (a: Ref): Ref => {
    const x = valueAt(a);
    if (x !== undefined) return constant(-x);
    const p = at(a);
    if (p.op === 'neg') return p.args[0] ?? a;
    const bounds = { least: -p.most, most: -p.least, mayBeNone: p.mayBeNone };
    return put('neg', 'number', { args: [a], ...bounds });
  };

  const extreme = (op: 'min' | 'max', a: Ref, b: Ref): Ref => {
    if (a === b) return a;
    const folded = both(a, b, Math[op]);
    if (folded !== undefined) return folded;
    const [p, q] = [at(a), at(b)];
    const isSure = !p.mayBeNone && !q.mayBeNone;
    const [low, high] = op === 'min' ? [a, b] : [b, a];
    if (isSure && p.most <= q.least) return low;
    if (isSure && q.most <= p.least) return high;
    return put(op, 'number', {
      args: a < b ? [a, b] : [b, a],
      least: Math[op](p.least, q.least),
      most: Math[op](p.most, q.most),
      mayBeNone: !isSure,
    });
  };

  const round = (a: Ref): Ref => {
    const x = valueAt(a);
    if (x !== undefined) return constant(rounded(x));
    const p = at(a);
    if (p.op === 'round') return a;
    const bounds = { least: rounded(p.least), most: rounded(p.most), mayBeNone: p.mayBeNone };
    return put('round', 'number', { args: [a], ...bounds });
  };

  /** Bounds a little wider, since it lies close by and no more is asked of it. */
  const wider = (least: number, most: number) => ({
    least: least - Math.abs(least) * 1e-9 - 1,
    most: most + Math.abs(most) * 1e-9 + 1,
  });
  const turn = (op: 'above' | 'from', of: (limit: number) => number, a: Ref): Ref => {
    const x = valueAt(a);
    if (x !== undefined) return constant(of(x));
    return put(op, 'number', { args: [a], ...wider(at(a).least, at(a).most) });
  };
  const turnBy = (op: 'from-times' | 'from-over', limit: Ref, by: Ref): Ref => {
    const folded = both(limit, by, op === 'from-times' ? fromTimes : fromOver);
    if (folded !== undefined) return folded;
    const [p, q] = [at(limit), at(by)];
    const corners = [p.least, p.most].flatMap((x) =>
      [q.least, q.most].map((y) => (op === 'from-times' ? x / y : x * y)),
    );
    const bounds = wider(Math.min(...corners), Math.max(...corners));
    return put(op, 'number', { args: [limit, by], ...bounds });
  };

  const numberOr = (a: Ref, value: number): Ref => {
    const p = at(a);
    if (!p.mayBeNone) return a;
    const x = valueAt(a);
    if (x !== undefined) return constant(Number.isNaN(x) ? value : x);
    const bounds = { least: Math.min(p.least, value), most: Math.max(p.most, value) };
    return put('number-or', 'number', { args: [a], value, ...bounds });
  };

  const less = (a: Ref, b: Ref): Ref => {
    const [p, q] = [at(a), at(b)];
    if (!p.mayBeNone && !q.mayBeNone) {
      if (a === b || p.least >= q.most) return truth(false);
      if (p.most < q.least) return truth(true);
    }
    return put('less', 'truth', { args: [a, b] });
  };
  const notAbove = (a: Ref, b: Ref): Ref => {
    const [p, q] = [at(a), at(b)];
    if (!p.mayBeNone && !q.mayBeNone) {
      if (a === b || p.most <= q.least) return truth(true);
      if (p.least > q.most) return truth(false);
    }
    return put('not-above', 'truth', { args: [a, b] });
  };
  const same = (a: Ref, b: Ref): Ref => {
    const [p, q] = [at(a), at(b)];
    if (!p.mayBeNone && !q.mayBeNone) {
      if (a === b) return truth(true);
      if (p.most < q.least || q.most < p.least) return truth(false);
      if (p.op === 'constant' && q.op === 'constant') return truth(p.value === q.value);
    }
    return put('same', 'truth', { args: a < b ? [a, b] : [b, a] });
  };

  const bitsOr = (a: Ref, b: Ref): Ref => {
    const [x, y] = [valueAt(a), valueAt(b)];
    if (x !== undefined && y !== undefined) return bits(x | y);
    if (a === b || y === 0) return a;
    if (x === 0) return b;
    return put('bits-or', 'bits', { args: a < b ? [a, b] : [b, a] });
  };
  const bitsAnd = (a: Ref, b: Ref): Ref => {
    const [x, y] = [valueAt(a), valueAt(b)];
    if (x !== undefined && y !== undefined) return bits(x & y);
    if (a === b || y === -1) return a;
    if (x === 0 || y === 0) return bits(0);
    return put('bits-and', 'bits', { args: a < b ? [a, b] : [b, a] });
  };
  const bitsAre = (a: Ref, value: number): Ref => {
    const x = valueAt(a);
    return x !== undefined
      ? truth(x === value)
      : put('bits-are', 'truth', { args: [a], value: value | 0 });
  };

  const not = (a: Ref): Ref => {
    const x = valueAt(a);
    if (x !== undefined) return truth(x === 0);
    const p = at(a);
    return p.op === 'not' ? (p.args[0] ?? a) : put('not', 'truth', { args: [a] });
  };
  const joined = (op: 'and' | 'or', a: Ref, b: Ref): Ref => {
    const settling = op === 'and' ? 0 : 1;
    if (isConstant(a, settling) || isConstant(b, settling)) return truth(settling === 1);
    if (at(a).op === 'constant' || a === b) return b;
    if (at(b).op === 'constant') return a;
    if (not(a) === b) return truth(settling === 1);
    return put(op, 'truth', { args: a < b ? [a, b] : [b, a] });
  };

  const choose = (when: Ref, then: Ref, otherwise: Ref): Ref => {
    const x = valueAt(when);
    if (x !== undefined) return x === 0 ? otherwise : then;
    if (then === otherwise) return then;
    const [w, p, q] = [at(when), at(then), at(otherwise)];
    if (w.op === 'not') return choose(w.args[0] ?? when, otherwise, then);
    if (p.sort === 'truth') {
      if (isConstant(then, 1) || then === when) return joined('or', when, otherwise);
      if (isConstant(then, 0)) return joined('and', not(when), otherwise);
      if (isConstant(otherwise, 0) || otherwise === when) return joined('and', when, then);
      if (isConstant(otherwise, 1)) return joined('or', not(when), then);
    }
    return put('choose', p.sort, {
      args: [when, then, otherwise],
      least: Math.min(p.least, q.least),
      most: Math.max(p.most, q.most),
      mayBeNone: p.mayBeNone || q.mayBeNone,
    });
  };

  return {
    steps,
    constant,
    bits,
    truth,
    input: (name, sort, side, least, most, mayBeNone = false) => {
      const ref = inputs.get(name) ?? added('input', sort, { name, side, least, most, mayBeNone });
      inputs.set(name, ref);
      return ref;
    },
    add,
    mul,
    div,
    neg,
    min: (a, b) => extreme('min', a, b),
    max: (a, b) => extreme('max', a, b),
    round,
    above: (a) => turn('above', aboveOf, a),
    from: (a) => turn('from', fromOf, a),
    fromTimes: (limit, by) => turnBy('from-times', limit, by),
    fromOver: (limit, by) => turnBy('from-over', limit, by),
    numberOr,
    less,
    notAbove,
    same,
    bitsOr,
    bitsAnd,
    bitsAre,
    and: (...all) => all.reduce((a, b) => joined('and', a, b), truth(true)),
    or: (...all) => all.reduce((a, b) => joined('or', a, b), truth(false)),
    not,
    choose,
    isConstant,
  };
}
