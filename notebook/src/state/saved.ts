import { type CaseDocument, judged } from '@tarebook/casebook';
import type { Answer } from '@tarebook/rules/engine';

export type SavedFile = { readonly name: string; readonly type: string; readonly text: string };

/** The case as Markdown, byte for byte as it stands. */
export const asMarkdown = (name: string, text: string): SavedFile => ({
  name: `${fileName(name)}.md`,
  type: 'text/markdown',
  text,
});

/**
 * The answer as other programs read it, and under `document` the case itself, so that the file can
 * be opened here again.
 */
export const asJson = (name: string, doc: CaseDocument, answer: Answer): SavedFile => ({
  name: `${fileName(name)}.json`,
  type: 'application/json',
  text: `${JSON.stringify({ ...judged(answer, doc), document: doc.text }, null, 2)}\n`,
});

/** A name that every file system takes. */
export function fileName(name: string): string {
  const plain = name.replace(/[^\p{L}\p{N}._-]+/gu, '-').replace(/^[-.]+|[-.]+$/g, '');
  return plain === '' ? 'case' : plain.slice(0, 80);
}
