import { bareOf } from './spoken-bare';
import { asksDirectly, type Piece, piecesOf, sentencesOf, wordsOf } from './spoken-pieces';

/** So much is easily followed. */
export const easyWords = 30;
/** For what the answer hangs on it may be longer. */
export const mostWords = 36;
const hangsOn = 2;
/** A question of fewer words than this that points back is heard with what it points at. */
const halfWords = 16;
/** In fewer words hardly anybody tells what it is about. */
const fewWords = 8;
/** With more words that told what it is about it needs no subject over it. */
const fewBecause = 3;

/** What a question is heard with. */
export type Heard = {
  /** What stands over its message. */
  readonly subject?: string;
  /** What the message said and asked before it. */
  readonly before?: readonly string[];
  /** The words for which it was taken to be about what it is about. */
  readonly because?: readonly string[];
  /** The very words from which something was read. */
  readonly told?: readonly string[];
  readonly answer?: string;
};

const plain = (text: string): string => text.toLowerCase().replaceAll(/(?<=\d),(?=\d{3})/g, '');
const figuresIn = (text: string): readonly string[] => plain(text).match(/\d+(?:\.\d+)?/g) ?? [];
/** Words that tell something, by their beginning, so that one and many are the same. */
const stemsOf = (text: string): ReadonlySet<string> =>
  new Set((plain(text).match(/\p{L}{4,}/gu) ?? []).map((each) => each.slice(0, 5)));
const common = stemsOf(
  'have that this with what when from they them then there your were would could should about just like some been will very much more only over than into know want need does make take good okay right still said says tell told which where while because before after every other people really think guess',
);
const tellingIn = (text: string): ReadonlySet<string> =>
  new Set([...stemsOf(text)].filter((each) => !common.has(each)));
const shared = (some: ReadonlySet<string>, others: ReadonlySet<string>): number =>
  [...some].filter((each) => others.has(each)).length;
/** What somebody else says of it is the least of it. */
const hearsay =
  /\b(?:swore|swears|claims?|told me|no problem\w*|(?:somebody|dealer|seller|brother|buddy|guy|friend|neighbor|husband|wife|dad)\b.{0,20}\b(?:says?|said|thinks?|told))\b/iu;
const pointsBack =
  /(?<!\p{L})(?:it|its|that|this|them|they|those|these|one|he|she|so|there)(?!\p{L})/iu;
const goesOn = /^(?:and|also|or|plus|but|oh and)\b/iu;

/** What speaks for saying a piece along with the question. */
function worthOver(question: string, pieces: readonly Piece[], heard: Heard, own: number) {
  const { because = [], told = [], answer = '' } = heard;
  const inAnswer = new Set(figuresIn(answer));
  const answered = tellingIn(answer);
  const asked = tellingIn(question);
  const because5 = stemsOf(because.join(' '));
  const isFew = wordsOf(question).length < fewWords;
  const isBare = isFew || shared(asked, because5) + shared(asked, answered) === 0;
  const first = pieces.findIndex((each) => each.asks && each.at >= own);
  const nearest = pieces.findLast((each) => !each.asks && each.at < first);
  return (piece: Piece): number => {
    const telling = tellingIn(piece.text);
    const figures = figuresIn(piece.text);
    const isRead = told.some(
      (words) =>
        plain(piece.text).includes(plain(words)) ||
        (words.includes(piece.text) && wordsOf(piece.text).length > 1),
    );
    return (
      (isRead ? 5 : 0) +
      (figures.some((each) => inAnswer.has(each)) ? 4 : 0) +
      (figures.length > 0 ? 1 : 0) +
      Math.min(3, shared(telling, answered)) +
      Math.min(
        isBare ? 4 : 2,
        [...telling].filter((each) => because5.has(each) && !asked.has(each)).length * 2,
      ) +
      (shared(telling, asked) > 0 ? 1 : 0) +
      (piece === nearest ? (isFew || pointsBack.test(question) ? 6 : 1) : 0) -
      (hearsay.test(piece.text) ? 3 : 0)
    );
  };
}

const capital = (text: string): string =>
  text
    .replace(/^\p{Ll}/u, (first) => first.toUpperCase())
    .replaceAll(/(?<![\p{L}’'])i(?=$|[ ,’'])/gu, 'I');
const opener = /^(?:and|but|so|because|cause|since|also|plus|with|ok|okay|well|[-–—])[ ,]+(?=\S)/iu;

/** Chosen pieces, in their order, as sentences. */
function joined(chosen: readonly Piece[]): string {
  const sentences = [...new Set(chosen.map(({ sentence }) => sentence))];
  return sentences
    .map((own) => {
      const pieces = chosen.filter(({ sentence }) => sentence === own);
      const said = pieces
        .map(({ text, at }, place) => {
          const before = pieces[place - 1];
          const isNext = before !== undefined && before.at === at - 1;
          return isNext ? text : text.replace(place === 0 && !pieces[0]?.asks ? opener : /^$/, '');
        })
        .reduce(
          (now, text) =>
            `${now.replace(/[.;]$/, ',')}${/[,;.?!]$/.test(now) || opener.test(text) || /^(?:that|which|who)\b/.test(text) ? '' : ','} ${text}`,
        );
      const bare = said.replace(/[\s,;:–—-]+$/u, '').replace(/([?!])[?!.]+$/u, '$1');
      const asks = pieces.some((each) => each.asks && asksDirectly(each.text));
      const open = asks ? bare.replace(/\.$/, '') : bare;
      const end = /[.?!…]$/.test(open) ? '' : asks ? '?' : '.';
      return capital(`${open}${end}`);
    })
    .join(' ');
}

const lengthOf = (pieces: readonly Piece[]): number =>
  pieces.reduce((sum, { text }) => sum + wordsOf(text).length, 0);

/** A piece, and what it hangs on. */
function withWhatItHangsOn(piece: Piece, pieces: readonly Piece[]): readonly Piece[] {
  const before = pieces[piece.at - 1];
  if (!piece.hangs || !before || before.sentence !== piece.sentence) return [piece];
  return [...withWhatItHangsOn(before, pieces), piece];
}

/** A stretch that nobody can follow in one breath ends earlier. */
function shortened(piece: Piece): Piece {
  const words = wordsOf(piece.text);
  if (words.length <= mostWords) return piece;
  return { ...piece, text: `${words.slice(0, easyWords).join(' ')} …` };
}

/** What has to be said: all of it where it is short, else what it asks, the last of that first. */
function needed(mine: readonly Piece[]): readonly Piece[] {
  if (lengthOf(mine) <= easyWords) return mine;
  const asking = mine.filter((each) => each.asks);
  const kept: Piece[] = [];
  for (const each of (asking.length > 0 ? asking : mine.slice(0, 1)).toReversed()) {
    if (kept.length > 0 && lengthOf([each, ...kept]) > mostWords) break;
    kept.unshift(each);
  }
  return kept;
}

/** What has to be said, with as much of the rest as tells most. */
function withTheRest(
  must: readonly Piece[],
  pieces: readonly Piece[],
  may: readonly { readonly piece: Piece; readonly worth: number }[],
): readonly Piece[] {
  const chosen = new Set(must);
  for (const { piece, worth } of may.toSorted(
    (a, b) => b.worth - a.worth || b.piece.at - a.piece.at,
  )) {
    const now = new Set([...chosen, ...withWhatItHangsOn(piece, pieces)]);
    if (lengthOf([...now]) > (worth >= hangsOn ? mostWords : easyWords)) continue;
    for (const each of now) chosen.add(each);
  }
  return [...chosen];
}

/**
 * A question as it is read out, so that whoever hears it knows what is answered: what it asks, with what
 * the answer hangs on and what it points back at, in about 30 words. Nobody’s name, and no time of day.
 */
export function asSpoken(question: string, heard: Heard = {}): string {
  const { subject = '', before = [], because = [] } = heard;
  const own = sentencesOf(bareOf(question, subject));
  const earlier = sentencesOf(before.map((each) => bareOf(each, subject)).join(' '));
  const pieces = piecesOf([...earlier, ...own]).map(shortened);
  const from = pieces.find(({ sentence }) => sentence >= earlier.length)?.at ?? 0;
  const must = needed(pieces.slice(from));
  const asked = must.map(({ text }) => text).join(' ');
  const goesBack =
    goesOn.test(asked) ||
    because.length === 0 ||
    (pointsBack.test(asked) && lengthOf(must) < halfWords);
  const worth = worthOver(asked, pieces, heard, from);
  const may = pieces
    .filter((each) => !must.includes(each) && !each.asks && (each.at >= from || goesBack))
    .map((piece) => ({ piece, worth: worth(piece) }))
    .filter((each) => each.worth > 0);
  const chosen = withTheRest(must, pieces, may);
  // Where only questions came before, the last of them tells what this one points back at.
  const isAlone = from > 0 && goesBack && chosen.length === must.length;
  const all = [...(isAlone ? pieces.slice(0, from).slice(-1) : []), ...chosen];
  const said = joined(
    (lengthOf(all) <= mostWords ? all : chosen).toSorted((a, b) => a.at - b.at),
  ).replace(/^(?:And|Also|Oh and),? (?=\S)/u, '');
  const tellsSubject = shared(tellingIn(subject), tellingIn(said)) > 0;
  const isOpen = pointsBack.test(said) || wordsOf(said).length < fewWords;
  return subject !== '' && !tellsSubject && isOpen && because.length < fewBecause
    ? `${capital(subject)}: ${said}`
    : capital(said);
}
