import { readdirSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { titledFirst } from './titled-first';

const folder = new URL('../../../cases/', import.meta.url);
const all = readdirSync(folder, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.md') && !/^(?:refused|note)\b/.test(file))
  .flatMap((path) => {
    const text = readFileSync(new URL(path, folder), 'utf8');
    const title = /^title: (.+)$/m.exec(text)?.[1]?.replace(/^['"]|['"]$/g, '');
    return title ? [{ path, title }] : [];
  });

test('every filed case stands first under its own title, however it is typed', () => {
  expect(all.length).toBeGreaterThan(400);
  // Whatever was found for the words: here, that they are in the wrong order.
  const found = all.toReversed();
  const wrong = all.flatMap(({ title }) =>
    [title, title.toLowerCase(), ` ${title.replace(/[.,’'?]/g, '')} `].filter(
      (typed) => titledFirst(found, all, typed)[0]?.title !== title,
    ),
  );
  expect(wrong).toEqual([]);
});

test('how a title begins is enough, one word is not, and nothing stands twice', () => {
  const rows = ['A label', 'The label nobody has read', 'The labels'].map((title) => ({ title }));
  const titles = (typed: string) => titledFirst(rows, rows, typed).map(({ title }) => title);
  expect(titles('the label nobody')[0]).toBe('The label nobody has read');
  expect(titles('the')).toEqual(rows.map(({ title }) => title));
  expect(titles('?')).toEqual(rows.map(({ title }) => title));
  expect(titledFirst([], rows, 'a label')).toEqual([{ title: 'A label' }]);
});
