import { refuseAsked } from '../check/asked';
import { described } from '../check/given';
import { sayGiven } from '../check/messages-given';
import { InputError } from '../check/problem';
import type { Topic } from '../define/shapes';
import { withCatalogues } from '../formula/brought';
import { traceOf as traced } from '../trace/trace';
import { aloudEnglish } from '../words/en-aloud';
import { speakerOf } from '../words/speaker';
import { text } from '../words/value';
import { type AnswerOf, type Asked, type AskedOf, answerIn, madeFrom } from './answer';
import type { Answer, Trace, Untraced } from './shapes';
import { onceRead } from './when-read';

/**
 * The working behind an answer that `answerNow` gave: every step with its numbers, its source and
 * where it was read.
 *
 * @throws InputError for what is no answer of this program, such as one read from JSON
 */
export function traceOf(given: Untraced | Answer): Trace {
  const made = madeFrom(given);
  if (!made) {
    const found = described(given);
    const wanted = 'an answer as `answerNow` gave it, in the same program';
    throw new InputError([{ code: 'not-an-answer', fact: 'answer', found, wanted }], sayGiven);
  }
  const { compiled, run, inputs, asked, words } = made;
  const say = speakerOf(asked, aloudEnglish);
  const { parameters, limits, findings } = given;
  return traced({
    ...{ compiled, run, parameters, limits, findings, say },
    inputs: withCatalogues(compiled.topic, inputs),
    readFrom: asked.readFrom ?? {},
    words: text(words),
    system: asked.units ?? 'us',
  });
}

const isTraced = (given: Untraced): given is Answer => 'trace' in given;

/** The same answer with its trace among its parts, made once somebody reads it. */
export function withTrace(given: Untraced): Answer {
  if (isTraced(given)) return given;
  onceRead(given, 'trace', () => traceOf(given));
  return given;
}

/** What `answer` gives, at once: `answerNow` with the trace among its parts. */
export function answerTraced<const T extends Topic>(topic: T, asked: AskedOf<T>): AnswerOf<T>;
export function answerTraced(topic: Topic, asked: Asked): Answer {
  refuseAsked(topic, asked);
  return withTrace(answerIn(aloudEnglish, topic, asked));
}
