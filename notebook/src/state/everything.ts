import { type Group, isGroup, mergedGroups } from './group';
import { allHouses, type House, isHouse, keepHouse } from './house';
import { allKept, isKept, type Kept, keep, keyOf } from './kept';
import { allLessons, isLesson, keepLesson, type Lesson } from './lesson';
import { takeInQuestions } from './merge-questions';
import { allOwnFiles, isOwnFile, keepOwnFile, type OwnFile } from './own-catalogue';
import { type Attempt, allAttempts, isAttempt, takeInPractice } from './practice';
import { allQuestionRecords, isQuestionRecord, type QuestionRecord } from './questions';
import { allAside, changeRecord, dropRecord, everyRecord, hasFields } from './shelf';
import { hasStrangeKey, isEveryObjects } from './strange';
import { topicIds } from './topics';
import {
  allWordings,
  type CaseWordings,
  isCaseWordings,
  keepWordings,
  keptWordings,
} from './wording';

/** All that a person has on this device, as one file. */
export type Everything = {
  readonly kind: 'tarebook-everything';
  readonly version: 1;
  /** ISO 8601. */
  readonly saved: string;
  readonly cases: readonly Kept[];
  readonly classes: readonly Group[];
  readonly lessons: readonly Lesson[];
  readonly house: readonly House[];
  /** The dealer's own catalogue, file by file. */
  readonly catalogue: readonly OwnFile[];
  /** Replies in a person's own words. */
  readonly replies: readonly CaseWordings[];
  /** What people asked and what was answered. */
  readonly questions: readonly QuestionRecord[];
  /** What learners practiced. */
  readonly practice: readonly Attempt[];
  /** Records that could not be read, as they were found. */
  readonly aside: readonly unknown[];
};

export const allGroups = (): Promise<readonly Group[]> => everyRecord('classes', isGroup);
/**
 * Keeps a class, with every guess that another window has taken down meanwhile.
 * @returns the class as it is kept
 */
export const keepGroup = (group: Group): Promise<Group> =>
  changeRecord('classes', group.id, (kept) => (isGroup(kept) ? mergedGroups(group, kept) : group));
export const dropGroup = (id: string): Promise<void> => dropRecord('classes', id);

export async function gatherEverything(now: Date): Promise<Everything> {
  const [cases, classes, house] = [await allKept(), await allGroups(), await allHouses()];
  const [questions, aside] = [await allQuestionRecords(), await allAside()];
  const saved = now.toISOString();
  const replies = allWordings();
  const lessons = await allLessons();
  const practice = await allAttempts();
  const catalogue = await allOwnFiles();
  const kind = 'tarebook-everything';
  return {
    ...{ kind, version: 1, saved, cases, classes, lessons, house, catalogue, replies },
    ...{ questions, practice, aside },
  };
}

/** A file that is not one of ours, in one sentence. */
export class NotOurs extends Error {}

/** Whole, of a topic that there is, and not called what every object has. */
const isKnownCase = (value: unknown): value is Kept =>
  isKept(value) &&
  (value.topic === 'rig' || topicIds.includes(value.topic)) &&
  !isEveryObjects(value.name);

/** Far more than anybody keeps; what is larger would hold the page while it is read. */
const mostCharacters = 20_000_000;

const listIn = (value: object, key: string): readonly unknown[] => {
  const held: unknown = Object.getOwnPropertyDescriptor(value, key)?.value;
  if (held === undefined) return [];
  if (Array.isArray(held)) return held;
  throw new NotOurs(`“${key}” is no list in this file; a file saved here has one.`);
};

/** What a file holds; entries that cannot be read are counted by where they stand. */
export type Opened = {
  readonly cases: readonly Kept[];
  readonly classes: readonly Group[];
  readonly lessons: readonly Lesson[];
  readonly house: readonly House[];
  readonly catalogue: readonly OwnFile[];
  readonly replies: readonly CaseWordings[];
  readonly questions: readonly QuestionRecord[];
  readonly practice: readonly Attempt[];
  /** Such as `cases[3]`. */
  readonly unread: readonly string[];
};

/** @throws NotOurs when the text is not a file saved here. */
export function readEverything(text: string): Opened {
  if (text.length > mostCharacters) {
    throw new NotOurs(
      'This file is larger than 20 MB, which nothing saved here is; it was not opened.',
    );
  }
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch (problem) {
    const reason = problem instanceof Error ? problem.message : String(problem);
    throw new NotOurs(`This file is no JSON (${reason}); choose one that was saved here.`);
  }
  if (!hasFields(value, { kind: 'string', version: 'number' })) {
    throw new NotOurs('This file does not say what it is; choose one that was saved here.');
  }
  const told = (key: string): unknown => Object.getOwnPropertyDescriptor(value, key)?.value;
  if (told('kind') !== 'tarebook-everything') {
    throw new NotOurs(
      told('kind') === 'tarebook-lesson'
        ? 'This file is a lesson; open it on the page Class, under “Open a lesson somebody passed on”.'
        : 'This file is none that was saved here with “Save everything as one file”; choose one that was.',
    );
  }
  if (told('version') !== 1) {
    throw new NotOurs(
      `This file is of version ${String(told('version'))} and this page reads version 1; open it with a newer page.`,
    );
  }
  const unread: string[] = [];
  const whole = <T>(key: string, isWhole: (each: unknown) => each is T): readonly T[] =>
    listIn(value, key).filter((each, at): each is T => {
      const fine = isWhole(each) && !hasStrangeKey(each);
      if (!fine) unread.push(`${key}[${at}]`);
      return fine;
    });
  return {
    cases: whole('cases', isKnownCase),
    classes: whole('classes', isGroup),
    lessons: whole('lessons', isLesson),
    house: whole('house', isHouse),
    catalogue: whole('catalogue', isOwnFile),
    replies: whole('replies', isCaseWordings),
    questions: whole('questions', isQuestionRecord),
    practice: whole('practice', isAttempt),
    unread,
  };
}

/** A name that is not taken: the name itself, else `name-2`, `name-3` … */
export function freeName(name: string, taken: ReadonlySet<string>): string {
  if (!taken.has(name)) return name;
  let n = 2;
  while (taken.has(`${name}-${n}`)) n += 1;
  return `${name}-${n}`;
}

type Merged = {
  readonly cases: readonly Kept[];
  readonly classes: readonly Group[];
  /** What each case of the file is called here, by its address in the file. */
  readonly names: ReadonlyMap<string, string>;
};

/** What to write, given what is here: nothing is ever written over. */
export function merged(
  here: { readonly cases: readonly Kept[]; readonly classes: readonly Group[] },
  opened: Opened,
): Merged {
  const cases: Kept[] = [];
  const names = new Map<string, string>();
  for (const each of opened.cases) {
    const all = [...here.cases, ...cases].filter(({ topic }) => topic === each.topic);
    const same = all.find(({ text }) => text === each.text);
    const name = same?.name ?? freeName(each.name, new Set(all.map((one) => one.name)));
    names.set(keyOf(each.topic, each.name), name);
    if (!same) cases.push({ ...each, name });
  }
  const classes: Group[] = [];
  for (const each of opened.classes) {
    const all = [...here.classes, ...classes];
    const same = JSON.stringify(each);
    if (all.some((one) => JSON.stringify(one) === same)) continue;
    // The same class as another window or device went on with it: its guesses are put together.
    const twin = all.find(({ id, started }) => id === each.id && started === each.started);
    if (twin && JSON.stringify(twin.cases) === JSON.stringify(each.cases)) {
      classes.push(mergedGroups(twin, each));
      continue;
    }
    classes.push({ ...each, id: freeName(each.id, new Set(all.map(({ id }) => id))) });
  }
  return { cases, classes, names };
}

const counted = (n: number, one: string, many: string): string => `${n} ${n === 1 ? one : many}`;

/** Takes in replies in a person's own words; what was worded here stays as it is. */
function takeInReplies(replies: readonly CaseWordings[], names: Merged['names']): string {
  let refused = 0;
  for (const { topic, name, wordings } of replies) {
    const own = names.get(keyOf(topic, name)) ?? name;
    if (!keepWordings(topic, own, { ...wordings, ...keptWordings(topic, own) })) refused += 1;
  }
  if (replies.length === 0) return '';
  return refused === 0
    ? 'Replies in your own words came with them.'
    : 'This device did not keep the replies in your own words; they stay in the file.';
}

/** Takes in lessons beside those that are here; one that is here already stays as it is. */
async function takeInLessons(lessons: readonly Lesson[], names: Merged['names']): Promise<string> {
  const here = new Set((await allLessons()).map(({ id }) => id));
  const fresh = lessons.filter(({ id }) => !here.has(id));
  for (const each of fresh) {
    const items = each.items.map((item) => {
      return { ...item, name: names.get(keyOf(item.topic, item.name)) ?? item.name };
    });
    await keepLesson({ ...each, items });
  }
  if (fresh.length === 0) return '';
  return `${counted(fresh.length, 'lesson', 'lessons')} came with them.`;
}

/** Takes in files of a catalogue; one that is here already stays as it is. */
async function takeInCatalogue(files: readonly OwnFile[]): Promise<string> {
  const here = new Set((await allOwnFiles()).map(({ file }) => file));
  const fresh = files.filter(({ file }) => !here.has(file));
  for (const each of fresh) await keepOwnFile(each);
  const left = files.length - fresh.length;
  return [
    fresh.length > 0 ? 'The dealer’s own catalogue was taken in.' : '',
    left > 0 ? 'This device has a catalogue of its own already, and it stays as it is.' : '',
  ]
    .filter((part) => part !== '')
    .join(' ');
}

/** Takes in what a file holds, beside what is here, and says what became of it. */
export async function takeIn(text: string): Promise<string> {
  const opened = readEverything(text);
  const here = { cases: await allKept(), classes: await allGroups() };
  const houses = await allHouses();
  const { cases, classes, names } = merged(here, opened);
  for (const each of cases) await keep({ ...each, untried: true });
  for (const each of classes) await keepGroup(each);
  const lessons = await takeInLessons(opened.lessons, names);
  const fresh = opened.house.filter(({ topic }) => !houses.some((own) => own.topic === topic));
  for (const each of fresh) await keepHouse(each);
  const left = opened.house.length - fresh.length;
  const catalogue = await takeInCatalogue(opened.catalogue);
  const replies = takeInReplies(opened.replies, names);
  const questions = await takeInQuestions(opened.questions);
  const practice = await takeInPractice(opened.practice);
  const asked =
    questions === 0
      ? ''
      : `${counted(questions, 'record', 'records')} of questions came with them.`;
  const parts = [
    `${counted(cases.length, 'case', 'cases')} and ${counted(classes.length, 'class', 'classes')} were taken in, beside what was here.`,
    lessons,
    replies,
    asked,
    practice,
    fresh.length > 0 ? 'The dealer’s own numbers were taken in.' : '',
    left > 0 ? 'This device has a dealer’s own numbers already, and they stay as they are.' : '',
    catalogue,
    opened.unread.length > 0
      ? `Not readable in the file, and left in it: ${opened.unread.slice(0, 5).join(', ')}.`
      : '',
  ];
  return parts.filter((part) => part !== '').join(' ');
}
