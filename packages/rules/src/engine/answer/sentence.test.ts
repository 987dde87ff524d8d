import { describe, expect, test } from 'vitest';
import type { Finding, Topic } from '../define/shapes';
import { shelf } from '../define/small-topic.fixture';
import { answerNow } from './answer';
import { gist } from './sentence';

const says = 'Everybody away from the shelf now: it cracks.';

const withCracks = (cracks: Partial<Finding>): Topic => {
  const braces = shelf.findings['not-braced'];
  if (!braces) throw new Error('The shelf has lost its braces.');
  const { when } = braces.stop ?? {};
  if (!when) throw new Error('Nothing stops a shelf without braces.');
  return {
    ...shelf,
    findings: { ...shelf.findings, cracks: { ...braces, stop: { when, says }, ...cracks } },
  };
};

const sentence = (topic: Topic, braced: string) =>
  answerNow(topic, {
    facts: {
      'shelf.kind': 'oak',
      'shelf.rating': '100 lb',
      'box.weight': '112.5 lb',
      'shelf.braced': braced,
    },
    asOf: '2026-11-01',
  }).sentence;

describe('what has to be done at once is said before the verdict', () => {
  test('an urgent stop comes first, and then the verdict', () => {
    expect(sentence(withCracks({ first: true }), 'no')).toBe(`${says} It breaks.`);
  });

  test('any other stop follows the verdict, after the limit that is over', () => {
    expect(sentence(withCracks({}), 'no')).toBe(
      `It breaks. The shelf is over by 12.5 lb. It has no braces. ${gist(says)}`,
    );
  });

  test('one that does not hold is not said', () => {
    expect(sentence(withCracks({ first: true }), 'yes')).toBe(
      'It breaks. The shelf is over by 12.5 lb.',
    );
  });

  test('one that may hold is no order yet', () => {
    expect(sentence(withCracks({ first: true }), 'unknown')).not.toContain(says);
  });
});
