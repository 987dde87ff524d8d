import { publish, type Topic, topics } from '@tarebook/rules';
import { factsSchema, nearest } from '@tarebook/rules/engine';
import { columns } from './columns';
import { BadInput } from './files';

export type Shelf = Readonly<Record<string, Topic>>;

export function topicNamed(name: string, among: Shelf = topics): Topic {
  const topic = Object.hasOwn(among, name) ? among[name] : undefined;
  if (topic) return topic;
  const near = nearest(name, Object.keys(among));
  const hint = near ? ` Did you mean ${near}?` : '';
  const own = among === topics ? ' One of your own comes with `--topics FILE`.' : '';
  throw new BadInput(
    `There is no topic “${name}”; there are ${Object.keys(among).join(', ')}.${hint}${own}`,
  );
}

export const topicList = (
  among: Shelf = topics,
): readonly { topic: string; version: string; title: string }[] =>
  Object.values(among).map(({ id, version, title }) => ({ topic: id, version, title }));

export const topicListAsText = (among: Shelf = topics): string =>
  `${columns(topicList(among).map(({ topic, version, title }) => [topic, version, title]))}\n`;

/** JSON Schema (draft 2020-12) of the facts a topic takes. */
export const topicSchema = factsSchema;

export const topicAsJson = publish;
