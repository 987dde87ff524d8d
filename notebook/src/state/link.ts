import type { CaseDocument } from '@tarebook/casebook';
import { caseAddress } from './address';
import { checksum } from './checksum';
import { factsAlone } from './facts-alone';

/**
 * A case packed into the part of an address that never reaches a server.
 *
 *     version │ checksum of the text │ the text, deflated          ► base64url
 *      1 byte │              4 bytes │ RFC 1951
 */
const version = 1;
const headLength = 5;

/** What a packed case may unfold to; more is a mistake or an attack. */
const mostBytes = 1_048_576;
/** A link longer than this is cut by programs it passes through. */
const mostForLink = 8_000;
/** A code of more than this is too fine to be scanned from paper. */
const mostForCode = 1_200;

const broken = (why: string): Error =>
  new Error(`This link ${why}; ask for it once more. Nothing on this device was changed.`);

async function through(
  bytes: Uint8Array<ArrayBuffer>,
  change: CompressionStream | DecompressionStream,
  most: number,
): Promise<Uint8Array<ArrayBuffer> | undefined> {
  const reader = new Blob([bytes]).stream().pipeThrough(change).getReader();
  const parts: Uint8Array[] = [];
  let length = 0;
  for (let next = await reader.read(); !next.done; next = await reader.read()) {
    length += next.value.length;
    if (length > most) {
      await reader.cancel();
      return undefined;
    }
    parts.push(next.value);
  }
  const all = new Uint8Array(length);
  let at = 0;
  for (const each of parts) {
    all.set(each, at);
    at += each.length;
  }
  return all;
}

function toBase64url(bytes: Uint8Array): string {
  let text = '';
  for (const each of bytes) text += String.fromCharCode(each);
  return btoa(text).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '');
}

function fromBase64url(text: string): Uint8Array<ArrayBuffer> | undefined {
  if (!/^[\w-]+$/.test(text) || text.length % 4 === 1) return undefined;
  const plain = atob(text.replaceAll('-', '+').replaceAll('_', '/'));
  return Uint8Array.from(plain, (character) => character.charCodeAt(0));
}

/** Packs a text. Any string goes; what cannot be written in UTF-8 becomes U+FFFD. */
export async function pack(text: string): Promise<string> {
  const bytes = new TextEncoder().encode(text);
  const folded = await through(bytes, new CompressionStream('deflate-raw'), Infinity);
  const packed = new Uint8Array(headLength + (folded?.length ?? 0));
  packed[0] = version;
  new DataView(packed.buffer).setUint32(1, checksum(bytes));
  packed.set(folded ?? [], headLength);
  return toBase64url(packed);
}

/** @throws Error whose message is one sentence for the reader, when the link is not whole. */
export async function unpack(packed: string): Promise<string> {
  const bytes = fromBase64url(packed);
  if (!bytes || bytes.length <= headLength) {
    throw broken('is damaged or cut off, so the case in it cannot be read');
  }
  if (bytes[0] !== version) {
    throw new Error(
      'This link was made by another version of this page, or is damaged; reload the page and open it again.',
    );
  }
  const unfolded = await through(
    bytes.slice(headLength),
    new DecompressionStream('deflate-raw'),
    mostBytes,
  ).catch(() => {
    throw broken('is damaged or cut off, so the case in it cannot be read');
  });
  if (!unfolded) throw broken('holds more than a case may be (1 MB), and was not opened');
  if (checksum(unfolded) !== new DataView(bytes.buffer).getUint32(1)) {
    throw broken('is damaged, so the facts in it cannot be trusted');
  }
  return new TextDecoder('utf-8', { ignoreBOM: true }).decode(unfolded);
}

export type Carried = {
  /** The whole address. */
  readonly href: string;
  /** What did not fit: nothing, the words around the facts, or also where each fact was read. */
  readonly without: 'nothing' | 'words' | 'places';
};

/**
 * The link that carries the most of a case within a length.
 *
 * @param base the address of the page, without its fragment
 * @returns undefined when not even the facts alone fit
 */
async function carried(
  doc: CaseDocument,
  name: string,
  base: string,
  most: number,
): Promise<Carried | undefined> {
  const address = `${base}${caseAddress(doc.front.topic || 'unread', name)}`;
  const within = async (without: Carried['without'], text: string) => {
    const href = `${address}/${await pack(text)}`;
    return href.length <= most ? { href, without } : undefined;
  };
  const all = await within('nothing', doc.text);
  // What cannot be read cannot be told apart from the words around it.
  if (all || doc.troubles.length > 0) return all;
  return (
    (await within('words', factsAlone(doc, true))) ??
    (await within('places', factsAlone(doc, false)))
  );
}

export const linkFor = (doc: CaseDocument, name: string, base: string) =>
  carried(doc, name, base, mostForLink);

export const codeFor = (doc: CaseDocument, name: string, base: string) =>
  carried(doc, name, base, mostForCode);
