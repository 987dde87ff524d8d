import type { Block, CaseDocument } from '@tarebook/casebook';
import type { Answer, Ends } from '@tarebook/rules/engine';
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
    };

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

function wordQuestion(doc: CaseDocument, answer: Answer, result: string): Question | undefined {
  const word = (label: string, found: string, words: readonly string[]): Question => ({
    kind: 'word',
    result,
    label,
    found,
    words,
  });
  if (result === 'limit.binding') {
    const binding = answer.limits.find(({ id }) => id === answer.binding);
    return word('The limit that runs out first', binding?.label ?? 'None', limitWords(answer));
  }
  const step = answer.trace.steps[result];
  if (step) return word(step.label, step.value, ['yes', 'no', 'unknown']);
  if (result !== 'verdict') return undefined;
  const outcomes = Object.values(doc.topic?.outcomes ?? {}).map(({ words }) => words);
  return word('The verdict', answer.words, outcomes);
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

/** The number that a prediction says, in the unit of the result, or what is wrong with it. */
function numberIn(
  said: string,
  question: Question & { kind: 'number' },
  system: UnitSystem,
): number | string {
  const shown = askedUnit(question, system);
  const example = `a number such as ${showNumber(100, 0)} ${shown}`.trim();
  if (said === '') return `Nothing is written here; write ${example}.`;
  const read = readQuantity(said);
  if (wasMisread(read) || read.from !== read.to) {
    return `“${said.slice(0, 40)}” is no single number; write ${example}.`;
  }
  const unit = unitOf(question.found.unit || '1');
  const written = read.unit ?? unitOf(shown || '1');
  if (!sameDimension(written.dimension, unit.dimension)) {
    return `“${said.slice(0, 40)}” is in ${written.symbol}, and ${shown} was asked; write ${example}.`;
  }
  return convert(read.from, written, unit);
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
  if (question.kind === 'word') {
    return question.words.includes(text)
      ? { said: text }
      : { wrong: `Nothing is chosen; choose one of ${question.words.join(', ')}.` };
  }
  const number = numberIn(text, question, system);
  if (typeof number === 'string') return { wrong: number };
  const read = readQuantity(text);
  const bare = !wasMisread(read) && !read.unit;
  const unit = askedUnit(question, system);
  return { said: bare && unit !== '' ? `${text} ${unit}` : text };
}

/** A prediction, as it was taken down, against what came out. Both ends of a range lie in it. */
export function compared(said: string, question: Question, system: UnitSystem): Compared {
  if (question.kind === 'word') {
    const met = said === question.found;
    return { met, says: met ? 'as it came out' : 'otherwise' };
  }
  const value = numberIn(said, question, system);
  if (typeof value === 'string') return { met: false, says: 'cannot be read' };
  const { lo, hi, unit } = question.found;
  if (!Number.isFinite(lo) && !Number.isFinite(hi)) return { met: false, says: 'cannot be said' };
  const off = value < lo ? value - lo : value > hi ? value - hi : 0;
  const met = Math.abs(off) <= question.within + 1e-9;
  if (off === 0) return { met, says: lo === hi ? 'exactly' : 'inside the range', off };
  return { met, says: `${amount(off, unit, system)} ${off < 0 ? 'under' : 'over'}`, off };
}

/** What came out, as shown. */
export const foundWords = (question: Question, system: UnitSystem): string =>
  question.kind === 'word' ? question.found : show(question.found, question.found.unit, system);
