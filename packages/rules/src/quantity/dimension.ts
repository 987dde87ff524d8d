/**
 * Dimensions: what kind of thing a number measures, as whole powers of six base quantities.
 *
 *     mass · length · time · current · temperature · money
 *
 * A weight in pounds counts as mass here, as the trade uses it; a moment in lb·ft is mass × length.
 */
export type Dimension = readonly [number, number, number, number, number, number];

export const plain: Dimension = [0, 0, 0, 0, 0, 0];

export function sameDimension(a: Dimension, b: Dimension): boolean {
  return a.every((power, i) => power === b[i]);
}

/** a × b, or a ÷ b with `sign` −1. */
export function joined(a: Dimension, b: Dimension, sign: 1 | -1 = 1): Dimension {
  return [
    a[0] + sign * b[0],
    a[1] + sign * b[1],
    a[2] + sign * b[2],
    a[3] + sign * b[3],
    a[4] + sign * b[4],
    a[5] + sign * b[5],
  ];
}

const baseNames = ['weight', 'length', 'time', 'current', 'temperature', 'money'] as const;

const commonNames: readonly (readonly [string, Dimension])[] = [
  ['plain number', plain],
  ['area', [0, 2, 0, 0, 0, 0]],
  ['volume', [0, 3, 0, 0, 0, 0]],
  ['speed', [0, 1, -1, 0, 0, 0]],
  ['charge', [0, 0, 1, 1, 0, 0]],
  ['power', [1, 2, -3, 0, 0, 0]],
  ['energy', [1, 2, -2, 0, 0, 0]],
  ['pressure', [1, -1, -2, 0, 0, 0]],
  ['voltage', [1, 2, -3, -1, 0, 0]],
  ['weight per volume', [1, -3, 0, 0, 0, 0]],
  ['volume per time', [0, 3, -1, 0, 0, 0]],
  ['force or energy per distance', [1, 1, -2, 0, 0, 0]],
  ['moment', [1, 1, 0, 0, 0, 0]],
  ['money per time', [0, 0, -1, 0, 0, 1]],
];

/** In words, for messages: "weight", "area", "weight·length^-2". */
export function dimensionName(d: Dimension): string {
  const common = commonNames.find(([, known]) => sameDimension(known, d));
  if (common) return common[0];
  return baseNames
    .flatMap((name, i) => {
      const power = d[i] ?? 0;
      return power === 0 ? [] : [power === 1 ? name : `${name}^${power}`];
    })
    .join('·');
}
