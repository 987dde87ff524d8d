import { answerNow, topics } from '@tarebook/rules';
import { answerSchema, factsSchema, readFacts, type Topic } from '@tarebook/rules/engine';
import { Ajv2020, type ValidateFunction } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readFiled } from '../cases/filed';
import { casesFolder, markdownBelow, refusedFolder } from '../cases/files';
import { anyFacts } from '../properties/any-facts';

// Published: JSON Schema 2020-12, https://json-schema.org/draft/2020-12, by ajv, which has its
// meta-schema: https://ajv.js.org/json-schema.html.
const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const asOf = '2026-11-01';

const newAjv = () =>
  new Ajv2020({
    strict: true,
    allowUnionTypes: true,
    keywords: ['x-unit', 'x-least', 'x-most', 'x-options'],
  });

// Through text, as the files in the package are written.
const asJson = (value: unknown) => JSON.parse(JSON.stringify(value));

function validator(schema: unknown): ValidateFunction {
  const ajv = newAjv();
  const read = asJson(schema);
  expect(ajv.validateSchema(read)).toBe(true);
  return ajv.compile(read);
}

const saidOf = ({ errors }: ValidateFunction) =>
  (errors ?? []).map(({ instancePath, message, params }) => ({ instancePath, message, params }));

/** The facts and the topic of every worked case of a topic. */
const cases = markdownBelow(casesFolder, refusedFolder).flatMap(({ name, text }) => {
  const { topic, facts, troubles, front, readFrom } = readFiled(text);
  const day = front.asOf ?? asOf;
  return topic && troubles.length === 0 ? [{ name, topic, facts, readFrom, asOf: day }] : [];
});

describe.each(Object.values(topics).map((topic) => [topic.id, topic] as const))(
  'the schemas of %s',
  (_, topic: Topic) => {
    const facts = validator(factsSchema(topic));
    const answer = validator(answerSchema(topic));

    test('take what every worked case tells, and what it is answered', () => {
      const own = cases.filter((each) => each.topic.id === topic.id);
      expect(own.length).toBeGreaterThan(0);
      for (const each of own) {
        expect(facts(asJson(each.facts)) ? [] : saidOf(facts), each.name).toEqual([]);
        const found = asJson(answerNow(topic, each));
        expect(answer(found) ? [] : saidOf(answer), each.name).toEqual([]);
      }
    });

    test('take random facts, which are then read without a problem', () => {
      fc.assert(
        fc.property(anyFacts(topic), (given) => {
          const { problems } = readFacts(topic, given);
          expect(problems).toEqual([]);
          expect(facts(asJson(given)) ? [] : saidOf(facts)).toEqual([]);
        }),
        { numRuns: 50, seed },
      );
    });

    test('refuse plain mistakes, which are refused when read too', () => {
      for (const [id, fact] of Object.entries(topic.facts)) {
        const wrong: unknown[] = [null, true, '', { value: 1 }, { lo: 1, hi: 2 }];
        if (fact.kind === 'quantity') {
          const { unit, least, most } = fact;
          const shown = unit === '' ? '1' : unit;
          wrong.push([], { value: least - 1, unit: shown }, { value: most * 2 + 1, unit: shown });
          if (unit !== '') wrong.push(most, { value: most, unit: 'nothing' });
        } else if (fact.kind === 'rows') wrong.push('300 lb', [1], [{ nothing: '1 lb' }]);
        else wrong.push('no such word', ['yes'], 'yes or');
        for (const given of wrong) {
          const hint = `${id}: ${JSON.stringify(given)}`;
          expect(facts(asJson({ [id]: given })), hint).toBe(false);
          expect(readFacts(topic, { [id]: given }).problems.length, hint).toBeGreaterThan(0);
        }
      }
      expect(facts({ 'no.such': '1 lb' })).toBe(false);
    });

    test('say the unit and the options of every fact', () => {
      const { properties } = asJson(factsSchema(topic));
      for (const [id, fact] of Object.entries(topic.facts)) {
        const { 'x-unit': unit, 'x-options': options } = properties[id];
        if (fact.kind === 'quantity') expect(unit).toBe(fact.unit);
        if (fact.kind === 'choice') expect(options).toEqual(fact.options);
      }
    });

    test('refuse an answer with a result in another unit, or with something more', () => {
      const right = asJson(answerNow(topic, { facts: {}, asOf }));
      expect(answer(right) ? [] : saidOf(answer)).toEqual([]);
      expect(answer({ ...right, more: 1 })).toBe(false);
      expect(answer({ ...right, outcome: 'perhaps' })).toBe(false);
      const [name = ''] = Object.keys(right.values);
      const values = { ...right.values, [name]: { lo: 0, hi: 0, unit: 'nothing' } };
      expect(answer({ ...right, values })).toBe(false);
    });
  },
);
