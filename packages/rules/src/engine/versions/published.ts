import { bringingCatalogues } from '../answer/bringing-catalogues';
import { defineTopic } from '../check/define';
import { sayProblem } from '../check/messages';
import { InputError } from '../check/problem';
import { isShaped, shapeProblems } from '../check/shaped';
import { checkKept } from '../check/topic';
import type { Topic } from '../define/shapes';
import { allFormulas } from '../define/topic';
import { bringingSun } from '../formula/sun';

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
  if (!isShaped(value)) throw new InputError(shapeProblems(value), sayProblem);
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
