import { describe, expect, test } from 'vitest';
import { defineTopic } from '../check/define';
import type { Topic } from '../define/shapes';
import { shelf } from '../define/small-topic.fixture';
import { answerEverybody } from './everybody/everybody';
import { formNames, formOf, formsOf, writtenForm } from './forms';

const topic: Topic = defineTopic<Topic>({
  ...shelf,
  facts: {
    ...shelf.facts,
    'shelf.rating': {
      kind: 'quantity',
      unit: 'lb',
      least: 0,
      most: 1000,
      label: 'Rating',
      noun: 'the rating',
      ask: 'What may the shelf carry?',
      where: 'the label below the board',
    },
  },
  askings: {
    load: {
      label: 'How heavy is it?',
      results: ['load.total'],
      impliedBy: ['box.lid'],
      says: 'All boxes together weigh {load.total}.',
    },
    room: { label: 'Does it hold?', results: ['limit.all-boxes'], impliedBy: ['box.weight'] },
  },
  everybody: {
    any: {
      rule: 'A shelf carries what its label says, less a tenth.',
      because:
        'Boards creep under a load that stays, and a brace that nobody looks at comes loose.',
      look: ['shelf.rating'],
      given: { 'shelf.kind': 'oak', 'shelf.braced': 'yes' },
      givenSays: 'of an oak board with braces',
      clauses: { 'shelf.rating': 'the label says {value}' },
      otherwise: 'If you cannot read the label, put the boxes on the floor.',
    },
  },
  cautions: [
    ...shelf.cautions,
    {
      says: 'Stand beside it.',
      source: shelf.cautions[0]?.source ?? expect.fail(),
      fits: ['limit.all-boxes'],
    },
  ],
});
const asked = { 'shelf.kind': 'oak', 'shelf.braced': 'yes', 'box.weight': '45 lb' } as const;
const facts = { ...asked, 'shelf.rating': '49 lb' };
const asOf = '2026-11-01';

describe('what was asked is answered first', () => {
  test('as it is implied by what was told', () => {
    const { asking, forms } = formsOf(topic, { facts, asOf });
    expect(asking).toBe('room');
    expect(forms.spoken).toMatch(
      /^The shelf has 4 pounds left of 49 pounds\. Add nothing more, .* It just holds\./,
    );
  });

  test('as it is named', () => {
    const { forms } = formsOf(topic, { facts, asOf }, { asking: 'load' });
    expect(forms.spoken).toMatch(/^All boxes together weigh 45 pounds\. It just holds\./);
    expect(forms.ticket).toBe(
      'Just holds\n45 lb, box.weight + box.lid + sum(boxes.weight)\nAll boxes together weigh 45 lb. The shelf has 4 lb left of 49 lb.',
    );
    for (const form of [forms.post, forms.letter, forms.slip]) {
      expect(form).toContain('All boxes together weigh 45 lb.');
    }
  });

  test('in the units asked for', () => {
    const { forms } = formsOf(topic, { facts, asOf, units: 'metric' }, { asking: 'load' });
    expect(forms.spoken).toMatch(/^All boxes together weigh 20\.4 kilograms\./);
  });
});

describe('what the verdict turns on is said with what to do about it', () => {
  const limit = topic.limits['all-boxes'] ?? expect.fail();
  const acting: Topic = defineTopic<Topic>({
    ...topic,
    limits: { 'all-boxes': { ...limit, do: 'Take a box off.', near: 'Put nothing more on it.' } },
  });

  test('a limit that is over stands before the verdict, with what to do', () => {
    const over = { ...facts, 'shelf.rating': '40 lb' };
    const { forms } = formsOf(acting, { facts: over, asOf });
    expect(forms.spoken).toMatch(
      /^The shelf is over by 5 pounds: 45 pounds, and at most 40 pounds will do\. Take a box off\. It breaks\./,
    );
    // A reader has the figures beside it.
    expect(forms.post).toContain('The shelf is over by 5 lb. Take a box off.');
  });

  test('a limit that just holds comes after it', () => {
    const { forms } = formsOf(acting, { facts, asOf }, { asking: 'load' });
    expect(forms.spoken).toMatch(/^All boxes together weigh 45 pounds\. It just holds\./);
    expect(forms.spoken).toContain(
      'The shelf has 4 pounds left of 49 pounds. Put nothing more on it.',
    );
  });
});

test('the caution that is said is the one that fits what came up', () => {
  expect(formsOf(topic, { facts, asOf }).forms.spoken).toContain('Stand beside it.');
});

describe('to everybody', () => {
  const told = { facts: { 'box.weight': '45 lb' }, asOf };

  test('the thresholds are those of the limit, rounded to the safe side, and proved', () => {
    const { branches } = answerEverybody(topic, told);
    expect(branches.map(({ when, outcome }) => [when, outcome])).toEqual([
      [{ 'shelf.rating': 'at least 50 lb' }, 'holds'],
      [{ 'shelf.rating': '45–50 lb' }, 'holds-just'],
      [{ 'shelf.rating': 'at most 44.5 lb' }, 'breaks'],
    ]);
    expect(branches[0]?.given).toEqual({ 'shelf.kind': 'oak', 'shelf.braced': 'yes' });
  });

  test('what is looked for, what follows, and what is best done by whoever cannot look', () => {
    const { text } = answerEverybody(topic, told);
    expect(text).toContain('If the label says at least 50 pounds: it holds.');
    expect(text).toContain('If the label says at most 44.5 pounds: it breaks. The shelf is over.');
    expect(text).toContain('of an oak board with braces');
    expect(text).toContain('put the boxes on the floor');
    expect(text).toContain('the label below the board');
  });

  test('what was told is never presumed otherwise', () => {
    const pine = { ...told, facts: { ...told.facts, 'shelf.kind': 'pine' } };
    expect(answerEverybody(topic, pine).branches[0]?.when).toEqual({
      'shelf.rating': 'at least 100 lb',
    });
  });
});

describe('which cautions stand in a form is known, not looked for in its words', () => {
  const source = shelf.cautions[0]?.source ?? expect.fail();
  const careful: Topic = defineTopic<Topic>({
    ...topic,
    cautions: [{ says: 'Never lean with {shelf.rating} on the board.', source }],
  });

  test('a caution with a figure is told as that form says it', () => {
    const found = writtenForm('spoken', careful, { facts, asOf });
    expect(found.cautions).toEqual(['Never lean with 49 pounds on the board.']);
    for (const each of formNames) {
      const { text, cautions } = writtenForm(each, careful, { facts, asOf });
      expect(text).toBe(formOf(each, careful, { facts, asOf }));
      for (const caution of cautions) expect(text).toContain(caution);
    }
    expect(writtenForm('letter', careful, { facts, asOf }).cautions).toHaveLength(1);
  });

  test('what a form has no room for is not among them', () => {
    const says = `Mind this: ${'and that '.repeat(60)}.`;
    const long: Topic = defineTopic<Topic>({ ...topic, cautions: [{ says, source }] });
    expect(writtenForm('post', long, { facts, asOf }).cautions).toEqual([]);
    expect(writtenForm('askBack', long, { facts, asOf }).cautions).toEqual([]);
  });
});
