import type { Topic } from '../define/shapes';
import { described, isPlain } from './given';
import type { Problem } from './problem';
import { makeShape } from './shape';

let made: ReturnType<typeof makeShape> | undefined;
function shape(): ReturnType<typeof makeShape> {
  made ??= makeShape();
  return made;
}

/** Whether everything stands where a rule set has it, and is of the kind that belongs there. */
export const isShaped = (value: unknown): value is Topic => shape().safeParse(value).success;

/** What a rule set holds in such a place, by what its shape expects there. */
const kindsOfData: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  boolean: 'true or false',
  array: 'a list',
  object: 'its parts by name',
  record: 'its entries by name, or {} where it has none',
};

const below = (value: unknown, key: PropertyKey): unknown =>
  Array.isArray(value) ? value[Number(key)] : isPlain(value) ? value[String(key)] : undefined;

/** Every place in which the shape is broken, as `facts.vehicle.gvwr.unit`, and what belongs there. */
export function shapeProblems(value: unknown): readonly Problem[] {
  const { error } = shape().safeParse(value);
  return (error?.issues ?? []).map((issue): Problem => {
    const expected = issue.code === 'invalid_type' ? issue.expected : '';
    const isVersion = issue.path.at(-1) === 'version' && expected === '';
    const found = issue.path.reduce(below, value);
    return {
      code: 'broken-topic',
      fact: issue.path.map(String).join('.') || 'the whole',
      found: found === undefined ? '' : described(found),
      wanted: isVersion
        ? 'three numbers, such as 1.0.0'
        : (kindsOfData[expected] ?? 'what a rule set has there as it is published'),
    };
  });
}
