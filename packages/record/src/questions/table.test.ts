import { describe, expect, test } from 'vitest';
import { type MessagesRead, messagesOf } from './table';

function read(table: readonly (readonly string[])[]): MessagesRead {
  const found = messagesOf(table);
  if ('says' in found) throw new Error(found.says);
  return found;
}

describe('a table of messages as other programs export it', () => {
  test('other headings are known, in whatever case and order', () => {
    const { messages, refused } = read([
      ['\uFEFFTimestamp', 'Author', 'SOURCE', 'Comment'],
      ['2026-11-20', 'Wren', 'film', 'What pressure?'],
    ]);
    expect(refused).toEqual([]);
    expect(messages).toEqual([
      {
        id: 'row-1',
        channel: 'film',
        askedOn: '2026-11-20',
        asker: 'Wren',
        text: 'What pressure?',
      },
    ]);
  });

  test('blank rows are passed over; what cannot be taken is refused alone, by its own number', () => {
    const { messages, refused } = read([
      ['id', 'message'],
      ['', ' '],
      ['a', 'One?'],
      ['a', 'Two?'],
      ['', 'Three?'],
      ['b', ' !!! '],
      ['c', 'x'.repeat(100_001)],
      ['d', 'Four?'],
    ]);
    expect(messages.map(({ id }) => id)).toEqual(['a', 'd']);
    expect(refused.map(({ row }) => row)).toEqual([3, 4, 5, 6]);
    for (const { says } of refused) expect(says).toMatch(/^message \d [^.]+\.$/);
  });

  test('columns of any name are taken as somebody told them', () => {
    const found = messagesOf(
      [
        ['Kunde', 'Was'],
        ['Wren', 'What pressure?'],
      ],
      { text: 1, asker: 0 },
    );
    expect(found).toMatchObject({ messages: [{ text: 'What pressure?', asker: 'Wren' }] });
  });

  test('a table without a column of words is refused in one sentence', () => {
    expect(messagesOf([['id', 'price']])).toEqual({
      says: expect.stringMatching(/^there is no column with the words .+ “id, price”; .+\.$/),
    });
    expect(messagesOf([])).toHaveProperty('says');
  });

  test('marks that turn a line round or that no screen shows are taken out; scripts and other letters stay words', () => {
    const { messages } = read([
      ['text'],
      ['pay\u0000load\u202E?\u0007'],
      ['<script>alert(1)</script> is 65 psi right?'],
      ['هل يمكنني السحب؟'],
      ['=1+1 how?'],
    ]);
    expect(messages.map(({ text }) => text)).toEqual([
      'pay load ?',
      '<script>alert(1)</script> is 65 psi right?',
      'هل يمكنني السحب؟',
      '=1+1 how?',
    ]);
  });

  test('ten thousand rows are read in a moment', () => {
    const rows = Array.from({ length: 10_000 }, (_, n) => [`${n}`, `Number ${n}?`]);
    const before = process.cpuUsage();
    expect(read([['id', 'text'], ...rows]).messages).toHaveLength(10_000);
    expect(process.cpuUsage(before).user).toBeLessThan(2_000_000);
  });
});
