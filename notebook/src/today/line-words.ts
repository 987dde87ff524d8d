/** Of a text as somebody typed it, nothing is taken for Markdown. */
export const plainly = (text: string): string =>
  text
    .replace(/\s+/g, ' ')
    .trim()
    .replace(/[\\`*_{}[\]<>#|~&!]/g, '\\$&')
    .replace(/^(?=[-+=:]|\d+[.)])/, '\\');

const longestTitle = 64;

/** The first words of a line, as the name of its case. */
export function titleOf(text: string, otherwise: string): string {
  const line = text.replace(/\s+/g, ' ').trim();
  if (line.length < 3) return otherwise;
  const cut =
    line.length <= longestTitle
      ? line
      : `${line.slice(0, longestTitle).replace(/[\s,;]+\S*$/, '')} …`;
  return `${cut.charAt(0).toUpperCase()}${cut.slice(1)}`;
}
