/**
 * A page for every result of every topic: formula, source, outside check, cases, where it is said.
 *
 *     topics' data ─┐
 *     sources ──────┼─► results/TOPIC/KIND.NAME.md, and README.md of each topic
 *     cases ────────┘
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileOf, indexOf, pageOf } from './page.mjs';
import { definitions, mentions } from './places.mjs';
import { resultsOf, saidOf } from './standing.mjs';
import { unnoticed } from './unnoticed.mjs';

/** As a case writes the name of a result. */
const expectedAs = ({ kind, id }) =>
  kind === 'limits' ? `limit.${id}` : kind === 'findings' ? `finding.${id}` : id;

/** Limits and findings have ids of their own, which no formula reads. */
const isNamed = ({ kind }) => kind !== 'limits' && kind !== 'findings';

/** The checks of what stands on it, the nearest that has any: where a sum is checked its parts are too. */
function throughOf(row, rowOf) {
  let above = row.around.under;
  const seen = new Set([row.result]);
  while (above.length > 0) {
    const checked = above.map(rowOf).filter(({ around }) => around.checks.length > 0);
    if (checked.length > 0) {
      return checked.map(({ result, around }) => ({ result, checks: around.checks }));
    }
    for (const each of above) seen.add(each);
    above = [...new Set(above.flatMap((each) => rowOf(each).around.under))].filter(
      (each) => !seen.has(each),
    );
  }
  return [];
}

function expectationsOf(root, topic, readCase) {
  const folder = `cases/${topic.id}`;
  const byName = new Map();
  for (const name of readdirSync(join(root, folder)).toSorted()) {
    if (!name.endsWith('.md')) continue;
    const file = `${folder}/${name}`;
    const { front, expectations } = readCase(readFileSync(join(root, file), 'utf8'));
    for (const { name: of, text, place } of expectations) {
      const found = { title: front.title, file, line: place.line, text };
      byName.set(of, [...(byName.get(of) ?? []), found]);
    }
  }
  return byName;
}

/** Of places of one name in several families, those that this topic can mean. */
function placesFor(topic, places = []) {
  const own = places.filter(({ file }) => file.includes(`/topics/${topic.id}/`));
  const shared = places.filter(({ file }) => file.includes('/trade/'));
  return own.length > 0 ? own : shared.length > 0 ? shared : places;
}

/** A check counts for a topic where its file bears the topic's name, or that of no other. */
function checksFor(topic, ids, places = []) {
  const named = ({ file }, id) => file.split('/').at(-1).includes(id);
  return places.filter((place) => named(place, topic.id) || !ids.some((id) => named(place, id)));
}

const nothing = 'A tenth more of nothing is nothing.';

/** Of a parameter: where its edge is held by itself, and why no case turns where it is a tenth more. */
function noticedOf(topic, { kind, id }, places = []) {
  if (kind !== 'parameters') return undefined;
  const edges = places.filter(({ file }) => file.endsWith('/edges.test.ts'));
  const isNothing = topic.parameters[id].values.every(({ value }) => value === 0);
  return { edges, why: isNothing ? nothing : unnoticed[id] };
}

/** Every page by its path below the folder for results. */
export function resultPages({ root, topics, engine, readCase }) {
  const places = definitions(root);
  const published = mentions(root, 'tests/published');
  const onEdges = mentions(root, 'tests/cases');
  const derived = [mentions(root, 'tests/differential'), mentions(root, 'tests/properties')];
  const ids = topics.map(({ id }) => id);
  const pages = new Map();
  const found = [];
  for (const topic of topics) {
    const results = resultsOf(topic, engine);
    const expected = expectationsOf(root, topic, readCase);
    const byName = new Map([...results.values()].map((each) => [expectedAs(each), each]));
    const rows = [...results].map(([key, result]) => {
      const name = expectedAs(result);
      const mentioned = (all) =>
        checksFor(topic, ids, [
          ...(all.get(name) ?? []),
          ...(name === result.id ? [] : (all.get(result.id) ?? [])),
        ]);
      const around = {
        places: placesFor(topic, places.get(key)),
        on: result.on.map((each) => byName.get(each) ?? each),
        under: isNamed(result)
          ? [...results.values()].filter(({ on }) => on.includes(result.id))
          : [],
        checks: mentioned(published),
        derivations: derived.flatMap(mentioned),
        cases: expected.get(name) ?? [],
        said: saidOf(topic, result),
        noticed: noticedOf(topic, result, onEdges.get(result.id)),
      };
      return { result, around };
    });
    const rowByResult = new Map(rows.map((row) => [row.result, row]));
    for (const row of rows) {
      const needs = row.around.checks.length === 0;
      row.around.through = needs ? throughOf(row, (result) => rowByResult.get(result)) : [];
    }
    const first = (row) => (topic.headline.includes(row.result.id) ? 0 : 1);
    const inOrder = rows.toSorted((a, b) => first(a) - first(b));
    pages.set(`${topic.id}/README.md`, indexOf(topic, inOrder));
    for (const { result, around } of rows)
      pages.set(`${topic.id}/${fileOf(result)}`, pageOf(topic, result, around));
    found.push({ topic, rows });
  }
  pages.set(
    'README.md',
    ['# Results', '', ...topics.map(({ id, title }) => `- [${title}](${id}/README.md)`), ''].join(
      '\n',
    ),
  );
  return { pages, found };
}
