import { asWritten, isRows, presentFacts, readFacts } from '@tarebook/rules/engine';
import { readAddress } from '../state/address';
import { ownName } from '../state/link-name';
import { type Asked, allQuestionRecords, isAsked } from '../state/questions';
import { changedIn, type Returned } from '../state/returned';
import { isQuestion, questionOf } from './back-link';
import { rowsText } from './rows-told';

/** The part of a link that names a case which a question here was; ends where no address goes on. */
const hashes = /#\/case\/[\w-]+\/asked-[\w.%-]+\/[\w-]+/g;
/** What may stand before it, the address of a page; more than this is some other run of letters. */
const mostBefore = 300;
/** In the place of a link; no message has it. */
const mark = '\uE000';
/** Beside a link nobody asks anything in so few words. */
const few = 8;

/** What somebody was asked, filled in: the facts of its case, and of which question it is. */
type CameBack = {
  readonly topic: string;
  readonly name: string;
  readonly facts: Returned;
  /** What stood in it and could not be read, in words. */
  readonly unread: readonly string[];
};

/** Links of a text that may be answers to what is here. */
export function linksIn(text: string): readonly string[] {
  const found = new Set<string>();
  let end = 0;
  for (const { 0: hash, index } of text.matchAll(hashes)) {
    // Backward from the hash and never further: a picture of a megabyte in a mail holds nothing up.
    const before = text.slice(Math.max(end, index - mostBefore), index);
    found.add(`${before.split(/\s/).at(-1)}${hash}`);
    end = index + hash.length;
  }
  return [...found];
}

/** The text without links that were taken in. */
export const markedOff = (text: string, taken: readonly string[]): string =>
  taken.reduce((now, link) => now.replaceAll(link, mark), text);

/** A message as it is without its link; undefined where it was nothing but the way it came back. */
export function withoutLink(text: string): string | undefined {
  if (!text.includes(mark)) return text;
  const rest = text
    .replaceAll(mark, ' ')
    .replace(/[ \t]+/g, ' ')
    .trim();
  return rest.includes('?') || rest.split(/\s+/).length > few ? rest : undefined;
}

/** @returns what is in a link, or why it cannot be read, in one sentence */
export async function openedBack(link: string): Promise<CameBack | { readonly says: string }> {
  const address = readAddress(link.slice(link.indexOf('#')));
  if (address.page !== 'case' || address.packed === undefined) {
    return { says: 'A link that was pasted is cut off; ask for it once more.' };
  }
  const { topic, name, packed } = address;
  const [{ openShared }, { whyTooMuch }, { openReadersFor, readDocument }, { openTopic }] =
    await Promise.all([
      import('../state/shared'),
      import('../aside/first'),
      import('../state/reading'),
      import('../state/topics'),
    ]);
  const opened = await openShared(topic, name, packed);
  if ('says' in opened) return opened;
  const says = await whyTooMuch('This link', [{ topic, text: opened.filed }]);
  if (says !== undefined) return { says };
  await Promise.all([openTopic(topic), openReadersFor([opened.filed])]);
  return { topic, name, ...(await factsIn(topic, readDocument(opened.filed))) };
}

type Document = Pick<
  ReturnType<typeof import('../state/reading')['readDocument']>,
  'topic' | 'facts' | 'troubles'
>;

/** The facts of a case as a record keeps them; what its topic refuses is none, and is named. */
export async function factsIn(
  topicId: string,
  doc: Document,
): Promise<Pick<CameBack, 'facts' | 'unread'>> {
  const { topic } = doc;
  const troubles = doc.troubles.slice(0, 3).map(({ says }) => says);
  if (!topic || topic.id !== topicId) return { facts: {}, unread: troubles };
  const { facts: given } = presentFacts(topic, doc.facts);
  const refused = new Set(readFacts(topic, given).problems.map(({ fact }) => fact));
  const facts: Record<string, Returned[string]> = {};
  const unread: string[] = [];
  for (const [fact, value] of Object.entries(given)) {
    const text = isRows(value)
      ? value.map((row) =>
          Object.fromEntries(Object.entries(row).map(([id, cell]) => [id, asWritten(cell)])),
        )
      : asWritten(value);
    if (!refused.has(fact)) facts[fact] = text;
    else {
      const said = typeof text === 'string' ? text : rowsText(text);
      unread.push(`${topic.facts[fact]?.label ?? fact} “${said.slice(0, 60)}”`);
    }
  }
  return { facts, unread: unread.length > 0 ? unread.slice(0, 5) : troubles };
}

/** Of which message the case of a name is a question; undefined for any other case. */
export const messageIn = (name: string): string | undefined => questionOf(ownName(name))?.id;

/** The message that a case was a question of, and the words of that question. */
export function askedFor(
  name: string,
  messages: readonly Asked[],
  questionsOf: (asked: Asked) => readonly string[],
): { readonly asked: Asked; readonly question: string } | undefined {
  const of = questionOf(ownName(name));
  const asked = of && messages.find(({ id }) => id === of.id);
  const all = asked ? questionsOf(asked) : [];
  const question = all.find((each) => of && isQuestion(of.sum, each));
  return asked && question !== undefined ? { asked, question } : undefined;
}

/**
 * A message with what came back to one of its questions, which is open again.
 *
 * @param own what the question itself tells
 */
export function withReturned(
  asked: Asked,
  question: string,
  own: Returned,
  { topic, facts }: Pick<CameBack, 'topic' | 'facts'>,
): Asked | undefined {
  const { back, backTopics = {} } = asked;
  const by = Object.hasOwn(backTopics, question) ? backTopics[question] : topic;
  const before = back && Object.hasOwn(back, question) && by === topic ? back[question] : {};
  const fresh = changedIn({ ...own, ...before }, facts, own);
  if (Object.keys(fresh).length === 0) return undefined;
  return {
    ...asked,
    waits: '',
    done: 0,
    back: { ...back, [question]: { ...before, ...fresh } },
    backTopics: { ...backTopics, [question]: topic },
  };
}

/** What is left for the page of questions by another page, to be taken in there. */
const left = 'tarebook.came-back';

export function leaveForQuestions(link: string): void {
  sessionStorage.setItem(left, link);
  location.hash = '#/questions';
}

/** It stays there until it was put, so that a page that is closed or away from the network loses nothing. */
export function leftForQuestions(): string {
  try {
    return sessionStorage.getItem(left) ?? '';
  } catch {
    return '';
  }
}

export function leftIsPut(): void {
  try {
    sessionStorage.removeItem(left);
  } catch {
    // Where nothing is kept, nothing is left.
  }
}

/** The message here that a case was a question of. */
export async function messageOf(name: string): Promise<Asked | undefined> {
  const of = questionOf(ownName(name));
  if (!of) return undefined;
  return (await allQuestionRecords()).filter(isAsked).find(({ id }) => id === of.id);
}
