import { describe, expect, test } from 'vitest';
import { answerNow } from '../answer/answer';
import { answer } from '../answer/by-engine';
import { quickly } from '../answer/quickly';
import type { Condition, Topic } from '../define/shapes';
import { shelf } from '../define/small-topic.fixture';
import { matters } from '../matters/matters';
import { remedies } from '../remedy/remedies';
import { spread } from '../spread/spread';
import { defineTopic } from './define';
import { sayProblem } from './messages';
import { InputError } from './problem';
import { checkTopic } from './topic';

const braces = shelf.findings['not-braced'];
if (!braces) throw new Error('The shelf has lost its braces.');

const withCondition = (when: string | Condition): Topic =>
  defineTopic<Topic>({
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

/** With a formula that a limit hangs on, so that a mistake in it would turn the verdict. */
const withWet = (is: string): Topic =>
  defineTopic<Topic>({
    ...shelf,
    formulas: {
      ...shelf.formulas,
      'load.wet': { label: 'Wet', unit: 'lb', is, source: braces.source },
    },
  });

const inFormulas: readonly (readonly [string, string, RegExp])[] = [
  [
    'an option',
    "choose(shelf.kind == 'oack', box.weight, box.weight)",
    /“oack” is no option of shelf\.kind; write one of oak/,
  ],
  ['an option', "choose(shelf.kind != 'oack', box.weight, box.weight)", /“oack” is no option/],
  [
    'a word of a yes/no',
    "choose(shelf.braced == 'yep', box.weight, box.weight)",
    /“yep” is no option of a yes\/no; write one of yes, no/,
  ],
  ['a name', 'box.wait * 2', /box\.wait/],
  ['a unit', 'box.weight + shelf.span', /joins/],
];

describe.each(inFormulas)('%s that does not exist or fit in a formula: %s', (_, is, says) => {
  const topic = withWet(is);

  test('is told to its author', () => {
    expect(checkTopic(topic).map(sayProblem).join('\n')).toMatch(says);
  });

  test('is refused by whatever answers', async () => {
    expect(() => answerNow(topic, asked)).toThrow(InputError);
    expect(() => answerNow(topic, asked)).toThrow(says);
    await expect(answer(topic, asked)).rejects.toThrow(says);
    expect(() => quickly(topic)).toThrow(says);
  });
});

test('a word that fits, one choice against itself, and two that are true or false are well', () => {
  const well =
    "choose(shelf.kind == 'oak' && shelf.kind == shelf.kind && (shelf.braced == (box.weight > box.weight)), box.weight, 2 * box.weight)";
  expect(answerNow(withWet(well), asked).outcome).toBeDefined();
});

describe('a rule set that nobody looks through is asked nothing', () => {
  const copy: Topic = { ...shelf, limits: {} };

  test.each([
    ['answerNow', () => answerNow(copy, asked)],
    ['quickly', () => quickly(copy)],
    ['remedies', () => remedies(copy, asked)],
  ])('a changed copy is refused by %s in one sentence', (_, ask) => {
    expect(ask).toThrow(InputError);
    expect(ask).toThrow(
      '`topic`: “shelf”, as it was written or copied, is not a rule set; give `defineTopic(…)` of it, which has it looked through before it is asked.',
    );
  });

  test('defined, it answers as any does; what is none is refused as before', () => {
    expect(answerNow(defineTopic(copy), asked).limits).toEqual([]);
    for (const none of [undefined, null, 7, 'shelf', []]) {
      const made: Topic = JSON.parse(JSON.stringify({ none })).none;
      expect(() => answerNow(defineTopic(made), asked)).toThrow(
        /is not a rule set; give the rule set itself/,
      );
    }
  });
});
