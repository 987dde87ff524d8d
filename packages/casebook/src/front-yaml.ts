import { isAlias, isMap, isScalar, LineCounter, parseDocument, visit } from 'yaml';
import type { FrontReader } from './front';
import type { Entry } from './front-plain';

/** Front matter as YAML, whatever it holds. */
export const yamlEntries: FrontReader = (source) => {
  const counter = new LineCounter();
  const yaml = parseDocument(source, { lineCounter: counter, schema: 'core', uniqueKeys: true });
  const at = (offset: number) => {
    const { line, col } = counter.linePos(offset);
    return { line: Math.max(1, line), column: Math.max(1, col) };
  };
  const [problem] = yaml.errors;
  if (problem?.code === 'BLOCK_AS_IMPLICIT_KEY') {
    return { at: at(problem.pos[0]), fault: { code: 'front-colon' } };
  }
  if (problem) {
    const found = problem.message.split('\n')[0]?.replace(/ at line.*$/, '') ?? 'it cannot be read';
    return { at: at(problem.pos[0]), fault: { code: 'front-syntax', found: found.slice(0, 120) } };
  }
  let aliased: number | undefined;
  visit(yaml, {
    Node: (_, node) => {
      const anchored = isAlias(node) || ('anchor' in node && node.anchor !== undefined);
      if (anchored) aliased ??= node.range?.[0] ?? 0;
    },
  });
  if (aliased !== undefined) return { at: at(aliased), fault: { code: 'alias' } };
  if (!isMap(yaml.contents)) {
    return { at: { line: 1, column: 1 }, fault: { code: 'front-list' } };
  }
  return yaml.contents.items.flatMap(({ key, value }): readonly Entry[] => {
    if (!isScalar(key)) return [];
    const entry = { key: String(key.value), at: at(key.range?.[0] ?? 0) };
    if (!isScalar(value)) return [value === null ? entry : { ...entry, value: 'list' }];
    const text = (value.source ?? String(value.value ?? '')).trim();
    return [text === '' ? entry : { ...entry, value: { text, at: at(value.range?.[0] ?? 0) } }];
  });
};
