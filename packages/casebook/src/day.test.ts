import { expect, test } from 'vitest';
import { readCase } from './read-any';

const dated = (day: string): string => `---
title: A day
topic: tow-fit
as-of:  ${day}
---

Nothing is known yet.
`;

test('a case dated before any value is refused where its day stands', () => {
  const { troubles } = readCase(dated('2019-01-01'));
  expect(troubles).toContainEqual({
    line: 4,
    column: 9,
    says: '`margin.other` has no value on 2019-01-01; its first holds from 2020-01-01.',
  });
});

test('another day in its place is held against the parameters instead', () => {
  expect(readCase(dated('2019-01-01'), '2026-11-01').troubles).toEqual([]);
  const [trouble] = readCase(dated('2026-11-01'), '2019-01-01').troubles;
  expect(trouble).toMatchObject({ line: 1, column: 1 });
});
