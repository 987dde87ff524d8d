import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

const name = 'virtual:own-topics';

/** Where the map of all topics is made. */
const all = /[\\/]rules[\\/]src[\\/]topics[\\/]all\.ts$/;
const end = '\n]);';

type Own = { readonly id: string };

const isOwn = (value: unknown): value is Own =>
  typeof value === 'object' && value !== null && 'id' in value && typeof value.id === 'string';

/** The rule sets in the file that TAREBOOK_OWN_TOPICS names, as `publish` writes them. */
function ownTopics(): readonly Own[] {
  const file = process.env.TAREBOOK_OWN_TOPICS;
  if (!file) return [];
  const read: unknown = JSON.parse(readFileSync(file, 'utf8'));
  if (!Array.isArray(read) || !read.every(isOwn)) {
    throw new Error(`${file}: this is no list of rule sets.`);
  }
  return read;
}

/**
 * Topics of one's own beside those of the packages, wherever the page has all of them:
 *
 *     virtual:own-topics            id ► a script that is loaded when wanted
 *     virtual:own-topics/firewood   the rule set
 *
 * `npm start -- --topics FILE` checks them first and writes the file.
 */
export function ownTopicsForVite(): Plugin {
  const own = ownTopics();
  const script = (id: string): string => JSON.stringify(`${name}/${id}`);
  return {
    name: 'own-topics',
    enforce: 'pre',
    resolveId: (source) =>
      source === name || source.startsWith(`${name}/`) ? `\0${source}` : undefined,
    load(module) {
      if (module === `\0${name}`) {
        const each = own.map(({ id }) => `${JSON.stringify(id)}: () => import(${script(id)})`);
        return `export default { ${each.join(',\n')} };`;
      }
      const topic = own.find(({ id }) => module === `\0${name}/${id}`);
      if (!topic) return undefined;
      return `import { topicFromPublished } from '@tarebook/rules/engine';
export const topic = topicFromPublished(JSON.parse(${JSON.stringify(JSON.stringify(topic))}));`;
    },
    transform(code, module) {
      if (own.length === 0 || !all.test(module)) return undefined;
      if (!code.includes(end)) throw new Error(`${module}: the list of topics ends otherwise.`);
      const imports = own.map(({ id }, at) => `import { topic as own${at} } from ${script(id)};\n`);
      const listed = own.map((_, at) => `\n  own${at},`).join('');
      return { code: `${imports.join('')}${code.replace(end, `${listed}${end}`)}`, map: null };
    },
  };
}
