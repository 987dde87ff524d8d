/**
 * Stands in for the Markdown writer that the Markdown reader's extensions would load: documents are
 * changed by replacing stretches of their text, so nothing here ever writes one from a tree.
 */
export const defaultHandlers: Readonly<Record<string, never>> = {};

function never(): never {
  throw new Error('Nothing here writes Markdown from a tree.');
}

export { never as markdownTable, never as stringifyEntitiesLight };
