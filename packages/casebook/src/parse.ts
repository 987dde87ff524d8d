import type { RootContent } from 'mdast';
import remarkDirective from 'remark-directive';
import remarkFrontmatter from 'remark-frontmatter';
import remarkGfm from 'remark-gfm';
import remarkParse from 'remark-parse';
import { unified } from 'unified';
import { retyped, type Tree } from './retyped';

const parser = unified()
  .use(remarkParse)
  .use(remarkFrontmatter)
  // One tilde is what people write for “about”, and strikes nothing through.
  .use(remarkGfm, { singleTilde: false })
  .use(remarkDirective);

/** The blocks of a document: CommonMark, with GitHub's additions, directives and front matter. */
export const parse = (source: string): readonly RootContent[] => parser.parse(source).children;

let last: Tree | undefined;

/**
 * The blocks of a document; what was read last is remembered, as the next text is most often the
 * same with something typed into a cell. What comes out is what `parse` would say.
 */
export function treeOf(source: string): readonly RootContent[] {
  const children = (last && retyped(last, source)) ?? parse(source);
  last = { source, children };
  return children;
}
