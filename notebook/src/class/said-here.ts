import type { UnitSystem } from '@tarebook/rules/quantity';
import { isSureness } from '../state/group';
import { guessCode } from './guess-code';
import { GuessField } from './guess-field';
import type { Handed } from './handed-read';
import { type Question, readPrediction } from './predict';

/** What stands in a learner's form, to stand there again where it is not taken. */
export type Typed = {
  readonly guess: GuessField['kept'];
  readonly sure: string;
  readonly why: string;
};

/** What was said of a case, and what stood in the form then. */
export type Said = {
  readonly handed: Handed;
  readonly typed: Typed;
  /** As it is compared with what came out. */
  readonly plain: string;
};

function fieldIn(form: ParentNode, id: string): HTMLInputElement | HTMLSelectElement | undefined {
  const field = form.querySelector(`#${id}`);
  return field instanceof HTMLInputElement || field instanceof HTMLSelectElement
    ? field
    : undefined;
}

/** Fills the form with what was typed before. */
export async function putIn(form: ParentNode, typed: Typed): Promise<void> {
  const guess = form.querySelector('guess-field');
  if (!(guess instanceof GuessField)) return;
  await guess.putBack(typed.guess);
  const sure = fieldIn(form, 'my-sure');
  const why = fieldIn(form, 'my-why');
  if (sure) sure.value = typed.sure;
  if (why) why.value = typed.why;
}

/** What a learner says, with the code that carries it, or what is wrong with it; undefined without a form. */
export function saidIn(
  form: ParentNode,
  of: { readonly case: number; readonly learner: number },
  question: Question,
  system: UnitSystem,
): { readonly wrong: string } | Said | undefined {
  const guess = form.querySelector('guess-field');
  if (!(guess instanceof GuessField)) return undefined;
  const read = readPrediction(guess.said, question, system);
  if ('wrong' in read) return { wrong: read.wrong };
  const sure = fieldIn(form, 'my-sure')?.value ?? '';
  const because = fieldIn(form, 'my-why')?.value ?? '';
  const guessed = { ...of, said: read.said };
  const code = guessCode({ ...guessed, ...(isSureness(sure) && { sure }) }, question, system);
  if (!code) return { wrong: 'A code carries one figure; write a single number.' };
  const why = guess.sentence || because.trim().slice(0, 300);
  const said = guess.sentence ? `“${guess.sentence}”` : read.said;
  const typed = { guess: guess.kept, sure, why: because };
  return { handed: { code, said, why }, typed, plain: read.said };
}
