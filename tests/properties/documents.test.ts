import { readdirSync, readFileSync } from 'node:fs';
import { type CaseDocument, judgeCaseNow, overBudget, readCase } from '@tarebook/casebook';
import { remedies, type Topic } from '@tarebook/rules';
import { towFit } from '@tarebook/rules/tow-fit';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { casesFolder } from '../cases/files';

const seed = Number(process.env.TAREBOOK_SEED ?? 20_261_101);

/** Every filed document, refused ones too, cut into what a change may be made of. */
const texts = readdirSync(casesFolder, { recursive: true, withFileTypes: true })
  .filter((entry) => entry.isFile() && entry.name.endsWith('.md'))
  .map((entry) => readFileSync(`${entry.parentPath}/${entry.name}`, 'utf8'));
const lines = [...new Set(texts.flatMap((text) => text.split('\n')))];

const strange = [
  ...['\0', '\u202e', '\u200f', '\ufeff', '\ud800', '\u2028', '\u001b[2J', '\u00a0', '\r', '\r\n'],
  ...['|', '\\|', '`', '---\n', '\n', ':::', ':::a\n', ':a[', '`= verdict`', '`__proto__`', '[a]('],
  ...['9'.repeat(400), '-', '±', '–', ' lb', ' unknown ', '&a ', '*a', '[', '{', '<script>', '~'],
  ...['| --- |', '1/0', "'", '"', '%', '½', 'constructor', '# ', '> ', '- ', '~~~\n', '![x](', '#'],
  ...['about ', 'at least ', '0x10', '1e9', 'NaN', 'Infinity', '-0', '<!--', '&#0;', '&#10;', '\t'],
];

const place = fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true });
const piece = fc.oneof(
  { weight: 3, arbitrary: fc.constantFrom(...strange) },
  { weight: 3, arbitrary: fc.constantFrom(...lines).map((line) => `\n${line}\n`) },
  { weight: 1, arbitrary: fc.string({ unit: 'binary', maxLength: 12 }) },
  {
    weight: 1,
    arbitrary: fc
      .tuple(fc.constantFrom(...strange), fc.integer({ min: 2, max: 2_000 }))
      .map(([sign, times]) => sign.repeat(times)),
  },
);
const change = fc.record({ at: place, cut: fc.constantFrom(0, 0, 1, 3, 20, 200), put: piece });

/** Some blocks of a filed document behind its front matter: short, so that many can be read. */
const shortened = fc
  .tuple(
    fc.constantFrom(...texts),
    fc.array(fc.constantFrom(true, false, false), { minLength: 8, maxLength: 8 }),
  )
  .map(([text, kept]) => {
    const [front = '', ...blocks] = text.split('\n\n');
    const some = blocks.filter((block, i) => kept[i % 8] && (block.startsWith('|') || i % 3 === 0));
    return [front, ...some, ''].join('\n\n');
  });

/** A document with a few things put in, left out, or written over. */
const document = fc
  .tuple(
    fc.oneof({ weight: 9, arbitrary: shortened }, { weight: 1, arbitrary: fc.string() }),
    fc.array(change, { maxLength: 4 }),
  )
  .map(([text, changes]) =>
    changes.reduce((now, { at, cut, put }) => {
      const from = Math.floor(at * now.length);
      return now.slice(0, from) + put + now.slice(from + cut);
    }, text),
  );

function processor(work: () => void): number {
  const before = process.cpuUsage();
  work();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** Reads a document, and holds what must hold of whatever comes of it. */
function readSoundly(text: string): CaseDocument {
  const doc = readCase(text);
  expect(doc.text).toBe(text);
  for (const { line, column, says } of doc.troubles) {
    const sound = line >= 1 && column >= 1 && /\S/.test(says) && !/\p{Cc}/u.test(says);
    expect(sound && says.length < 900, `${line}:${column}: ${says}`).toBe(true);
  }
  return doc;
}

/** Every limit that was asked is kept where an answer says that all is well. */
function expectSound(topic: Topic, doc: CaseDocument): void {
  const { outcome, words, limits, findings } = judgeCaseNow(doc);
  expect(words).not.toBe('');
  if (outcome !== topic.outcomes.ok.id && outcome !== topic.outcomes.care.id) return;
  for (const { used, limit, state } of limits) {
    if (state !== 'not-asked') expect(used.hi).toBeLessThanOrEqual(limit.lo + 1e-6);
  }
  for (const { level } of findings) expect(['stop', 'unknown']).not.toContain(level);
}

/**
 * What a document of ordinary size may take is 50 ms; the rest up to what fails is for what else the
 * process does meanwhile, such as collecting what is no longer used.
 */
const most = 50;
const slack = 5;

test('10,000 documents: none stops the reader, none takes long, and none fits without its ratings', () => {
  let [refused, sound, judged] = [0, 0, 0];
  fc.assert(
    fc.property(document, (text) => {
      let doc: CaseDocument | undefined;
      const taken = processor(() => {
        if (overBudget(text)) refused += 1;
        doc = readSoundly(text);
      });
      if (taken >= most * slack) {
        const again = Math.min(...[0, 1, 2].map(() => processor(() => readSoundly(text))));
        expect(again).toBeLessThan(most * slack);
      }
      if (!doc?.topic || doc.troubles.length > 0) return;
      sound += 1;
      // To judge takes longer than to read, and there are tests enough that judge.
      if (sound % 4 !== 0) return;
      judged += 1;
      expectSound(doc.topic, doc);
    }),
    { numRuns: 10_000, seed },
  );
  // Many changes only touch prose: those must still be judged. And some must be too much.
  expect(judged).toBeGreaterThan(200);
  expect(refused).toBeGreaterThan(50);
});

test('of a list of a hundred rows not every change is tried, and that is said', () => {
  const rows = Array.from({ length: 100 }, (_, i) => ({
    weight: `${19 + (i % 3)} lb`,
    ahead: '1 ft',
  }));
  const facts = {
    'vehicle.maxTrailerWeight': '5,000 lb',
    'vehicle.maxTongueCarried': '500 lb',
    'vehicle.placardPayload': '1,260 lb',
    'trailer.dryWeight': '3,800 lb',
    'trailer.dryTongueWeight': '430 lb',
    'trailer.ballToAxle': '16 ft',
    'trailer.cargo': rows,
  };
  let cutShort: boolean | undefined;
  const taken = processor(() => {
    cutShort = remedies(towFit, { asOf: '2026-11-01', facts }).cutShort;
  });
  expect(cutShort).toBe(true);
  // Without an end it takes minutes of processor.
  expect(taken).toBeLessThan(5_000);
});
