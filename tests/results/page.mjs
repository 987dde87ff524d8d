/** One page for one result, as Markdown with links into the sources. */

const count = (many, one, more) => `${many} ${many === 1 ? one : more}`;

const linked = ({ file, line }) => `[${file}:${line}](../../${file}#L${line})`;

const listed = (lines, none) => (lines.length === 0 ? [none] : lines.map((line) => `- ${line}`));

function sourceLine({ class: of, cite, section, note }) {
  return [`**${of}**: ${cite}`, section && `, ${section}`, note && `. ${note}`]
    .filter(Boolean)
    .join('');
}

const fence = (text) => ['```', ...text.split('\n'), '```'];

/** At most so many lines are listed; the rest is counted. */
const most = 12;
const some = (all, line) => [
  ...all.slice(0, most).map(line),
  ...(all.length > most ? [`and ${all.length - most} more`] : []),
];

const words = { formulas: 'formula', limits: 'limit', findings: 'finding', decisions: 'decision' };

export const fileOf = ({ kind, id }) => `${words[kind]}.${id}.md`;

/**
 * `result` is one of `resultsOf`; `around` is what was found about it: `places`, `on` and `under`
 * (other results or plain names), `checks` and `derivations` (places), `cases` (title, place, text),
 * `said` (lines).
 */
export function pageOf(topic, result, around) {
  const { kind, id, label, unit, is, source } = result;
  const { places, on, under, checks, derivations, cases, said } = around;
  const other = (each) =>
    typeof each === 'string' ? `\`${each}\`` : `[\`${each.id}\`](${fileOf(each)}) ${each.label}`;
  return [
    `# \`${id}\`: ${label}`,
    '',
    `A ${words[kind]} of [${topic.id}](README.md) ${topic.version}${unit ? `, in ${unit}` : ''}.`,
    '',
    `## ${kind === 'formulas' ? 'Formula' : 'Rule'}`,
    '',
    ...(is ? fence(is) : []),
    '',
    ...listed(places.map(linked), 'Made by the engine out of other entries.'),
    '',
    'It stands on:',
    '',
    ...listed(on.map(other), 'nothing else.'),
    '',
    'On it stand:',
    '',
    ...listed(some(under, other), 'nothing else.'),
    '',
    '## Source',
    '',
    sourceLine(source),
    '',
    '## Outside checks',
    '',
    ...listed(some(checks, linked), 'None names it; what stands on it may be checked.'),
    '',
    '## Second derivation and properties',
    '',
    ...listed(some(derivations, linked), 'None names it.'),
    '',
    `## Cases: ${count(cases.length, 'expects', 'expect')} it`,
    '',
    ...listed(
      some(cases, ({ title, file, line, text }) => `[${title}](../../${file}#L${line}): ${text}`),
      'None expects it by its name.',
    ),
    '',
    '## Where it is said',
    '',
    ...listed(said, 'Nowhere by itself; it stands in the working.'),
    '',
  ].join('\n');
}

/** The results of a topic, those that a reader looks for first on top. */
export function indexOf(topic, rows) {
  return [
    `# ${topic.title}`,
    '',
    `\`${topic.id}\` ${topic.version}. ${topic.question}`,
    '',
    '| Result | What it is | Source | Outside checks | Cases |',
    '| --- | --- | --- | --- | --- |',
    ...rows.map(
      ({ result, around }) =>
        `| [\`${result.id}\`](${fileOf(result)}) | ${result.label.replaceAll('|', '\\|')} | ${result.source.class} | ${around.checks.length} | ${around.cases.length} |`,
    ),
    '',
  ].join('\n');
}
