import { towFit } from '@tarebook/rules';
import { defineTopic, type Topic, withHouse } from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { packed, rulesMark, unpacked } from './packed';
import { programOf } from './program';
import { towSides as sides } from './sides';
import { reached } from './staged';

const topic: Topic = towFit;
const program = programOf(topic, sides);

test('a program comes out of its module as it went in', () => {
  const { steps, verdict, room } = program;
  const live = reached(steps, [...verdict, ...room]).flatMap((ref) => steps[ref] ?? []);
  const again = unpacked(topic, sides, JSON.parse(JSON.stringify(packed(topic, sides, program))));
  const plain = ({ op, sort, value, name, side }: (typeof live)[number]) => ({
    ...{ op, sort, name, side },
    value: op === 'constant' || op === 'number-or' || op === 'bits-are' ? value : 0,
  });
  expect(again?.steps.map(plain)).toEqual(live.map(plain));
  const outputs = [...verdict, ...room].map((ref) => plain(steps[ref] ?? live[0] ?? never()));
  const found = [...(again?.verdict ?? []), ...(again?.room ?? [])];
  expect(found.map((ref) => plain(again?.steps[ref] ?? never()))).toEqual(outputs);
});

test('with other rules it is not used', () => {
  const kept = packed(topic, sides, program);
  const other: Topic = defineTopic<Topic>({
    ...topic,
    formulas: {
      ...topic.formulas,
      'load.aboard': { ...formula('load.aboard'), is: 'load.people' },
    },
  });
  expect(unpacked(other, sides, kept)).toBeUndefined();
});

test('a dealer’s own margin needs no other program', () => {
  const own = withHouse(topic, {
    topic: topic.id,
    name: 'Sallowbridge Trailers',
    parameters: { 'margin.other': { value: '12 %', reason: 'Our own rule.' } },
  });
  expect(rulesMark(own, sides)).toBe(rulesMark(topic, sides));
});

const formula = (id: string) => topic.formulas[id] ?? never();
function never(): never {
  throw new Error('There is no such step.');
}
