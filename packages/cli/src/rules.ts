import { publish, type Topic, topics } from '@tarebook/rules';
import { conditionInWords, type Fact, nearest, type Source } from '@tarebook/rules/engine';
import { show } from '@tarebook/rules/quantity';
import { columns, wrapped } from './columns';
import { BadInput } from './files';

export function topicNamed(name: string): Topic {
  const topic = Object.hasOwn(topics, name) ? topics[name] : undefined;
  if (topic) return topic;
  const near = nearest(name, Object.keys(topics));
  const hint = near ? ` Did you mean ${near}?` : '';
  throw new BadInput(
    `There is no topic “${name}”; there are ${Object.keys(topics).join(', ')}.${hint}`,
  );
}

export const topicList = (): readonly { topic: string; version: string; title: string }[] =>
  Object.values(topics).map(({ id, version, title }) => ({ topic: id, version, title }));

export const topicListAsText = (): string =>
  `${columns(topicList().map(({ topic, version, title }) => [topic, version, title]))}\n`;

const cited = ({ class: kind, cite, section }: Source): string =>
  `${kind}: ${cite}${section ? `, ${section}` : ''}`;

const unitShown = (fact: Fact): string => {
  if (fact.kind === 'rows')
    return `list of ${Object.values(fact.columns)
      .map((c) => c.label)
      .join(', ')}`;
  if (fact.kind === 'choice') return fact.options.join(' | ');
  if (fact.kind === 'yes-no') return 'yes | no';
  return fact.unit === '' ? 'count' : fact.unit;
};

function findingText(topic: Topic): string {
  return Object.entries(topic.findings)
    .map(([id, { label, stop, care, source }]) => {
      const lines = [`  ${label} (${id}) – ${cited(source)}`];
      if (stop)
        lines.push(
          `      stop when ${wrapped(conditionInWords(stop.when), '        ')}`,
          `      “${wrapped(stop.says, '        ')}”`,
        );
      if (care)
        lines.push(
          `      care when ${wrapped(conditionInWords(care.when), '        ')}`,
          `      “${wrapped(care.says, '        ')}”`,
        );
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
    `\nWhat is asked\n${columns(facts)}\n`,
    `\nNumbers of the trade\n${columns(parameters, [1])}\n`,
    `\nHow it reckons\n${formulas.join('\n')}\n`,
    `\nLimits\n${columns(limits)}\n`,
    `\nWhat it says beside the limits\n${findingText(topic)}\n`,
    `\nBe careful\n${topic.cautions.map(({ says }) => `  – ${says}`).join('\n')}\n`,
  ].join('');
}

const cellSchema = {
  type: 'string',
  description: 'A quantity with its unit, a range “a–b unit”, “a ± b unit”, or “unknown”.',
};

function factSchema(fact: Fact): object {
  const description = `${fact.label}. ${fact.ask} Read from: ${fact.where}.`;
  if (fact.kind === 'rows') {
    const properties = Object.fromEntries(
      Object.entries(fact.columns).map(([id, c]) => [id, { ...cellSchema, title: c.label }]),
    );
    const required = Object.entries(fact.columns).flatMap(([id, c]) => (c.required ? [id] : []));
    const items = {
      type: 'object',
      properties: { label: { type: 'string' }, ...properties },
      required,
      additionalProperties: false,
    };
    return { type: 'array', description, items };
  }
  if (fact.kind === 'quantity')
    return { ...cellSchema, description: `${description} Unit: ${fact.unit || 'count'}.` };
  const options = fact.kind === 'choice' ? fact.options : ['yes', 'no'];
  return { type: 'string', description, enum: [...options, 'unknown'] };
}

/** JSON Schema (draft 2020-12) of the facts a topic takes. */
export function topicSchema(topic: Topic): object {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: `Facts of ${topic.id} ${topic.version}`,
    type: 'object',
    properties: Object.fromEntries(
      Object.entries(topic.facts).map(([id, fact]) => [id, factSchema(fact)]),
    ),
    additionalProperties: false,
  };
}

export const topicAsJson = publish;
