import type { Amount } from './amounts';

/** By these somebody takes back what was just said, and says it anew. */
const takesBack =
  "(?:no+,? (?:no,? )?(?:sorry|wait|hold on|make (?:that|it))|(?:oh |oops,? |wait,? |so |i[’']m |i am )*sorry|scratch that|strike that|(?:oh )?wait,? no|wait|hold on|hang on|i mean|i meant|i meant to say|correction|make (?:that|it)|or rather|rather|oops|whoops|my (?:mistake|bad)|my apologies|i misspoke|i misread|i got (?:that|it) wrong|i (?:wrote|read|typed|said) (?:it|that) wrong|that[’']?s (?:wrong|not right)|(?:uh|um|er|erm|ah),? (?:no|sorry)|er|erm|nope|no|actually)";
/** What may stand between that and the figure that holds; the words of the first may be said again. */
const filler = new Set(
  "it its it’s it's is was are that thats that’s that's should be have been says said say reads the this label sticker plate card manual door actually really i im i’m i'm meant mean read wrote typed looked again checked just now make to correct correctly figure number one of a an at about around more like no wait sorry wrong hold on so and my our he she they told me here we go yes yeah not quite".split(
    ' ',
  ),
);
const before = new RegExp(`^[^\\p{L}\\d]*${takesBack}(?!\\p{L})`, 'iu');
const words = /[\p{L}’']+/gu;
/** No more is said between the two. */
const most = 90;
/** The words of the first figure stand so far ahead of it. */
const cue = 45;

/** “Not 3,500 but 5,000”, “5,000, not 3,500” */
const butNot = /^[ ,]*(?:but|it[’']?s|rather)[ ,]*$/i;
const andNot = /^[ ,–-]*(?:and )?not (?:the )?$/i;
const notAhead = /(?<!\p{L})not (?:the )?$/iu;

const isSameKind = (a: Amount, b: Amount): boolean =>
  a.unit === undefined || b.unit === undefined || a.unit === b.unit;

function isTakenBack(text: string, first: Amount, next: Amount): boolean {
  const between = text.slice(first.to, next.from);
  if (between.length > most || between.includes('\n\n') || between.includes('?')) return false;
  // “Sorry” behind a full stop may begin what is meant as one.
  const rest = between.replace(
    /^ ?(?:lbs?|pounds?|#|of us|people|adults|kids|dogs)(?!\p{L})/iu,
    '',
  );
  const said = before.exec(rest);
  if (
    !said ||
    !/[,.;:–—…(!-]|^\s*(?:no|sorry|wait|scratch|strike|make|i mean|correction|or rather|oops|er)/i.test(
      rest,
    )
  )
    return false;
  const known = new Set(
    (
      text
        .slice(Math.max(0, first.from - cue), first.from)
        .toLowerCase()
        .match(words) ?? []
    ).filter((each) => each.length > 1),
  );
  const left = rest.slice(said[0].length).toLowerCase().match(words) ?? [];
  return left.every((each) => filler.has(each) || known.has(each));
}

/** Taken back without another figure. */
const isGone = (text: string, { to }: Amount): boolean =>
  /^ ?(?:lbs?|pounds?|#|kg)?[ ,.–—-]*(?:no,? )?(?:scratch|strike|forget|ignore) that(?!\p{L})/iu.test(
    text.slice(to, to + 40),
  );

/**
 * The quantities of a text as they hold: where somebody says a figure and takes it back, the last one
 * told stands over the words of both.
 */
export function asTheyHold(text: string, amounts: readonly Amount[]): readonly Amount[] {
  const held: Amount[] = [];
  for (const amount of amounts) {
    const last = held.at(-1);
    if (!last || !isSameKind(last, amount)) {
      held.push(amount);
      continue;
    }
    const between = text.slice(last.to, amount.from);
    const unit = amount.unit ?? last.unit;
    const both = { from: last.from, to: amount.to, ...(unit !== undefined && { unit }) };
    if (isTakenBack(text, last, amount)) held[held.length - 1] = { ...both, value: amount.value };
    else if (andNot.test(between)) held[held.length - 1] = { ...both, value: last.value };
    else if (notAhead.test(text.slice(0, last.from)) && butNot.test(between)) {
      held[held.length - 1] = { ...both, value: amount.value };
    } else held.push(amount);
  }
  return held.filter((each) => !isGone(text, each));
}
