import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { judgeCaseNow, readCase } from '@tarebook/casebook';
import { askedIn } from '@tarebook/record';
import { topics } from '@tarebook/rules';
import { alwaysAsked } from '../src/state/always-asked';
import { frontLine } from '../src/state/front-line';
import { levelOf } from '../src/state/level';
import type { Read } from '../src/state/reading';

export { packedKernel } from '@tarebook/sweep/kernels';

/** What a list of cases says of one. */
type Listed = {
  readonly title: string;
  readonly asked: string;
  readonly level: string;
  readonly stands: string;
  readonly words: string;
};

/** What a list of cases says of a topic, and what a blank case of it asks. */
type ListedTopic = {
  readonly id: string;
  readonly title: string;
  readonly question: string;
  readonly asks: readonly string[];
};

/** Where a piece of prose stands is of no use once it is read. */
const withoutPlaces = (key: string, value: unknown): unknown =>
  key === 'position' ? undefined : value;

/** A case that comes with the page, and what it is read as; a note is read by its page. */
export function documentOf(file: string): { text: string; document: Read | undefined } {
  const text = readFileSync(file, 'utf8');
  const { text: _, topic, ...read } = readCase(text);
  const document: Read = JSON.parse(JSON.stringify(read, withoutPlaces));
  return { text, document: topic && read.troubles.length === 0 ? document : undefined };
}

/** A case that comes with the page as a list shows it, its verdict by the rules as they ship. */
export function listed(file: string): Listed {
  const doc = readCase(readFileSync(file, 'utf8'));
  assert.deepEqual(doc.troubles, [], `${file} cannot be judged`);
  const { title, asked = '', level = '', topic } = doc.front;
  const { outcome, words } = judgeCaseNow(doc);
  return { title, asked, level, stands: levelOf(topics[topic]?.outcomes ?? {}, outcome), words };
}

const wordsIn = (text: string): readonly string[] =>
  text.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];

/** The words by which a case is found beyond its title: its own, and what people call what it tells. */
export function searchedBy(file: string): string {
  const { text, facts, topic } = readCase(readFileSync(file, 'utf8'));
  const told = Object.keys(facts).flatMap((id) => topic?.called?.facts?.[id] ?? []);
  return [...new Set(wordsIn(`${text} ${told.join(' ')}`))].toSorted().join(' ');
}

/** The question that a case or a note is filed for, by which others like it are known. */
export function askedBy(file: string): string {
  const text = readFileSync(file, 'utf8');
  return askedIn({ title: frontLine(text, 'title'), text });
}

/** What a note is called; it has no rules to be judged by. */
export const titleOf = (file: string): string => frontLine(readFileSync(file, 'utf8'), 'title');

/** Every topic there is, in the order in which the rules list them. */
export const topicsListed = (): readonly ListedTopic[] =>
  Object.values(topics).map((topic) => {
    const { id, title, question } = topic;
    return { id, title, question, asks: alwaysAsked(topic) };
  });
