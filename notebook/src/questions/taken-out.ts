import { type Asked, inOrder, isAsItCame } from '../state/questions';
import { count, messages as messagesSaid } from './taken';

/** The messages that were taken in last, in one go. */
export function lastTaken(messages: readonly Asked[]): readonly Asked[] {
  const last = Math.max(...messages.map(({ came }) => came));
  return messages.filter(({ came }) => came === last);
}

const isEmpty = (of: object | undefined): boolean => Object.keys(of ?? {}).length === 0;

/** Whether a person did anything with a message: then it is not taken out along with others. */
export function isWorkedOn(asked: Asked, isSpoken: (id: string) => boolean): boolean {
  const { struck, wordings, done, back, cases, waits = '', lifted, sent = [], mended } = asked;
  const isLeft = [wordings, back, cases, mended].every(isEmpty);
  const isOpen = done === 0 && waits === '' && lifted === undefined && sent.length === 0;
  return !isLeft || !isOpen || struck.length > 0 || !isAsItCame(asked) || isSpoken(asked.id);
}

/** Of the messages that were taken in last, those that go out again, and those that stay. */
export function goesOut(
  messages: readonly Asked[],
  isSpoken: (id: string) => boolean,
): { readonly out: readonly Asked[]; readonly stays: readonly Asked[] } {
  const last = messages.length === 0 ? [] : lastTaken(messages);
  return {
    out: last.filter((each) => !isWorkedOn(each, isSpoken)),
    stays: last.filter((each) => isWorkedOn(each, isSpoken)),
  };
}

/** What is here without those that go. */
export function without(messages: readonly Asked[], out: readonly Asked[]): readonly Asked[] {
  const gone = new Set(out.map(({ id }) => id));
  return messages.filter(({ id }) => !gone.has(id));
}

/** What is here with those that come back, each where it stood; what is here already stays as it is. */
export function withBack(messages: readonly Asked[], back: readonly Asked[]): readonly Asked[] {
  return inOrder([...messages, ...without(back, messages)]);
}

/** What became of it, in words. */
export function outSaid(out: number, stays: number): string {
  const was = out === 1 ? 'was' : 'were';
  const kept =
    stays === 0
      ? 'All other messages, and every answer that was given, stay.'
      : `${count(stays)} of the same paste ${stays === 1 ? 'stays, since it was' : 'stay, since they were'} worked on; so do all others, and every answer that was given.`;
  return `${messagesSaid(out)} ${was} taken out. ${kept}`;
}
