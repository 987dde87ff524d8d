import type { Topic } from '@tarebook/rules/engine';
import { clauses } from '../words/clauses/all';
import type { Amount } from './amounts';
import { isWanted } from './choices';
import { isEither, isForEach, isMeant, isYear } from './not-meant';
import { ofOne, toldOf } from './sayings';
import { isFartherEnd } from './spans';

/** Words of which each group must stand in a clause, in whatever order, and words that must not. */
type Form = {
  readonly near: readonly RegExp[];
  readonly ahead: readonly RegExp[];
  readonly behind: readonly RegExp[];
  /** Also told where the sentence, or the one before it, says so. */
  readonly about: readonly RegExp[];
  readonly never: RegExp | undefined;
  /** Whether one of its own words says no. */
  readonly denies: boolean;
  /** The same groups that stand near, for all their places. */
  readonly everywhere: readonly RegExp[];
  /** Of each group the words that its phrases begin with; a text with none of them does not hold it. */
  readonly begins: readonly Begins[];
};

type Begins = { readonly whole: readonly string[]; readonly parts: readonly string[] };

const plainOf = (word: string): string => word.toLowerCase().replace(/['’]/g, '');

/** How the phrases of a group begin; with a mark it may be anywhere. */
function beginsOf(group: string): Begins | undefined {
  const first = group.split('|').map((phrase) => /^[\p{L}\d'’]+\*?/u.exec(phrase)?.[0] ?? '');
  if (first.includes('')) return undefined;
  return {
    whole: first.filter((each) => !each.endsWith('*')).map(plainOf),
    parts: first.filter((each) => each.endsWith('*')).map((each) => plainOf(each.slice(0, -1))),
  };
}

/** The words of a text, and each as it is without the ending of the plural. */
function wordsIn(text: string): ReadonlySet<string> {
  const words = plainOf(text).match(/[\p{L}]+|\d+/gu) ?? [];
  return new Set(words.flatMap((word) => (word.endsWith('s') ? [word, word.slice(0, -1)] : word)));
}

const mayHold = ({ begins }: Form, words: ReadonlySet<string>): boolean =>
  begins.every(
    ({ whole, parts }) =>
      whole.some((each) => words.has(each)) ||
      (parts.length > 0 && [...words].some((word) => parts.some((each) => word.startsWith(each)))),
  );

/** Words that turn round what is said right behind them. */
const turned =
  /(?<![\p{L}])(?:no|not|never|without|nobody|nothing|isn[’']?t|aren[’']?t|wasn[’']?t|don[’']?t|doesn[’']?t|didn[’']?t|won[’']?t|can[’']?t|if|whether|unless)(?![\p{L}])/iu;

const wordForm = (words: string): RegExp => {
  const plain = words
    .replace(/[.+?^${}[\]\\]/g, '\\$&')
    .replaceAll('*', '\\p{L}*')
    .replaceAll("'", "['’]?")
    .replace(/[ -]/g, '[ -]');
  return new RegExp(`(?<![\\p{L}\\d])(?:${plain})(?:['’]?s)?(?![\\p{L}])`, 'iu');
};

const forms = new Map<string, Form>();

function formOf(clause: string): Form {
  const before = forms.get(clause);
  if (before) return before;
  const [says = '', never] = clause.split(' ! ');
  const parts = says.split(' & ');
  const marked = (mark: string): readonly RegExp[] =>
    parts.filter((each) => each.startsWith(mark)).map((each) => wordForm(each.slice(1)));
  const form: Form = {
    near: parts.filter((each) => !/^[~<>]/.test(each)).map(wordForm),
    ahead: marked('<'),
    behind: marked('>'),
    about: marked('~'),
    never: never === undefined ? undefined : wordForm(never),
    denies: turned.test(says),
    everywhere: parts
      .filter((each) => !/^[~<>]/.test(each))
      .map((each) => new RegExp(wordForm(each).source, 'giu')),
    begins: parts.flatMap((each) => beginsOf(each.replace(/^[~<>]/, '')) ?? []),
  };
  forms.set(clause, form);
  return form;
}

/** What stands around a number, or around a word. */
type Around = {
  readonly ahead: string;
  readonly behind: string;
  /** The sentence and the one before it, as far as the number. */
  readonly about: string;
};

const mostAhead = 70;
const mostBehind = 45;

const lastIndex = (text: string, mark: RegExp): number => {
  const [found] = [...text.matchAll(mark)].slice(-1);
  return found ? found.index + found[0].length : 0;
};

const sentenceEnd = /[?!\n]|(?<!\bno|\bin|\bft|\bapprox|\blbs|\d )\.(?=\s|$)|;/gi;
const apart = /[,:(]|(?<![\p{L}])(?:and|but|then|plus|n|&|w\/?)(?![\p{L}])/giu;

/** What is counted, or told in a unit of its own: a number beside it is nothing else. */
const isCounted = (text: string, { unit, to }: Amount): boolean =>
  unit === undefined &&
  /^[ -]?(?:sec(?:ond)?|min(?:ute)?|month|people|ppl|person|adult|kid|child|dog|cat|bike|burner|wheel|tire|axle|time|of us|mile marker|step|leg|bed|door|window|panel|trailer|truck)s?(?!\p{L})/iu.test(
    text.slice(to, to + 14),
  );

/** What belongs to one number: as far as its neighbors, and as the commas between them. */
function around(text: string, at: number, amounts: readonly Amount[]): Around {
  const amount = amounts[at];
  if (!amount) return { ahead: '', behind: '', about: '' };
  const [before, next] = [amounts[at - 1], amounts[at + 1]];
  const start = lastIndex(text.slice(0, amount.from), sentenceEnd);
  const stretch = text.slice(start, amount.from);
  const isAlone = !before || before.to <= start;
  const between = isAlone ? stretch : text.slice(before.to, amount.from);
  const cut = isAlone ? 0 : lastIndex(between, apart);
  const ahead = between.slice(cut).slice(-mostAhead);
  // A unit is a word as others are.
  const own = /[\p{L}°%'"”’]+$/u.exec(text.slice(amount.from, amount.to))?.[0] ?? '';
  const rest = text.slice(amount.to, next?.from ?? text.length).slice(0, mostBehind);
  const end = rest.search(
    /[,;:?!\n]|\.(?=\s|$)|(?<![\p{L}])(?:and|but|then|plus|n|&)(?![\p{L}])/iu,
  );
  const behind = ` ${own} ${end < 0 ? rest : rest.slice(0, end)}`;
  // “…, 5,000 trailer, 350 ball”: what stands right before the next number may be its own.
  const earlier = lastIndex(text.slice(0, Math.max(0, start - 2)), sentenceEnd);
  return { ahead, behind, about: text.slice(earlier, amount.from) + behind };
}

type Found = { readonly fact: string; readonly value: string; readonly amount: Amount };
type Unclear = { readonly amount: Amount; readonly among: readonly string[] };

const byTopic = new WeakMap<Topic, readonly (readonly [string, readonly Form[]])[]>();

function numbersOf(topic: Topic): readonly (readonly [string, readonly Form[]])[] {
  const before = byTopic.get(topic);
  if (before) return before;
  const made = Object.entries(clauses.numbers)
    .filter(([fact]) => Object.hasOwn(topic.facts, fact))
    .map(([fact, all]) => [fact, all.map(formOf)] as const);
  byTopic.set(topic, made);
  return made;
}

/** How many groups of words a clause holds of a form; none where one is missing. */
function groups({ near, ahead, behind, about, never }: Form, said: Around): number {
  const beside = `${said.ahead} # ${said.behind}`;
  const holds =
    near.every((each) => each.test(beside)) &&
    ahead.every((each) => each.test(said.ahead)) &&
    behind.every((each) => each.test(said.behind)) &&
    about.every((each) => each.test(said.about));
  if (!holds || never?.test(beside)) return 0;
  return near.length + ahead.length + behind.length + about.length / 2;
}

/**
 * The facts that numbers are by what stands in their clause, in whatever order: the thing, and what of
 * it is told. Where two say as much, it is neither, and is asked.
 *
 * @param taken where numbers stand that are something already
 */
export function numbersByClause(
  topic: Topic,
  text: string,
  amounts: readonly Amount[],
  taken: ReadonlySet<number>,
  isTold: (fact: string) => boolean,
): { readonly told: readonly Found[]; readonly unclear: readonly Unclear[] } {
  const told: Found[] = [];
  const unclear: Unclear[] = [];
  if (amounts.every(({ from }) => taken.has(from))) return { told, unclear };
  const words = wordsIn(text);
  const possible = numbersOf(topic).flatMap(([fact, all]) => {
    const left = isTold(fact) ? [] : all.filter((form) => mayHold(form, words));
    return left.length === 0 ? [] : [[fact, left] as const];
  });
  amounts.forEach((amount, at) => {
    if (taken.has(amount.from) || isYear(text, amount) || isEither(text, amount)) return;
    if (isCounted(text, amount) || isFartherEnd(text, amounts, at)) return;
    const said = around(text, at, amounts);
    const likely = possible.flatMap(([fact, all]) => {
      if (told.some((each) => each.fact === fact)) return [];
      const says = Math.max(0, ...all.map((form) => groups(form, said)));
      if (says === 0 || !isMeant(fact, text, amount, amount)) return [];
      if (isForEach(text, amount) && !ofOne.test(fact)) return [];
      const value = toldOf(topic, fact, amount);
      return value === undefined ? [] : [{ fact, value, says }];
    });
    const most = Math.max(0, ...likely.map(({ says }) => says));
    const [first, another] = likely.filter(({ says }) => says === most);
    if (first && another) unclear.push({ amount, among: [first.fact, another.fact] });
    else if (first) told.push({ fact: first.fact, value: first.value, amount });
  });
  return { told, unclear };
}

type SaidByClause = {
  readonly fact: string;
  readonly value: string;
  readonly from: number;
  readonly to: number;
};

/** Whoever asks whether something is so, or should be, does not tell it. */
const asks =
  /^\W*(?:(?:and|also|so|or|but|then|ok|hi|hello),? )*(?:should|shall|do|does|did|is|are|was|can|could|would|will|must|may|what|which|how|when|why|who|where|am|has|have|any)(?![\p{L}])[^\n]*$/iu;

/** The parts of a text in which words belong together, with where each stands. */
function* partsOf(text: string): Generator<{ readonly from: number; readonly words: string }> {
  let from = 0;
  for (const { index } of text.matchAll(/[?!\n;]|\.(?=\s|$)|$/g)) {
    const words = text.slice(from, index);
    const isAsked = text[index] === '?' && asks.test(words);
    if (index > from) yield { from, words: isAsked ? '' : words };
    from = index + 1;
  }
}

/** Between the first and the last of its words stand no more than so many letters. */
const widest = 48;

/** Where all groups of a form stand nearest to each other. */
function placeOf(
  { near, everywhere: [first, ...others], about, never }: Form,
  words: string,
  ahead: string,
) {
  if (!first || !near.every((each) => each.test(words))) return undefined;
  if (!about.every((each) => each.test(ahead + words))) return undefined;
  const places = [...words.matchAll(first)].flatMap(({ index, 0: said }) => {
    let [from, to] = [index, index + said.length];
    for (const other of others) {
      const [nearest] = [...words.matchAll(other)]
        .map((each) => ({ from: each.index, to: each.index + each[0].length }))
        .toSorted(
          (a, b) =>
            Math.max(to, a.to) -
            Math.min(from, a.from) -
            Math.max(to, b.to) +
            Math.min(from, b.from),
        );
      if (!nearest) return [];
      [from, to] = [Math.min(from, nearest.from), Math.max(to, nearest.to)];
    }
    return [{ from, to }];
  });
  const [place] = places.toSorted((a, b) => a.to - a.from - b.to + b.from);
  if (!place || place.to - place.from > widest * Math.max(1, others.length)) return undefined;
  const stretch = words.slice(Math.max(0, place.from - 20), place.to + 12);
  return never?.test(stretch) ? undefined : place;
}

type Options = readonly (readonly [string, readonly Form[]])[];

const choicesByTopic = new WeakMap<Topic, readonly (readonly [string, Options])[]>();

function choicesOf(topic: Topic): readonly (readonly [string, Options])[] {
  const before = choicesByTopic.get(topic);
  if (before) return before;
  const made = Object.entries(clauses.values)
    .filter(([fact]) => Object.hasOwn(topic.facts, fact))
    .map(([fact, options]) => {
      const all = Object.entries(options).map(
        ([value, each]) => [value, each.map(formOf)] as const,
      );
      return [fact, all] as const;
    });
  choicesByTopic.set(topic, made);
  return made;
}

/** Choices, and what is so or not, by what stands in one clause in whatever order. */
export function choicesByClause(
  topic: Topic,
  text: string,
  isTold: (fact: string) => boolean,
): readonly SaidByClause[] {
  const parts = [...partsOf(text)];
  const said = wordsIn(text);
  return choicesOf(topic).flatMap(([fact, options]): readonly SaidByClause[] => {
    if (isTold(fact)) return [];
    const found = options.flatMap(([value, all]) => {
      const possible = all.filter((form) => mayHold(form, said));
      return parts.flatMap(({ from, words }, i) =>
        possible.flatMap((form): readonly SaidByClause[] => {
          const place = placeOf(form, words, parts[i - 1]?.words ?? '');
          if (!place) return [];
          const ahead = words.slice(Math.max(0, place.from - 14), place.from);
          if (!form.denies && turned.test(ahead)) return [];
          if (isWanted(fact, text, from + place.from, from + place.to)) return [];
          return [{ fact, value, from: from + place.from, to: from + place.to }];
        }),
      );
    });
    const [first] = found;
    return first && found.every(({ value }) => value === first.value) ? [first] : [];
  });
}
