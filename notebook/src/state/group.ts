import { hasFields } from './shelf';

/** One case as it stood when the class began, so that a later edit changes no record. */
export type GroupCase = {
  readonly topic: string;
  readonly name: string;
  readonly title: string;
  readonly text: string;
};

/** What a learner committed to, as typed. `case` counts from 0. */
export type Commitment = {
  readonly case: number;
  readonly learner: string;
  readonly said: string;
  /** Milliseconds since 1970. */
  readonly at: number;
};

/** A class: who, which cases, who committed to what, and how far it has come. */
export type Group = {
  readonly id: string;
  readonly started: number;
  readonly learners: readonly string[];
  readonly cases: readonly GroupCase[];
  readonly commitments: readonly Commitment[];
  /** The cases whose working has been opened. */
  readonly opened: readonly number[];
  /** The case being walked; past the last one, the tally. */
  readonly at: number;
  readonly closed: boolean;
};

const isStrings = (value: unknown): value is readonly string[] =>
  Array.isArray(value) && value.every((each) => typeof each === 'string');

/** Whether a stored record is a class, whole. */
export function isGroup(value: unknown): value is Group {
  if (!hasFields(value, { id: 'string', started: 'number', at: 'number' })) return false;
  const held = (key: string): unknown => Object.getOwnPropertyDescriptor(value, key)?.value;
  const [cases, commitments, opened] = [held('cases'), held('commitments'), held('opened')];
  return (
    isStrings(held('learners')) &&
    typeof held('closed') === 'boolean' &&
    Array.isArray(cases) &&
    cases.every((c) =>
      hasFields(c, { topic: 'string', name: 'string', title: 'string', text: 'string' }),
    ) &&
    Array.isArray(commitments) &&
    commitments.every((c) =>
      hasFields(c, { case: 'number', learner: 'string', said: 'string', at: 'number' }),
    ) &&
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
): Group {
  return {
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
export function commit(group: Group, learner: string, said: string, now: number): Group {
  if (isOpen(group) || committed(group, learner) || !group.learners.includes(learner)) return group;
  const made: Commitment = { case: group.at, learner, said, at: now };
  return { ...group, commitments: [...group.commitments, made] };
}

export function openWorking(group: Group): Group {
  return isOpen(group) ? group : { ...group, opened: [...group.opened, group.at] };
}

/** The next case; after the last, the tally. */
export function goOn(group: Group): Group {
  const at = Math.min(group.at + 1, group.cases.length);
  return { ...group, at, closed: group.closed || at === group.cases.length };
}
