import { topics } from '@tarebook/rules';
import {
  type Asked,
  answerNow,
  type FactsGiven,
  type FormName,
  type Forms,
  formsOf,
  type Level,
  levels,
  type Topic,
} from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { readFiled } from './filed';
import { casesFolder, markdownBelow, refusedFolder } from './files';

/**
 * What is said to whoever told next to nothing: nothing, one fact, or a filed case of at most two.
 * Each check stands for one kind of thing that was once said and was no answer.
 */
type Little = {
  readonly name: string;
  readonly topic: Topic;
  readonly asked: Asked;
  readonly level: Level;
  readonly asking: string | null;
  readonly forms: Forms;
};

const asOf = '2026-11-01';

function little(name: string, topic: Topic, facts: FactsGiven): Little {
  const asked = { facts, asOf };
  const { outcome } = answerNow(topic, asked);
  const level = levels.find((each) => topic.outcomes[each].id === outcome) ?? 'unknown';
  return { name, topic, asked, level, ...formsOf(topic, asked) };
}

/** A choice or yes-no fact told alone, by its first option. */
const alone = (topic: Topic): readonly Little[] =>
  Object.entries(topic.facts).flatMap(([id, fact]) => {
    if (fact.kind !== 'choice' && fact.kind !== 'yes-no') return [];
    const value = fact.kind === 'choice' ? fact.options[0] : 'yes';
    return value === undefined
      ? []
      : [little(`${topic.id}: ${id} ${value}`, topic, { [id]: value })];
  });

const filed: readonly Little[] = markdownBelow(casesFolder, refusedFolder).flatMap(
  ({ name, text }) => {
    const { front, facts, troubles } = readFiled(text);
    const topic = Object.values(topics).find(({ id }) => id === front.topic);
    const isLittle = Object.keys(facts).length <= 2 && troubles.length === 0;
    return topic && isLittle ? [little(name, topic, facts)] : [];
  },
);

const none = Object.values(topics).map((topic) => little(`${topic.id}: nothing`, topic, {}));
const all = [...none, ...filed, ...Object.values(topics).flatMap(alone)];

const read: readonly FormName[] = ['ticket', 'spoken', 'everybody', 'post', 'askBack'];
const sentences = new Intl.Segmenter('en-US', { granularity: 'sentence' });
const sentencesOf = (text: string): readonly string[] =>
  [...sentences.segment(text)].map(({ segment }) => segment.trim()).filter((each) => each !== '');

/** Where a form says something of the kind. */
const saying = (found: RegExp, forms: readonly FormName[] = read): readonly string[] =>
  all.flatMap((each) =>
    forms.flatMap((form) => {
      const said = sentencesOf(each.forms[form]).find((sentence) => found.test(sentence));
      return said === undefined ? [] : [`${each.name}, ${form}: ${said}`];
    }),
  );

describe('to whoever told next to nothing', () => {
  test('there is much to try', () => {
    expect(none).toHaveLength(Object.keys(topics).length);
    expect(filed.length).toBeGreaterThan(55);
    expect(all.length).toBeGreaterThan(200);
  });

  test('who told nothing at all hears a rule or a list, in every topic', () => {
    const without = none.filter(({ topic, asking }) => {
      const rule = topic.everybody?.[asking ?? ''] ?? topic.everybody?.any;
      const results = topic.askings?.[asking ?? '']?.results ?? [];
      return !rule && !results.some((each) => Object.hasOwn(topic.selections ?? {}, each));
    });
    expect(without.map(({ name }) => name)).toEqual([]);
  });

  test('no figure that nobody told is the answer: none is zero', () => {
    const zero = none.filter(({ forms }) => /(?<![\d.,])0 (?!to )[a-z]/.test(forms.spoken));
    expect(zero.map(({ name, forms }) => `${name}: ${forms.spoken}`)).toEqual([]);
  });

  test('nothing lies minus so much ahead, or behind', () => {
    expect(saying(/(?:minus |−)[\d.,]+[^.;]*\b(?:ahead|behind)\b/)).toEqual([]);
  });

  test('no question is asked twice, and where it is open something is asked', () => {
    const twice = all.filter(({ forms }) => {
      const asks = forms.askBack.split('\n').map((line) => line.replace(/^\d+\. /, ''));
      return new Set(asks).size < asks.length;
    });
    const mute = all.filter(({ level, forms }) => level === 'unknown' && !/\?/.test(forms.askBack));
    expect(twice.map(({ name }) => name)).toEqual([]);
    expect(mute.map(({ name }) => name)).toEqual([]);
  });

  test('no sentence is said twice', () => {
    const twice = all.flatMap(({ name, forms }) =>
      read
        .filter((form) => form !== 'askBack')
        .flatMap((form) => {
          const said = sentencesOf(forms[form]);
          return new Set(said).size < said.length ? [`${name}, ${form}: ${forms[form]}`] : [];
        }),
    );
    expect(twice).toEqual([]);
  });

  test('of many results that are possible no more than three are named', () => {
    const named = /(?:The answer hangs on [^:]+:|^Either) [^.]*,[^.]*,[^.]*,[^.]* or /;
    expect(saying(named, [...read, 'letter', 'sheet'])).toEqual([]);
    expect(saying(/anything from /, ['letter'])).not.toEqual([]);
  });

  test('nobody hears “Perhaps” before a thing that was not told', () => {
    expect(saying(/Perhaps (?:nobody|it is not told)/)).toEqual([]);
  });

  test('what certainly will not do is not followed by how it might', () => {
    const hopeful = all.filter(
      ({ level, forms }) =>
        level === 'stop' && /\bIf [^.]*: it (?:may|can|fits|will do|gets)/.test(forms.everybody),
    );
    expect(hopeful.map(({ name, forms }) => `${name}: ${forms.everybody}`)).toEqual([]);
  });
});
