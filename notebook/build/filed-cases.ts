import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';
import { shippedFor } from './shipped-for.ts';

const id = 'virtual:filed';

/** Documents that cannot be read, which are there to be refused. */
const apart = ['refused'];
/** A whole rig: a text that is read where it is shown, and no case of one topic. */
const rig = 'rig';

/** As text within the script: read by JSON.parse, in half the time that the script itself takes. */
const parsed = (value: unknown): string => `JSON.parse(${JSON.stringify(JSON.stringify(value))})`;

/**
 * The worked cases as `virtual:filed`, so that a case costs its topic's list and its own text, and a
 * list of cases costs one script:
 *
 *     virtual:filed                 topic ► list of cases ► text       each a script, loaded when wanted
 *     virtual:filed-topics          every topic: its title, its question, what a blank case of it asks
 *     virtual:filed-list            of every case its title, who asked, and the verdict as shipped
 *     virtual:filed-words           of every case the words by which it is found
 *
 * @param folder holds a folder for each topic, and one of refused documents, which are no cases
 * @param root the page's own folder
 */
export function filedCases(folder: string, root: string): Plugin {
  const within = (...path: string[]) => readdirSync(join(folder, ...path), { withFileTypes: true });
  const topics = within()
    .filter((each) => each.isDirectory() && !apart.includes(each.name))
    .map(({ name }) => name);
  const cases = (topic: string) =>
    within(topic)
      .filter(({ name }) => name.endsWith('.md'))
      .map(({ name }) => name.slice(0, -3));
  const fileOf = (topic: string, name: string) => join(folder, topic, `${name}.md`);
  const imports = (names: readonly string[], path: string): string =>
    `export default { ${names
      .map((name) => `${JSON.stringify(name)}: () => import(${JSON.stringify(`${path}/${name}`)})`)
      .join(',\n')} };`;

  const shipped = () => shippedFor(root);

  async function listScript(): Promise<string> {
    const run = await shipped();
    const list = run.topicsListed().map(({ id: topic }) => ({
      id: topic,
      cases: (topics.includes(topic) ? cases(topic) : []).map((name) => ({
        name,
        ...run.listed(fileOf(topic, name)),
      })),
    }));
    const notes = (topics.includes('note') ? cases('note') : []).map((name) => ({
      name,
      title: run.titleOf(fileOf('note', name)),
    }));
    return `export const notes = ${parsed(notes)};\nexport default ${parsed(list)};`;
  }

  async function wordsScript(): Promise<string> {
    const run = await shipped();
    const ofTopics = topics.filter((topic) => topic !== rig);
    const words = ofTopics.map((topic) => {
      const each = cases(topic).map((name) => [name, run.searchedBy(fileOf(topic, name))]);
      const asked = cases(topic).map((name) => [name, run.askedBy(fileOf(topic, name))]);
      return [topic, { cases: Object.fromEntries(each), asked: Object.fromEntries(asked) }];
    });
    return `export default ${parsed(Object.fromEntries(words))};`;
  }

  return {
    name: 'filed-cases',
    resolveId: (source) =>
      source === id || source.startsWith(`${id}/`) || source.startsWith(`${id}-`)
        ? `\0${source}`
        : undefined,
    async load(module) {
      if (!module.startsWith(`\0${id}`)) return undefined;
      if (module === `\0${id}-topics`) {
        return `export default ${parsed((await shipped()).topicsListed())};`;
      }
      if (module === `\0${id}-list`) return listScript();
      if (module === `\0${id}-words`) return wordsScript();
      const [, topic, name] = module.split('/');
      if (topic === undefined) return imports(topics, id);
      if (name === undefined) return imports(cases(topic), `${id}/${topic}`);
      if (topic === rig) {
        const whole = readFileSync(fileOf(topic, name), 'utf8');
        return `export const text = ${JSON.stringify(whole)};\nexport const document = undefined;`;
      }
      const { text, document } = (await shipped()).documentOf(fileOf(topic, name));
      const read = document ? parsed(document) : 'undefined';
      return `export const text = ${JSON.stringify(text)};\nexport const document = ${read};`;
    },
  };
}
