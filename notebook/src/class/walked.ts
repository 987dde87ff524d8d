import type { CaseDocument } from '@tarebook/casebook';
import type { Answer } from '@tarebook/rules/engine';
import type { Task } from '../practice/task';
import type { Question } from './predict';

/** A case of a class, read and judged once. */
export type Walked = {
  readonly doc: CaseDocument;
  readonly answer: Answer;
  readonly question: Question;
  readonly task: Task;
};
