const segmenter = new Intl.Segmenter('en-US', { granularity: 'sentence' });

/** What opens or closes a message and asks nothing. */
const courtesy =
  /^(?:hi|hello|hey|hey guys|good (?:day|morning|evening)|thanks?(?: you)?(?: so much)?|please help|love the show|two (?:things|questions)|best|regards|cheers)\b[^?]{0,30}$/i;
/** A new matter begins. */
const opening =
  /^(?:also|and (?:what|when|where|how|which|does|do|is|can|will)|first|second|third|next|another|one more|oh and|ps|\d[.)])\b/i;
/** In the middle of a line without a mark: “… we good? oh and where do I park it”, “…; what should …” */
const anotherMatter =
  /(?<=\S{2}[,.?!]? )(?=(?:oh and|and also|also,? (?!have|has|had|fits?)|one more thing)\b ?\w+ \w+ \w+)|(?<=; )(?=(?:what|how|can|could|is|are|does|do|which|where|when|should|will)\b)/i;
/** Asks on about what was said, and nothing of its own. */
const dependent =
  /^(?:is|was|am|are|does|do|would|will|what|who|how|and|or)?\s*(?:that|this|it|he|she|they|we|i|so)?\s*(?:is|are|am)?\s*(?:it|that|this|he|right|ok|okay|normal|safe|fine|dangerous|true|acceptable|possible|feasible|suitable|so|now|first|allowed so|static|not|good to go)[^,]{0,40}\?$/i;

/** “1.” is taken for a sentence of its own. */
const isNumber = (text: string): boolean => /^\d[.)]$/.test(text);

/** The sentences of a text, cut at numbers of a list too; marks of an empty list item are no sentence. */
export function sentencesIn(text: string): readonly string[] {
  const lines = text
    .split(/\n+|(?<=[.?!:] )(?=\d[.)] )/)
    .flatMap((line) => line.split(anotherMatter));
  return lines.flatMap((line) => {
    const said = [...segmenter.segment(line)].map(({ segment }) => segment.trim());
    return said.flatMap((each, i) => {
      if (each === '' || isNumber(each)) return [];
      const number = said[i - 1] ?? '';
      return [isNumber(number) ? `${number} ${each}` : each];
    });
  });
}

const interrogative =
  /^(?:(?:first|second|third|also|and|\d[.)]),? )?(?:how|what|which|when|where|who|can|could|is|are|does|do|will|would|should|may|must)\b/i;
const asks = (sentence: string): boolean => sentence.endsWith('?') || interrogative.test(sentence);
/** Asks without asking. */
const request = /\b(?:please|whether|want|need|would like|tell me|send)\b/i;
const isBrief = (sentence: string): boolean => sentence.split(/\s+/).length <= 6;

/**
 * The questions of a message, each with the sentences that lead up to it; what follows the last
 * stands with the last. A message that asks nothing is one part.
 */
export function partsOf(text: string): readonly string[] {
  const sentences = sentencesIn(text);
  const said = sentences.filter((each) => !courtesy.test(each));
  const parts: string[][] = [];
  let open: string[] = [];
  for (const each of said) {
    const last = parts.at(-1);
    if (asks(each) && last && open.length === 0 && isBrief(each) && dependent.test(each)) {
      last.push(each);
      continue;
    }
    if (opening.test(each) && open.some((said) => request.test(said))) {
      parts.push(open);
      open = [];
    }
    open.push(each);
    if (!asks(each)) continue;
    parts.push(open);
    open = [];
  }
  const last = parts.at(-1);
  if (open.length > 0 && last && !open.some((each) => request.test(each))) last.push(...open);
  else if (open.length > 0) parts.push(open);
  return parts.length === 0 ? [text.trim()] : parts.map((each) => each.join(' '));
}
