import { bringingCatalogues } from '../answer/bringing-catalogues';
import { defineTopic } from '../check/define';
import { sayProblem } from '../check/messages';
import { InputError, type Problem } from '../check/problem';
import { checkKept } from '../check/topic';
import type { Topic } from '../define/shapes';
import { allFormulas } from '../define/topic';
import { bringingSun } from '../formula/sun';
import { makeShape } from './shape';

let made: ReturnType<typeof makeShape> | undefined;
function shape(): ReturnType<typeof makeShape> {
  made ??= makeShape();
  return made;
}

const isTopic = (value: unknown): value is Topic => shape().safeParse(value).success;

/** What a rule set holds in such a place, by what its shape expects there. */
const kindsOfData: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  boolean: 'true or false',
  array: 'a list',
  object: 'its parts by name',
  record: 'its entries by name, or {} where it has none',
};

/** Every place in which the shape is broken, as `facts.vehicle.gvwr.unit`, and what belongs there. */
function refusal(value: unknown): InputError {
  const { error } = shape().safeParse(value);
  const problems = (error?.issues ?? []).map((issue): Problem => {
    const expected = issue.code === 'invalid_type' ? issue.expected : '';
    const isVersion = issue.path.at(-1) === 'version' && expected === '';
    return {
      code: 'broken-topic',
      fact: issue.path.map(String).join('.') || 'the whole',
      found: '',
      wanted: isVersion
        ? 'three numbers, such as 1.0.0'
        : (kindsOfData[expected] ?? 'what a rule set has there as it is published'),
    };
  });
  return new InputError(problems, sayProblem);
}

/**
 * The formulas that limits and the like add of themselves are published too; those that they would
 * still add alike are left out, and those reckoned otherwise then stay as they were.
 */
function declaredOnly(topic: Topic): Topic['formulas'] {
  const added = allFormulas({ ...topic, formulas: {} });
  const isAdded = (name: string, is: string) => added.get(name)?.is === is;
  const own = Object.entries(topic.formulas).filter(([name, { is }]) => !isAdded(name, is));
  return Object.fromEntries(own);
}

/**
 * A rule set from its published JSON, ready to be asked as it was then.
 *
 * @throws InputError naming what is no rule set, or everything that is wrong with it.
 */
export function topicFromPublished(value: unknown): Topic {
  if (!isTopic(value)) throw refusal(value);
  const {
    conditions: _,
    missing: __,
    ...kept
  }: Topic & { readonly conditions?: unknown; readonly missing?: unknown } = value;
  const topic = defineTopic(
    bringingSun(bringingCatalogues<Topic>({ ...kept, formulas: declaredOnly(value) })),
  );
  const problems = checkKept(topic);
  if (problems.length > 0) throw new InputError(problems, sayProblem);
  return topic;
}
