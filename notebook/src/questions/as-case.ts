import type { Topic } from '@tarebook/rules/engine';
import { factsAlone } from '../state/facts-alone';
import type { Returned } from '../state/returned';
import { plainly, titleOf } from '../today/line-words';

/** More words than these do not go into a link. */
const mostWords = 600;

/**
 * A question as a case: its words, what it tells, and what is asked next as not known.
 *
 * @param question its words as they may leave
 * @param asked facts that are asked next, in their order
 */
export function askedAsCase(
  topic: Topic,
  question: string,
  told: Returned,
  asked: readonly string[],
): string {
  const isList = (fact: string): boolean => topic.facts[fact]?.kind === 'rows';
  const open = asked.filter((fact) => !Object.hasOwn(told, fact) && !isList(fact)).slice(0, 5);
  const facts = { ...Object.fromEntries(open.map((fact) => [fact, 'unknown'])), ...told };
  const front = { title: titleOf(question, topic.title), topic: topic.id };
  const text = factsAlone({ front, facts, readFrom: {}, topic }, false);
  const words = plainly(question.slice(0, mostWords)) || topic.question;
  return text.replace(/^---\n[\s\S]*?\n---\n/, (head) => `${head}\n${words}\n`);
}
