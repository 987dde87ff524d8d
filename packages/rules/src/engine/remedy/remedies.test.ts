import { describe, expect, test } from 'vitest';
import { defineTopic } from '../check/define';
import type { Change } from '../define/changes';
import type { Topic } from '../define/shapes';
import { shelf, source } from '../define/small-topic.fixture';
import { remedies } from './remedies';

const said = { source, asks: 1 } as const;

const box: Change = {
  ...said,
  kind: 'less',
  fact: 'box.weight',
  step: 1,
  says: 'Take {amount} out of the box: {to} instead of {from}.',
};
const anyBox: Change = {
  ...said,
  kind: 'leave',
  fact: 'boxes',
  column: 'weight',
  asks: 2,
  says: 'Leave {row} off the shelf, {amount}.',
};
const brace: Change = {
  ...said,
  kind: 'set',
  fact: 'shelf.braced',
  to: { option: 'yes' },
  asks: 3,
  says: 'Brace it.',
};

const withChanges = (...changes: readonly Change[]): Topic =>
  defineTopic<Topic>({ ...shelf, changes });
const found = (
  topic: Topic,
  facts: Readonly<Record<string, string>>,
  boxes: readonly string[] = [],
) =>
  remedies(topic, {
    facts: { 'shelf.kind': 'oak', ...facts, boxes: boxes.map((weight) => ({ weight })) },
    asOf: '2026-11-01',
  });
const says = (...args: Parameters<typeof found>) =>
  found(...args).remedies.map((each) => each.says);

describe('remedies know nothing of rigs: a shelf of boxes', () => {
  // Oak carries its 100 lb; care from 90 lb.
  test('less in the box, just enough for each better outcome', () => {
    expect(says(withChanges(box), { 'box.weight': '112.5 lb', 'shelf.rating': '100 lb' })).toEqual([
      'Take 12.5 lb out of the box: 100 lb instead of 112.5 lb. Then: just holds.',
      'Take 22.5 lb out of the box: 90 lb instead of 112.5 lb. Then: holds.',
    ]);
  });

  test('a setting is moved between two numbers, and no further', () => {
    const facts = { 'box.weight': '130 lb', 'shelf.rating': '100 lb' };
    const between = (least: number): Change => ({
      ...said,
      kind: 'shift',
      fact: 'box.weight',
      step: 1,
      within: { least, most: 150 },
      says: 'Make it {to} (now {from}).',
    });
    expect(says(withChanges(between(95)), facts)).toEqual([
      'Make it 100 lb (now 130 lb). Then: just holds.',
    ]);
    expect(says(withChanges(between(105)), facts)).toEqual([]);
  });

  test('a box left off, the lightest that is enough first', () => {
    const facts = { 'box.weight': '40 lb', 'shelf.rating': '100 lb' };
    expect(says(withChanges(anyBox), facts, ['60 lb', '45 lb'])).toEqual([
      'Leave row 2 off the shelf, 45 lb. Then: just holds.',
      'Leave row 1 off the shelf, 60 lb. Then: holds.',
    ]);
    expect(says(withChanges(anyBox), facts, ['61 lb', '44 lb'])).toEqual([
      'Leave row 1 off the shelf, 61 lb. Then: holds.',
    ]);
  });

  test('two things wrong are told as a pair, and neither alone is offered', () => {
    const facts = { 'box.weight': '130 lb', 'shelf.rating': '100 lb', 'shelf.braced': 'no' };
    const { remedies: pair, outcome } = found(withChanges(box, brace), facts);
    expect(outcome).toBe('breaks');
    expect(pair).toHaveLength(1);
    expect(pair[0]).toMatchObject({
      fact: 'shelf.braced',
      from: 'no',
      to: 'yes',
      with: { fact: 'box.weight', to: { lo: 100, hi: 100, unit: 'lb' } },
      outcome: 'holds-just',
    });
  });

  test('a topic without changes has no remedy, and one that cannot help says why', () => {
    const facts = { 'box.weight': '130 lb', 'shelf.rating': '100 lb' };
    expect(found(shelf, facts).remedies).toEqual([]);
    expect(found(withChanges(brace), { ...facts, 'shelf.braced': 'no' }).noHelp).toMatchObject([
      {
        fact: 'shelf.braced',
        from: 'no',
        to: 'yes',
        says: 'Brace it. That does not turn it: it does nothing for boxes, 130 lb of 100 lb as before; it settles braces.',
      },
    ]);
  });

  test('nothing is proposed where the weight is not known: it is asked for first', () => {
    const facts = { 'box.weight': 'unknown', 'shelf.rating': '100 lb' };
    expect(found(withChanges(box, anyBox), facts)).toEqual({
      outcome: 'cannot-say',
      remedies: [],
      noHelp: [],
    });
  });

  test('facts that are none are refused, as everywhere', () => {
    expect(() => found(withChanges(box), { 'no.such': '1 lb' })).toThrow('is not a fact of shelf');
  });
});
