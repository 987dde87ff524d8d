import type { VerdictAsked } from '../cases/verdict';
import type { ChangeAsked } from '../change/asked';
import type { QuestionsAsked } from '../questions/answer-shapes';
import { changesOf } from './changes-of';
import type { ExerciseWanted } from './exercise-made';
import type { ExercisesAsked } from './exercises-of';
import type { KnownAsked } from './known-of';
import type { TaskAsked } from './task-of';
import { type TrialAsked, trialBegins, trialOf } from './trial';
import { verdictOf } from './verdict-of';

/** What is reckoned beside the page; all of it needs the rule sets, so all is asked in one place. */
export type AskedAside =
  | ({ readonly kind: 'verdict' } & VerdictAsked)
  | ({ readonly kind: 'changes' } & ChangeAsked)
  | ({ readonly kind: 'trial' } & TrialAsked)
  | ({ readonly kind: 'exercises' } & ExercisesAsked)
  | ({ readonly kind: 'known' } & KnownAsked)
  | ({ readonly kind: 'make' } & ExerciseWanted)
  | ({ readonly kind: 'task' } & TaskAsked)
  | ({ readonly kind: 'questions' } & QuestionsAsked);

/** Out of the promise, so that whoever asked hears of it as of any other mistake. */
const aloud = (problem: unknown): void => {
  setTimeout(() => {
    throw problem;
  });
};

addEventListener('message', async ({ data }: MessageEvent<AskedAside>) => {
  if (data.kind === 'questions') {
    import('./questions')
      .then(({ hearQuestions }) => hearQuestions(data, (told) => postMessage(told)))
      .catch(aloud);
    return;
  }
  if (data.kind === 'exercises') {
    import('./exercises-of')
      .then(({ exercisesOf }) => exercisesOf(data))
      .then((lacking) => postMessage(lacking), aloud);
    return;
  }
  if (data.kind === 'make') {
    import('./exercise-made')
      .then(({ exerciseMade }) => exerciseMade(data, (tried) => postMessage({ tried })))
      .then((made) => postMessage({ made }), aloud);
    return;
  }
  if (data.kind === 'known') {
    import('./known-of')
      .then(({ knownIn }) => knownIn(data))
      .then((known) => postMessage(known), aloud);
    return;
  }
  if (data.kind === 'task') {
    import('./task-of')
      .then(({ taskAside }) => taskAside(data))
      .then((task) => postMessage({ task }), aloud);
    return;
  }
  if (data.kind === 'changes') {
    changesOf(data).then((found) => postMessage(found), aloud);
    return;
  }
  if (data.kind === 'trial') {
    trialOf(data, () => postMessage(trialBegins)).then((trial) => postMessage({ trial }), aloud);
    return;
  }
  try {
    postMessage(await verdictOf(data));
  } catch {
    postMessage({ stands: 'unknown', words: 'not to be judged here' });
  }
});
