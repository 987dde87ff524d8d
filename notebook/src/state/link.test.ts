import { readdirSync, readFileSync } from 'node:fs';
import { crc32, deflateRawSync } from 'node:zlib';
import { judgeCaseNow, readCase } from '@tarebook/casebook';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { readAddress } from './address';
import { checksum } from './checksum';
import { factsAlone } from './facts-alone';
import { codeFor, linkFor, pack, unpack } from './link';
import { sharedName } from './link-name';

const seed = Number(process.env.TAREBOOK_SEED ?? 20261101);
const folder = new URL('../../../cases/tow-fit/', import.meta.url);
const cases = readdirSync(folder).map((file) => ({
  name: file.slice(0, -'.md'.length),
  text: readFileSync(new URL(file, folder), 'utf8'),
}));
const base = 'https://alder-ford.example/tarebook/';

const packedIn = (href: string): string => {
  const address = readAddress(new URL(href).hash);
  return address.page === 'case' ? (address.packed ?? '') : '';
};

/** The bytes of a packed case laid out by hand, with Node's own deflate and checksum. */
function packedByHand(text: string, change: (bytes: Buffer) => void = () => undefined): string {
  const body = Buffer.from(text, 'utf8');
  const head = Buffer.alloc(5);
  head[0] = 1;
  head.writeUInt32BE(crc32(body), 1);
  const all = Buffer.concat([head, deflateRawSync(body)]);
  change(all);
  return all.toString('base64url');
}

test('the checksum is that of RFC 1952: the published check value, and zlib on any bytes', () => {
  // The check value of CRC-32/ISO-HDLC as catalogues of such sums print it.
  expect(checksum(new TextEncoder().encode('123456789'))).toBe(0xcbf43926);
  fc.assert(
    fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
      expect(checksum(bytes)).toBe(crc32(bytes));
    }),
    { seed },
  );
});

test('any text survives the link, byte for byte', async () => {
  await fc.assert(
    fc.asyncProperty(fc.string({ unit: 'binary', maxLength: 400 }), async (text) => {
      const packed = await pack(text);
      expect(packed).toMatch(/^[\w-]+$/);
      expect(await unpack(packed)).toBe(text);
    }),
    { seed, numRuns: 200 },
  );
});

test('a link made by general-purpose tools opens the same', async () => {
  for (const { text } of cases) expect(await unpack(packedByHand(text))).toBe(text);
});

test('every worked case fits into a link whole, and the link leads to it', async () => {
  for (const { name, text } of cases) {
    const link = await linkFor(readCase(text), name, base);
    expect(link?.without, name).toBe('nothing');
    expect(readAddress(new URL(link?.href ?? base).hash)).toMatchObject({ topic: 'tow-fit', name });
    expect(await unpack(packedIn(link?.href ?? ''))).toBe(text);
  }
});

test('every worked case fits into a code of at most 1,200 characters with the same answer', async () => {
  for (const { name, text } of cases) {
    const doc = readCase(text);
    const code = await codeFor(doc, name, base);
    expect(code?.href.length, name).toBeLessThanOrEqual(1200);
    const opened = readCase(await unpack(packedIn(code?.href ?? '')));
    expect(opened.troubles, name).toEqual([]);
    expect(opened.front.title).toBe(doc.front.title);
    const { trace: _, ...answer } = judgeCaseNow(opened);
    const { trace: __, ...wanted } = judgeCaseNow(doc);
    expect(answer, name).toEqual(wanted);
  }
});

test('a case too long for a code leaves out its words, then where it was read, then has none', async () => {
  const rows = (count: number): string =>
    Array.from(
      { length: count },
      (_, i) => `| Box ${(i * 7919) % 9973} | ${(i % 90) + 1} lb |`,
    ).join('\n');
  const long = (count: number, from: string): string =>
    `---\ntitle: Many boxes\ntopic: tow-fit\n---\n\n| Fact | Value | Read from |\n| --- | --- | --- |\n| \`trailer.gvwr\` | 5,000 lb | ${from} |\n\n| \`trailer.cargo\` | Weight |\n| --- | --- |\n${rows(count)}\n`;
  const noise = Array.from({ length: 500 }, (_, i) => ((i * i * 7919) % 9973).toString(36)).join(
    ' ',
  );
  const without = async (text: string) => (await codeFor(readCase(text), 'boxes', base))?.without;
  expect(await without(long(3, 'label'))).toBe('nothing');
  expect(await without(`${long(3, 'label')}\n${noise}\n`)).toBe('words');
  expect(await without(long(3, noise))).toBe('places');
  expect(await without(long(600, 'label'))).toBeUndefined();
});

test('a case with an entry that cannot be read is carried whole or not at all', async () => {
  const bySize = cases.toSorted((a, b) => a.text.length - b.text.length);
  for (const [each, code] of [
    [bySize[0], 'nothing'],
    [bySize.at(-1), undefined],
  ] as const) {
    const text = each?.text.replace(/\| \d,?\d* lb \|/, '| five hundred |') ?? '';
    const doc = readCase(text);
    expect(doc.troubles.length).toBeGreaterThan(0);
    const link = await linkFor(doc, 'x', base);
    expect(await unpack(packedIn(link?.href ?? ''))).toBe(text);
    expect((await codeFor(doc, 'x', base))?.without).toBe(code);
  }
});

test('facts alone read back as the very same facts, whatever stands in a label', () => {
  const odd = fc.stringMatching(/^[ -~“é]{1,30}$/).filter((text) => text.trim() !== '');
  fc.assert(
    fc.property(odd, odd, (label, title) => {
      const facts = {
        'trailer.gvwr': '4,000–4,400 lb',
        'trailer.cargo': [{ label: label.trim().replace(/\s+/g, ' '), weight: '90 lb' }],
      };
      const { topic } = readCase('---\ntitle: x\ntopic: tow-fit\n---\n');
      if (!topic) throw new Error('There is no such topic.');
      const doc = readCase(
        factsAlone(
          {
            front: { title: title.trim(), topic: 'tow-fit' },
            topic,
            facts,
            readFrom: { 'trailer.gvwr': label.trim().replace(/\s+/g, ' ') },
          },
          true,
        ),
      );
      expect(doc.troubles).toEqual([]);
      expect({ ...doc.facts }).toEqual(facts);
      expect(doc.front.title).toBe(title.trim());
    }),
    { seed, numRuns: 500 },
  );
});

const one = /^[^.]+[^.]*\.( [^.]+\.)?$/;

test('a damaged or cut link is told in a sentence or two, and never opens as something else', async () => {
  const [first] = cases;
  if (!first) throw new Error('There are no cases.');
  const packed = await pack(first.text);
  await fc.assert(
    fc.asyncProperty(
      fc.nat(packed.length - 1),
      fc.constantFrom('A', 'z', '0', '-', '_', '%', ' ', 'é', ''),
      fc.boolean(),
      async (at, put, cut) => {
        const damaged = cut
          ? packed.slice(0, at)
          : packed.slice(0, at) + put + packed.slice(at + 1);
        const outcome = await unpack(damaged).catch((problem: unknown) => problem);
        if (outcome === first.text) return;
        expect(outcome).toBeInstanceOf(Error);
        expect(outcome instanceof Error ? outcome.message : '').toMatch(/^This link .*\.$/);
        expect(outcome instanceof Error ? outcome.message : '').toMatch(one);
      },
    ),
    { seed, numRuns: 400 },
  );
});

test('a link that would unfold to more than 1 MB is refused without being unfolded', async () => {
  const bomb = packedByHand('x'.repeat(200_000_000));
  const before = process.memoryUsage().arrayBuffers;
  await expect(unpack(bomb)).rejects.toThrow('more than a case may be');
  expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(50_000_000);
  expect(await unpack(packedByHand('x'.repeat(1_048_576)))).toHaveLength(1_048_576);
  await expect(unpack(packedByHand('x'.repeat(1_048_577)))).rejects.toThrow('1 MB');
});

test('a link of another version says so', async () => {
  const other = packedByHand('text', (bytes) => bytes.writeUInt8(2, 0));
  await expect(unpack(other)).rejects.toThrow('another version');
});

test('two shared cases of one name have names of their own', () => {
  expect(sharedName('crossover', 'a')).not.toBe(sharedName('crossover', 'b'));
  expect(sharedName('crossover', 'a')).toMatch(/^shared: crossover [0-9a-f]{8}$/);
});
