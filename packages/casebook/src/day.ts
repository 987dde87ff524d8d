import { dayProblems, sayProblem, type Topic } from '@tarebook/rules/engine';
import { trouble } from './messages';
import type { Trouble } from './shapes';

/** Where a key of the front matter has its value. */
export function keyPlace(
  front: string,
  key: string,
  line: number,
): { line: number; column: number } {
  const lines = front.split('\n');
  const index = lines.findIndex((each) => new RegExp(`^\\s*${key}\\s*:`).test(each));
  if (index < 0) return { line: 1, column: 1 };
  const before = /^[^:]*:\s*/.exec(lines[index] ?? '')?.[0].length ?? 0;
  return { line: line + index, column: before + 1 };
}

/**
 * Why a case cannot be judged as of its day.
 *
 * @param front the front matter, without its lines of dashes; '' when the day is not from there
 * @param line the document's line on which it begins, from 1
 */
export function dayTroubles(
  topic: Topic,
  day: string,
  front: string,
  line: number,
): readonly Trouble[] {
  const place = keyPlace(front, 'as-of', line);
  return dayProblems(topic, day).map((problem) => trouble(place, sayProblem(problem)));
}
