import { expect, test } from 'vitest';
import { endCode, isEndCode } from './end-code';

test('an end code is four letters, the same wherever it is made, and another for another class', () => {
  const ids = Array.from({ length: 200 }, (_, at) =>
    (1_790_000_000_000 + at * 60_000).toString(36),
  );
  const codes = ids.map(endCode);
  for (const code of codes) expect(code).toMatch(/^[A-HJ-MP-Z]{4}$/);
  expect(new Set(codes).size).toBe(codes.length);
});

test('an end code is taken as it is heard: in small letters, with gaps; another one is not', () => {
  const code = endCode('mabc123');
  expect(isEndCode(` ${[...code.toLowerCase()].join(' ')}. `, 'mabc123')).toBe(true);
  expect(isEndCode(endCode('mabc124'), 'mabc123')).toBe(false);
  expect(isEndCode('', 'mabc123')).toBe(false);
});
