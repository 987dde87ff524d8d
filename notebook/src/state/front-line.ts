import { isPlain } from '@tarebook/casebook';

const front = /^(\ufeff?---[ \t]*\r?\n)([\s\S]*?)(\r?\n---[ \t]*(?:\r?\n|$))/;

/** A line of the front matter, without reading the whole case; '' where there is none. */
export function frontLine(text: string, key: string): string {
  const lines = front.exec(text)?.[2]?.split(/\r?\n/) ?? [];
  const line = lines.find((each) => each.startsWith(`${key}:`)) ?? '';
  return line
    .slice(key.length + 1)
    .trim()
    .replace(/^(["'])(.*)\1$/, '$2');
}

/** A title as a front matter says it: as it stands where that can be read as such, quoted elsewhere. */
export const titleLine = (title: string): string =>
  isPlain(`---\ntitle: ${title}\n---\n`) ? `title: ${title}` : `title: ${JSON.stringify(title)}`;

/** The text with another title; every other byte stays. A text without a front matter stays whole. */
export function withTitle(text: string, title: string): string {
  const said = titleLine(title.replace(/\s+/g, ' ').trim());
  return text.replace(front, (_, begins: string, lines: string, ends: string) => {
    // A title may go on in lines that stand further in.
    const now = lines.replace(/^title:.*(?:\r?\n[ \t]+.*)*/m, () => said);
    return `${begins}${now === lines && !/^title:/m.test(lines) ? `${said}\n${lines}` : now}${ends}`;
  });
}
