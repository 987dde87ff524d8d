import { addRow, readCase, removeRow, setCell, setFact } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import { whatIfSaid } from './what-if-said';

const text = `---
topic: tow-fit
---

| Fact | Value | Read from |
| --- | --- | --- |
| \`vehicle.gvwr\` | 6,000 lb | label |

| \`load.occupants\` | Weight |
| --- | --- |
| Caller | 180 lb |
| Child | 60 lb |
| Child | 80 lb |
`;
const filed = readCase(text);
const people = 'load.occupants';

test('what was moved is asked in one question: values, rows that came, rows that went', () => {
  expect(whatIfSaid(filed, filed)).toBeUndefined();
  const dog = addRow(filed, people, 'Dog', { weight: '70 lb' });
  expect(whatIfSaid(filed, readCase(dog))).toBe('What if Dog (70 lb) were there too?');
  const alone = readCase(removeRow(readCase(dog), people, 0));
  expect(whatIfSaid(filed, alone)).toBe(
    'What if Dog (70 lb) were there too and Caller were left out?',
  );
  const all = readCase(setFact(alone, 'vehicle.gvwr', '7,000 lb'));
  expect(whatIfSaid(filed, all)).toBe(
    'What if GVWR were 7,000 lb, Dog (70 lb) were there too, and Caller were left out?',
  );
});

test('of two rows with one name the one that went is left out, and the other has not changed', () => {
  expect(whatIfSaid(filed, readCase(removeRow(filed, people, 1)))).toBe(
    'What if Child were left out?',
  );
  const heavier = readCase(setCell(filed, people, 2, 'weight', '90 lb'));
  expect(whatIfSaid(filed, heavier)).toBe('What if Child were 90 lb?');
});

test('a row that was added and is typed on is told once, as it is', () => {
  const dog = readCase(addRow(filed, people, 'Dog', { weight: 'unknown' }));
  const typed = readCase(setCell(dog, people, 3, 'weight', '65 lb'));
  expect(whatIfSaid(filed, typed)).toBe('What if Dog (65 lb) were there too?');
});
