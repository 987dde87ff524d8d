/** A dot behind one of these ends no sentence. */
const shortened = /(?:^|[\s(])(?:mr|mrs|ms|dr|st|rt|no|vs|approx|e\.g|i\.e|\p{Lu})\.$/iu;
/** Behind one of these it ends one only where the next word has a capital. */
const unit = /(?:^|[\s(\d])(?:in|ft|lb|lbs|mi|gal|hr|min)\.$/iu;
const continues = (before: string, next: string): boolean =>
  shortened.test(before) || (unit.test(before) && !/^\p{Lu}/u.test(next));

/** The sentences of a question; “Mrs. Quarrie” is within one. */
export function sentencesOf(question: string): readonly string[] {
  const found: string[] = [];
  for (const piece of question.trim().split(/(?<=[.?!])\s+|\n+/)) {
    const before = found.at(-1);
    if (before !== undefined && continues(before, piece))
      found[found.length - 1] = `${before} ${piece}`;
    else if (piece !== '') found.push(piece);
  }
  return found;
}

const whoever = '(?:I|we|you|he|she|it|that|this|they|there|any|one|my|our|the|a|an)';
const aux = '(?:is|are|am|was|were|do|does|did|can|could|should|would|will|may|must|have|has)';
const opens = new RegExp(
  `^(?:(?:so|and|but|also|then|now|ok|okay|well|or|plus|oh|if so),? +)*(?:(?:can|could|should|do|does|did|is|are|am)\\b(?! not\\b)|${aux} ${whoever}\\b|(?:how|what|which)(?:[’']?s)?\\b|(?:when|where|why|who)(?:[’']?s\\b| (?:${aux}|to)\\b)|any(?:body|one|thing)?\\b|still\\b)`,
  'iu',
);
const asksAbout =
  /(?<!\p{L})(?:asks?|asking|wants? to know|wonders?|wondering|not sure|needs? to know|whether)(?!\p{L})/iu;

/** Whether words ask, by how they begin or end, or that somebody wants to know. */
export const asksDirectly = (words: string): boolean => opens.test(words);
export const asks = (words: string): boolean =>
  words.endsWith('?') || opens.test(words) || asksAbout.test(words);

/** A stretch of a sentence that can be said without the rest of it. */
export type Piece = {
  readonly text: string;
  /** Which sentence it stands in, and at which place of all. */
  readonly sentence: number;
  readonly at: number;
  readonly asks: boolean;
  /** It hangs on the piece before it: “that has its own regulator”. */
  readonly hangs: boolean;
};

const openings =
  'but|because|cause|since|while|although|which|who|that (?:has|have|is|are|was)|with (?:an?|one|two|the|my|our|its)|and (?:I|we|he|she|it|they|the|my|our|its|wants?|needs?|have|plan|hope)';
/** Where a question begins within a line of words without a mark. */
const turned = String.raw`(?<!\b(?:where|when|why|how|who|what|which)s?(?: [\p{L}\d]+){0,3}|\b(?:and|so|but|or|if|than|wants? to know)) +(?=(?:is|are|will|would|does|do|did|can|could|should|am) (?:I|we|it|that|this|they|you)\b)`;
const cut = new RegExp(
  `(?<=[,;]) +(?=\\S)|(?<=\\S) +(?=[-–—] )|(?<=\\S) +(?=(?:${openings})\\b)|(?<=\\S)${turned}`,
  'iu',
);
const hanging = /^(?:which|who|that|for|than|as|or)\b/iu;
const fewWords = 3;
/** “with one lead battery” can be said by itself; what is longer than this cannot. */
const mostWith = 7;

export const wordsOf = (text: string): readonly string[] =>
  text.trim() === '' ? [] : text.trim().split(/\s+/);

/** The stretches of a sentence; what hangs on a few words stands with them: “I pull with a crossover” */
function stretchesOf(sentence: string): readonly string[] {
  const found: string[] = [];
  for (const each of sentence.split(cut)) {
    const before = found.at(-1);
    const isFew = before !== undefined && wordsOf(before).length <= fewWords;
    if (
      isFew &&
      /^(?:with|that|which|who|and (?:I|he|she|we))\b/iu.test(each) &&
      !/[,;]$/.test(before)
    )
      found[found.length - 1] = `${before} ${each}`;
    else found.push(each);
  }
  return found;
}

/** Where in a sentence the asking begins: what comes before it leads up. */
function askingAt(stretches: readonly string[]): number {
  const begins = stretches.findIndex((each) => opens.test(each) || asksAbout.test(each));
  return begins < 0 ? stretches.length - 1 : begins;
}

/** What can be said by itself, in its order; a question is never cut apart once it has begun. */
export function piecesOf(sentences: readonly string[]): readonly Piece[] {
  const found: Piece[] = [];
  for (const [sentence, words] of sentences.entries()) {
    const stretches = stretchesOf(words);
    const isAsking = asks(words) || stretches.some((each) => asks(each));
    const from = isAsking ? askingAt(stretches) : stretches.length;
    const add = (text: string, isQuestion: boolean, isFirst: boolean): void => {
      const { length } = wordsOf(text);
      const hangs =
        !isFirst &&
        (hanging.test(text) ||
          length < fewWords ||
          (/^with\b/iu.test(text) && !(length <= mostWith && /\d/.test(text))));
      found.push({ text, sentence, at: found.length, asks: isQuestion, hangs });
    };
    for (const [place, each] of stretches.slice(0, from).entries()) add(each, false, place === 0);
    if (from < stretches.length) add(stretches.slice(from).join(' '), true, true);
  }
  return found;
}
