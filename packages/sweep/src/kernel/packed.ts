import { conditionRules, type Topic } from '@tarebook/rules/engine';
import { type Op, operations, type Ref, type Sort, type Step } from './graph';
import type { Program } from './program';
import type { Sides } from './sides';
import { reached } from './staged';

/**
 * A program as plain data, as the build writes it into a module: nothing is compiled where it runs,
 * and no policy of a page forbids it.
 *
 *     ops    one letter a step         args   how far back each of its parts stands
 */
export type Packed = {
  /** What rules it was made of; with others it is not used. */
  readonly of: string;
  readonly ops: string;
  readonly args: string;
  /** Of constants their sort and value, of inputs all but their place; in the order of the steps. */
  readonly constants: readonly (readonly [sort: Sort, value: string])[];
  readonly inputs: readonly (readonly [name: string, sort: Sort, side: number, least: string])[];
  /** What stands beside a step, such as what bits are held against. */
  readonly values: readonly string[];
  readonly verdict: readonly Ref[];
  readonly room: readonly Ref[];
};

export const isPacked = (value: unknown): value is Packed =>
  typeof value === 'object' && value !== null && 'of' in value && 'ops' in value;

/** A short text that is another wherever rules are: all that a verdict hangs on but the parameters' values. */
export function rulesMark(topic: Topic, sides: Sides): string {
  const facts = Object.entries(topic.facts).map(([id, fact]) => [
    id,
    fact.kind,
    fact.kind === 'choice' ? fact.options : [],
    fact.kind === 'quantity' && fact.least >= 0,
  ]);
  const formulas = Object.entries(topic.formulas).map(([id, { is, unit }]) => [id, is, unit]);
  const signs = Object.entries(topic.parameters).map(([id, { values }]) => [
    id,
    values.every(({ value }) => value >= 0),
  ]);
  const limits = Object.entries(topic.limits).map(([id, { label: _, ...limit }]) => [id, limit]);
  const all = [sides, facts, formulas, signs, limits, topic.findings, conditionRules(topic)];
  const text = JSON.stringify(all);
  let [a, b] = [0x811c9dc5, 0x1000193];
  for (let i = 0; i < text.length; i += 1) {
    a = Math.imul(a ^ text.charCodeAt(i), 0x01000193);
    b = Math.imul(b + text.charCodeAt(i), 0x85ebca6b) ^ (b >>> 13);
  }
  return `${topic.id} ${text.length} ${(a >>> 0).toString(36)} ${(b >>> 0).toString(36)}`;
}

const letterOf = (op: Op): string => String.fromCharCode(97 + operations.indexOf(op));
const opOf = (letter: string): Op => operations[letter.charCodeAt(0) - 97] ?? 'constant';
const withValue: readonly Op[] = ['number-or', 'bits-are'];
const partsOf: Readonly<Partial<Record<Op, number>>> = {
  ...{ constant: 0, input: 0, choose: 3 },
  ...{ neg: 1, round: 1, above: 1, from: 1, 'number-or': 1, 'bits-are': 1, not: 1 },
};

export function packed(topic: Topic, sides: Sides, program: Program): Packed {
  const { steps, verdict, room } = program;
  const live = reached(steps, [...verdict, ...room]);
  const places = new Map(live.map((ref, at) => [ref, at]));
  const placeOf = (ref: Ref): number => places.get(ref) ?? 0;
  const kept = live.flatMap((ref) => steps[ref] ?? []);
  const sorts = (op: Op) => kept.filter((step) => step.op === op);
  return {
    of: rulesMark(topic, sides),
    ops: kept.map(({ op }) => letterOf(op)).join(''),
    args: kept
      .flatMap(({ args }, at) => args.map((arg) => (at - placeOf(arg)).toString(36)))
      .join(' '),
    constants: sorts('constant').map(({ sort, value }) => [
      sort,
      `${Object.is(value, -0) ? '-0' : value}`,
    ]),
    inputs: sorts('input').map(({ name, sort, side, least }) => [name, sort, side, `${least}`]),
    values: kept.filter(({ op }) => withValue.includes(op)).map(({ value }) => `${value}`),
    verdict: verdict.map(placeOf),
    room: room.map(placeOf),
  };
}

const truths: readonly Op[] = ['less', 'not-above', 'same', 'bits-are', 'and', 'or', 'not'];

function sortOf(op: Op, steps: readonly Step[], args: readonly Ref[]): Sort {
  if (op === 'choose') return steps[args[1] ?? 0]?.sort ?? 'number';
  if (op === 'bits-or' || op === 'bits-and') return 'bits';
  return truths.includes(op) ? 'truth' : 'number';
}

/** The program again, where it is of these very rules; undefined where they are others. */
export function unpacked(topic: Topic, sides: Sides, from: Packed): Program | undefined {
  if (from.of !== rulesMark(topic, sides)) return undefined;
  const far = from.args.split(' ');
  const next = { arg: 0, constant: 0, input: 0, value: 0 };
  const steps: Step[] = [];
  const plain = { value: 0, name: '', side: 0, least: -Infinity, most: Infinity, mayBeNone: false };
  for (const letter of from.ops) {
    const op = opOf(letter);
    const at = steps.length;
    if (op === 'constant') {
      const [sort, value] = from.constants[next.constant++] ?? ['number', '0'];
      steps.push({ ...plain, op, sort, args: [], value: Number(value) });
    } else if (op === 'input') {
      const [name, sort, side, least] = from.inputs[next.input++] ?? ['', 'number', 0, '0'];
      steps.push({ ...plain, op, sort, args: [], name, side, least: Number(least) });
    } else {
      const args = Array.from(
        { length: partsOf[op] ?? 2 },
        () => at - Number.parseInt(far[next.arg++] ?? '', 36),
      );
      const side = args.reduce((sum, arg) => sum | (steps[arg]?.side ?? 0), 0);
      const value = withValue.includes(op) ? Number(from.values[next.value++]) : 0;
      steps.push({ ...plain, op, sort: sortOf(op, steps, args), args, side, value });
    }
  }
  return { steps, verdict: from.verdict, room: from.room };
}
