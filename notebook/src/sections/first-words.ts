import type { Block } from '@tarebook/casebook';
import type { Nodes } from 'mdast';

/** The first words of what was written, without any mark-up. */
export function firstWords(blocks: readonly Block[]): string {
  const text = (node: Nodes): string => {
    if ('value' in node) return node.value;
    return 'children' in node ? node.children.map(text).join('') : '';
  };
  const first = blocks.find((block) => block.kind === 'prose');
  return first?.kind === 'prose' ? text(first.node) : '';
}
