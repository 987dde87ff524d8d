import { askEngine } from './found';
import type { Ref, Step } from './graph';
import { inMillionths } from './millionths';
import type { Special } from './specialize';
import { type Stage, stageOf } from './staged';

/**
 * The steps of a pair as the text of a WebAssembly module: two columns at a time, all of a step in one
 * register, nothing written between. Numbers are doubles; a truth is all ones or all zeros; bits are the
 * lower half of 64. A vector of what comes in or goes out stands every `stride` bytes, eight for a place.
 *
 *     memory:  case │ one row │ columns … │ what else is wanted … │ levels, a byte each
 */
export type Layout = {
  readonly text: string;
  /** What comes in, in the order in which it stands in the memory; of columns `n` places each. */
  readonly case: readonly Ref[];
  readonly rows: readonly Ref[];
  readonly columns: readonly Ref[];
  /** Bytes from the beginning. */
  readonly at: Readonly<Record<'rows' | 'columns' | 'outputs' | 'levels', number>>;
  readonly bytes: number;
};

const place = 8;
const two = 16;

const number = (value: number): string => {
  if (Number.isNaN(value)) return 'nan';
  if (!Number.isFinite(value)) return value > 0 ? 'inf' : '-inf';
  return Object.is(value, -0) ? '-0' : `${value}`;
};

const same = (kind: 'f64x2' | 'i64x2', text: string): string =>
  `(v128.const ${kind} ${text} ${text})`;

/** What is rounded already, as whole millionths. */
const nearest = (of: string): string => `(f64x2.nearest (f64x2.mul ${of} ${same('f64x2', '1e6')}))`;

function constant({ sort, value }: Step): string {
  if (sort === 'number') return same('f64x2', number(value));
  return same('i64x2', sort === 'truth' ? (value === 0 ? '0' : '-1') : `${value >>> 0}`);
}

/** A half is taken sooner than by two is divided, and comes to the same. */
function halvesIn({ op, args }: Step, steps: readonly Step[]): string | undefined {
  const by = steps[args[1] ?? -1];
  if (op !== 'div' || by?.op !== 'constant' || !Number.isInteger(Math.log2(by.value)))
    return undefined;
  return same('f64x2', number(1 / by.value));
}

/** A number less another is taken away, and its other sign is never made. */
function lessIn({ op, args }: Step, steps: readonly Step[]): readonly [Ref, Ref] | undefined {
  if (op !== 'add') return undefined;
  const [a = -1, b = -1] = args;
  const [p, q] = [steps[a], steps[b]];
  if (q?.op === 'neg') return [a, q.args[0] ?? -1];
  return p?.op === 'neg' ? [b, p.args[0] ?? -1] : undefined;
}

/** What a step does with what it stands on; each as `Math` and the comparisons of the plain loops have it. */
function reckoned({ op, value }: Step, args: readonly string[], isWhole: boolean): string {
  const [a = '', b = '', c = ''] = args;
  switch (op) {
    case 'add':
    case 'mul':
    case 'div':
    case 'min':
    case 'max':
      return `(f64x2.${op} ${a} ${b})`;
    case 'neg':
      return `(f64x2.neg ${a})`;
    case 'round': {
      // The whole number above, less one where that is more than a half away; no number stays none.
      const up = `(local.tee $y (f64x2.ceil (local.tee $x (f64x2.mul ${a} ${same('f64x2', '1e6')}))))`;
      const isNear = `(f64x2.le (f64x2.sub (local.get $y) ${same('f64x2', '0.5')}) (local.get $x))`;
      const whole = `(f64x2.sub ${up} (v128.andnot ${same('f64x2', '1')} ${isNear}))`;
      return isWhole ? whole : `(f64x2.div ${whole} ${same('f64x2', '1e6')})`;
    }
    case 'number-or':
      return `(v128.bitselect ${same('f64x2', number(value))} ${a} (f64x2.ne ${a} ${a}))`;
    case 'less':
      return `(f64x2.lt ${a} ${b})`;
    case 'not-above':
      return `(f64x2.le ${a} ${b})`;
    case 'same':
      return `(f64x2.eq ${a} ${b})`;
    case 'bits-are':
      return `(i64x2.eq ${a} ${same('i64x2', `${value >>> 0}`)})`;
    case 'bits-or':
    case 'or':
      return `(v128.or ${a} ${b})`;
    case 'bits-and':
    case 'and':
      return `(v128.and ${a} ${b})`;
    case 'not':
      return `(v128.not ${a})`;
    case 'choose':
      return `(v128.bitselect ${b} ${c} ${a})`;
    case 'above':
    case 'from':
    case 'from-times':
    case 'from-over':
      throw new Error('Where something turns is found before pairs are gone through.');
    case 'constant':
    case 'input':
      throw new Error(`A ${op} is not reckoned.`);
  }
}

/** The first outputs are the level at the least and at the most. */
export const levelEnds = 2;

/** One level where both ends are the same, a byte for each of the two columns. */
function levelLines([least = '', most = '']: readonly string[], at: number): readonly string[] {
  const ask = same('f64x2', `${askEngine}`);
  const level = `(v128.bitselect ${least} ${ask} (f64x2.eq ${least} ${most}))`;
  const to = `(i32.shr_u (local.get $i) (i32.const 3))`;
  return [
    `(local.set $x (i32x4.trunc_sat_f64x2_u_zero ${level}))`,
    `(v128.store8_lane offset=${at} 0 ${to} (local.get $x))`,
    `(v128.store8_lane offset=${at + 1} 4 ${to} (local.get $x))`,
  ];
}

/**
 * The module of one program over `n` columns, which is gone through for one row at a time.
 *
 * @param n a multiple of two
 */
export function watOf(special: Special, n: number): Layout {
  const {
    staged: { steps, stages },
    outputs,
  } = special;
  const own = stages.pairs.own;
  const isOwn = new Set(own);
  const read = [...new Set([...own.flatMap((ref) => steps[ref]?.args ?? []), ...outputs])];
  const from = (stage: Stage) =>
    read.filter((ref) => {
      const step = steps[ref];
      return step && step.op !== 'constant' && !isOwn.has(ref) && stageOf(step) === stage;
    });
  const [ofCase, rows, columns] = [from('case'), from('rows'), from('columns')];
  const stride = n * place;
  const atRows = ofCase.length * place;
  const atColumns = Math.ceil((atRows + rows.length * place) / two) * two;
  const atOutputs = atColumns + columns.length * stride;
  const atLevels = atOutputs + (outputs.length - levelEnds) * stride;
  const singles = [...ofCase, ...rows];
  const placeOf = new Map(columns.map((ref, i) => [ref, atColumns + i * stride]));
  const taken = (ref: Ref): string => {
    const step = steps[ref];
    if (step?.op === 'constant') return constant(step);
    const at = placeOf.get(ref);
    return at === undefined ? `(local.get $s${ref})` : `(v128.load offset=${at} (local.get $i))`;
  };
  const isThere = (ref: Ref): boolean =>
    isOwn.has(ref) || singles.includes(ref) || placeOf.has(ref) || steps[ref]?.op === 'constant';
  const whole = inMillionths(special);
  /** As whole millionths. */
  const counted = (ref: Ref): string => {
    const step = steps[ref];
    if (whole.has(ref)) return taken(ref);
    if (step?.op === 'constant') return same('f64x2', number(Math.round(step.value * 1e6)));
    if (placeOf.has(ref)) return nearest(taken(ref));
    return `(local.get $n${ref})`;
  };
  const lines = own.flatMap((ref) => {
    const step = steps[ref];
    if (!step) return [];
    const args = step.args.map(step.args.some((arg) => whole.has(arg)) ? counted : taken);
    const part = halvesIn(step, steps);
    const [from, less] = lessIn(step, steps) ?? [];
    const isLess = from !== undefined && less !== undefined && isThere(less);
    const of = isLess
      ? `(f64x2.sub ${taken(from)} ${taken(less)})`
      : part
        ? `(f64x2.mul ${args[0]} ${part})`
        : reckoned(step, args, whole.has(ref));
    return [`(local.set $s${ref} ${of})`];
  });
  const singlesCounted = singles.filter((ref) => special.rounded.has(ref));
  /** As numbers all of them, a truth as one or none. */
  const told = (ref: Ref): string =>
    steps[ref]?.sort === 'truth' ? `(v128.and ${taken(ref)} ${same('f64x2', '1')})` : taken(ref);
  const text = [
    '(module (import "in" "memory" (memory 1)) (func (export "run") (local $i i32)',
    '(local $x v128) (local $y v128)',
    ...[...singles, ...own].map((ref) => `(local $s${ref} v128)`),
    ...singlesCounted.map((ref) => `(local $n${ref} v128)`),
    ...singles.map((ref, i) => {
      const at = i * place;
      return `(local.set $s${ref} (v128.load64_splat offset=${at} (i32.const 0)))`;
    }),
    ...singlesCounted.map((ref) => `(local.set $n${ref} ${nearest(`(local.get $s${ref})`)})`),
    '(loop $next',
    ...lines,
    ...outputs
      .slice(levelEnds)
      .map((ref, i) => `(v128.store offset=${atOutputs + i * stride} (local.get $i) ${told(ref)})`),
    ...levelLines(outputs.slice(0, levelEnds).map(taken), atLevels),
    `(br_if $next (i32.lt_u (local.tee $i (i32.add (local.get $i) (i32.const ${two}))) (i32.const ${stride})))`,
    ')))',
  ].join('\n');
  return {
    ...{ text, case: ofCase, rows, columns },
    at: { rows: atRows, columns: atColumns, outputs: atOutputs, levels: atLevels },
    bytes: atLevels + n,
  };
}
