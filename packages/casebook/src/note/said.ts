import type { RootContent } from 'mdast';
import { toString as textOf } from 'mdast-util-to-string';
import type { NoteDocument } from './shapes';

/**
 * What of a note is the answer: everything down to the first line across (`---`), without what is
 * quoted, which is the question as it was asked. Below the line stands what is for the reader alone.
 */
function answerBlocks({ blocks }: Pick<NoteDocument, 'blocks'>): readonly RootContent[] {
  const line = blocks.findIndex(({ type }) => type === 'thematicBreak');
  return (line < 0 ? blocks : blocks.slice(0, line)).filter(({ type }) => type !== 'blockquote');
}

const plain = (node: RootContent): string =>
  textOf(node, { includeHtml: false, includeImageAlt: false }).replace(/\s+/g, ' ').trim();

/** A block as lines of plain text: an item of a list is a line, a row of a table too. */
function linesOf(node: RootContent): readonly string[] {
  if (node.type === 'list') return node.children.map((item) => `– ${plain(item)}`);
  if (node.type === 'table') {
    return node.children.map((row) => row.children.map(plain).join(', '));
  }
  if (node.type === 'html' || node.type === 'definition') return [];
  return [plain(node)].filter((line) => line !== '');
}

/** The answer as plain text, a paragraph each. */
export const paragraphsOf = (note: Pick<NoteDocument, 'blocks'>): readonly string[] =>
  answerBlocks(note)
    .map((block) => linesOf(block).join('\n'))
    .filter((each) => each !== '');

const sentences = new Intl.Segmenter('en-US', { granularity: 'sentence' });

/** The answer sentence by sentence, as it is said; an item of a list is a sentence of its own. */
export function sentencesOf(note: Pick<NoteDocument, 'blocks'>): readonly string[] {
  const lines = answerBlocks(note).flatMap(linesOf);
  return lines.flatMap((line) => {
    const said = [...sentences.segment(line.replace(/^– /, ''))].map((each) => each.segment.trim());
    return said
      .filter((each) => each !== '')
      .map((each) => (/[.!?…:]$/.test(each) ? each : `${each}.`));
  });
}
