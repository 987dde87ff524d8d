import { extname, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import {
  checkTopic,
  InputError,
  sayProblem,
  type Topic,
  topicFromPublished,
  topics,
} from '@tarebook/rules';
import { BadInput, named, readText } from './files';

type Shelf = Readonly<Record<string, Topic>>;

/** What a module exports, or a JSON file holds: one rule set, or several. */
async function valuesIn(file: string): Promise<readonly unknown[]> {
  if (extname(file) === '.json') {
    const text = await readText(file);
    try {
      const data: unknown = JSON.parse(text);
      return Array.isArray(data) ? data : [data];
    } catch {
      throw new BadInput(
        `${named(file)}: this is not JSON; give a rule set as \`publish\` writes it.`,
      );
    }
  }
  if (/\.[cm]?tsx?$/.test(file)) {
    throw new BadInput(
      `${named(file)}: this is TypeScript; compile it first, and give the .mjs or .js that comes of it.`,
    );
  }
  // Read first, so that a file that is not there is told as any other is.
  await readText(file);
  try {
    const module: Readonly<Record<string, unknown>> = await import(
      pathToFileURL(resolve(file)).href
    );
    // A rule set may stand under several names, and helpers beside it are none.
    const exported = new Set(Object.values(module).flat());
    // Of a CommonJS module everything stands once more below `default`.
    const { default: whole, ...others } = module;
    const isWhole = (each: object): boolean =>
      Object.values(others).some((other) => Object.values(each).includes(other));
    if (typeof whole === 'object' && whole !== null && isWhole(whole)) exported.delete(whole);
    return [...exported].filter((each) => typeof each === 'object' && each !== null);
  } catch (problem) {
    const says =
      problem instanceof Error ? (problem.message.split('\n')[0] ?? '') : String(problem);
    throw new BadInput(`${named(file)}: it cannot be loaded as a module: ${says.slice(0, 200)}.`);
  }
}

/** A module's own object is a rule set once its check finds nothing; JSON is read as it is published. */
function topicIn(file: string, value: unknown): Topic {
  try {
    const topic = topicFromPublished(JSON.parse(JSON.stringify(value) ?? 'null'));
    const problems = checkTopic(topic);
    if (problems.length > 0) throw new InputError(problems, sayProblem);
    return topic;
  } catch (problem) {
    if (!(problem instanceof InputError)) throw problem;
    const lines = problem.problems.map((each) => `${named(file)}: ${sayProblem(each)}`);
    throw new BadInput(lines.join('\n'));
  }
}

/** All topics there are, and those of one's own that `--topics FILE` brings. */
export async function topicsFrom(given: Readonly<Record<string, unknown>>): Promise<Shelf> {
  const { topics: file } = given;
  if (typeof file !== 'string') return topics;
  const own = (await valuesIn(file)).map((value) => topicIn(file, value));
  if (own.length === 0) throw new BadInput(`${named(file)}: it exports no rule set.`);
  const seen = new Set(Object.keys(topics));
  for (const { id } of own) {
    if (seen.has(id)) {
      throw new BadInput(
        `${named(file)}: there is a topic “${id}” already; give yours another id.`,
      );
    }
    seen.add(id);
  }
  return { ...topics, ...Object.fromEntries(own.map((topic) => [topic.id, topic])) };
}
