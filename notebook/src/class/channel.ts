import { type ClassStep, type Group, isOpen, isSureness, steps, waiting } from '../state/group';
import { type Exercise, isExercise } from '../state/practice';
import { hasFields } from '../state/shelf';
import { endCode } from './end-code';
import { type Guess, guessesOf } from './guesses';
import { isWalked, togetherSaid } from './record';

/** How a phone joins over the shop's network, and how many have. */
export type Invited = {
  readonly address: string;
  readonly code: string;
  /** What a code to scan opens. */
  readonly href: string;
  readonly joined: number;
};

/** What the learners' window may know: never who predicted what. */
export type Shown = {
  readonly text: string;
  readonly exercise?: Exercise;
  readonly open: boolean;
  readonly committed: number;
  readonly of: number;
  /** From 1. */
  readonly number: number;
  readonly cases: number;
  readonly done: boolean;
  /** Once the working is open: what is shown of it, and the guesses without names. */
  readonly step: ClassStep;
  readonly guesses: readonly Guess[];
  /** The case with a fact moved, and which, in words. */
  readonly moved?: { readonly text: string; readonly says: string };
  /** While phones may join. */
  readonly invited?: Invited;
  /** What a code to scan opens, while it stands alone on the wall. */
  readonly code?: string;
  /** At the end: what all of them came to, without a name. */
  readonly together?: string;
  /** At the end: what ends the class on phones that have no line. */
  readonly endCode?: string;
};

const name = 'tarebook-class';

const isGuess = (value: unknown): value is Guess => {
  if (!hasFields(value, { said: 'string' })) return false;
  const sure: unknown = Object.getOwnPropertyDescriptor(value, 'sure')?.value;
  return sure === undefined || (typeof sure === 'string' && isSureness(sure));
};

const isInvited = (value: unknown): value is Invited =>
  hasFields(value, { address: 'string', code: 'string', href: 'string', joined: 'number' });

function isShown(value: unknown): value is Shown {
  const held = (key: string): unknown => Object.getOwnPropertyDescriptor(Object(value), key)?.value;
  const flag = (key: string): boolean => typeof held(key) === 'boolean';
  const [guesses, moved, exercise] = [held('guesses'), held('moved'), held('exercise')];
  const invited = held('invited');
  return (
    hasFields(value, {
      text: 'string',
      committed: 'number',
      of: 'number',
      number: 'number',
      cases: 'number',
      step: 'string',
      guesses: 'object',
    }) &&
    (invited === undefined || isInvited(invited)) &&
    ['together', 'code', 'endCode'].every((key) => {
      return held(key) === undefined || typeof held(key) === 'string';
    }) &&
    (exercise === undefined || isExercise(exercise)) &&
    flag('open') &&
    flag('done') &&
    steps.some((each) => each === held('step')) &&
    Array.isArray(guesses) &&
    guesses.every(isGuess) &&
    (moved === undefined || hasFields(moved, { text: 'string', says: 'string' }))
  );
}

/** Whether nothing of it has to be worked out first. */
const isAllWalked = ({ opened, cases }: Group): boolean =>
  opened.every((at) => {
    const each = cases[at];
    return each === undefined || isWalked(each);
  });

/** What the wall shows beside a case, or in its place. */
export type Beside = {
  readonly [key in 'moved' | 'invited' | 'code']?: Shown[key] | undefined;
};

export function shownOf(group: Group, { moved, invited, code }: Beside = {}): Shown {
  const each = group.cases[group.at];
  const open = isOpen(group);
  return {
    step: group.step ?? 'guesses',
    guesses: open ? guessesOf(group) : [],
    ...(open && moved && { moved }),
    ...(invited && { invited }),
    ...(code && each && { code }),
    ...(!each && group.byCode && { endCode: endCode(group.id) }),
    ...(!each && isAllWalked(group) && { together: togetherSaid(group) }),
    text: each?.text ?? '',
    ...(each?.exercise && { exercise: each.exercise }),
    open,
    committed: group.learners.length - waiting(group).length,
    of: group.learners.length,
    number: Math.min(group.at + 1, group.cases.length),
    cases: group.cases.length,
    done: each === undefined,
  };
}

/**
 * The trainer's end: says what is to be seen, and says it again to a window that asks; tells other
 * windows of the trainer that the class was kept, and hears when they kept it.
 */
export function speak(
  now: () => Shown | undefined,
  heard: (id: string) => void,
): { say: () => void; kept: (id: string) => void; end: () => void } {
  const channel = new BroadcastChannel(name);
  const say = (): void => channel.postMessage({ kind: 'show', shown: now() ?? null });
  channel.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    if (!hasFields(data, { kind: 'string' }) || !('kind' in data)) return;
    if (data.kind === 'ask') say();
    if (data.kind === 'kept' && 'id' in data && typeof data.id === 'string') heard(data.id);
  });
  say();
  const kept = (id: string): void => channel.postMessage({ kind: 'kept', id });
  return { say, kept, end: () => channel.close() };
}

/** The learners' end: asks, and hears. Undefined: no class is on. */
export function listen(heard: (shown: Shown | undefined) => void): () => void {
  const channel = new BroadcastChannel(name);
  channel.addEventListener('message', ({ data }: MessageEvent<unknown>) => {
    if (typeof data !== 'object' || data === null || !('shown' in data)) return;
    heard(isShown(data.shown) ? data.shown : undefined);
  });
  channel.postMessage({ kind: 'ask' });
  return () => channel.close();
}
