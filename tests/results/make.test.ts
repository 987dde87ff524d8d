import { existsSync, readFileSync } from 'node:fs';
import { join, posix } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readCase } from '@tarebook/casebook';
import { topics } from '@tarebook/rules';
import { namesIn, parseFormula } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { resultPages } from './make.mjs';
import { unnoticed } from './unnoticed.mjs';

const root = fileURLToPath(new URL('../../', import.meta.url));
const { pages, found } = resultPages({
  root,
  topics: Object.values(topics),
  engine: { namesIn, parseFormula },
  readCase: (text) => readCase(text),
});

describe.each(found.map((each) => [each.topic.id, each] as const))('%s', (_, { topic, rows }) => {
  test('every result that a reader looks for first has its place, its source and a case', () => {
    const lacking = topic.headline.flatMap((name) => {
      const row = rows.find(({ result }) => result.id === name);
      // A list, a ranking or a simulation is no result with a page of its own.
      if (!row) return [];
      const { places, cases } = row.around;
      return places.length > 0 && cases.length > 0 ? [] : [name];
    });
    expect(lacking).toEqual([]);
  });

  test('something of it is checked against an outside source', () => {
    expect(rows.some(({ around }) => around.checks.length > 0)).toBe(true);
  });
});

test('a place is a line on which the id of the entry stands', () => {
  const wrong = found.flatMap(({ rows }) =>
    rows.flatMap(({ result, around }) =>
      around.places
        .filter(({ file, line }) => {
          const text = readFileSync(join(root, file), 'utf8').split('\n')[line - 1] ?? '';
          return !text.includes(result.id);
        })
        .map(({ file, line }) => `${result.id} ${file}:${line}`),
    ),
  );
  expect(wrong).toEqual([]);
});

test('every link leads to a file or to another page', () => {
  const dead = [...pages].flatMap(([path, text]) =>
    [...text.matchAll(/\]\(([^)#]+)(?:#L\d+)?\)/g)].flatMap(([, to = '']) => {
      const target = posix.join('results', posix.dirname(path), to);
      const isPage = pages.has(posix.relative('results', target));
      return isPage || existsSync(join(root, target)) ? [] : [`${path} → ${to}`];
    }),
  );
  expect(dead).toEqual([]);
});

test('a parameter tells where its edge is held, or why no case turns a tenth from it', () => {
  const pages = [
    [
      'gas-supply/parameter.alarm.gasLife.md',
      /## A tenth more\n\n- .*tests\/cases\/edges\.test\.ts/,
    ],
    ['tow-fit/parameter.tongue.none.md', /A tenth more of nothing is nothing/],
    ['tow-fit/parameter.unplaced.behind.md', /for what nobody placed/],
  ] as const;
  for (const [path, says] of pages) expect(pageOf(path)).toMatch(says);
  const ids = new Set(found.flatMap(({ topic }) => Object.keys(topic.parameters)));
  expect(Object.keys(unnoticed).filter((id) => !ids.has(id))).toEqual([]);
});

const pageOf = (path: string): string => pages.get(path) ?? '';

test('what has no check itself names those of what stands on it', () => {
  const used = pageOf('tow-fit/formula.payload.used.md');
  expect(used).toMatch(/by way of \[`payload`\]\(limit\.payload\.md\).*tests\/published\//);
  expect(pageOf('tow-fit/README.md')).toMatch(/`payload\.used`.* by what stands on it: [1-9]/);
});

test('a finding shows each level with its sentence, and each number beside its name', () => {
  const structure = pageOf('used-trailer/finding.structure.md');
  expect(structure).toContain('stop, when soft.isKnown && soft.zones > soft.most');
  expect(structure).toContain('The trailer is soft in {soft.zones} places.');
  expect(structure).toMatch(/\[`soft\.most`\]\(parameter\.soft\.most\.md\) = 1\b/);
});

test('every parameter and table has a page with its rows, its source and who reads it', () => {
  for (const { topic } of found) {
    const { parameters = {}, tables = {} } = topic;
    for (const id of Object.keys(parameters)) {
      expect(pageOf(`${topic.id}/parameter.${id}.md`), id).toMatch(/from \d{4}-\d\d-\d\d/);
    }
    for (const [id, { rows }] of Object.entries(tables)) {
      const page = pageOf(`${topic.id}/table.${id}.md`);
      expect(page.match(/ → /g)?.length, id).toBe(rows.length);
      expect(page, id).not.toContain('On it stand:\n\nnothing else.');
    }
  }
});
