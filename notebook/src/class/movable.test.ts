import { judgeCaseNow, readCase } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import { awaitedIn, movableIn } from './movable';

const text = `---
topic: tow-fit
---

| Fact | Value | Read from |
| --- | --- | --- |
| \`vehicle.gvwr\` | 6,000 lb | label |

| \`load.occupants\` | Weight |
| --- | --- |
| Caller | 180 lb |
| Wife | 150 lb |

| \`trailer.cargo\` | Weight | Ahead of axle |
| --- | --- | --- |
| Kitchen | 240 lb | 3 ft |
`;

test('of a case each fact told can be moved, and of each row every cell', () => {
  const doc = readCase(text);
  const all = movableIn(doc);
  expect(all.map(({ label, value, unit }) => [label, value, unit])).toEqual([
    ['GVWR', '6,000 lb', 'lb'],
    ['Caller: weight', '180 lb', 'lb'],
    ['Wife: weight', '150 lb', 'lb'],
    ['Kitchen: weight', '240 lb', 'lb'],
    ['Kitchen: ahead of axle', '3 ft', 'ft'],
  ]);
  const wife = all[2];
  const moved = readCase(wife?.write(doc, '250 lb') ?? '');
  expect(moved.troubles).toEqual([]);
  expect(moved.facts['load.occupants']).toEqual([
    { label: 'Caller', weight: '180 lb' },
    { label: 'Wife', weight: '250 lb' },
  ]);
  expect(all.map(({ said }) => said)).toEqual([
    ...['GVWR', 'Caller', 'Wife', 'Kitchen', 'Kitchen, ahead of axle,'],
  ]);
});

test('what nobody told and the verdict waits for can be put in, too, by its choices where it has some', () => {
  const doc = readCase(text);
  const answer = judgeCaseNow(doc);
  const awaited = awaitedIn(doc, answer);
  expect(awaited.length).toBeGreaterThan(0);
  expect(awaited.every(({ value }) => value === '')).toBe(true);
  const told = new Set(movableIn(doc).map(({ key }) => key));
  expect(awaited.some(({ key }) => told.has(key))).toBe(false);
  const [first] = awaited;
  const to = first?.options[0] ?? `500 ${first?.unit}`;
  const moved = readCase(first?.write(doc, to) ?? '');
  expect(moved.troubles).toEqual([]);
  expect(movableIn(moved).find(({ key }) => key === first?.key)?.value).toBe(to);
});
