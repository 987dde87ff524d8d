/** A message as it was pasted; '' where nothing was said. */
export type Pasted = {
  readonly channel: string;
  readonly asker: string;
  readonly askedOn: string;
  readonly text: string;
};

type Draft = { asker: string; askedOn: string; lines: string[]; isMail: boolean };

const separator = /^\s*(?:[-=_*–—]\s?){3,}$/;
/** “# Phone”, “== Phone ==”, “--- Phone ---” */
const marked = /^\s*(?:#{1,4}|={2,}|-{2,}|\*{2,}|–{2,}|—{1,})\s*([^#=*?]{2,40}?)\s*[-=*#–—:]*$/;
/** “Comments under the towing video:” alone on a line */
const headed = /^\s*([\p{L}\d][^?!.:]{1,40}):\s*$/u;
const mailHead = /^(From|To|Cc|Date|Sent|Subject):\s*(.*)$/i;
const day = String.raw`(?:\d{4}-\d{2}-\d{2}|\d{1,2}\/\d{1,2}(?:\/\d{2,4})?|(?:Jan|Feb|Mar|Apr|May|June?|July?|Aug|Sept?|Oct|Nov|Dec)[a-z]*\.? \d{1,2}(?:, \d{4})?)`;
const hour = String.raw`\d{1,2}:\d{2}(?::\d{2})?(?:\s?[ap]\.?m\.?)?`;
const stamp = `(?:${day}(?:,? (?:at )?${hour})?|${hour})`;
/** “[11/27/2026, 9:14 AM] Dale R.: the words” and the same without brackets */
const stamped = new RegExp(`^\\s*\\[?(${stamp})\\]?\\s*[-–,]?\\s*([^:?!]{1,40}):\\s+(.+)$`, 'i');
/** “Dale R., Nov 27” alone on a line, before the words */
const signed = new RegExp(
  `^\\s*(\\p{Lu}[\\p{L}.'’-]*(?: [\\p{Lu}&][\\p{L}.'’-]*){0,3})\\s*[,·|–-]?\\s*\\(?(${stamp}|yesterday|today|\\d{1,2} ?(?:min|h|hours?|d|days?|w|weeks?)(?: ago)?)?\\)?$`,
  'u',
);
/** What people call the ways by which a question comes, at the beginning of a line. */
const ways =
  'phone|call|voicemail|text|sms|mail|e-?mail|letter|counter|walk-?in|comment|post|radio|web(?: ?site| form)?|form|video|forum|show';
/** “Phone: …”, “Counter (Ruth): …” */
const byWay = new RegExp(`^\\s*(${ways})\\s*(?:\\(([^)]{1,40})\\))?\\s*:\\s+(.+)$`, 'i');
const bullet = /^\s*[-*•]\s+(?=\S)/;

const sentenceCase = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** A line that begins with “Two questions:” heads no channel. */
const isNoHeading = /\b(?:questions?|things?|thanks|hi|hello|hey|dear)\b/i;

/**
 * The messages of a bunch that was pasted from wherever they came in:
 *
 *     # Phone                                  a heading: all that follow came by phone
 *     Ruth asks whether …                      an empty line, a row of dashes, a bullet ends a message
 *
 *     [11/27/2026, 9:14 AM] Dale R.: the …     who and when before the words
 *
 *     From: … / Subject: …                     a mail: it goes on over single empty lines
 *
 * What tells nothing of whence it came has an empty channel.
 */
export function splitBunch(whole: string): readonly Pasted[] {
  const found: Pasted[] = [];
  let channel = '';
  let open: Draft | undefined;
  let empty = 0;

  const shut = (): void => {
    const text =
      open?.lines
        .join('\n')
        .replace(/\n{3,}/g, '\n\n')
        .trim() ?? '';
    if (open && /[\p{L}\p{N}]/u.test(text)) {
      found.push({ channel, asker: open.asker, askedOn: open.askedOn, text });
    }
    open = undefined;
  };
  const begin = (asker = '', askedOn = '', isMail = false): Draft => {
    shut();
    open = { asker, askedOn, lines: [], isMail };
    return open;
  };

  /** A line of a mail's head; whether it was one. */
  function mail(line: string): boolean {
    const [, name = '', value = ''] = mailHead.exec(line) ?? [];
    if (name === '') return false;
    const isHead = open?.isMail && open.lines.length === 0;
    if (!isHead && !/^(?:from|subject)$/i.test(name)) return false;
    const now = isHead && open ? open : begin('', '', true);
    if (/^from$/i.test(name)) now.asker = value.replace(/\s*<[^>]*>/, '').trim();
    if (/^(?:date|sent)$/i.test(name)) now.askedOn = value.trim();
    if (/^subject$/i.test(name)) now.lines.push(value.replace(/^(?:re|fwd?): */i, '').trim());
    return true;
  }

  /** A line that begins a message or a channel; whether it was one. */
  function beginning(line: string, isFirst: boolean, hasMore: boolean): boolean {
    const [, told, who, said] = stamped.exec(line) ?? [];
    if (told !== undefined && who !== undefined && said !== undefined) {
      begin(who.trim(), told).lines.push(said);
      return true;
    }
    const [, way, person, words] = byWay.exec(line) ?? [];
    if (way !== undefined && words !== undefined && isFirst) {
      shut();
      channel = sentenceCase(way.toLowerCase());
      begin(person?.trim()).lines.push(words);
      return true;
    }
    const heading = marked.exec(line)?.[1] ?? (isFirst ? headed.exec(line)?.[1] : undefined);
    if (heading !== undefined && !isNoHeading.test(heading) && !bullet.test(line)) {
      shut();
      channel = heading.trim();
      return true;
    }
    if (bullet.test(line) && !open?.isMail) {
      begin().lines.push(line.replace(bullet, ''));
      return true;
    }
    const [, name, when] = (isFirst && hasMore ? signed.exec(line) : undefined) ?? [];
    if (name === undefined || isNoHeading.test(name)) return false;
    begin(name, when ?? '');
    return true;
  }

  const lines = whole.replaceAll('\0', ' ').split(/\r\n?|\n/);
  for (const [at, line] of lines.entries()) {
    if (line.trim() === '') {
      empty += 1;
      if (open?.isMail && empty < 2) open.lines.push('');
      else shut();
      continue;
    }
    const isFirst = empty > 0 || !open || open.lines.length === 0;
    empty = 0;
    if (separator.test(line)) shut();
    else if (!mail(line) && !(open?.isMail && open.lines.length > 0 && !isFirst)) {
      const hasMore = (lines[at + 1] ?? '').trim() !== '';
      if (!beginning(line, isFirst, hasMore)) (open ?? begin()).lines.push(line.trim());
    } else if (!mailHead.test(line)) (open ?? begin()).lines.push(line.trim());
  }
  shut();
  return found;
}
