import { plainEntries } from './front-plain';

/** A byte order mark is no part of the text that positions count. */
export const withoutMark = (text: string): string =>
  text.startsWith('\ufeff') ? text.slice(1) : text;

/** Whether a case can be read without a reader of YAML. */
export function isPlain(text: string): boolean {
  const source = withoutMark(text);
  const front = /^---[ \t]*\r?\n(.*?)\r?\n---[ \t]*(?:\r?\n|$)/s.exec(source)?.[1];
  return front === undefined ? !source.startsWith('---') : plainEntries(front) !== undefined;
}
