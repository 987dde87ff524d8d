import { type Exercise, isExercise } from './practice';
import { hasFields } from './shelf';

/** One case as it stood when the class began, so that a later edit changes no record. */
export type GroupCase = {
  readonly topic: string;
  readonly name: string;
  readonly title: string;
  readonly text: string;
  /** What the learners do with it; absent: predict. */
  readonly exercise?: Exercise;
  /** As the lesson was planned; for the trainer alone. */
  readonly minutes?: number;
  readonly note?: string;
};

/** What a learner committed to, as typed. `case` counts from 0. */
export type Commitment = {
  readonly case: number;
  readonly learner: string;
  readonly said: string;
  /** Milliseconds since 1970. */
  readonly at: number;
  readonly sure?: Sureness;
  /** Why, in the learner's own words. */
  readonly why?: string;
  /** When the trainer last said otherwise of what was said; absent: as it was taken down. */
  readonly marked?: number;
};

/** How sure a learner is, the least first, as it is said. */
export const surenesses = ['a guess', 'fairly sure', 'certain'] as const;
export type Sureness = (typeof surenesses)[number];
export const isSureness = (text: string | undefined): text is Sureness =>
  surenesses.some((each) => each === text);

/** What is seen of a case once its working is open, one after another. */
export const steps = ['guesses', 'picture', 'working', 'why'] as const;
export type ClassStep = (typeof steps)[number];

/** A class: who, which cases, who committed to what, and how far it has come. */
export type Group = {
  readonly id: string;
  readonly started: number;
  readonly learners: readonly string[];
  readonly cases: readonly GroupCase[];
  readonly commitments: readonly Commitment[];
  /** Guesses that were mistyped and taken back before the working was open. */
  readonly takenBack?: readonly Commitment[];
  /** What is shown of the open case; absent: the guesses. */
  readonly step?: ClassStep;
  /** Whether learners guess on phones that read codes out. */
  readonly byCode?: true;
  /** The lesson it was begun from. */
  readonly lesson?: string;
  /** The cases whose working has been opened. */
  readonly opened: readonly number[];
  /** The case being walked; past the last one, the tally. */
  readonly at: number;
  readonly closed: boolean;
};

const isStrings = (value: unknown): value is readonly string[] =>
  Array.isArray(value) && value.every((each) => typeof each === 'string');

const isCommitment = (value: unknown): value is Commitment => {
  if (!hasFields(value, { case: 'number', learner: 'string', said: 'string', at: 'number' }))
    return false;
  const held = (key: string): unknown => Object.getOwnPropertyDescriptor(value, key)?.value;
  const [sure, why, marked] = [held('sure'), held('why'), held('marked')];
  return (
    (marked === undefined || typeof marked === 'number') &&
    (sure === undefined || (typeof sure === 'string' && isSureness(sure))) &&
    (why === undefined || typeof why === 'string')
  );
};

const isStep = (value: unknown): boolean => steps.some((each) => each === value);

function isGroupCase(value: unknown): value is GroupCase {
  const texts = { topic: 'string', name: 'string', title: 'string', text: 'string' } as const;
  if (!hasFields(value, texts)) return false;
  const held = (key: string): unknown => Object.getOwnPropertyDescriptor(value, key)?.value;
  const [exercise, minutes, note] = [held('exercise'), held('minutes'), held('note')];
  return (
    (exercise === undefined || isExercise(exercise)) &&
    (minutes === undefined || typeof minutes === 'number') &&
    (note === undefined || typeof note === 'string')
  );
}

/** Whether a stored record is a class, whole. */
export function isGroup(value: unknown): value is Group {
  if (!hasFields(value, { id: 'string', started: 'number', at: 'number' })) return false;
  const held = (key: string): unknown => Object.getOwnPropertyDescriptor(value, key)?.value;
  const [cases, commitments, opened] = [held('cases'), held('commitments'), held('opened')];
  const takenBack = held('takenBack');
  return (
    isStrings(held('learners')) &&
    typeof held('closed') === 'boolean' &&
    Array.isArray(cases) &&
    cases.every(isGroupCase) &&
    Array.isArray(commitments) &&
    commitments.every(isCommitment) &&
    (takenBack === undefined || (Array.isArray(takenBack) && takenBack.every(isCommitment))) &&
    (held('step') === undefined || isStep(held('step'))) &&
    (held('byCode') === undefined || held('byCode') === true) &&
    (held('lesson') === undefined || typeof held('lesson') === 'string') &&
    Array.isArray(opened) &&
    opened.every((each) => typeof each === 'number')
  );
}

/** What is wrong with a list of learners as typed, or the list. */
export function readLearners(text: string): readonly string[] | string {
  const names = text.split(/[\n,;]/).flatMap((line) => (line.trim() ? [line.trim()] : []));
  if (names.length === 0) {
    return 'Nobody is named; write one first name or number on each line, such as “Ada”.';
  }
  const again = names.find((name, i) => names.indexOf(name) !== i);
  if (again !== undefined) {
    return `“${again}” stands here twice; add a letter or a number, so that they can be told apart.`;
  }
  const long = names.find((name) => name.length > 40);
  if (long !== undefined) {
    return `“${long.slice(0, 20)}…” has ${long.length} letters; a first name or a number of up to 40 will do.`;
  }
  return names;
}

export function beginGroup(
  learners: readonly string[],
  cases: readonly GroupCase[],
  now: number,
  lesson?: string,
): Group {
  return {
    ...(lesson !== undefined && { lesson }),
    id: now.toString(36),
    started: now,
    learners,
    cases,
    commitments: [],
    opened: [],
    at: 0,
    closed: false,
  };
}

export const committed = (group: Group, learner: string, at = group.at): Commitment | undefined =>
  group.commitments.find((each) => each.case === at && each.learner === learner);

/** Those who have not committed to the present case, in the order of the list. */
export const waiting = (group: Group): readonly string[] =>
  group.learners.filter((learner) => !committed(group, learner));

export const isOpen = (group: Group): boolean => group.opened.includes(group.at);

/** Takes a prediction down. What is committed stays; after the working is open none is taken. */
export function commit(
  group: Group,
  learner: string,
  said: string,
  now: number,
  reason: Pick<Commitment, 'sure' | 'why'> = {},
): Group {
  if (isOpen(group) || committed(group, learner) || !group.learners.includes(learner)) return group;
  const made: Commitment = { case: group.at, learner, said, at: now, ...reason };
  return { ...group, commitments: [...group.commitments, made] };
}

/** Takes the present case's guess of a learner back; once the working is open all stay. */
export function takeBack(group: Group, learner: string): Group {
  const made = committed(group, learner);
  if (!made || isOpen(group)) return group;
  const commitments = group.commitments.filter((each) => each !== made);
  return { ...group, commitments, takenBack: [...(group.takenBack ?? []), made] };
}

/** The trainer marks otherwise what a learner said of the open case: `said` is then what counts. */
export function markAnew(group: Group, learner: string, said: string, now: number): Group {
  const made = committed(group, learner);
  if (!made || !isOpen(group) || made.said === said) return group;
  // Of two marks within one millisecond the later one has to be told from the earlier.
  const marked = Math.max(now, (made.marked ?? 0) + 1);
  const commitments = group.commitments.map((each) =>
    each === made ? { ...made, said, marked } : each,
  );
  return { ...group, commitments };
}

/** Somebody who came late takes part from now on; a name that is there already changes nothing. */
export const joined = (group: Group, learner: string): Group =>
  group.learners.includes(learner) ? group : { ...group, learners: [...group.learners, learner] };

export function openWorking(group: Group): Group {
  return isOpen(group) ? group : { ...group, opened: [...group.opened, group.at], step: 'guesses' };
}

/** The next case; after the last, the tally. */
export function goOn(group: Group): Group {
  const at = Math.min(group.at + 1, group.cases.length);
  const closed = group.closed || at === group.cases.length;
  return { ...group, at, step: 'guesses', closed };
}

const placeOf = ({ case: at, learner }: Commitment): string => `${at} ${learner}`;
const same = (a: Commitment, b: Commitment): boolean => placeOf(a) === placeOf(b) && a.at === b.at;

/**
 * One class as two windows have it: every guess of either, by case and learner; of two the first
 * stays, as it was marked last, and what was taken back in one is taken back in both. How far it has come is as in
 * `ours`, which was moved last.
 */
export function mergedGroups(ours: Group, theirs: Group): Group {
  const takenBack = [...(ours.takenBack ?? [])];
  for (const each of theirs.takenBack ?? []) {
    if (!takenBack.some((one) => same(one, each))) takenBack.push(each);
  }
  const first = new Map<string, Commitment>();
  for (const each of [...ours.commitments, ...theirs.commitments].toSorted((a, b) => a.at - b.at)) {
    if (takenBack.some((one) => same(one, each))) continue;
    const one = first.get(placeOf(each));
    const isLater = one && same(one, each) && (each.marked ?? 0) > (one.marked ?? 0);
    if (!one || isLater) first.set(placeOf(each), each);
  }
  return {
    ...ours,
    learners: [...new Set([...ours.learners, ...theirs.learners])],
    commitments: [...first.values()],
    ...(takenBack.length > 0 && { takenBack }),
    ...((ours.byCode || theirs.byCode) && { byCode: true }),
    opened: [...new Set([...ours.opened, ...theirs.opened])],
    closed: ours.closed || theirs.closed,
  };
}
