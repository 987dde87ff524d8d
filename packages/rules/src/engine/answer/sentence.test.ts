import { describe, expect, test } from 'vitest';
import { towFit } from '../../topics/tow-fit/index';
import { defineTopic } from '../check/define';
import { conditionRules } from '../condition/rules';
import type { Finding, Topic } from '../define/shapes';
import { shelf } from '../define/small-topic.fixture';
import { say } from '../words/say';
import { answerNow } from './answer';
import { beneathWord } from './sentence';

const wrong = 'Everybody away from the shelf now.';
const says = `${wrong} It cracks.`;

const unbraced = conditionRules(shelf).find(
  ({ name }) => name === 'finding.not-braced.stop',
)?.conditions;
if (!unbraced) throw new Error('Nothing stops a shelf without braces.');
const when = unbraced;

const withCracks = (cracks: Partial<Finding>): Topic => {
  const braces = shelf.findings['not-braced'];
  if (!braces) throw new Error('The shelf has lost its braces.');
  return defineTopic<Topic>({
    ...shelf,
    findings: {
      ...shelf.findings,
      cracks: { ...braces, stop: { when, wrong, do: 'It cracks.' }, ...cracks },
    },
  });
};

const sentence = (topic: Topic, braced: string, box = '112.5 lb') =>
  answerNow(topic, {
    facts: {
      'shelf.kind': 'oak',
      'shelf.rating': '100 lb',
      'box.weight': box,
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
      `It breaks. The shelf is over by 13 lb. It has no braces. ${wrong}`,
    );
  });

  test('one that does not hold is not said', () => {
    expect(sentence(withCracks({ first: true }), 'yes')).toBe(
      'It breaks. The shelf is over by 13 lb.',
    );
  });

  test('one that may hold is no order yet', () => {
    expect(sentence(withCracks({ first: true }), 'unknown')).not.toContain(says);
  });
});

describe('what is loaded goes over, and a rating is exceeded', () => {
  const rated = (...shorts: readonly string[]): Topic => {
    const all = shelf.limits['all-boxes'];
    if (!all) throw new Error('The shelf has lost its limit.');
    const limits = shorts.map((short, i) => {
      const exceeded = short.includes('rating') && { exceeded: true };
      return [`limit-${i}`, { ...all, short, ...exceeded }] as const;
    });
    return defineTopic<Topic>({ ...shelf, limits: Object.fromEntries(limits) });
  };

  test.each([
    [['the rating'], 'The rating is exceeded by 13 lb.'],
    [['the shelf', 'the board'], 'The shelf is over by 13 lb, and so is the board.'],
    [['the rating', 'the shelf'], 'The rating is exceeded by 13 lb, and the shelf is over too.'],
    [
      ['the shelf', 'the board', 'the rating on the way', 'its own rating'],
      'The shelf is over by 13 lb, and so is the board; the rating on the way and its own rating are exceeded too.',
    ],
  ])('%j', (shorts, wanted) => {
    expect(sentence(rated(...shorts), 'yes')).toBe(`It breaks. ${wanted}`);
  });
});

describe('what is to be taken care of is said, however full a limit is', () => {
  const careful = (count: number): Topic => {
    const braces = shelf.findings['not-braced'];
    if (!braces) throw new Error('The shelf has lost its braces.');
    const cares = Array.from({ length: count }, (_, i) => {
      const care = { when, wrong: `The number ${i + 1} is loose.`, do: 'Tighten it.' };
      const { stop: _stop, ...rest } = braces;
      return [`loose-${i}`, { ...rest, care }] as const;
    });
    return defineTopic<Topic>({ ...shelf, findings: Object.fromEntries(cares) });
  };

  test('two are said after the limit, and the rest are counted', () => {
    const two = 'The number 1 is loose. The number 2 is loose.';
    expect(sentence(careful(2), 'no', '95 lb')).toMatch(new RegExp(`left of 100 lb\\. ${two}$`));
    expect(sentence(careful(3), 'no', '95 lb')).toMatch(
      /There is one more thing to take care of\.$/,
    );
    expect(sentence(careful(5), 'no', '95 lb')).toMatch(/are three more things to take care of\.$/);
  });

  test('they come first where every limit has room', () => {
    expect(sentence(careful(1), 'no', '10 lb')).toMatch(
      /The number 1 is loose\. .+left of 100 lb\.$/,
    );
  });
});

test('what two told facts prove is said though no verdict can be told', () => {
  const facts = { 'vehicle.maxTrailerWeight': '5,000 lb', 'trailer.gvwr': '6,000 lb' };
  const { outcome, sentence: said } = answerNow(towFit, { facts, asOf: '2026-11-01' });
  expect(outcome).toBe('cannot-say');
  expect(said).toContain(
    'That cannot be said yet. The trailer may be loaded to 6,000 lb, more than the 5,000 lb that may be pulled.',
  );
  const within = { ...facts, 'trailer.gvwr': '5,000 lb' };
  expect(answerNow(towFit, { facts: within }).sentence).not.toContain('may be loaded to');
  const open = { ...facts, 'trailer.gvwr': '4,500–6,000 lb' };
  expect(answerNow(towFit, { facts: open }).sentence).not.toContain('may be loaded to');
});

describe('beneath the verdict’s word', () => {
  const beneath = (topic: Topic, braced: string, box?: string) => {
    const facts = {
      'shelf.kind': 'oak',
      'shelf.rating': '100 lb',
      'box.weight': box ?? '112.5 lb',
      'shelf.braced': braced,
    };
    return say(beneathWord(topic, answerNow(topic, { facts, asOf: '2026-11-01' })));
  };

  test('the sentence does not say it again', () => {
    expect(beneath(shelf, 'yes')).toBe('The shelf is over by 13 lb.');
    expect(beneath(withCracks({ first: true }), 'no')).toBe(says);
  });

  test('what has nothing else to say says its verdict', () => {
    const mute: Topic = defineTopic<Topic>({
      ...shelf,
      limits: {},
      findings: {},
      formulas: shelf.formulas,
    });
    expect(beneath(mute, 'yes')).not.toBe('');
  });
});
