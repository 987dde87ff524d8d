import type { Ref } from './graph';
import type { Vector } from './lanes';

/**
 * What is the same for all places of a kin. On it a program grows small: a truth that always holds, a
 * number that is always zero or without end, two numbers that are always equal, a sign.
 */
export type Mark = {
  /** The value at every place, where it is one worth knowing of. */
  readonly fixed: number | undefined;
  /** An earlier step that comes to the same at every place. */
  readonly twin: Ref | undefined;
  /** Bounds at every place. */
  readonly least: number;
  readonly most: number;
  readonly mayBeNone: boolean;
};

export type Marks = ReadonlyMap<Ref, Mark>;

/** From here on a number is above zero for good: what is divided by it stays a number. */
const tiny = 1e-6;
/** No weight, length or count of a rig comes near it. */
const farOut = 1e12;

/** Numbers worth knowing of; any other may be another with the next load. */
const fixed: readonly number[] = [0, 1, -1, Infinity, -Infinity];

function markOf({ sort, of }: Vector, from: number, size: number): Mark {
  const first = of[from] ?? 0;
  let isSame = true;
  let [least, most] = [Infinity, -Infinity];
  let mayBeNone = false;
  for (let i = from; i < from + size; i += 1) {
    const value = of[i] ?? 0;
    if (value !== first) isSame = false;
    if (Number.isNaN(value)) mayBeNone = true;
    if (value < least) least = value;
    if (value > most) most = value;
  }
  const isFixed = isSame && (sort !== 'number' || (fixed.includes(first) && !Object.is(first, -0)));
  return {
    fixed: isFixed ? first : undefined,
    twin: undefined,
    least: least >= tiny ? tiny : least >= 0 ? 0 : least >= -farOut ? -farOut : -Infinity,
    most: most <= -tiny ? -tiny : most <= 0 ? 0 : most <= farOut ? farOut : Infinity,
    mayBeNone,
  };
}

const areEqual = (a: Vector, b: Vector, from: number, size: number): boolean => {
  for (let i = from; i < from + size; i += 1) if (!Object.is(a.of[i], b.of[i])) return false;
  return true;
};

/** The marks of what a stage kept, for places side by side. */
export function marksOf(kept: ReadonlyMap<Ref, Vector>, from: number, size: number): Marks {
  const marks = new Map<Ref, Mark>();
  const byEnds = new Map<number, Ref[]>();
  for (const [ref, found] of kept) {
    const mark = markOf(found, from, size);
    marks.set(ref, mark);
    if (found.sort !== 'number' || mark.fixed !== undefined) continue;
    const ends = (found.of[from] ?? 0) + 7 * (found.of[from + size - 1] ?? 0);
    const alike = byEnds.get(ends) ?? [];
    byEnds.set(ends, alike);
    const twin = alike.find((each) => {
      const other = kept.get(each);
      return other && areEqual(found, other, from, size);
    });
    if (twin === undefined) alike.push(ref);
    else marks.set(ref, { ...mark, twin });
  }
  return marks;
}

/** Whether two steps still come to the same: they are twins, or both are one and the same value. */
function areTwins(marks: Marks, { fixed, twin }: Mark, other: Ref | undefined): boolean {
  if (twin === other) return true;
  if (other === undefined || fixed === undefined) return false;
  return marks.get(other)?.fixed === fixed;
}

/** Whether a mark that holds now says all that one held before says. */
const isWithin = (now: Marks, a: Mark, b: Mark): boolean =>
  (b.fixed === undefined || b.fixed === a.fixed) &&
  (b.twin === undefined || areTwins(now, a, b.twin)) &&
  a.least >= b.least &&
  a.most <= b.most &&
  (b.mayBeNone || !a.mayBeNone);

/**
 * Marks that hold now and held before: what one load makes the same and another does not is not
 * counted on again, so that one program soon serves for all.
 */
export function weakened(before: Marks | undefined, now: Marks): Marks {
  if (!before) return now;
  let isHeld = true;
  for (const [ref, mark] of now) {
    const held = before.get(ref);
    if (!held || !isWithin(now, mark, held)) isHeld = false;
  }
  if (isHeld) return before;
  const found = new Map<Ref, Mark>();
  for (const [ref, a] of now) {
    const b = before.get(ref) ?? a;
    const fixed = a.fixed === b.fixed ? a.fixed : undefined;
    const mayBe = fixed === undefined ? (b.twin ?? a.twin) : undefined;
    const isTwin = areTwins(now, a, mayBe) && areTwins(before, b, mayBe);
    found.set(ref, {
      fixed,
      twin: isTwin ? mayBe : undefined,
      least: Math.min(a.least, b.least),
      most: Math.max(a.most, b.most),
      mayBeNone: a.mayBeNone || b.mayBeNone,
    });
  }
  return found;
}

function isHeld(
  { fixed, least, most, mayBeNone }: Mark,
  { sort, of }: Vector,
  from: number,
  size: number,
): boolean {
  for (let i = from; i < from + size; i += 1) {
    const value = of[i] ?? 0;
    if (Number.isNaN(value)) {
      if (!mayBeNone) return false;
    } else if (value < least || value > most) return false;
    if (fixed === undefined) continue;
    if (sort === 'number' ? !Object.is(value, fixed) : value !== fixed) return false;
  }
  return true;
}

/**
 * Whether marks found before still hold of all that may have changed since.
 *
 * @param moved what may be another than when they were found, of all that is kept
 */
export function areHeld(
  marks: Marks,
  kept: ReadonlyMap<Ref, Vector>,
  moved: ReadonlyMap<Ref, Vector>,
  from: number,
  size: number,
): boolean {
  for (const [ref, found] of moved) {
    const mark = marks.get(ref);
    if (!mark || !isHeld(mark, found, from, size)) return false;
  }
  for (const [ref, { twin }] of marks) {
    if (twin === undefined || (!moved.has(ref) && !moved.has(twin))) continue;
    const [own, other] = [kept.get(ref), kept.get(twin)];
    if (!own || !other || !areEqual(own, other, from, size)) return false;
  }
  return true;
}
