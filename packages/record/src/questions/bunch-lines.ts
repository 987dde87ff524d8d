import { messageColumns } from './table';

/** A message as it was pasted; '' where nothing was said. */
export type Pasted = {
  readonly channel: string;
  readonly asker: string;
  readonly askedOn: string;
  readonly text: string;
};

/** Who wrote a message, when, and its first words, as one line tells them. */
type Begun = { readonly asker: string; readonly askedOn: string; readonly words: string };

/** What begins a message stands within so many letters of a line. */
const mostOfHead = 160;
/** Longer lines are no heading, and nobody’s name. */
const mostOfName = 120;

/** Where a line begins as a form says: what it tells, and last the words, however long they are. */
function headOf(form: RegExp, line: string): readonly (string | undefined)[] {
  const found = form.exec(line.slice(0, mostOfHead));
  if (!found || line.length <= mostOfHead) return found ?? [];
  return [...found.slice(0, -1), `${found.at(-1) ?? ''}${line.slice(mostOfHead)}`];
}

export const separator = /^\s*(?:[-=_*–—]\s?){3,}$/;
/** “# Phone”, “== Phone ==”, “--- Phone ---” */
const markedLine = /^\s*(?:#{1,4}|={2,}|-{2,}|\*{2,}|–{2,}|—{1,})\s*([^#=*?]{2,70}?)\s*[-=*#–—:]*$/;
/** “Comments under the towing video:” alone on a line */
const headedLine = /^\s*([\p{L}\d][^?!.:]{1,40}):\s*$/u;

/** “[forum]” alone on a line; only a way stands so, as “[photo]” is part of a message. */
const bracketed = /^\s*\[([^[\]]{2,60})\]\s*$/;

/** What a line says that is marked as a heading. */
export function marked(line: string): string | undefined {
  if (line.length > mostOfName) return undefined;
  const [, way] = bracketed.exec(line) ?? [];
  return way !== undefined && wayIn(way) ? way : markedLine.exec(line)?.[1];
}
/** What a line says that heads the next by its colon. */
export const headed = (line: string): string | undefined =>
  line.length > mostOfName ? undefined : headedLine.exec(line)?.[1];

/** “Fri 9:15 - Mrs. Pell called”, as calls are noted one below the other */
export const noted =
  /^\s*(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?\.?,? \d{1,2}(?::\d{2})? ?(?:[ap]\.?m?\.?)? ?[-–—] /i;

export const mailHead = /^(From|To|Cc|Date|Sent|Subject):\s*(.*)$/i;
export const bullet = /^\s*[-*•]\s+(?=\S)/;
/** “1. Can I …” */
export const numbered = /^\s*\d{1,3}[.)]\s+(?=\S)/;

const day = String.raw`(?:\d{4}-\d{2}-\d{2}|\d{1,2}\/\d{1,2}(?:\/\d{2,4})?|(?:Jan|Feb|Mar|Apr|May|June?|July?|Aug|Sept?|Oct|Nov|Dec)[a-z]*\.? \d{1,2}(?:, \d{4})?)`;
const hour = String.raw`\d{1,2}:\d{2}(?::\d{2})?(?:\s?[apAP]\.?[mM]\.?)?`;
const stamp = `(?:${day}(?:,? (?:at )?${hour})?|${hour})`;
const ago = String.raw`(?:yesterday|today|just now|\d{1,2} ?(?:min(?:utes?)?|h|hrs?|hours?|d|days?|w|wks?|weeks?|months?)(?: ago)?)`;
/** “[11/27/2026, 9:14 AM] Dale R.: the words” and the same without brackets */
const stamped = new RegExp(`^\\s*\\[?(${stamp})\\]?\\s*[-–,]?\\s*([^:?!]{1,40}):\\s+(.+)$`, 'i');
const name = `\\p{Lu}[\\p{L}.'’-]*(?: [\\p{Lu}&][\\p{L}.'’-]*){0,3}`;
/** “Dale R., Nov 27” alone on a line, before the words */
const signed = new RegExp(`^\\s*(${name})\\s*[,·•|–-]?\\s*\\(?(${stamp}|${ago})?\\)?$`, 'u');
/** “marsh_hen88 • 2h ago” */
const handled = new RegExp(
  `^\\s*(@[\\w.]{2,30}|[a-z](?=[a-z.]*[\\d_])[\\w.]*)\\s*[,·•|–-]?\\s*\\(?(${stamp}|${ago})\\)?$`,
  'iu',
);
/** “On Fri, Nov 27, 2026 at 9:14 AM Ada Pell <…> wrote:” */
const wrote = new RegExp(
  `^\\s*On (?:\\p{L}{3,9},? )?(${stamp})[, ]+([^<>:]{2,60}?)\\s*(?:<[^<>]{0,80}>)?\\s*wrote:$`,
  'u',
);
/** “MapleMarge wrote:”, “trailrunner_dee wrote:” alone on a line, before the words */
const wroteAlone = new RegExp(
  `^\\s*(${name}|@?[\\w.-]{2,30})(?: (?:wrote|writes|posted|asked|asks))(?: (?:on )?(${stamp}|${ago}))?:$`,
  'u',
);
/** “He wrote:” tells of somebody, and begins no message. */
const isNobody = /^(?:he|she|they|it|we|you|who|dealer|manual|somebody|someone|i)$/i;
/** “Wren: the words”, where the name stands in bold */
const named = new RegExp(`^(${name}|@[\\w.]{2,30}):\\s+(.+)$`, 'u');
const bold = /^\s*(\*\*|__|\*(?!\s)|_(?!_))([^*_]{1,60}?)\1/;

const noName =
  /^(?:(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day|Monday|January|February|March|April|May|June|July|August|September|October|November|December|Today|Yesterday|Tomorrow|At|By|From|Since|Until|Before|After|On|Call|It|The)(?![\p{L}])/u;

/** What a line is without the marks of a quotation and of bold type, and whether it began in bold. */
export function unmarked(line: string): { readonly line: string; readonly isBold: boolean } {
  const plain = line.replace(/^(?:\s*>)+ ?/, '');
  const isBold = bold.test(plain);
  return { line: isBold ? plain.replace(bold, '$2') : plain, isBold };
}

/** Whether a line tells who wrote what follows, and when. */
export function begunBy(line: string, isBold: boolean, isFirst: boolean): Begun | undefined {
  const [, told, who, said] = headOf(stamped, line);
  if (told !== undefined && who !== undefined && said !== undefined)
    return { asker: who.trim(), askedOn: told, words: said };
  const isLong = line.length > mostOfName;
  const [, when, writer] = (isLong ? undefined : wrote.exec(line)) ?? [];
  if (when !== undefined && writer !== undefined)
    return { asker: writer.trim(), askedOn: when, words: '' };
  const [, bolded, words] = isBold ? headOf(named, line) : [];
  if (bolded !== undefined && words !== undefined) return { asker: bolded, askedOn: '', words };
  if (isLong) return undefined;
  const [, poster, posted] = isFirst ? (wroteAlone.exec(line) ?? []) : [];
  if (poster !== undefined && !isNobody.test(poster))
    return { asker: poster, askedOn: posted ?? '', words: '' };
  const [, handle, since] = handled.exec(line) ?? [];
  if (handle !== undefined) return { asker: handle, askedOn: since ?? '', words: '' };
  const [, signer, at] = signed.exec(line) ?? [];
  if (signer === undefined || (at === undefined && !isFirst)) return undefined;
  return noName.test(signer) ? undefined : { asker: signer, askedOn: at ?? '', words: '' };
}

/** What people call the ways by which a question comes, at the beginning of a line. */
const ways =
  'chat|phone|call|voicemail|text|sms|mail|e-?mail|letter|counter|walk-?in|comment|post|radio|web(?: ?site| form)?|form|video|forum|show';
/** “Phone: …”, “Counter (Ruth): …” */
const byWayLine = new RegExp(`^\\s*(${ways})\\s*(?:\\(([^)]{1,40})\\))?\\s*:\\s+(.+)$`, 'i');
/** “Message 3:”, “Question #2”, “Call 4: …”; “Call 555-0142” and “Question 2-inch ball” count nothing. */
const countedLine = new RegExp(
  `^\\s*(?:#{1,4}\\s+)?(?:(${ways})\\s*(?:no\\.? ?|# ?)?\\d{1,2}|(message|msg|question|caller|customer|q)\\s*(?:no\\.? ?|# ?)?\\d{1,4})(?:[:.)](?=\\s|$)|\\s+[–—-](?=\\s|$)|(?=\\s*$))\\s*(.*)$`,
  'i',
);
export const byWay = (line: string) => headOf(byWayLine, line);
export const counted = (line: string) => headOf(countedLine, line);
export const isWay = (word: string): boolean => new RegExp(`^(?:${ways})$`, 'i').test(word);

/** “Phone note”, “Video comments (under the towing film)”, “E-mail”: one or two ways, and maybe what came by them. */
const wayAlone = new RegExp(
  `^\\s*(?:(?:the|our|from)\\s+)?(?:${ways})s?(?:\\s+(?:(?:${ways})s?|notes?|messages?|questions?|chats?|desk|window|thread|board|log))?\\s*(?<more>\\([^()?]{2,60}\\)|[-–—|]\\s[^?!.:]{2,50})?\\s*$`,
  'i',
);
/** A heading in capitals needs no empty line below it. */
const capitals = /^\P{Ll}+(?:\s*[(–—|-].*)?$/u;
const mostOfWay = 90;

/** A line that says nothing but by which way what follows came; where it says more, that. */
export function wayIn(
  line: string,
): { readonly more: string; readonly isCapitals: boolean } | undefined {
  const found = line.length <= mostOfWay ? wayAlone.exec(line) : null;
  if (!found) return undefined;
  return { more: found.groups?.more ?? '', isCapitals: capitals.test(line) };
}

/** “PHONE NOTE” as it is shown: “Phone note”; what is written in small letters stays. */
export function channelOf(heading: string): string {
  const said = heading.trim();
  const [, shouted = '', rest = ''] =
    /^([^\p{Ll}(–—|-]*(?:-\p{Lu}+)?[^\p{Ll}(–—|-]*)(.*)$/u.exec(said) ?? [];
  if (!/\p{Lu}{2}/u.test(shouted) || /\p{Ll}$/u.test(shouted)) return said;
  if (/^\p{Ll}/u.test(rest)) return said;
  const low = shouted.toLowerCase();
  return `${low.charAt(0).toUpperCase()}${low.slice(1)}${rest}`;
}

/** Lines of a document’s head say nothing that was asked; one that begins a mail is none of them. */
export function withoutHead(lines: readonly string[]): readonly string[] {
  if ((lines[0] ?? '').trim() !== '---') return lines;
  const end = lines.slice(1, 40).findIndex((line) => line.trim() === '---');
  const head = lines.slice(1, end + 1);
  const isHead =
    end > 0 && head.every((line) => /^\s*[\w-]+:(?:\s|$)/.test(line) && !mailHead.test(line));
  return isHead ? lines.slice(end + 2) : lines;
}

const isRow = (line: string): boolean => /^\s*\|/.test(line);
const isRule = (line: string): boolean => /^\s*\|[\s:|-]*$/.test(line) && line.includes('--');
const cellsOf = (line: string): readonly string[] =>
  line
    .trim()
    .replace(/^\||(?<!\\)\|$/g, '')
    .split(/(?<!\\)\|/)
    .map((cell) => cell.trim().replaceAll('\\|', '|'));

/** The messages of a table of Markdown that begins at a line, and how many lines it takes; none where it has no column of words. */
export function tableAt(
  lines: readonly string[],
  at: number,
): { readonly rows: readonly Pasted[]; readonly takes: number } | undefined {
  const [head, rule] = [lines[at] ?? '', lines[at + 1] ?? ''];
  if (!isRow(head) || !isRule(rule)) return undefined;
  const columns = messageColumns(cellsOf(head));
  if (columns.text === undefined) return undefined;
  let end = at + 2;
  while (isRow(lines[end] ?? '')) end += 1;
  const rows = lines.slice(at + 2, end).map((line): Pasted => {
    const cells = cellsOf(line);
    const of = (place: number | undefined): string => cells[place ?? -1] ?? '';
    return {
      ...{ channel: of(columns.channel), asker: of(columns.asker) },
      ...{ askedOn: of(columns.askedOn), text: of(columns.text) },
    };
  });
  return { rows, takes: end - at };
}
