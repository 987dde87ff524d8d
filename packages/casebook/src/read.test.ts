import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { judgeCaseNow } from './judge';
import { mostCharacters } from './read';
import { readCase } from './read-any';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);
const root = new URL('../../../cases/', import.meta.url);
const texts = ['tow-fit/', 'refused/'].flatMap((folder) => {
  const inside = new URL(folder, root);
  return readdirSync(inside)
    .filter((name) => name.endsWith('.md'))
    .map((name) => readFileSync(new URL(name, inside), 'utf8'));
});

const front = '---\ntitle: Made up\ntopic: tow-fit\n---\n\n';
const table = (...rows: string[]) =>
  `${front}| Fact | Value | Read from |\n| --- | --- | --- |\n${rows.join('\n')}\n`;
const says = (text: string) => readCase(text).troubles.map((each) => each.says);

describe('what a hostile document can do is nothing', () => {
  test.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'prototype'])(
    '%s is no fact, and nothing is changed by it',
    (name) => {
      const doc = readCase(table(`| \`${name}\` | 5 lb | x |`));
      expect(doc.troubles).toHaveLength(1);
      expect(doc.troubles[0]?.says).toContain(name);
      expect(Object.hasOwn(Object.prototype, 'label')).toBe(false);
      expect(Object.getPrototypeOf({})).toBe(Object.prototype);
    },
  );

  test.each(['__proto__', 'constructor'])('%s is no list, topic, result or key either', (name) => {
    expect(says(`${front}| \`${name}\` | Weight |\n| --- | --- |\n| a | 5 lb |\n`)).not.toEqual([]);
    expect(says(`---\ntitle: x\ntopic: ${name}\n---\n`)).not.toEqual([]);
    expect(says(`${front}\`= ${name}\`\n`)).not.toEqual([]);
    expect(says(`${front}| Expect | Value |\n| --- | --- |\n| \`${name}\` | ok |\n`)).not.toEqual(
      [],
    );
    const column = `${front}| \`load.cargo\` | Weight | ${name} |\n| --- | --- | --- |\n| a | 5 lb | 1 |\n`;
    expect(says(column)).not.toEqual([]);
    expect(() => readCase(`---\n${name}: 1\ntopic: tow-fit\ntitle: x\n---\n`)).not.toThrow();
  });

  test('YAML names that unfold into a billion are refused in one sentence', () => {
    const levels = Array.from({ length: 9 }, (_, i) =>
      i === 0
        ? 'a0: &a0 [lol,lol,lol,lol,lol,lol,lol,lol,lol]'
        : `a${i}: &a${i} [${Array(9)
            .fill(`*a${i - 1}`)
            .join(',')}]`,
    );
    const start = performance.now();
    const found = says(`---\ntitle: x\ntopic: tow-fit\n${levels.join('\n')}\n---\n`);
    expect(found.length).toBeGreaterThan(0);
    expect(found.join(' ')).toMatch(/alias|name/i);
    expect(performance.now() - start).toBeLessThan(500);
  });

  const ones: readonly (readonly [string, string])[] = [
    ['a line of 10 MB', `${front}${'a'.repeat(10_000_000)}`],
    ['10 MB of brackets', `${front}${'['.repeat(10_000_000)}`],
    [
      'a table of 100,000 rows',
      table(...Array<string>(100_000).fill('| `trailer.dryWeight` | 5 lb | x |')),
    ],
  ];
  test.each(ones)('%s is refused in one sentence, and soon', (_, text) => {
    const start = performance.now();
    const doc = readCase(text);
    expect(performance.now() - start).toBeLessThan(200);
    expect(doc.troubles).toHaveLength(1);
    expect(doc.troubles[0]?.says).toContain(String(mostCharacters));
    expect(doc.text).toBe(text);
  });

  test('a NUL is refused with its place', () => {
    const doc = readCase(table('| `trailer.dryWeight` | 5\0 lb | x |'));
    expect(doc.troubles).toHaveLength(1);
    expect(doc.troubles[0]).toMatchObject({ line: 8 });
  });

  test('marks that run from the right do not hide what a value is', () => {
    expect(says(table('| `trailer.dryWeight` | \u202e5 lb | x |'))).toHaveLength(1);
    expect(says(table('| `trailer\u200f.dryWeight` | 5 lb | x |'))).toHaveLength(1);
  });

  test('brackets, quotes and lists as deep as a case may be long do not stop the reader', () => {
    for (const piece of [
      '> ',
      '- ',
      '[',
      '![](',
      '*',
      '_a ',
      '`',
      '<a',
      ':::predict\n',
      '| ',
      '~',
    ]) {
      const text = front + piece.repeat(Math.floor(2000 / piece.length));
      const start = performance.now();
      expect(() => readCase(text), piece).not.toThrow();
      expect(performance.now() - start, piece).toBeLessThan(2000);
    }
  });
});

describe('what is wrong is told with its place, in one sentence', () => {
  test.each([
    ['| `vehicle.gvw` | 7,000 lb | x |', 8, 3, /vehicle\.gvw.*vehicle\.gvwr/],
    ['| `vehicle.gvwr` | 7,000 | x |', 8, 20, /no unit/],
    ['| `vehicle.gvwr` | 7,000 gal | x |', 8, 20, /weight/],
    ['| `vehicle.gvwr` | -7 lb | x |', 8, 20, /outside/],
    ['| `vehicle.sevenWay` | maybe | x |', 8, 24, /yes, no, unknown/],
    ['| GVWR | 7,000 lb | x |', 8, 3, /id of a fact/],
    ['| `vehicle.gvwr` |  | x |', 8, 19, /unknown/],
  ])('%s', (row, line, column, message) => {
    const { troubles } = readCase(table(row));
    expect(troubles).toHaveLength(1);
    expect(troubles[0]).toMatchObject({ line, column });
    expect(troubles[0]?.says).toMatch(message);
  });

  test('what is quoted is cut where nobody would read on', () => {
    const long = '9'.repeat(5000);
    for (const text of [
      table(`| \`vehicle.gvwr\` | ${long} | x |`),
      table(`| \`${long}\` | 5 lb | x |`),
      table(`| ${long} | 5 lb | x |`),
      `${front}\`= ${long}\`\n`,
      `${front}| Expect | Value |\n| --- | --- |\n| \`trailer.loaded\` | ${long} |\n`,
    ]) {
      expect(says(text)).toHaveLength(1);
      expect(says(text)[0]?.length).toBeLessThan(300);
    }
  });

  test('a fact told twice names the line where it was told first', () => {
    const twice = table('| `vehicle.gvwr` | 7,000 lb | x |', '| `vehicle.gvwr` | 7,100 lb | y |');
    const { troubles } = readCase(twice);
    expect(troubles).toHaveLength(1);
    expect(troubles[0]).toMatchObject({ line: 9 });
    expect(troubles[0]?.says).toMatch(/8/);
  });
});

/** A small generator of its own, so that a seed alone tells the documents. */
function randomFrom(start: number): () => number {
  let state = start >>> 0;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 4_294_967_296;
  };
}

const strange = [
  '\0',
  '\u202e',
  '\u200f',
  '\ufeff',
  '\ud800',
  '|',
  '\\|',
  '`',
  '---\n',
  '\n',
  '\r',
  '\r\n',
  ':::',
  '`= verdict`',
  '`__proto__`',
  '9'.repeat(400),
  '-',
  '±',
  '–',
  ' lb',
  ' unknown ',
  '&a ',
  '*a',
  '[',
  '{',
  '<script>',
  '| --- |',
  '1/0',
  "'",
  '"',
  '%',
  '½',
  '\u00a0',
  'constructor',
  '# ',
  '> ',
  '- ',
  '~~~\n',
];

function mutated(random: () => number): string {
  const pick = <T>(all: readonly T[], otherwise: T): T =>
    all[Math.floor(random() * all.length)] ?? otherwise;
  let text = pick(texts, '');
  const times = 1 + Math.floor(random() * 6);
  for (let i = 0; i < times; i += 1) {
    const at = Math.floor(random() * text.length);
    const cut = Math.floor(random() * random() * 60);
    switch (Math.floor(random() * 5)) {
      case 0:
        text = text.slice(0, at) + text.slice(at + cut);
        break;
      case 1:
        text = text.slice(0, at) + pick(strange, '') + text.slice(at + cut);
        break;
      case 2: {
        const lines = text.split('\n');
        const line = Math.floor(random() * lines.length);
        lines.splice(line, 0, pick(pick(texts, '').split('\n'), ''));
        text = lines.join('\n');
        break;
      }
      case 3: {
        const lines = text.split('\n');
        lines.splice(Math.floor(random() * lines.length), 1 + Math.floor(random() * 3));
        text = lines.join('\n');
        break;
      }
      default:
        text = text.slice(0, at) + pick(strange, '').repeat(3) + text.slice(at);
    }
  }
  return text;
}

test('2,000 mutated cases: none throws, half take less than 50 ms, and none fits without its ratings', () => {
  const random = randomFrom(seed);
  const times: number[] = [];
  let sound = 0;
  for (let i = 0; i < 2000; i += 1) {
    const text = mutated(random);
    const start = performance.now();
    const doc = readCase(text);
    expect(doc.text).toBe(text);
    if (doc.topic && doc.troubles.length === 0) {
      const { outcome, limits, words } = judgeCaseNow(doc);
      sound += 1;
      expect(words).not.toBe('');
      if (outcome.startsWith('fits')) {
        for (const { used, limit, state } of limits) {
          if (state !== 'not-asked') expect(used.hi).toBeLessThanOrEqual(limit.lo);
        }
      }
    }
    for (const { line, column, says: message } of doc.troubles) {
      expect(line).toBeGreaterThanOrEqual(1);
      expect(column).toBeGreaterThanOrEqual(1);
      expect(message.length, message).toBeLessThan(900);
      expect(message).toMatch(/\S/);
    }
    times.push(performance.now() - start);
  }
  const [median = Infinity] = times.toSorted((a, b) => a - b).slice(1000);
  expect(median).toBeLessThan(50);
  // Many mutations only touch prose: those must still be judged.
  expect(sound).toBeGreaterThan(200);
});

test('a body nested deeper than anybody can read is refused in one sentence', () => {
  const text = `---\ntitle: Deep\ntopic: tow-fit\n---\n\n${'>'.repeat(100_000)} deep\n`;
  const { troubles } = readCase(text);
  expect(troubles.map(({ says }) => says)).toEqual([expect.stringContaining('nested too deep')]);
});
