import { expect, test } from 'vitest';
import { placeLabels, type Stroke } from './label-places';

const above = { side: 'start', x: 100, y: 50 } as const;
const below = { side: 'start', x: 100, y: 80 } as const;
const page = { lo: 0, hi: 300 };
const label = { words: 'reserve', wishes: [above, below] };

test('words stand at the first place they would like', () => {
  expect(placeLabels([label], [], page)).toEqual([above]);
});

test('words give way to a line, level, steep or upright, and to words before them', () => {
  const strokes: readonly Stroke[] = [
    [
      [0, 45],
      [300, 45],
    ],
    [
      [90, 0],
      [160, 60],
    ],
    [
      [120, 0],
      [120, 60],
    ],
  ];
  for (const stroke of strokes) expect(placeLabels([label], [stroke], page)).toEqual([below]);
  expect(placeLabels([label, label], [], page)).toEqual([above, below]);
});

test('a line that passes beside the words moves nothing', () => {
  const beside: Stroke = [
    [160, 0],
    [160, 100],
  ];
  expect(placeLabels([label], [beside], page)).toEqual([above]);
});

test('words never leave the drawing while another place is within it', () => {
  const out = { side: 'end', x: 30, y: 50 } as const;
  const on: Stroke = [
    [0, 75],
    [300, 75],
  ];
  expect(placeLabels([{ words: 'reserve', wishes: [out, below] }], [on], page)).toEqual([below]);
});
