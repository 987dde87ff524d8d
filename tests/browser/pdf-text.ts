import { inflateSync } from 'node:zlib';

/** What a PDF of Chromium's shows: how many pages, and the text on them. */
export type Printed = { readonly pages: number; readonly text: string };

type Part = { readonly dictionary: string; readonly stream: string };

/** Folded streams are unfolded; what is no text, a font or a picture, is left empty. */
function unfolded(dictionary: string, body: string): string {
  if (!dictionary.includes('/FlateDecode')) return body;
  try {
    return inflateSync(Buffer.from(body, 'latin1')).toString('latin1');
  } catch {
    return '';
  }
}

/** The objects of the file by number. */
function partsOf(file: string): ReadonlyMap<string, Part> {
  const found = new Map<string, Part>();
  for (const part of file.split('endobj')) {
    const [head = '', number = ''] = /(?:^|\s)(\d+) 0 obj/.exec(part) ?? [];
    if (number === '') continue;
    const body = part.slice(part.indexOf(head) + head.length);
    const at = body.search(/stream\r?\n/);
    const dictionary = at < 0 ? body : body.slice(0, at);
    const begin = at + (body.startsWith('stream\r', at) ? 8 : 7);
    const stream = at < 0 ? '' : body.slice(begin, body.lastIndexOf('endstream'));
    found.set(number, { dictionary, stream: unfolded(dictionary, stream) });
  }
  return found;
}

const character = (hex: string): string =>
  (hex.match(/.{4}/g) ?? []).map((each) => String.fromCharCode(Number.parseInt(each, 16))).join('');

/** ISO 32000-1, 9.10.3: which glyph of a font stands for which characters. */
function charactersOf(map: string): ReadonlyMap<number, string> {
  const found = new Map<number, string>();
  for (const [, block = ''] of map.matchAll(/beginbfchar([\s\S]*?)endbfchar/g)) {
    for (const [, from = '', to = ''] of block.matchAll(/<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>/g)) {
      found.set(Number.parseInt(from, 16), character(to));
    }
  }
  for (const [, block = ''] of map.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
    const range = /<([0-9A-Fa-f]+)>\s*<([0-9A-Fa-f]+)>\s*(?:<([0-9A-Fa-f]+)>|\[([^\]]*)\])/g;
    for (const [, from = '', to = '', first = '', list = ''] of block.matchAll(range)) {
      const [low, high] = [Number.parseInt(from, 16), Number.parseInt(to, 16)];
      const each = [...list.matchAll(/<([0-9A-Fa-f]+)>/g)].map(([, hex = '']) => character(hex));
      for (let glyph = low; glyph <= high; glyph += 1) {
        const at = glyph - low;
        const start = Number.parseInt(first, 16);
        found.set(glyph, each[at] ?? String.fromCharCode(start + at));
      }
    }
  }
  return found;
}

/** Reads page count and text; made for what Chromium prints, not for any PDF. */
export function textOfPdf(pdf: Buffer): Printed {
  const file = pdf.toString('latin1');
  const parts = partsOf(file);
  const all = [...parts.values()];
  const names = new Map<string, ReadonlyMap<number, string>>();
  for (const { dictionary } of all) {
    for (const [, name = '', number = ''] of dictionary.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
      const map = /\/ToUnicode (\d+) 0 R/.exec(parts.get(number)?.dictionary ?? '')?.[1] ?? '';
      const characters = parts.get(map)?.stream;
      if (characters !== undefined) names.set(name, charactersOf(characters));
    }
  }
  let text = '';
  for (const { stream } of all) {
    if (!/\bBT\b/.test(stream)) continue;
    let font: ReadonlyMap<number, string> | undefined;
    const token = /\/(F\d+) [\d.]+ Tf|<([0-9A-Fa-f]+)>/g;
    for (const [, name, hex] of stream.matchAll(token)) {
      if (name !== undefined) font = names.get(name);
      else if (hex !== undefined) {
        const glyphs = hex.match(/.{4}/g) ?? [];
        text += glyphs.map((glyph) => font?.get(Number.parseInt(glyph, 16)) ?? '').join('');
      }
    }
    text += '\n';
  }
  return { pages: all.filter(({ dictionary }) => /\/Type \/Page\b/.test(dictionary)).length, text };
}
