/**
 * Where things stand in the sources: the line on which a formula, a limit, a finding or a decision
 * is defined, and the lines of checks that speak of one.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import ts from 'typescript';

const filesBelow = (folder) =>
  readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && entry.name.endsWith('.ts'))
    .map((entry) => join(entry.parentPath, entry.name))
    .toSorted();

const parsed = (file) =>
  ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);

const lineOf = (source, node) =>
  source.getLineAndCharacterOfPosition(node.getStart(source)).line + 1;

function walk(node, see) {
  see(node);
  ts.forEachChild(node, (child) => walk(child, see));
}

const nameOf = ({ name }) =>
  name && (ts.isIdentifier(name) || ts.isStringLiteralLike(name)) ? name.text : undefined;

/** The kinds of entries, by the property of a part that they stand under. */
const kinds = [
  ...['formulas', 'limits', 'findings', 'decisions'],
  ...['parameters', 'tables', 'wordTables'],
];

/** The kind under which an entry stands, if it is one: `formulas: { 'tongue.loaded': { … } }`. */
function kindOf(entry) {
  const holder = entry.parent;
  if (!ts.isObjectLiteralExpression(holder)) return;
  const outer = holder.parent;
  if (ts.isPropertyAssignment(outer)) return kinds.find((kind) => kind === nameOf(outer));
  // Entries that several parts share are gathered in a constant first: `const worn = { … }`.
  if (ts.isObjectLiteralExpression(entry.initializer)) return shapeOf(entry.initializer);
  return undefined;
}

/** By its own properties; an entry outside a part is told from any other object so. */
function shapeOf(object) {
  const has = new Set(object.properties.map(nameOf));
  if (has.has('is') && has.has('unit') && has.has('source')) return 'formulas';
  if (has.has('used') && has.has('limit')) return 'limits';
  if (has.has('otherwise') && has.has('source')) return 'findings';
  if (has.has('hit') && has.has('rows')) return 'decisions';
  if (has.has('keyUnit') && has.has('rows')) return 'tables';
  if (has.has('values') && has.has('valueUnit')) return 'wordTables';
  if (has.has('values') && has.has('source')) return 'parameters';
  return undefined;
}

/** `formulas/tongue.loaded` → every place where one of that name is defined. */
export function definitions(root) {
  const places = new Map();
  for (const file of ['trade', 'topics'].flatMap((each) =>
    filesBelow(join(root, 'packages/rules/src', each)),
  )) {
    if (file.endsWith('.test.ts')) continue;
    const source = parsed(file);
    walk(source, (node) => {
      if (!ts.isPropertyAssignment(node)) return;
      const [kind, name] = [kindOf(node), nameOf(node)];
      if (kind === undefined || name === undefined) return;
      const key = `${kind}/${name}`;
      const place = { file: shortOf(root, file), line: lineOf(source, node) };
      places.set(key, [...(places.get(key) ?? []), place]);
    });
  }
  return places;
}

/** Name → the lines of the checks in a folder whose strings are that name. */
export function mentions(root, folder) {
  const places = new Map();
  for (const file of filesBelow(join(root, folder))) {
    const source = parsed(file);
    walk(source, (node) => {
      if (!ts.isStringLiteralLike(node)) return;
      const place = { file: shortOf(root, file), line: lineOf(source, node) };
      const known = places.get(node.text) ?? [];
      if (known.some((each) => each.file === place.file && each.line === place.line)) return;
      places.set(node.text, [...known, place]);
    });
  }
  return places;
}

const shortOf = (root, file) => relative(root, file).split(sep).join('/');
