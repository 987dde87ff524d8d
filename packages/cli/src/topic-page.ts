import { type Fact, rulingsInWords, type Source, type Topic } from '@tarebook/rules/engine';
import { show } from '@tarebook/rules/quantity';
import { catalogueText } from './catalogue-page';
import { columns, wrapped } from './columns';

const cited = ({ class: kind, cite, section }: Source): string =>
  `${kind}: ${cite}${section ? `, ${section}` : ''}`;

const unitShown = (fact: Fact): string => {
  if (fact.kind === 'rows')
    return `list of ${Object.values(fact.columns)
      .map((c) => c.label)
      .join(', ')}`;
  if (fact.kind === 'choice') return fact.options.join(' | ');
  if (fact.kind === 'yes-no') return 'yes | no';
  return fact.unit === '' ? 'number' : fact.unit;
};

const section = (title: string, body: string): string =>
  body === '' ? '' : `\n${title}\n${body}\n`;

const exactly = (value: number, unit: string): string => show({ lo: value, hi: value }, unit);

function tableText({ tables, wordTables = {} }: Topic): string {
  const numbers = Object.entries(tables).map(
    ([id, { label, rows, keyUnit, valueUnit, source }]) =>
      `  ${label} (${id}) – ${cited(source)}\n${columns(
        rows.map(([key, value]) => ['', exactly(key, keyUnit), exactly(value, valueUnit)]),
        [1, 2],
      )}`,
  );
  const words = Object.entries(wordTables).map(
    ([id, { label, values, valueUnit, source }]) =>
      `  ${label} (${id}) – ${cited(source)}\n${columns(
        Object.entries(values).map(([word, value]) => ['', word, exactly(value, valueUnit)]),
        [2],
      )}`,
  );
  return [...numbers, ...words].join('\n');
}

/** A decision table as a table: its inputs, then what each row gives. */
function decisionText({ decisions = {} }: Topic): string {
  return Object.entries(decisions)
    .map(([id, { label, hit, on, rows, results, source }]) => {
      const entries = rows.map(({ when, gives }) => [
        '',
        ...when.map((entry) => (typeof entry === 'string' ? entry : entry.join(' | '))),
        `→ ${gives}`,
      ]);
      const said = Object.entries(results).map(
        ([word, { level, says }]) =>
          `      ${word}${level ? ` (${level})` : ''}: “${wrapped(says, '        ')}”`,
      );
      const how = hit === 'first' ? 'the topmost row that fits counts' : 'one row fits';
      return `  ${label} (${id}), ${how} – ${cited(source)}\n${columns([['', ...on, ''], ...entries])}\n${said.join('\n')}`;
    })
    .join('\n');
}

function selectionText({ selections = {} }: Topic): string {
  return Object.entries(selections)
    .map(([id, { label, items, source }]) => {
      const rows = Object.values(items).map(({ label: what, when, because }) => [
        '',
        what,
        when ? `when ${when}` : 'always',
        because,
      ]);
      return `  ${label} (${id}) – ${cited(source)}\n${columns(rows)}`;
    })
    .join('\n');
}

function rankingText({ rankings = {} }: Topic): string {
  return Object.entries(rankings)
    .map(([id, { label, first, of, source }]) => {
      const rows = Object.values(of).map(({ by, says }) => ['', says, `by ${by}`]);
      return `  ${label} (${id}), the ${first} first – ${cited(source)}\n${columns(rows)}`;
    })
    .join('\n');
}

function simulationText({ simulations = {} }: Topic): string {
  return Object.entries(simulations)
    .map(([id, { label, steps, states, values, source }]) => {
      const how =
        typeof steps === 'number' ? `${steps} steps` : `one step for each row of ${steps}`;
      const lines = [
        ...Object.entries(states).flatMap(([name, { label: what, start, next }]) => [
          `      ${what} (${name}) begins as ${wrapped(start, '        ')}`,
          `        and becomes ${wrapped(next, '          ')}`,
        ]),
        ...Object.entries(values).map(
          ([name, { label: what, is }]) => `      ${what} (${name}) = ${wrapped(is, '        ')}`,
        ),
      ];
      return `  ${label} (${id}), ${how} – ${cited(source)}\n${lines.join('\n')}`;
    })
    .join('\n');
}

function findingText(topic: Topic): string {
  return Object.entries(topic.findings)
    .map(([id, finding]) => {
      const lines = [`  ${finding.label} (${id}) – ${cited(finding.source)}`];
      for (const { level, when, says } of rulingsInWords(finding)) {
        lines.push(`      ${level} when ${wrapped(when, '        ')}`);
        lines.push(`      “${wrapped(says, '        ')}”`);
      }
      return lines.join('\n');
    })
    .join('\n');
}

/** A topic as a page a trainer could hand out. */
export function topicAsText(topic: Topic): string {
  const facts = Object.entries(topic.facts).map(([id, fact]) => [fact.label, unitShown(fact), id]);
  const formulas = Object.entries(topic.formulas).map(
    ([id, { label, is, source }]) =>
      `  ${label} (${id}) – ${cited(source)}\n      ${wrapped(is, '      ')}`,
  );
  const parameters = Object.entries(topic.parameters).flatMap(
    ([, { label, unit, values, range, source }]) =>
      values.map(({ from, value }) => [
        label,
        show({ lo: value, hi: value }, unit),
        range ? `a dealer may choose ${show({ lo: range[0], hi: range[1] }, unit)}` : '',
        `since ${from}`,
        cited(source),
      ]),
  );
  const limits = Object.entries(topic.limits).map(([id, { label, used, limit, margin }]) => [
    label,
    `${used} against ${limit}`,
    margin ? `less ${margin}` : 'no margin',
    id,
  ]);
  const outcomes = Object.values(topic.outcomes).map(({ words }) => words);
  return [
    `${topic.title} – ${topic.id} ${topic.version}\n${wrapped(topic.question, '')}\n`,
    `Answers: ${outcomes.join(', ')}.\n`,
    section('What is asked', columns(facts)),
    section('Numbers of the trade', columns(parameters, [1])),
    section('Tables', tableText(topic)),
    section('How it reckons', formulas.join('\n')),
    section('Step by step', simulationText(topic)),
    section('How it decides', decisionText(topic)),
    section('Limits', columns(limits)),
    section('What it says beside the limits', findingText(topic)),
    section('Catalogue', catalogueText(topic)),
    section('Lists', selectionText(topic)),
    section('In order of size', rankingText(topic)),
    section(
      'Be careful',
      topic.cautions.map(({ says }) => `  – ${wrapped(says, '    ')}`).join('\n'),
    ),
  ].join('');
}
