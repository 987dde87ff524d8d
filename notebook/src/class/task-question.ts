import type { CaseDocument } from '@tarebook/casebook';
import type { Answer } from '@tarebook/rules/engine';
import { heardIn } from '../practice/say-aloud';
import type { Task } from '../practice/task';
import { type Question, questionOf, verdictWords } from './predict';
import { bestAsked } from './several';

/** What is to be answered in an exercise, and what counts as right. */
export function taskQuestion(task: Task, doc: CaseDocument, answer: Answer): Question {
  if (task.kind === 'predict') return questionOf(doc, answer);
  if (task.kind === 'spot') {
    const { lines, wrong } = task.wrong;
    const found = lines.find(({ id }) => id === wrong)?.label ?? '';
    const words = lines.map(({ label }) => label);
    return { kind: 'word', result: 'spot', label: 'The wrong figure', found, words };
  }
  if (task.kind === 'say') {
    const words = heardIn('', doc, answer, 'us').map(({ label }) => label);
    const found = words.join(', ').toLowerCase();
    const whole = { words, enough: words.length, found };
    return { kind: 'several', result: 'say', label: 'What the sentence has to hold', ...whole };
  }
  const { hidden, best } = task.asking;
  const verdicts = doc.topic ? verdictWords(doc.topic) : [answer.words];
  const verdict = { found: answer.words, words: [...new Set(verdicts)] };
  const words = [...hidden.map(({ label }) => label), ...verdict.words];
  const found = bestAsked(best.map((id) => hidden.find((each) => each.id === id)?.label ?? id));
  const whole = { words, enough: best.length, found, verdict };
  return { kind: 'several', result: 'ask', label: 'The rules would have asked', ...whole };
}
