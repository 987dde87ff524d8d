import { treeOf } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import { packTree, unpackTree } from './tree-packed';

const source = `---
title: Packed
---

It is **5,000 lb** and \`= verdict\`, at [a page](https://example.org/x) &amp; so on.

| \`trailer.cargo\` | Weight |
| --- | --- |
| Tools, two \\| three | 45 lb |

> said of it
`;

test('what was packed is, unpacked, what the reader of Markdown says, every place included', () => {
  const read = treeOf(source);
  const packed = JSON.parse(JSON.stringify(packTree(read, source)));
  expect(unpackTree(packed, source)).toEqual(read);
  const windows = source.replaceAll('\n', '\r\n');
  expect(unpackTree(packTree(treeOf(windows), windows), windows)).toEqual(treeOf(windows));
});

test('a piece of the text is packed by its place alone', () => {
  const [, paragraph] = packTree(treeOf(source), source);
  const [first] = paragraph?.children ?? [];
  expect(first).toEqual({ type: 'text', at: [23, 29] });
});
