/** A case to fill in, with the facts that every verdict of a tow fit needs. */
export function blankCase(
  topic: string,
  facts: readonly (readonly [id: string, label: string])[],
): string {
  const rows = facts.map(([id, label]) => `| \`${id}\` ${label} | unknown |  |`);
  return [
    '---',
    'title: A case of my own',
    `topic: ${topic}`,
    '---',
    '',
    'What is asked?',
    '',
    '| Fact | Value | Read from |',
    '| --- | --- | --- |',
    ...rows,
    '',
  ].join('\n');
}
