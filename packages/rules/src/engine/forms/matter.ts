import { type Asked, compiledOf, reckoned, today } from '../answer/answer';
import type { Answer } from '../answer/shapes';
import { answerTraced } from '../answer/traced';
import { refuseAsked, refuseOnlyJudging } from '../check/asked';
import { presentFacts, presentId } from '../check/renamed';
import type { Topic } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import type { Run } from '../formula/run';
import type { Value } from '../value/values';
import type { Voice } from '../words/speaker';

/** A case as the forms of its answer are made from it. */
export type Matter = {
  readonly topic: Topic;
  /** Its facts by their present ids, whatever they were told by. */
  readonly asked: Asked;
  readonly answer: Answer;
  readonly compiled: Compiled;
  readonly run: Run;
  /** The same topic with nothing told, under the same parameters. */
  readonly blank: () => Run;
  /** Units and language; the medium is the form's own. */
  readonly voice: Pick<Voice, 'units' | 'language'>;
};

/** A case with its facts, and where they were read, by the ids that they have now. */
function byPresentIds(topic: Topic, asked: Asked): Asked {
  const { facts } = presentFacts(topic, asked.facts);
  if (!asked.readFrom) return { ...asked, facts };
  const readFrom = Object.entries(asked.readFrom).map(
    ([id, from]) => [presentId(topic, id), from] as const,
  );
  return { ...asked, facts, readFrom: Object.fromEntries(readFrom) };
}

/** @throws InputError as `answer` does */
export function matterOf(topic: Topic, asked: Asked): Matter {
  refuseAsked(topic, asked);
  refuseOnlyJudging(topic);
  const asOf = asked.asOf ?? today();
  const { run } = reckoned(topic, asked, asOf);
  const { units, language } = asked;
  let blank: Run | undefined;
  return {
    topic,
    asked: byPresentIds(topic, asked),
    answer: answerTraced(topic, asked),
    compiled: compiledOf(topic),
    run,
    blank: () => {
      blank ??= reckoned(topic, { ...asked, facts: {} }, asOf).run;
      return blank;
    },
    voice: { units, language },
  };
}

/** Whether a case says something of a fact, if only a range. */
export const isTold = ({ run }: Pick<Matter, 'run'>, fact: string): boolean =>
  run.inputs.get(fact)?.status === 'known';

/** Whether a case says of a fact that it is not known, in whatever letters. */
export const isToldUnknown = ({ run }: Pick<Matter, 'run'>, fact: string): boolean =>
  run.inputs.get(fact)?.status === 'unknown';

export const isAnythingTold = (matter: Pick<Matter, 'asked' | 'run'>): boolean =>
  Object.keys(matter.asked.facts).some((fact) => isTold(matter, fact));

/** One figure, or anything from nothing on. A range that is usual for all is told as that. */
const isBare = (value: Value): boolean =>
  value.kind === 'number' && (value.lo === value.hi || value.lo === 0);

const isSame = (a: Value, b: Value): boolean =>
  a.kind === 'number' && b.kind === 'number' && a.lo === b.lo && a.hi === b.hi;

/**
 * Whether a figure comes out as it would with nothing told: then it was not made of what was told,
 * though that may stand somewhere in its formula, and is no answer.
 */
export function isMadeOfNothing({ run, blank }: Matter, name: string): boolean {
  const value = run.value(name);
  return isBare(value) && isSame(value, blank().value(name));
}
