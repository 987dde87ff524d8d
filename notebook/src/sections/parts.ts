import type { Block } from '@tarebook/casebook';

/** The document cut where the page puts its own sections in, its order kept. */
export type Parts = {
  /** What stands before the first table of facts. */
  readonly question: readonly Block[];
  /** From the first table to the last one, with what is written between, and the guess. */
  readonly known: readonly Block[];
  /** What the author writes after that: the reason. */
  readonly reason: readonly Block[];
};

const isTable = ({ kind }: Block): boolean => kind === 'facts' || kind === 'list';

export function partsOf(blocks: readonly Block[]): Parts {
  const first = blocks.findIndex(isTable);
  if (first < 0) return { question: blocks, known: [], reason: [] };
  const last = blocks.findLastIndex((block) => isTable(block) || block.kind === 'predict');
  return {
    question: blocks.slice(0, first),
    known: blocks.slice(first, last + 1),
    reason: blocks.slice(last + 1).filter(({ kind }) => kind !== 'expect'),
  };
}
