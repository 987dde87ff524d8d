import { publish, type Topic, topics } from '@tarebook/rules';
import { type Fact, nearest } from '@tarebook/rules/engine';
import { columns } from './columns';
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
