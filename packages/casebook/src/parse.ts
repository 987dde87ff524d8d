import type { RootContent } from 'mdast';
import { directiveFromMarkdown } from 'mdast-util-directive';
import { fromMarkdown } from 'mdast-util-from-markdown';
import { frontmatterFromMarkdown } from 'mdast-util-frontmatter';
import { gfmFromMarkdown } from 'mdast-util-gfm';
import { directive } from 'micromark-extension-directive';
import { frontmatter } from 'micromark-extension-frontmatter';
import { gfm } from 'micromark-extension-gfm';
import { retyped, type Tree } from './retyped';

const syntax = {
  extensions: [frontmatter(), gfm(), directive()],
  mdastExtensions: [frontmatterFromMarkdown(), gfmFromMarkdown(), directiveFromMarkdown()],
};

/** The blocks of a document: CommonMark, with GitHub's additions, directives and front matter. */
export const parse = (source: string): readonly RootContent[] =>
  fromMarkdown(source, syntax).children;

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
