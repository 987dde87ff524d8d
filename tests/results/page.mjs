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

const words = {
  formulas: 'formula',
  limits: 'limit',
  findings: 'finding',
  decisions: 'decision',
  parameters: 'parameter',
  tables: 'table',
  wordTables: 'table-of-words',
};
const headings = { formulas: 'Formula', parameters: 'Value', tables: 'Rows', wordTables: 'Rows' };

/** A fact: what is asked, of which options. */
function asked({ facts }, id) {
  const { label, ask, options } = facts[id] ?? {};
  const of = Array.isArray(options) ? `: ${options.join(', ')}` : '';
  return [`\`${id}\``, label, ask && `(“${ask}”${of})`].filter(Boolean).join(' ');
}

export const fileOf = ({ kind, id }) => `${words[kind]}.${id}.md`;

/**
 * `result` is one of `resultsOf`; `around` is what was found about it: `places`, `on` and `under`
 * (other results or plain names), `checks` and `derivations` (places), `through` (results that stand
 * on it, with their checks), `cases` (title, place, text),
 * `said` (lines), of a parameter `noticed` (places of its edge, and why no case turns).
 */
export function pageOf(topic, result, around) {
  const { kind, id, label, unit, is, source } = result;
  const { places, on, under, checks, through, derivations, cases, said, noticed } = around;
  const link = (each) => `[\`${each.id}\`](${fileOf(each)})`;
  // What a number is belongs beside its name: who checks a rule looks for it first.
  const value = ({ kind, is, unit }) =>
    kind === 'parameters' ? ` = ${is.split('\n')[0]} ${unit}`.trimEnd() : '';
  const other = (each) =>
    typeof each === 'string' ? asked(topic, each) : `${link(each)}${value(each)} ${each.label}`;
  return [
    `# \`${id}\`: ${label}`,
    '',
    `${kind === 'wordTables' ? 'A table' : `A ${words[kind]}`} of [${topic.id}](README.md) ${topic.version}${unit ? `, in ${unit}` : ''}.`,
    '',
    `## ${headings[kind] ?? 'Rule'}`,
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
    ...listed(
      checks.length > 0
        ? some(checks, linked)
        : some(
            through,
            (each) => `by way of ${link(each.result)}: ${some(each.checks, linked).join(', ')}`,
          ),
      'None names it, nor what stands on it.',
    ),
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
    ...(noticed
      ? [
          '## A tenth more',
          '',
          ...listed(
            [...noticed.edges.map(linked), ...(noticed.why ? [noticed.why] : [])],
            'No edge of its own; what notices it are the cases of what stands on it.',
          ),
          '',
        ]
      : []),
    '## Where it is said',
    '',
    ...listed(said, 'Nowhere by itself; it stands in the working.'),
    '',
  ].join('\n');
}

/** Its own checks, or those of what stands on it. */
function checked({ checks, through }) {
  const above = through.reduce((sum, each) => sum + each.checks.length, 0);
  return checks.length === 0 && above > 0 ? `by what stands on it: ${above}` : checks.length;
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
        `| [\`${result.id}\`](${fileOf(result)}) | ${result.label.replaceAll('|', '\\|')} | ${result.source.class} | ${checked(around)} | ${around.cases.length} |`,
    ),
    '',
  ].join('\n');
}
