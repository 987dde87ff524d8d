import type { UnitSystem } from '@tarebook/rules/quantity';
import { html, nothing, type TemplateResult } from 'lit';
import '../drawings/case-figures';
import { figuresOf } from '../drawings/all';
import { type ClassStep, steps } from '../state/group';
import { blocksAfter } from './case-read';
import './guess-spread';
import { type Guess, guessesSay } from './guesses';
import { foundWords } from './predict';
import { limitRead, shownLimit } from './shown-limit';
import { answersTold, putRight } from './task-read';
import { verdictRead } from './verdict-read';
import type { Walked } from './walked';
import { hasSums, sumsRead } from './wall-sums';

const isAnswered = ({ task }: Walked): boolean => task.kind === 'ask' || task.kind === 'spot';

/** What a case has to show of what came out: its answer is long where questions or a line were asked for. */
function parts(walked: Walked): { readonly hasPicture: boolean; readonly hasLimit: boolean } {
  const { doc, answer } = walked;
  if (isAnswered(walked)) return { hasPicture: false, hasLimit: false };
  return {
    hasPicture: Object.hasOwn(figuresOf, answer.topic),
    hasLimit: shownLimit(doc.topic, answer) !== undefined,
  };
}

/** The steps of an open case that have something to show. */
export const stepsShown = (walked: Walked): readonly ClassStep[] =>
  steps.filter((step) => step !== 'working' || hasSums(walked));

/** What the wall shows at a step of an open case, as the trainer reads it: named for what is there. */
export function stepWords(step: ClassStep, walked: Walked): string {
  if (step === 'guesses') return 'The guesses';
  if (step === 'why') return 'Why';
  if (step === 'working') return 'The working';
  const { hasPicture, hasLimit } = parts(walked);
  if (!hasLimit) return 'What came out';
  return hasPicture ? 'The picture and the limit' : 'The limit';
}

/** What was asked, without a word of what came out. */
function askedWords({ question }: Walked): string {
  if (question.kind !== 'several') return question.label;
  return question.result === 'ask' ? 'How many questions it took' : 'What the sentences held';
}

/** The result that was asked for, large; of a verdict nothing, as it stands above. */
function cameOut({ question }: Walked, system: UnitSystem) {
  if (question.result === 'verdict' || question.result === 'spot') return nothing;
  const figure = question.kind === 'number' ? 'num' : '';
  return html`<p class="came-out">${question.label}: <strong class=${figure}>${foundWords(question, system)}</strong></p>`;
}

/** A step of an open case on the wall: the guesses alone, then what came out, then why. */
export function stepRead(
  step: ClassStep,
  walked: Walked,
  guesses: readonly Guess[],
  system: UnitSystem,
): TemplateResult {
  const { doc, answer, question } = walked;
  if (step === 'guesses') {
    return html`<div class="step"><p class="asked-for">${askedWords(walked)}</p>
      <guess-spread .guesses=${guesses} .question=${question} .system=${system} .isAlone=${true}></guess-spread></div>`;
  }
  if (step === 'working') return sumsRead(walked, system);
  if (step === 'why') {
    return html`<div class="step why">${verdictRead(walked)}
      <div class="author">${blocksAfter(walked, system)}</div></div>`;
  }
  const { hasPicture, hasLimit } = parts(walked);
  return html`<div class="step picture">${verdictRead(walked)}
    ${hasPicture ? html`<case-figures .drawn=${{ doc, answer }} .system=${system}></case-figures>` : nothing}
    ${hasLimit ? limitRead(doc.topic, answer, system) : nothing}
    <div class="found">${cameOut(walked, system)}<p class="were-right">${guessesSay(guesses, question, system)}</p></div>
    ${putRight(walked)}${answersTold(walked)}</div>`;
}
