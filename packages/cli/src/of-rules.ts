import { diffAsJson, diffAsText, rulesDiff } from './diff';
import { BadInput } from './files';
import { topicsFrom } from './own-topics';
import { parsed } from './parsed';
import {
  type Shelf,
  topicAsJson,
  topicList,
  topicListAsText,
  topicNamed,
  topicSchema,
} from './rules';
import { sayBeside, sayJson, sayText } from './said';
import { topicAsText } from './topic-page';

export async function rules(args: readonly string[]): Promise<number> {
  const { words, given } = parsed(args, ['json', 'schema'], ['diff', 'topics']);
  const among = await topicsFrom(given);
  const [name, more] = words;
  if (typeof given.diff === 'string') return diff(words, given.diff, given.json === true, among);
  if (more !== undefined) throw new BadInput('`tarebook rules` takes one topic at the most.');
  if (name === undefined) {
    if (given.schema)
      throw new BadInput('`tarebook rules --schema` wants a topic, such as tow-fit.');
    await (given.json ? sayJson(topicList(among)) : sayText(topicListAsText(among)));
    return 0;
  }
  const topic = topicNamed(name, among);
  if (given.schema) await sayJson(topicSchema(topic));
  else await (given.json ? sayJson(topicAsJson(topic)) : sayText(topicAsText(topic)));
  return 0;
}

async function diff(
  [name, ...paths]: readonly string[],
  version: string,
  asJson: boolean,
  among: Shelf,
): Promise<number> {
  if (name === undefined) {
    throw new BadInput('`tarebook rules --diff` wants a topic, such as tow-fit.');
  }
  const found = await rulesDiff(topicNamed(name, among), version, paths);
  await (asJson ? sayJson(diffAsJson(found)) : sayText(diffAsText(found)));
  if (found.skipped.length > 0) await sayBeside(found.skipped.join('\n'));
  return 0;
}
