import { describe, expect, test } from 'vitest';
import { answerNow } from '../answer/answer';
import { answer } from '../answer/by-engine';
import type { Condition, Topic } from '../define/shapes';
import { shelf } from '../define/small-topic.fixture';
import { matters } from '../matters/matters';
import { remedies } from '../remedy/remedies';
import { spread } from '../spread/spread';

const braces = shelf.findings['not-braced'];
if (!braces) throw new Error('The shelf has lost its braces.');

const withCondition = (when: string | Condition): Topic => ({
  ...shelf,
  findings: { 'not-braced': { ...braces, stop: { when, wrong: 'It has no braces.' } } },
});

const asked = {
  facts: {
    'shelf.kind': 'oak',
    'shelf.rating': '100 lb',
    'box.weight': '10 lb',
    'shelf.braced': 'no',
  },
  asOf: '2026-11-01',
};

/** As read from a file, where no compiler looks. */
const fromFile = (condition: object): Condition => JSON.parse(JSON.stringify(condition));

const misspelled: readonly (readonly [string, string | object, RegExp])[] = [
  ['an operator', { fact: 'shelf.braced', operator: 'isNot', value: 'yes' }, /isNot/],
  ['an operator', { fact: 'shelf.braced', operator: 'notEquals', value: 'yes' }, /notEquals/],
  ['an operator', { fact: 'box.weight', operator: '>', value: { fact: 'box.lid' } }, /“>”/],
  ['an option', { fact: 'shelf.braced', operator: 'equal', value: 'No' }, /“No”/],
  ['an option', "shelf.kind == 'oack'", /“oack”/],
  ['a name', 'shelf.brased', /shelf\.brased/],
];

describe.each(misspelled)('%s that does not exist: %j', (_, when, says) => {
  const topic = withCondition(typeof when === 'string' ? when : fromFile(when));

  test.each([
    ['answerNow', () => answerNow(topic, asked)],
    ['remedies', () => remedies(topic, asked)],
    ['matters', () => matters(topic, asked)],
    ['spread', () => spread(topic, asked, { draws: 10, seed: 1 })],
  ])('is refused by %s', (_, ask) => {
    expect(ask).toThrow(says);
  });

  test('is refused by answer', async () => {
    await expect(answer(topic, asked)).rejects.toThrow(says);
  });
});
