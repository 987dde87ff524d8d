import { type Asked, knownOf, message, own, sayer, type Topic } from '@tarebook/rules/engine';
import type { Answerable } from '../questions/answer-shapes';
import { inFigures, nounIn } from '../questions/either';

type Open = NonNullable<Answerable['open']>[number];

/** What can be said of a case before its verdict can; of what was asked, or else of what was told. */
function knownWith(topic: Topic, asked: Asked, asking: string | undefined): string {
  return knownOf(topic, asked, asking === undefined ? {} : { asking }) || knownOf(topic, asked);
}

/**
 * The answer for each thing that a figure may be; '' where nothing can be said of one of them, or the
 * same of all.
 */
function eitherWay(topic: Topic, asked: Asked, { value, among }: Open, asking?: string): string {
  const ways = among.map((fact) => {
    const facts = { ...asked.facts, [fact]: value };
    return { noun: nounIn(topic, fact), says: knownWith(topic, { ...asked, facts }, asking) };
  });
  const isOne = ways.every(({ says }) => says === ways[0]?.says);
  if (isOne || ways.some(({ says }) => says === '')) return '';
  const said = ways.map(({ noun, says }, at) =>
    at === 0 ? `If ${inFigures(value)} is ${noun}: ${says}` : `If it is ${noun}: ${says}`,
  );
  return said.join(' ');
}

/** What is to be found out, with its first letter small within the sentence. */
function lookSaid(topic: Topic, fact: string): string {
  const declared = topic.facts[fact];
  if (!declared) return '';
  return sayer({})(message('next-asked', { ask: own(declared.ask), where: null }));
}

/**
 * A short answer made of what was told: for each thing that an open figure may be, or else what is known
 * with what it hangs on; '' where the rules' own answer stands.
 */
export function madeOf(
  topic: Topic,
  asked: Asked,
  { open = [], asking, look }: Pick<Answerable, 'open' | 'asking' | 'look'>,
): string {
  const [first] = open;
  const either = first ? eitherWay(topic, asked, first, asking) : '';
  if (look === undefined || Object.hasOwn(asked.facts, look)) {
    return either === '' ? '' : `${either} Which is it?`;
  }
  const said = first ? either : knownWith(topic, asked, asking);
  return said === '' ? '' : `${said} ${lookSaid(topic, look)}`;
}
