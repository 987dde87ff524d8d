import { masked } from '@tarebook/record';

/** A subject stands alone in the first line; what is asked about stands below it once more. */
const subjectLine = /^\s*((?:[\p{L}\d’'&/-]+ ?){1,6})\n+(?=[^\n]{4})/u;
const greeting =
  /^(?:hi|hello|hey|howdy|dear|good (?:day|morning|afternoon|evening))(?: (?:all|there|folks|guys|everybody|everyone|team|again))*(?: at \p{L}+)?\b[,.!:]? *(?=\S)/iu;

/** What stands over a message; '' where nothing does, or only a greeting. */
export function subjectOf(message: string): string {
  const subject = subjectLine.exec(message)?.[1]?.trim() ?? '';
  return greeting.test(`${subject} x`) ? '' : subject;
}

const title = String.raw`(?:Mr|Mrs|Ms|Dr)\b\.?`;
const nameWord = String.raw`\p{Lu}[\p{L}’'-]+`;
/** A name behind a title, where nothing else tells that it is one. */
const titled = new RegExp(`${title} (?:${nameWord}(?: (?=\\p{Lu}))?){1,3}`, 'gu');
/** Somebody of the family, by name, and whoever is said to have said something. */
const kin =
  /(?<=\b(?:husband|wife|son|daughter|brother|sister|dad|mom|father|mother|friend|buddy|neighbor|partner),? )\p{Lu}\p{Ll}{2,}/gu;
const things =
  'Sticker|Label|Tag|Plate|Placard|Manual|Book|Sidewall|App|Panel|Gauge|Scale|Truck|Door|Hitch|Receiver|Trailer|Brochure|Ticket|Dealer|Seller|Everybody|Everyone|Somebody|Someone|She|They|Guy';
const saying = new RegExp(
  `(?<=^|[.?!] )(?!(?:${things})\\b)\\p{Lu}\\p{Ll}{2,}(?= (?:says|said|thinks|claims|swears|told)\\b)`,
  'gu',
);
/** The same text without the names that stand beside what tells that they are names. */
function unnamed(text: string): string {
  const family = (text.match(kin) ?? []).map(
    (each) => new RegExp(`(?<!\\p{L})${each}(?!\\p{L})`, 'gu'),
  );
  return [titled, saying, ...family].reduce((now, name) => now.replaceAll(name, '[…]'), text);
}
/** When somebody called, as a note of it begins: “Tue 9:20 am -”, “14:02” */
const stamp =
  /^\s*(?:(?:(?:mon|tues?|wed(?:nes)?|thu(?:rs)?|fri|sat(?:ur)?|sun)(?:day)?\.?,? )(?:\d{1,2}(?::\d{2})? ?(?:[ap]\.?m?\.?\b)?)?|\d{1,2}:\d{2} ?(?:[ap]\.?m?\.?\b)?)(?: ?[-–—,]+ ?|: | (?=[\p{L}[]))/iu;
/** And who it was: a name, or what the one looks like to whoever took the call. */
const caller = new RegExp(
  `^(?:(?:${title} )?${nameWord}(?: ${nameWord}){0,2}(?: (?:from|at|of|with) [^.,:;!?]{1,30}| \\([^)]*\\)| \\[…\\])*(?:, [\\d -]+)?|(?:an? |the )?(?:young |older |elderly )?(?:lady|woman|man|gentleman|guy|couple|caller|customer|\\[…\\])(?: [^.,:;!?]{1,30})?(?:, (?:no name|\\[…\\]|[\\d -]+|call[^.]*))*)(?:[.:;]+ +| [-–—] )(?=\\S)`,
  'u',
);
/** A name that somebody writes under in public. */
const handle = /^\s*@[\w.]+:? +/u;
/** What is asked of whoever took the call, and closes a letter: nothing of the question. */
const asides: readonly RegExp[] = [
  /(?:^|[ ,;-]+)(?:please |pls |plz )?(?:call|text|ring)(?: (?:me|him|her|them))? ?back\b[^.?!]*[.?!]?/giu,
  /(?:^|(?<=[.?!]) |[,;] )(?:call|text|ring) (?:me|him|her|them)\b[^.?!]*[.?!]?/giu,
  /(?:^|[ ,;]+)(?:please |pls |plz )(?:call|let me know|advise|help|answer)\b[^.?!]*[.?!]?/giu,
  /\b(?:long ?time listener|first ?time caller|love (?:the|your) (?:show|videos?|channel)) *[.!,]+ ?/giu,
  /\b(?:quick|dumb|silly|stupid|newbie) question(?: (?:for you(?: folks| guys| all)?))?\b[.:,!-]* */giu,
  /\b(?:I guess|I suppose|I was wondering(?: if)?|just wondering(?: if)?) /giu,
  /(?:^|(?<=[.?!] ))(?:thanks?|thank you|thx|tia|cheers|kind regards|best regards|regards|best|sincerely)\b[^?]{0,40}$/iu,
];

/** “1.” before one of several questions, and what is left of the number of the next. */
const numbered = /^\d[.)] (.*?)(?: \d)?$/su;

/** Where a name stood nothing is said, or that it is somebody. */
const withoutNames = (text: string): string =>
  text
    .replaceAll(/(?:^|(?<=[.?!] ))\[…\](?: and \[…\]| \(\[…\]\))?,?(?= \p{Ll})/gu, 'Somebody')
    .replaceAll(/,? ?\((?:[^()]*\[…\][^()]*)\)/gu, '')
    .replaceAll(
      /,? (?:(?:from|at|on|near|by|to|of|for|with|called|named) )?\[…\](?=$|[\s,.;:?!])/gu,
      '',
    )
    .replaceAll('[…]', '');

/** A name or two alone behind the last sentence: whoever signed. */
const signed = /(?<=[.?!]) +\p{Lu}\p{Ll}+\.?(?: (?:\p{Lu}\p{Ll}*\.?|[&+]|and))*$/u;

const spaced = (text: string): string =>
  text
    .replaceAll(/\s+/g, ' ')
    .replaceAll(/ (?=[,.;:?!](?:\s|$))/g, '')
    .replaceAll(/^[\s,.;:?!)-]+/g, '')
    .trim();

/** A question without what stands over it, who asks, when, where they are reached, and any courtesy. */
export function bareOf(question: string, subject = ''): string {
  const below =
    subject !== '' && question.startsWith(subject)
      ? question.slice(subject.length).trim()
      : question.trim();
  const told = unnamed(masked(below.replace(handle, '')));
  const isNoted = stamp.test(told);
  const from = told.replace(stamp, '');
  const body = (isNoted ? from.replace(caller, '') : from).replace(greeting, '');
  const said = asides.reduce(
    (now, aside) =>
      now.replaceAll(
        new RegExp(aside, aside.flags.includes('g') ? aside.flags : `${aside.flags}g`),
        ' ',
      ),
    body,
  );
  return spaced(withoutNames(said).trim().replace(signed, '')).replace(numbered, '$1');
}
