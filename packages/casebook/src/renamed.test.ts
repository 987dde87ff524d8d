import { towFit } from '@tarebook/rules';
import { defineTopic, readFacts, type Topic } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { setFact } from './edit';
import { askedOf, judgeCaseNow } from './judge';
import { readCaseFrom } from './read';

const words = { label: 'Brakes', ask: 'Which brakes?', where: 'dealer' };

/** Tow fit with a few ids of former days, and a fact of this test's own. */
const topic: Topic = defineTopic<Topic>({
  ...towFit,
  facts: {
    ...towFit.facts,
    'trailer.brakes': { ...words, kind: 'choice', options: ['none', 'surge', 'electric'] },
  },
  renamed: {
    'trailer.emptyWeight': 'trailer.dryWeight',
    'trailer.stuff': 'trailer.cargo',
    'trailer.braked': {
      to: 'trailer.brakes',
      values: { yes: ['electric'], no: ['none', 'surge'] },
    },
  },
});
const shelf = { ids: [topic.id], topics: { [topic.id]: topic } };
const text = `---
title: Kept from before
topic: tow-fit
as-of: 2026-11-01
---

| Fact | Value | Read from |
| --- | --- | --- |
| \`vehicle.maxTrailerWeight\` | 5,000 lb | manual |
| \`trailer.emptyWeight\` | 3,900 lb | brochure |
| \`trailer.braked\` | no | dealer |

| \`trailer.stuff\` | Weight |
| --- | --- |
| Tools | 45 lb |
`;
const doc = readCaseFrom(shelf, text);

describe('ids of former days are read for ever', () => {
  test('as what they are today, and the document says which it has', () => {
    expect(doc.troubles).toEqual([]);
    expect({ ...doc.facts }).toEqual({
      'vehicle.maxTrailerWeight': '5,000 lb',
      'trailer.dryWeight': '3,900 lb',
      'trailer.brakes': 'none or surge',
      'trailer.cargo': [{ label: 'Tools', weight: '45 lb' }],
    });
    expect(doc.renamed).toEqual([
      { old: 'trailer.emptyWeight', now: 'trailer.dryWeight' },
      { old: 'trailer.braked', now: 'trailer.brakes' },
      { old: 'trailer.stuff', now: 'trailer.cargo' },
    ]);
    expect(doc.readFrom['trailer.dryWeight']).toBe('brochure');
    expect(judgeCaseNow(doc).values['trailer.loaded']).toMatchObject({ lo: 3945, hi: 3945 });
  });

  test('an old value that means several things leaves each possible, and counts as known', () => {
    const { inputs, problems } = readFacts(topic, { 'trailer.braked': 'no' });
    expect(problems).toEqual([]);
    const options = ['none', 'surge'];
    const found = inputs.get('trailer.brakes');
    expect(found).toMatchObject({ kind: 'among', status: 'known' });
    expect(found?.kind === 'among' && [...found.options].toSorted()).toEqual(options);
    expect(readFacts(topic, { 'trailer.braked': 'yes' }).inputs.get('trailer.brakes')).toEqual({
      kind: 'among',
      options: ['electric'],
      status: 'known',
    });
  });

  test('the document keeps its bytes, and a change goes into the row that is there', () => {
    expect(doc.text).toBe(text);
    expect(setFact(doc, 'trailer.dryWeight', '4,000 lb')).toBe(
      text.replace('3,900 lb', '4,000 lb'),
    );
    expect(askedOf(doc).asked.facts['trailer.dryWeight']).toBe('3,900 lb');
  });

  test('by both ids at once it is given twice', () => {
    const both = text.replace(
      '| `trailer.braked`',
      '| `trailer.dryWeight` | 1 lb | x |\n| `trailer.braked`',
    );
    const { troubles } = readCaseFrom(shelf, both);
    expect(troubles.map(({ says }) => says)).toEqual([
      '`trailer.emptyWeight` is the old id of `trailer.dryWeight`, which is given too; keep `trailer.dryWeight`, its present id.',
    ]);
    expect(troubles[0]).toMatchObject({ line: 10, column: 3 });
  });

  test('what is wrong with a value is told where it stands', () => {
    const { troubles } = readCaseFrom(shelf, text.replace('3,900 lb', '3,900'));
    expect(troubles).toMatchObject([{ line: 10, column: 27 }]);
  });
});
