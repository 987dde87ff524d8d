import { describe, expect, test } from 'vitest';
import { tableOf } from './table-of';

describe('a table of messages', () => {
  test('of known names is read, with commas, semicolons or tabs', () => {
    for (const mark of [',', ';', '\t']) {
      const text = [
        ['\uFEFFSource', 'Author', 'Comment'].join(mark),
        ['film', 'Wren', '"How far, and how?"'].join(mark),
      ].join('\r\n');
      expect(tableOf(text, undefined)).toEqual({
        is: 'read',
        found: [{ channel: 'film', asker: 'Wren', askedOn: '', text: 'How far, and how?' }],
        refused: [],
      });
    }
  });

  test('of other names asks which column is which, and is read once that was told', () => {
    const text = 'Woher,Satz\nfilm,How far?\n';
    expect(tableOf(text, undefined)).toEqual({
      ...{ is: 'asked', heads: ['Woher', 'Satz'], first: ['film', 'How far?'], columns: {} },
    });
    expect(tableOf(text, { text: 1, channel: 0 })).toMatchObject({
      found: [{ channel: 'film', text: 'How far?' }],
    });
  });

  test('NUL, cells of a megabyte and formulas harm nothing; a quote left open is told by its line', () => {
    const big = `text\n${'x'.repeat(1_000_000)}\na\0b?\n=1+1 how?\n`;
    const found = tableOf(big, undefined);
    expect(found).toMatchObject({ found: [{ text: 'a b?' }, { text: '=1+1 how?' }] });
    expect(found).toHaveProperty('refused.length', 1);
    expect(tableOf('text\n"never closed\n', undefined)).toMatchObject({
      is: 'wrong',
      says: expect.stringMatching(/^Line \d .+ Nothing was taken in\.$/),
    });
    expect(tableOf('', undefined)).toHaveProperty('is', 'wrong');
    expect(tableOf('text\n', undefined)).toHaveProperty('is', 'wrong');
  });
});
