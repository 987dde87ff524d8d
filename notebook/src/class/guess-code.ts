import {
  convert,
  readQuantity,
  sameDimension,
  type UnitSystem,
  unitOf,
  wasMisread,
} from '@tarebook/rules/quantity';
import { type GroupCase, isSureness, type Sureness, surenesses } from '../state/group';
import { checkCharacter } from './check-character';
import { askedUnit, leftOpen, type Question } from './predict';
import { type SeveralQuestion, severalSaid, wordsSaid } from './several';

/** Places in a list, one letter each, without those that are heard or read as another. */
const letters = 'ABCDEFGHJKLMPQRSTUVWXYZ';
export const mostByCode = letters.length;

/** A guess as it leaves a learner's phone: to be read out, typed, or scanned. */
export type Guessed = {
  /** From 0. */
  readonly case: number;
  readonly learner: number;
  readonly said: string;
  readonly sure?: Sureness;
};

/** A figure in the unit that is asked for, as a code has no unit: 1,667 h where days are asked is 69.4583. */
function inAsked(said: string, asked: string): string {
  const read = readQuantity(said);
  const to = unitOf(asked || '1');
  if (wasMisread(read) || !read.unit || read.from !== read.to) return said;
  if (read.unit.symbol === to.symbol || !sameDimension(read.unit.dimension, to.dimension)) {
    return said;
  }
  return `${Number(convert(read.from, read.unit, to).toPrecision(6))} ${asked}`;
}

/** A number as a code says it: digits, `P` for the point, `N` before what is below zero. */
function numberSaid(said: string): string | undefined {
  const plain = said.replace(/[,\s]|[^\d.,\-−]+$/g, '').replace('−', '-');
  return /^-?\d+(\.\d+)?$/.test(plain) ? plain.replace('-', 'N').replace('.', 'P') : undefined;
}

/** Places of a long list, two letters each; undefined where one is none of the list. */
function severalCode(said: string, { words }: SeveralQuestion): string | undefined {
  const places = wordsSaid(said).map((word) => {
    const at = words.indexOf(word);
    const [high, low] = [letters[Math.floor(at / letters.length)], letters[at % letters.length]];
    return high !== undefined && low !== undefined ? `${high}${low}` : undefined;
  });
  return places.includes(undefined) ? undefined : `L${places.join('')}`;
}

function severalIn(code: string, { words }: SeveralQuestion): string | undefined {
  const pairs = code.match(/../g) ?? [];
  const said = pairs.map(([high = '', low = '']) => {
    return words[letters.indexOf(high) * letters.length + letters.indexOf(low)];
  });
  const known = said.filter((word) => word !== undefined);
  return known.length < said.length ? undefined : severalSaid(known);
}

function whatSaid(said: string, question: Question, system: UnitSystem): string | undefined {
  if (question.kind === 'several') return severalCode(said, question);
  if (question.kind === 'number') {
    return said === leftOpen ? 'X' : numberSaid(inAsked(said, askedUnit(question, system)));
  }
  const choice = letters[question.words.indexOf(said)];
  return choice && `W${choice}`;
}

/**
 * The guess as a code: case, learner, how sure and in which units, what was said, a check character.
 *
 *     A B 3 1016 7    first case, second learner, certain, 1,016 lb
 *     A B 0 WC 2      the third choice, and nothing said of how sure
 *     A B 1 X 5       it cannot be told; a guess
 *     A B 2 LACAA 8   the third question, then the first; fairly sure
 *
 * @returns undefined where it is too long a list, or a range, which is said by its figures alone
 */
export function guessCode(
  { case: at, learner, said, sure }: Guessed,
  question: Question,
  system: UnitSystem,
): string | undefined {
  const [a, b] = [letters[at], letters[learner]];
  if (a === undefined || b === undefined) return undefined;
  const how = (sure ? surenesses.indexOf(sure) + 1 : 0) + (system === 'metric' ? 4 : 0);
  const what = whatSaid(said, question, system);
  if (what === undefined) return undefined;
  const body = `${a}${b}${how}${what}`;
  return `${body}${checkCharacter(body)}`;
}

/** An O read out is a nought to whoever types it, an I a one. */
const asHeard = (code: string): string => code.replaceAll('O', '0').replaceAll('I', '1');

const again = 'ask for it once more';

/** What a code says that was read out or scanned, or what is wrong with it, in one sentence. */
export function readGuessCode(
  typed: string,
  cases: readonly GroupCase[],
  learners: readonly string[],
  questionAt: (at: number) => Question | undefined,
): Guessed | string {
  const code = asHeard(typed.toUpperCase().replace(/[^A-Z0-9]/g, ''));
  const shown = typed.trim().slice(0, 20);
  const [body, check] = [code.slice(0, -1), code.slice(-1)];
  const parts = /^([A-Z])([A-Z])([0-7])(W[A-Z]|X|L(?:[A-Z]{2})*|N?\d+(?:P\d+)?)$/.exec(body);
  if (!parts || asHeard(checkCharacter(body)) !== check) {
    return `“${shown}” is no whole code: a character is missing or was heard wrongly; ${again}.`;
  }
  const [, a = '', b = '', how = '', what = ''] = parts;
  const [at, learner] = [letters.indexOf(a), letters.indexOf(b)];
  const question = at < cases.length ? questionAt(at) : undefined;
  if (!question || learner < 0 || learners[learner] === undefined) {
    return `“${shown}” is of another class: this one has ${cases.length} cases and ${learners.length} learners.`;
  }
  const [level, system] = [Number(how) % 4, Number(how) < 4 ? 'us' : 'metric'] as const;
  const sure = surenesses[level - 1];
  const reason = isSureness(sure) ? { sure } : {};
  if (question.kind === 'word') {
    const said = what.startsWith('W') ? question.words[letters.indexOf(what.slice(1))] : undefined;
    return said === undefined
      ? `“${shown}” says no choice of this case; ${again}.`
      : { case: at, learner, said, ...reason };
  }
  if (question.kind === 'several') {
    const said = what.startsWith('L') ? severalIn(what.slice(1), question) : undefined;
    return said === undefined
      ? `“${shown}” says nothing of this case; ${again}.`
      : { case: at, learner, said, ...reason };
  }
  if (/^[WL]/.test(what)) return `“${shown}” says a choice, and a figure is asked; ${again}.`;
  if (what === 'X') return { case: at, learner, said: leftOpen, ...reason };
  const figure = what.replace('N', '-').replace('P', '.');
  const unit = askedUnit(question, system);
  return { case: at, learner, said: `${figure}${unit ? ` ${unit}` : ''}`, ...reason };
}
