import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

const id = 'virtual:filed';

/**
 * The worked cases as `virtual:filed`, so that a case costs its topic's list and its own text:
 *
 *     topic ► list of cases ► text          each arrow a script of its own, loaded when wanted
 *
 * @param folder holds a folder for each topic, and one of refused documents, which are no cases
 */
export function filedCases(folder: string): Plugin {
  const within = (...path: string[]) => readdirSync(join(folder, ...path), { withFileTypes: true });
  const topics = () =>
    within()
      .filter((each) => each.isDirectory() && each.name !== 'refused')
      .map(({ name }) => [name, `${id}/${name}`] as const);
  const cases = (topic: string) =>
    within(topic)
      .filter(({ name }) => name.endsWith('.md'))
      .map(({ name }) => [name.slice(0, -3), `${join(folder, topic, name)}?raw`] as const);
  return {
    name: 'filed-cases',
    resolveId: (source) =>
      source === id || source.startsWith(`${id}/`) ? `\0${source}` : undefined,
    load(module) {
      if (!module.startsWith(`\0${id}`)) return undefined;
      const topic = module.slice(id.length + 2);
      const each = (topic === '' ? topics() : cases(topic)).map(
        ([name, path]) => `${JSON.stringify(name)}: () => import(${JSON.stringify(path)})`,
      );
      return `export default { ${each.join(',\n')} };`;
    },
  };
}
