import { type Asked, compiledOf, reckoned, today } from '../answer/answer';
import type { Answer } from '../answer/shapes';
import { answerTraced } from '../answer/traced';
import { refuseAsked, refuseOnlyJudging } from '../check/asked';
import type { Topic } from '../define/shapes';
import type { Compiled } from '../formula/compile';
import type { Run } from '../formula/run';
import type { Voice } from '../words/speaker';

/** A case as the forms of its answer are made from it. */
export type Matter = {
  readonly topic: Topic;
  readonly asked: Asked;
  readonly answer: Answer;
  readonly compiled: Compiled;
  readonly run: Run;
  /** Units and language; the medium is the form's own. */
  readonly voice: Pick<Voice, 'units' | 'language'>;
};

/** @throws InputError as `answer` does */
export function matterOf(topic: Topic, asked: Asked): Matter {
  refuseAsked(topic, asked);
  refuseOnlyJudging(topic);
  const asOf = asked.asOf ?? today();
  const { run } = reckoned(topic, asked, asOf);
  const { units, language } = asked;
  return {
    topic,
    asked,
    answer: answerTraced(topic, asked),
    compiled: compiledOf(topic),
    run,
    voice: { units, language },
  };
}

/** Whether a case says something of a fact, if only a range. */
export function isTold({ asked }: Pick<Matter, 'asked'>, fact: string): boolean {
  const given = Object.hasOwn(asked.facts, fact) ? asked.facts[fact] : undefined;
  return given !== undefined && given !== 'unknown';
}

export const isAnythingTold = (matter: Pick<Matter, 'asked'>): boolean =>
  Object.keys(matter.asked.facts).some((fact) => isTold(matter, fact));
