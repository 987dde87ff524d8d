import { readCase } from '@tarebook/casebook';
import { expect, test } from 'vitest';
import { partsOf } from './parts';

const text = `---
title: Parts
topic: tow-fit
---

Asked.

| Fact | Value |
| --- | --- |
| \`trailer.dryWeight\` | 3,000 lb |

Between.

| \`load.cargo\` | Weight |
| --- | --- |
| Bags | 100 lb |

:::predict{result="verdict"}
What do you think?
:::

Reason.

| Expect | Value |
| --- | --- |
| \`verdict\` | cannot say |

After.
`;

test('every block of a case is shown once, in the order its author wrote', () => {
  const { blocks } = readCase(text);
  const { question, known, reason } = partsOf(blocks);
  const all = [...question, ...known, ...reason];
  expect(all).toEqual(blocks.filter(({ kind }) => kind !== 'expect'));
  expect(question.map(({ kind }) => kind)).toEqual(['prose']);
  expect(known.map(({ kind }) => kind)).toEqual(['facts', 'prose', 'list', 'predict']);
  expect(reason).toHaveLength(2);
});

test('a case without tables is all question', () => {
  const { blocks } = readCase('---\ntitle: x\ntopic: tow-fit\n---\n\nOnly words.\n');
  expect(partsOf(blocks)).toEqual({ question: blocks, known: [], reason: [] });
});
