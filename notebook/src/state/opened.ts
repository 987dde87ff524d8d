import { isRig, readCase, readRig } from '@tarebook/casebook';
import { factsAlone } from './facts-alone';
import { fileName } from './saved';

/** A case read from a file, or why there is none in it, in one sentence. */
export type Opened =
  | { readonly topic: string; readonly name: string; readonly text: string }
  | { readonly says: string };

const mostBytes = 1_048_576;

function textIn(bytes: Uint8Array): string | undefined {
  try {
    const text = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(bytes);
    return text.includes('\0') ? undefined : text;
  } catch {
    return undefined;
  }
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const isText = (value: unknown): value is string => typeof value === 'string';

const isTextRecord = (value: unknown): value is Readonly<Record<string, string>> =>
  isRecord(value) && Object.values(value).every(isText);

type FactsWritten = Readonly<Record<string, string | readonly Readonly<Record<string, string>>[]>>;

/** Facts as a case writes them: words, and rows of words. */
const areFacts = (value: unknown): value is FactsWritten =>
  isRecord(value) &&
  Object.values(value).every(
    (each) => isText(each) || (Array.isArray(each) && each.every(isTextRecord)),
  );

/** A saved answer tells what was asked: its facts, as a document. */
function documentOf(file: string, value: unknown): string | undefined {
  if (!isRecord(value)) return undefined;
  const { document, topic, asOf, asked } = value;
  if (isText(document)) return document;
  if (!isText(topic) || !isRecord(asked) || !areFacts(asked.facts)) return undefined;
  const readFrom = isTextRecord(asked.readFrom) ? asked.readFrom : {};
  const front = { title: stem(file), topic, ...(isText(asOf) && { asOf }) };
  const { topic: known } = readCase(`---\ntitle: x\ntopic: ${JSON.stringify(topic)}\n---\n`);
  return factsAlone({ front, facts: asked.facts, readFrom, ...(known && { topic: known }) }, true);
}

/** The Markdown that a file holds: its whole text, or what a saved answer holds of its case. */
function documentIn(file: string, text: string): { text: string } | { says: string } {
  if (!/^\ufeff?\s*[[{]/.test(text)) return { text };
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\ufeff/, ''));
  } catch {
    return {
      says: `${file} begins like JSON and cannot be read as such; save it once more where it came from.`,
    };
  }
  if (isRecord(value) && value.kind === 'tarebook-everything') {
    return {
      says: `${file} holds everything that was on a device; open it at the foot of the page.`,
    };
  }
  const document = documentOf(file, value);
  if (document !== undefined) return { text: document };
  return {
    says: `${file} is JSON without a case in it; open a case’s Markdown, or JSON saved on this page.`,
  };
}

/** Reads a file as a case. What can be mended on the page is opened with its troubles. */
export function openCase(file: string, bytes: Uint8Array): Opened {
  if (bytes.length > mostBytes) {
    return { says: `${file} is larger than 1 MB; a worked case is a page or two of Markdown.` };
  }
  if (bytes.length === 0) return { says: `${file} is empty; a worked case is a page of Markdown.` };
  const text = textIn(bytes);
  if (text === undefined) {
    return { says: `${file} is no text; a worked case is Markdown, saved as UTF-8.` };
  }
  const held = documentIn(file, text);
  if ('says' in held) return held;
  if (isRig(held.text)) {
    const [trouble] = readRig(held.text).troubles;
    if (trouble) return { says: `${file}, line ${trouble.line}: ${trouble.says}` };
    return { topic: 'rig', name: stem(file), text: held.text };
  }
  const doc = readCase(held.text);
  if (!doc.topic) {
    const [first] = doc.troubles;
    const says = first?.says ?? 'It names no topic.';
    return { says: `${file}, line ${first?.line ?? 1}: ${says}` };
  }
  return { topic: doc.topic.id, name: stem(file), text: held.text };
}

const stem = (file: string): string => fileName(file.replace(/\.(md|markdown|txt|json)$/i, ''));
