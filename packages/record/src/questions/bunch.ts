import {
  begunBy,
  bullet,
  byWay,
  channelOf,
  counted,
  headed,
  isWay,
  mailHead,
  marked,
  noted,
  numbered,
  type Pasted,
  separator,
  tableAt,
  unmarked,
  wayIn,
  withoutHead,
} from './bunch-lines';
import { refuseNoText } from './doors';
import { isAlarm, isHandle, isThing, isUrgentBy } from './no-name';
import { beginsChat, goesOn, spokenIn } from './speakers';
import { urgentIn } from './urgent';

export type { Pasted } from './bunch-lines';

type Draft = {
  asker: string;
  askedOn: string;
  lines: string[];
  isMail: boolean;
  /** One of several that are counted; the next number begins the next. */
  isItem: boolean;
  /** One of a chat, where each line begins with who says it. */
  isChat: boolean;
};

const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A line that begins with “Two questions:” heads no channel. */
const isNoHeading = /\b(?:questions?|things?|thanks|hi|hello|hey|dear)\b/i;
/** No sender’s name and address are longer. */
const mostOfSender = 300;
/** What a program writes where a mail has no subject. */
const noSubject = /^\W*(?:no subject|without subject)\W*$/i;
const hasWords = (text: string): boolean => /[\p{L}\p{N}]/u.test(text);

/**
 * The messages of a bunch that was pasted from wherever they came in, or of a page of Markdown:
 *
 *     # Phone                                  a heading: all that follow came by phone
 *     Ruth asks whether …                      an empty line, a row of dashes, a bullet ends a message
 *
 *     [11/27/2026, 9:14 AM] Dale R.: the …     who and when before the words; a line of its own does
 *
 *     Mara: can it pull …                      a chat: each line begins with who says it
 *
 *     From: … / Subject: …                     a mail: it goes on over single empty lines
 *
 *     Phone note                               a way alone on a line: all that follow came so
 *
 *     | from | message |                       a table with a column of words
 *
 * What tells nothing of whence it came has an empty channel.
 */
export function splitBunch(whole: string): readonly Pasted[] {
  refuseNoText(whole);
  const found: Pasted[] = [];
  let channel = '';
  let open: Draft | undefined;
  let empty = 0;
  /** Where the message of each speaker of the chat that is open stands. */
  const spoke = new Map<string, number>();

  const shut = (): void => {
    const text =
      open?.lines
        .join('\n')
        .replace(/\n{3,}/g, '\n\n')
        .trim() ?? '';
    if (open && hasWords(text)) {
      const { asker, askedOn } = open;
      const said = isUrgentBy(asker, text) ? `${asker}\n${text}` : text;
      const at = open.isChat ? spoke.get(asker) : undefined;
      const before = at === undefined ? undefined : found[at];
      if (at !== undefined && before) found[at] = goesOn(before, said);
      else {
        if (open.isChat) spoke.set(asker, found.length);
        found.push({ channel, asker, askedOn, text: said });
      }
    }
    open = undefined;
  };
  const begin = (asker = '', askedOn = '', more: Partial<Draft> = {}): Draft => {
    shut();
    const none = { isMail: false, isItem: false, isChat: false };
    open = { asker, askedOn, lines: [], ...none, ...more };
    return open;
  };

  /** A line of a mail's head; whether it was one. */
  function mail(line: string): boolean {
    const [, name = '', value = ''] = mailHead.exec(line) ?? [];
    if (name === '') return false;
    const isHead = open?.isMail && open.lines.length === 0;
    if (!isHead && !/^(?:from|subject)$/i.test(name)) return false;
    const now = isHead && open ? open : begin('', '', { isMail: true });
    if (/^from$/i.test(name))
      now.asker = value
        .slice(0, mostOfSender)
        .replace(/<[^<>]*>/, '')
        .trim();
    if (/^(?:date|sent)$/i.test(name)) now.askedOn = value.trim();
    if (/^subject$/i.test(name) && !noSubject.test(value))
      now.lines.push(value.replace(/^(?:re|fwd?): */i, '').trim());
    return true;
  }

  /** “Message 3: …”, “2. …”, where it is no list inside of a message; whether it was one. */
  function item(line: string, isFirst: boolean): boolean {
    const [, channelled, other, words] = counted(line);
    const way = channelled ?? other;
    if (way !== undefined && (isFirst || open?.isItem)) {
      shut();
      if (isWay(way)) channel = sentenceCase(way.toLowerCase());
      const { lines } = begin('', '', { isItem: true });
      if (words) lines.push(words);
      return true;
    }
    if (!numbered.test(line) || (open && !open.isItem)) return false;
    begin('', '', { isItem: true }).lines.push(line.replace(numbered, ''));
    return true;
  }

  /** “Phone note” alone on a line heads what follows, whatever stood before: a mail ends there. */
  function wayHead(line: string, isFirst: boolean, hasMore: boolean): boolean {
    const way = isFirst ? wayIn(line) : undefined;
    if (!way || (hasMore && !way.isCapitals)) return false;
    // What is said behind the way may be the message itself.
    const isSaid = way.more !== '' && !way.more.startsWith('(') && !(way.isCapitals && hasMore);
    if (isSaid || urgentIn(way.more) !== null) return false;
    shut();
    channel = channelOf(way.isCapitals ? line : sentenceCase(line.trim().toLowerCase()));
    return true;
  }

  /** A line of a chat, which begins what its speaker says; whether it was one. */
  function chat(line: string, isFirst: boolean): boolean {
    const said = spokenIn(line);
    if (!said || !(open?.isChat || (isFirst && beginsChat(said)))) return false;
    begin(said.asker, '', { isChat: true }).lines.push(said.words);
    return true;
  }

  /** A line that begins a message or a channel; whether it was one. */
  function beginning(line: string, isBold: boolean, isFirst: boolean, hasMore: boolean): boolean {
    if (item(line, isFirst)) return true;
    if (noted.test(line) && noted.test(open?.lines[0] ?? '')) {
      begin().lines.push(line.trim());
      return true;
    }
    const begun = begunBy(line, isBold, isFirst);
    if (begun && isThing(begun.asker) && !isHandle(begun.asker)) {
      begin().lines.push(line.trim());
      return true;
    }
    if (begun && (begun.words !== '' || (hasMore && !isNoHeading.test(begun.asker)))) {
      const { lines } = begin(begun.asker, begun.askedOn);
      if (begun.words !== '') lines.push(begun.words);
      return true;
    }
    const [, way, person, words] = byWay(line);
    if (way !== undefined && words !== undefined && isFirst) {
      shut();
      channel = sentenceCase(way.toLowerCase());
      const who = person?.trim() ?? '';
      if (isThing(who)) begin().lines.push(`${who}: ${words}`);
      else begin(who).lines.push(words);
      return true;
    }
    if (chat(line, isFirst)) return true;
    const heading = marked(line) ?? (isFirst ? headed(line) : undefined);
    if (heading !== undefined && !isNoHeading.test(heading) && !bullet.test(line)) {
      if (isAlarm(heading)) {
        begin().lines.push(line.trim());
        return true;
      }
      shut();
      channel = channelOf(heading);
      return true;
    }
    if (!bullet.test(line) || open?.isMail) return false;
    begin().lines.push(line.replace(bullet, ''));
    return true;
  }

  const lines = withoutHead(
    whole
      .replace(/^\uFEFF/, '')
      .replaceAll('\0', ' ')
      .split(/\r\n?|\n/),
  );
  let skip = 0;
  for (const [at, said] of lines.entries()) {
    if (at < skip) continue;
    const table = tableAt(lines, at);
    if (table) {
      shut();
      for (const row of table.rows) {
        if (hasWords(row.text)) found.push({ ...row, channel: row.channel || channel });
      }
      skip = at + table.takes;
      empty = 1;
      continue;
    }
    const { line, isBold } = unmarked(said);
    if (line.trim() === '') {
      empty += 1;
      if (open?.isMail && empty < 2) open.lines.push('');
      else shut();
      spoke.clear();
      continue;
    }
    const isFirst = empty > 0 || !open || open.lines.length === 0;
    empty = 0;
    const hasMore = (lines[at + 1] ?? '').trim() !== '';
    if (separator.test(line)) shut();
    else if (wayHead(line, isFirst, hasMore)) continue;
    else if (!mail(line) && !(open?.isMail && open.lines.length > 0 && !isFirst)) {
      if (!beginning(line, isBold, isFirst, hasMore)) (open ?? begin()).lines.push(line.trim());
    } else if (!mailHead.test(line)) (open ?? begin()).lines.push(line.trim());
  }
  shut();
  return found;
}
