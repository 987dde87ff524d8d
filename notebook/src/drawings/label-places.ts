import type { Interval } from '@tarebook/rules/quantity';

/** Pixels of a drawing. */
export type Pixel = readonly [x: number, y: number];
/** A straight stroke that words should not stand on. */
export type Stroke = readonly [from: Pixel, to: Pixel];
export type Place = { readonly side: 'start' | 'end'; readonly x: number; readonly y: number };
type Box = {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
};

/** Words of the drawings are set in 12 px of a face whose letters are all as wide. */
export const characterWidth = 7.3;

function boxOf(words: string, { side, x, y }: Place): Box {
  const wide = words.length * characterWidth;
  const left = side === 'start' ? x : x - wide;
  return { left, right: left + wide, top: y - 11, bottom: y + 3 };
}

/** Whether a stroke runs through a box: its part between left and right, by its heights there. */
function runsThrough([[x1, y1], [x2, y2]]: Stroke, box: Box): boolean {
  const [left, right] = [
    Math.max(box.left, Math.min(x1, x2)),
    Math.min(box.right, Math.max(x1, x2)),
  ];
  if (left > right) return false;
  const height = (x: number) => y1 + ((x - x1) / (x2 - x1)) * (y2 - y1);
  const [a, b] = x1 === x2 ? [y1, y2] : [height(left), height(right)];
  return Math.max(a, b) >= box.top && Math.min(a, b) <= box.bottom;
}

const meet = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

export type Label = { readonly words: string; readonly wishes: readonly Place[] };

/**
 * For each label the first of the places it would like that no stroke and no label before it runs
 * through, between left and right; where none is free, the one that least runs through.
 */
export function placeLabels(
  labels: readonly Label[],
  strokes: readonly Stroke[],
  within: Interval,
): readonly (Place | undefined)[] {
  const taken: Box[] = [];
  return labels.map(({ words, wishes }) => {
    const weighed = wishes.map((place) => {
      const box = boxOf(words, place);
      const outside = box.left < within.lo || box.right > within.hi ? 100 : 0;
      const on = taken.filter((each) => meet(each, box)).length * 10;
      return {
        place,
        box,
        bad: outside + on + strokes.filter((each) => runsThrough(each, box)).length,
      };
    });
    const least = Math.min(...weighed.map(({ bad }) => bad));
    const best = weighed.find(({ bad }) => bad === least);
    if (best) taken.push(best.box);
    return best?.place;
  });
}
