import { isAlias, isMap, isScalar, isSeq, LineCounter, parseDocument, visit } from 'yaml';
import type { FrontReader } from './front';
import type { Entry, EntryRow, EntryWords } from './front-plain';

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
  const wordsOf = (node: unknown): EntryWords | undefined => {
    if (!isScalar(node)) return undefined;
    const text = (node.source ?? String(node.value ?? '')).trim();
    return text === '' ? undefined : { text, at: at(node.range?.[0] ?? 0) };
  };
  /** A list of which each row is a map of words, such as links with label and address. */
  const rowsOf = (list: unknown): readonly EntryRow[] | undefined => {
    if (!isSeq(list)) return undefined;
    const rows = list.items.map((item): EntryRow | undefined => {
      if (!isMap(item)) return undefined;
      const cells = item.items.flatMap(({ key, value }) => {
        const words = wordsOf(value);
        return isScalar(key) && words ? [[String(key.value), words] as const] : [];
      });
      return { at: at(item.range?.[0] ?? 0), cells: Object.fromEntries(cells) };
    });
    return rows.every((row) => row !== undefined) ? rows : undefined;
  };
  const itemsOf = (list: unknown): readonly EntryWords[] | undefined => {
    if (!isSeq(list)) return undefined;
    const items = list.items.map(wordsOf);
    return items.every((item) => item !== undefined) ? items : undefined;
  };
  return yaml.contents.items.flatMap(({ key, value }): readonly Entry[] => {
    if (!isScalar(key)) return [];
    const entry = { key: String(key.value), at: at(key.range?.[0] ?? 0) };
    if (isScalar(value)) {
      const words = wordsOf(value);
      return [words ? { ...entry, value: words } : entry];
    }
    if (value === null) return [entry];
    const rows = rowsOf(value);
    const items = itemsOf(value);
    return [{ ...entry, value: 'list', ...(rows && { rows }), ...(items && { items }) }];
  });
};
