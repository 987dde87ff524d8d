import type { Block, CaseDocument } from '@tarebook/casebook';
import type { Answer, Ends, Topic } from '@tarebook/rules/engine';
import {
  convert,
  readQuantity,
  sameDimension,
  show,
  showNumber,
  shownUnit,
  type UnitSystem,
  unitOf,
  wasMisread,
} from '@tarebook/rules/quantity';
import { comparedSeveral, readSeveral, type SeveralQuestion } from './several';

/** What a case has its learners predict. */
export type Question =
  | {
      readonly kind: 'number';
      readonly result: string;
      readonly label: string;
      readonly found: Ends;
      /** How far off still counts as met, in the unit of `found`. */
      readonly within: number;
    }
  | {
      readonly kind: 'word';
      readonly result: string;
      readonly label: string;
      readonly found: string;
      readonly words: readonly string[];
    }
  | SeveralQuestion;

/** A prediction against what came out. */
export type Compared = {
  readonly met: boolean;
  /** In words: "18 lb under", "inside", "as it came out". */
  readonly says: string;
  /** Signed, in the unit of the result; 0 inside it; absent for words and open results. */
  readonly off?: number;
};

/** Where a case states no tolerance: a tenth of what came out (a house choice). */
const defaultShare = 0.1;

const isPredict = (block: Block): block is Block & { kind: 'predict' } => block.kind === 'predict';

/** The blocks before the working opens, and those after. */
export function splitAtPredict(doc: CaseDocument): {
  readonly before: readonly Block[];
  readonly asked?: Block & { kind: 'predict' };
  readonly after: readonly Block[];
} {
  const at = doc.blocks.findIndex(isPredict);
  const asked = doc.blocks.find(isPredict);
  if (!asked) return { before: doc.blocks, after: [] };
  return { before: doc.blocks.slice(0, at), asked, after: doc.blocks.slice(at + 1) };
}

const limitWords = (answer: Answer): readonly string[] => [
  ...answer.limits.filter(({ state }) => state !== 'not-asked').map(({ label }) => label),
  'None',
];

/** What a learner says of a number, a yes or no or a decision that what is known leaves open. */
export const leftOpen = 'cannot be told from this';

type Told = { readonly label: string; readonly found: string; readonly words: readonly string[] };

/** A decision's results as a person reads them. */
function decided({ topic }: CaseDocument, answer: Answer, result: string): Told | undefined {
  const choice = answer.choices[result];
  const decision = topic?.decisions?.[result];
  if (!choice || !decision) return undefined;
  const [only, ...others] = choice.labels;
  const found = only !== undefined && others.length === 0 ? only : leftOpen;
  const words = Object.values(decision.results).map(({ label }) => label);
  return { label: choice.label, found, words: [...words, leftOpen] };
}

/** A yes or a no: a formula, or whether something is chosen from a list. */
function yesOrNo(answer: Answer, result: string): Told | undefined {
  const words = ['yes', 'no', leftOpen];
  const step = answer.trace.steps[result];
  if (step?.among?.every((each) => each === 'yes' || each === 'no')) {
    const [only, ...others] = step.among;
    return { label: step.label, found: only && others.length === 0 ? only : leftOpen, words };
  }
  for (const { id, items } of answer.selections) {
    const item = items.find((each) => `${id}.${each.id}` === result);
    if (!item) continue;
    const found = item.chosen === 'unknown' ? leftOpen : item.chosen;
    return { label: item.label, found, words };
  }
  return undefined;
}

/** The verdicts that a topic can come to: “… if …” only where some finding has a proviso to say. */
export function verdictWords({ outcomes, findings }: Topic): readonly string[] {
  const hasProviso = Object.values(findings).some(
    (finding) => finding.if !== undefined || finding.stopOpen === 'if',
  );
  return Object.entries(outcomes).flatMap(([level, { words }]) =>
    level === 'if' && !hasProviso ? [] : [words],
  );
}

function wordQuestion(doc: CaseDocument, answer: Answer, result: string): Question | undefined {
  const word = ({ label, found, words }: Told): Question => {
    return { kind: 'word', result, label, found, words: [...new Set(words)] };
  };
  if (result === 'limit.binding') {
    const binding = answer.limits.find(({ id }) => id === answer.binding);
    const label = 'The limit that runs out first';
    return word({ label, found: binding?.label ?? 'None', words: limitWords(answer) });
  }
  const told = decided(doc, answer, result) ?? yesOrNo(answer, result);
  if (told) return word(told);
  if (result !== 'verdict') return undefined;
  const words = doc.topic ? verdictWords(doc.topic) : [answer.words];
  return word({ label: 'The verdict', found: answer.words, words });
}

function toleranceOf(within: string, found: Ends): number {
  const share = Math.abs(Number.isFinite(found.hi) ? found.hi : found.lo) * defaultShare;
  const read = within === '' ? undefined : readQuantity(within);
  if (!read || wasMisread(read)) return share;
  const unit = unitOf(found.unit || '1');
  const written = read.unit ?? unitOf('1');
  if (!sameDimension(written.dimension, unit.dimension)) return share;
  return Math.abs(convert(read.from, written, unit) - convert(0, written, unit));
}

/** What is to be predicted: what the case asks for, else its verdict. */
export function questionOf(doc: CaseDocument, answer: Answer): Question {
  const { asked } = splitAtPredict(doc);
  const result = asked?.result ?? 'verdict';
  const found = answer.values[result];
  if (found) {
    const label = doc.topic?.formulas[result]?.label ?? result;
    const within = toleranceOf(asked?.within ?? '', found);
    return { kind: 'number', result, label, found, within };
  }
  const question = wordQuestion(doc, answer, result) ?? wordQuestion(doc, answer, 'verdict');
  if (!question) throw new Error(`There is no result “${result}” to predict.`);
  return question;
}

/** The unit a number is asked in, and taken to be in when a learner writes none. */
export const askedUnit = (question: Question & { kind: 'number' }, system: UnitSystem): string =>
  shownUnit(question.found.unit, system);

/** A distance such as a tolerance, as shown: "20 lb". */
function amount(size: number, unit: string, system: UnitSystem): string {
  const target = shownUnit(unit, system);
  const [from, to] = [unitOf(unit || '1'), unitOf(target || '1')];
  const shown = Math.abs(convert(size, from, to) - convert(0, from, to));
  return `${showNumber(shown, 1)}${target ? ` ${target}` : ''}`;
}

export const withinWords = (question: Question & { kind: 'number' }, system: UnitSystem): string =>
  amount(question.within, question.found.unit, system);

/** It may be anything, or anything from some figure on. */
const isOpen = ({ lo, hi }: Ends): boolean => !Number.isFinite(lo) || !Number.isFinite(hi);

type Guess = { readonly from: number; readonly to: number };

/** The number or range that a prediction says, in the unit of the result, or what is wrong with it. */
function numberIn(
  said: string,
  question: Question & { kind: 'number' },
  system: UnitSystem,
): Guess | string {
  const shown = askedUnit(question, system);
  const example = `a number such as ${showNumber(100, 0)} ${shown}`.trim();
  if (said === '') return `Nothing is written here; write ${example}.`;
  const read = readQuantity(said);
  if (wasMisread(read)) {
    return `“${said.slice(0, 40)}” is no number; write ${example}, or a range such as 100–200.`;
  }
  const unit = unitOf(question.found.unit || '1');
  const written = read.unit ?? unitOf(shown || '1');
  if (!sameDimension(written.dimension, unit.dimension)) {
    return `“${said.slice(0, 40)}” is in ${written.symbol}, and ${shown} was asked; write ${example}.`;
  }
  return { from: convert(read.from, written, unit), to: convert(read.to, written, unit) };
}

/**
 * A prediction as it is taken down, its unit written out, or what is wrong with it.
 * @returns `said` ready for the record, or `wrong`, one sentence for beside the field.
 */
export function readPrediction(
  said: string,
  question: Question,
  system: UnitSystem,
): { readonly said: string } | { readonly wrong: string } {
  const text = said.trim();
  if (question.kind === 'several') return readSeveral(text, question);
  if (question.kind === 'word') {
    return question.words.includes(text)
      ? { said: text }
      : { wrong: `Nothing is chosen; choose one of ${question.words.join(', ')}.` };
  }
  if (text === leftOpen) return { said: text };
  const number = numberIn(text, question, system);
  if (typeof number === 'string') return { wrong: number };
  const read = readQuantity(text);
  const bare = !wasMisread(read) && !read.unit;
  const unit = askedUnit(question, system);
  return { said: bare && unit !== '' ? `${text} ${unit}` : text };
}

/** The middle of what was guessed, in the unit that is asked for; undefined of what is no figure. */
export function guessedMiddle(
  said: string,
  question: Question & { kind: 'number' },
  system: UnitSystem,
): number | undefined {
  const value = numberIn(said, question, system);
  if (typeof value === 'string') return undefined;
  const [unit, asked] = [unitOf(question.found.unit || '1'), askedUnit(question, system)];
  return convert((value.from + value.to) / 2, unit, unitOf(asked || '1'));
}

/** How far a prediction reaches out of what came out: below, above, or 0. */
function outOf({ from, to }: Guess, { lo, hi }: Ends): number {
  const [below, above] = [Math.min(from - lo, 0), Math.max(to - hi, 0)];
  return -below > above ? below : above;
}

/**
 * A prediction, as it was taken down, against what came out. Both ends of a range lie in it; of a
 * predicted range neither end may lie farther out than the tolerance.
 */
export function compared(said: string, question: Question, system: UnitSystem): Compared {
  if (question.kind === 'several') return comparedSeveral(said, question);
  if (question.kind === 'word') {
    const met = said === question.found;
    return { met, says: met ? 'as it came out' : 'otherwise' };
  }
  const { lo, hi, unit } = question.found;
  const open = isOpen(question.found);
  if (said === leftOpen) {
    return { met: open, says: open ? 'as it came out' : 'it can be told' };
  }
  const value = numberIn(said, question, system);
  if (typeof value === 'string') return { met: false, says: 'cannot be read' };
  if (foundWords(question, system) === leftOpen) return { met: false, says: leftOpen };
  const off = outOf(value, question.found);
  const met = Math.abs(off) <= question.within + 1e-9;
  if (off === 0) return { met, says: lo === hi ? 'exactly' : 'inside the range', off };
  return { met, says: `${amount(off, unit, system)} ${off < 0 ? 'under' : 'over'}`, off };
}

/** What came out, as shown. */
export function foundWords(question: Question, system: UnitSystem): string {
  if (question.kind !== 'number') return question.found;
  const shown = show(question.found, question.found.unit, system);
  return shown === 'unknown' ? leftOpen : shown;
}
