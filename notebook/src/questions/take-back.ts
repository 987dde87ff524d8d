import { masked, type ReadMessage } from '@tarebook/record';
import { readAddress } from '../state/address';
import type { Asked } from '../state/questions';
import { standsAgainst } from '../state/returned';
import {
  askedFor,
  leftForQuestions,
  leftIsPut,
  linksIn,
  messageIn,
  openedBack,
  withReturned,
} from './come-back';
import { aboutOf } from './known';
import { backOf, readOf } from './told-so-far';

const shortly = (text: string): string => (text.length > 80 ? `${text.slice(0, 80)} …` : text);

/** Each is opened and judged beside the page, which takes its time. */
const mostLinks = 24;
const notHere = 'A link answers a question that is not on this device; open it to see it.';

/** Where answers are put: the page of questions. */
type BackHost = {
  /** What a rule set is called. */
  readonly titleOf: (topic: string) => string;
  /** What one of its facts is called. */
  readonly labels: (topic: string, fact: string) => string;
  readonly messages: readonly Asked[] | undefined;
  readonly readings: ReadonlyMap<string, ReadMessage>;
  /** Waits until a message that is here was read, or cannot be. */
  readonly isRead: (id: string) => Promise<void>;
  /** Keeps and shows a message with what came back; false where the device refused it. */
  readonly putBack: (now: Asked) => Promise<boolean>;
};

/** What became of links that were pasted or left. */
type TakenBack = {
  /** Those whose answers stand with their question. */
  readonly taken: readonly string[];
  /** Those whose question is here and does not take them as it is now. */
  readonly held: readonly string[];
  readonly says: string;
  /** Whether the device took in all that came back. */
  readonly isKept: boolean;
};

/** Answers that came back by links, each put to the question it was asked for. */
export async function takenBack(
  links: readonly string[],
  host: BackHost,
  open = openedBack,
): Promise<TakenBack> {
  const partsOf = ({ id }: Asked) => host.readings.get(id)?.parts ?? [];
  const taken: string[] = [];
  let isKept = true;
  const held: string[] = [];
  const says = new Set<string>();
  // A reply quotes the link it answers, without answers; that says nothing.
  const freshly = new Set<string>();
  let opens = 0;
  for (const link of links) {
    const address = readAddress(link.slice(link.indexOf('#')));
    const id = address.page === 'case' ? messageIn(address.name) : undefined;
    // The name is asked first: what was never asked here is not worth a look within.
    if (id === undefined || !host.messages?.some((each) => each.id === id)) {
      says.add(notHere);
      continue;
    }
    if (opens === mostLinks) {
      held.push(link);
      says.add(`Only ${mostLinks} links are opened in one go; take in the others once more.`);
      continue;
    }
    opens += 1;
    const opened = await open(link);
    if ('says' in opened) {
      says.add(opened.says);
      continue;
    }
    await host.isRead(id);
    const of = askedFor(opened.name, host.messages ?? [], (each) =>
      partsOf(each).map(({ text }) => text),
    );
    const part = of && partsOf(of.asked).find(({ text }) => text === of.question);
    if (!of || !part) {
      says.add('A link answers a question that reads otherwise here now; open it to see it.');
      continue;
    }
    const about = `“${masked(shortly(of.question))}”`;
    if (aboutOf(of.asked, part) !== opened.topic) {
      held.push(link);
      says.add(
        `Answers to ${about} were not put: they were asked by “${host.titleOf(opened.topic)}”, and the question is about something else now. Turn its “About” back and take them in once more.`,
      );
      continue;
    }
    taken.push(link);
    const own = readOf(of.asked, part);
    const before = backOf(of.asked, part);
    for (const fact of standsAgainst({ ...own, ...before }, opened.facts, own)) {
      if (freshly.has(`${of.asked.id} ${fact}`)) continue;
      says.add(
        `In a link to ${about} nobody knows ${host.labels(opened.topic, fact)}, which came back before and stands; strike it out if it holds no more.`,
      );
    }
    const now = withReturned(of.asked, of.question, own, opened);
    if (!now) says.add(`Nothing new came back to ${about}.`);
    else {
      says.add(`Answers came back to ${about}; they stand with it.`);
      for (const fact of Object.keys(opened.facts)) freshly.add(`${of.asked.id} ${fact}`);
      isKept = (await host.putBack(now)) && isKept;
    }
    if (opened.unread.length > 0) {
      says.add(
        `Not read of what came back to ${about}, so ask once more: ${opened.unread.join('; ')}.`,
      );
    }
  }
  return { taken, held, says: [...says].join(' '), isKept };
}

/** Where another page left something to be put. */
type Left = { readonly link: () => string; readonly isPut: () => void };
const atThisTab: Left = { link: leftForQuestions, isPut: leftIsPut };

/** What another page left is put; only then it is left no more. What is said of it, '' for nothing. */
export async function leftTaken(
  take: (links: readonly string[]) => Promise<TakenBack>,
  { link, isPut }: Left = atThisTab,
): Promise<{ readonly says: string } | { readonly wrong: string }> {
  const links = linksIn(link());
  if (links.length === 0) return { says: '' };
  try {
    const { says, isKept } = await take(links);
    if (isKept) isPut();
    return { says };
  } catch {
    return {
      wrong:
        'The answers could not be put to their question: the network is away. They are kept; reload the page once it is back.',
    };
  }
}
