import type * as z from 'zod/mini';
import type { Topic } from '../define/shapes';
import { described, isPlain } from './given';
import { meant } from './near';
import { noting } from './noted';
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
  tuple: 'a list of two',
  object: 'its parts by name',
  record: 'its entries by name, or {} where it has none',
};

const below = (value: unknown, key: PropertyKey): unknown =>
  Array.isArray(value) ? value[Number(key)] : isPlain(value) ? value[String(key)] : undefined;

/** What was found there, told apart from what it may look like. */
const stands = (found: unknown): string =>
  typeof found === 'string' ? `the text “${described(found)}”` : described(found);

/** Every place in which the shape is broken, as `facts.vehicle.gvwr.unit`, and what belongs there. */
export function shapeProblems(value: unknown): readonly Problem[] {
  const problems: Problem[] = [];
  const note = noting(problems);
  for (const issue of shape().safeParse(value).error?.issues ?? []) {
    const at = issue.path.map(String).join('.') || 'the whole';
    const found = issue.path.reduce(below, value);
    const options = wordsIn(issue);
    const expected = issue.code === 'invalid_type' ? issue.expected : '';
    const isVersion = issue.path.at(-1) === 'version' && expected === '';
    const of = isVersion
      ? 'three numbers, such as 1.0.0'
      : (kindsOfData[expected] ?? 'what a rule set has there as it is published');
    if (options.length > 0) {
      const near = typeof found === 'string' ? meant(found, options) : {};
      note('wrong-word', at, found === undefined ? 'nothing' : stands(found), { options, ...near });
    } else if (found === undefined) note('missing-part', at, '', { of });
    else note('wrong-part', at, stands(found), { of });
  }
  return problems;
}

/** The words of which one belongs there; none where it is no matter of words. */
function wordsIn(issue: z.core.$ZodIssue): readonly string[] {
  if (issue.code === 'invalid_value') return issue.values.map(String);
  const { options } = { options: [], ...issue };
  return Array.isArray(options) ? options.map(String) : [];
}
