import { expect, test } from 'vitest';
import { quietly } from './quietly';
import type { Fact } from './shapes';

const source = { class: 'house', cite: 'Choice of the dealer' } as const;
const asked = { label: 'A thing', ask: 'How is it?', where: 'on it' } as const;
const facts: Readonly<Record<string, Fact>> = {
  'a.weight': {
    ...asked,
    kind: 'quantity',
    unit: 'lb',
    least: 0,
    most: 9,
    silent: { value: 2, says: 'It weighs 2 lb.', source },
  },
  'a.kind': { ...asked, kind: 'choice', options: ['red', 'green'] },
  'a.there': { ...asked, kind: 'yes-no', silent: { value: 'no', says: 'Not there.', source } },
  'a.rows': {
    ...asked,
    kind: 'rows',
    columns: {},
    silent: { value: 'none', says: 'None.', source },
  },
};

test('defaults keep their value and source and are no longer listed', () => {
  const found = quietly(facts);
  expect(Object.keys(found)).toEqual(Object.keys(facts));
  for (const [id, fact] of Object.entries(facts)) {
    expect(found[id]?.silent).toEqual(fact.silent && { ...fact.silent, quiet: true });
    expect(found[id]).toMatchObject({ kind: fact.kind, label: fact.label });
  }
});

test('what others stand on is left as it is', () => {
  quietly(facts);
  expect(facts['a.weight']?.silent).not.toHaveProperty('quiet');
});
