import { expect, test } from 'vitest';
import { asTheCase, openBeside, packBeside } from './beside';
import { pack } from './link';

const text = '---\ntitle: A\ntopic: tow-fit\n---\n';
const beside = {
  from: text,
  columns: [
    { ...asTheCase, text },
    { ...asTheCase, load: 'a', text },
  ],
};

test('rigs side by side come back out of a link as they went in', async () => {
  expect(await openBeside(await packBeside(beside))).toEqual(beside);
});

test('what is no such link is told in a sentence, and nothing of it is taken', async () => {
  const says = async (value: unknown) => openBeside(await pack(JSON.stringify(value)));
  const kind = 'tarebook-beside';
  const wrong = [
    5,
    null,
    { kind, version: 2, ...beside },
    { kind, version: 1, from: text, columns: [] },
    { kind, version: 1, from: text, columns: [1, 2] },
    { kind, version: 1, from: text, columns: [1, 2, 3, 4].map(() => beside.columns[0]) },
    { kind, version: 1, from: '[['.repeat(900), columns: beside.columns },
    { kind, version: 1, from: text, columns: [{ ...asTheCase, text: '\n'.repeat(5_000) }] },
  ];
  for (const each of wrong)
    expect(await says(each)).toEqual({ says: expect.stringMatching(/\.$/) });
  expect(await openBeside('no-link')).toEqual({ says: expect.stringMatching(/\.$/) });
});

test('names of what every object has are no fields', async () => {
  const hostile = `{"kind":"tarebook-beside","version":1,"from":"","columns":[{"__proto__":{"text":"","vehicle":"","trailer":"","load":""}}]}`;
  expect(await openBeside(await pack(hostile))).toEqual({
    says: expect.stringContaining('1 rigs'),
  });
});
