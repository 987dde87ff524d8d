import { describe, expect, test } from 'vitest';
import * as index from '../../index';
import { towFit as whole } from '../../topics/tow-fit/index';
import { answerNow } from '../answer/answer';
import { answerTraced, traceOf } from '../answer/traced';
import { InputError } from '../check/problem';
import { formsOf } from '../forms/forms';
import { remedies } from '../remedy/remedies';
import { compareTopics } from '../versions/compare';
import { keptText } from '../versions/kept';
import { why } from '../why/why';
import { whys } from '../why/whys';
import { english } from '../words/en';
import type { Topic } from './shapes';

const { towFit, publish, topics, withHouse } = index;
const facts = {
  'vehicle.maxTrailerWeight': '5,000 lb',
  'vehicle.maxTongueCarried': '500 lb',
  'vehicle.placardPayload': '1,260 lb',
  'trailer.dryWeight': '3,900 lb',
  'trailer.gvwr': '5,000 lb',
  'trailer.dryTongueWeight': '430 lb',
};
const asked = { facts, asOf: '2026-11-01' };
const house = withHouse(towFit, {
  topic: 'tow-fit',
  name: 'Marrow Vale yard',
  parameters: { 'margin.other': { value: 8, unit: '%', reason: 'Hilly country.' } },
});

const isTopic = (value: unknown): value is Topic =>
  typeof value === 'object' && value !== null && 'limits' in value && 'outcomes' in value;
const ofIndex = Object.values<unknown>(index).filter(isTopic);

describe('a rule set of the index is what judges of the whole one', () => {
  test.each(ofIndex.map((topic) => [topic.id, topic] as const))('%s', (id, topic) => {
    const found = topics[id];
    if (!found) throw new Error(`There is no ${id}.`);
    const { askings: _, everybody: __, how: ___, called: ____, changes: _____, ...rest } = found;
    expect(topic).toEqual(rest);
    const nothing = { facts: {}, asOf: '2026-11-01' };
    expect(answerTraced(topic, nothing)).toEqual(answerTraced(found, nothing));
  });

  test('all of them are there', () => {
    expect(ofIndex.map(({ id }) => id).toSorted()).toEqual(Object.keys(topics).toSorted());
  });

  test.each([
    ['remedies', (topic: Topic) => remedies(topic, asked)],
    ['forms', (topic: Topic) => formsOf(topic, asked)],
    ['publishing', (topic: Topic) => publish(topic)],
    ['keeping', (topic: Topic) => keptText(topic)],
    ['comparing', (topic: Topic) => compareTopics(whole, topic)],
  ])('%s of it is refused, with where the whole is; of the whole it is not', (_, ask) => {
    for (const topic of [towFit, house]) {
      expect(() => ask(topic)).toThrow(InputError);
      expect(() => ask(topic)).toThrow(
        "`topic`: “tow-fit” as far as it judges is not a rule set; give `topics['tow-fit']`, or what `@tarebook/rules/tow-fit` exports, the whole of it.",
      );
    }
    expect(() => ask(whole)).not.toThrow();
  });
});

describe('what an answer at once does without', () => {
  const now = answerNow(towFit, asked);

  test('is its working, which is made of it', () => {
    const traced = answerTraced(towFit, asked);
    expect('trace' in now).toBe(false);
    expect(traceOf(now)).toEqual(traced.trace);
    expect(why(towFit, answerNow(towFit, asked), 'verdict', 'full')).toBe(
      why(towFit, traced, 'verdict', 'full'),
    );
    expect(whys(towFit, answerNow(towFit, asked))).toEqual(whys(towFit, traced));
    expect(() => traceOf(JSON.parse(JSON.stringify(now)))).toThrow(/in the same program/);
  });

  test('is words to be spoken, which are handed in', () => {
    const aloud = { ...asked, medium: 'spoken' } as const;
    expect(() => answerNow(towFit, aloud)).toThrow(/`language: english`/);
    const spoken = answerNow(towFit, { ...aloud, language: english }).sentence;
    expect(spoken).toBe(answerTraced(towFit, aloud).sentence);
    expect(spoken).toContain('pounds');
  });
});
