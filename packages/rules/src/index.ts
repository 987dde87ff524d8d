export {
  type Answer,
  type Asked,
  answer,
  answerNow,
  checkTopic,
  type Ends,
  type FactsGiven,
  type FindingAnswer,
  InputError,
  type LimitAnswer,
  type Missing,
  type Problem,
  publish,
  type Step,
  sayProblem,
  type Topic,
  type Trace,
} from './engine/index';
export { topics } from './topics/all';
export { towFit } from './topics/tow-fit/index';
