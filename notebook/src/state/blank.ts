import type { Topic } from '@tarebook/rules/engine';
import { titleLine } from './front-line';

/** A fact of a case that is being started. */
export type Started = {
  readonly id: string;
  readonly value: string;
  readonly readFrom: string;
};

/**
 * A case to fill in: what always has to be known, after what is known already.
 *
 * @param asked the facts without any of which the topic cannot answer; see `alwaysAsked`
 * @param question what was asked, as Markdown; absent: what the topic asks
 */
export function blankCase(
  topic: Topic,
  title: string,
  asked: readonly string[],
  known: readonly Started[] = [],
  question: string = topic.question,
): string {
  const open = asked
    .filter((id) => !known.some((each) => each.id === id))
    .map((id) => ({ id, value: 'unknown', readFrom: '' }));
  const rows = [...open, ...known].map(
    ({ id, value, readFrom }) =>
      `| \`${id}\` ${topic.facts[id]?.label ?? ''} | ${value} | ${readFrom} |`,
  );
  return [
    `---\n${titleLine(title)}\ntopic: ${topic.id}\n---\n`,
    question,
    '',
    '| Fact | Value | Read from |',
    '| --- | --- | --- |',
    ...rows,
    '',
  ].join('\n');
}
