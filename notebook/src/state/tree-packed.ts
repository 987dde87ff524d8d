import type { Nodes, RootContent } from 'mdast';

/**
 * A node of a document without what its text tells already:
 *
 *     position ► where it begins and ends in the text, counted in characters
 *     value    ► left out where it is that very piece of the text
 */
export type PackedNode = {
  readonly at: readonly [start: number, end: number];
  readonly type: string;
  readonly children?: readonly PackedNode[];
  readonly [other: string]: unknown;
};

type Point = { readonly line: number; readonly column: number; readonly offset: number };

export function packTree(nodes: readonly Nodes[], source: string): readonly PackedNode[] {
  return nodes.map((node) => {
    const { position, ...others } = node;
    const start = position?.start.offset;
    const end = position?.end.offset;
    if (start === undefined || end === undefined) throw new Error(`${node.type} stands nowhere.`);
    const packed: Record<string, unknown> = { ...others };
    if ('value' in node && node.value === source.slice(start, end)) delete packed.value;
    if ('children' in node) packed.children = packTree(node.children, source);
    return { ...packed, type: node.type, at: [start, end] };
  });
}

/** Types that hold text and nothing else. */
const texts = new Set(['text', 'html', 'inlineCode', 'code', 'yaml']);

function pointsOf(source: string): (offset: number) => Point {
  const begins = [0];
  for (let at = source.indexOf('\n'); at >= 0; at = source.indexOf('\n', at + 1)) {
    begins.push(at + 1);
  }
  return (offset) => {
    let line = begins.findIndex((begin) => begin > offset);
    if (line < 0) line = begins.length;
    return { line, column: offset - (begins[line - 1] ?? 0) + 1, offset };
  };
}

/** The blocks as the reader of Markdown told them when the page was built. */
export function unpackTree(packed: readonly PackedNode[], source: string): readonly RootContent[] {
  const point = pointsOf(source);
  const unpacked = (node: PackedNode): object => {
    const { at, children, ...others } = node;
    const [start, end] = at;
    const value = texts.has(node.type) && !('value' in node) ? source.slice(start, end) : undefined;
    return {
      ...others,
      ...(value !== undefined && { value }),
      ...(children && { children: children.map(unpacked) }),
      position: { start: point(start), end: point(end) },
    };
  };
  // What the page's build packed is what it unpacks; the build compares the two.
  return packed.map(unpacked) as RootContent[];
}
