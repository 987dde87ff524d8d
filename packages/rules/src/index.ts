export {
  type Answer,
  answer,
  answerNow,
  type Asked,
  checkTopic,
  type Ends,
  type FactsGiven,
  type FindingAnswer,
  InputError,
  type LimitAnswer,
  type Missing,
  publish,
  type Problem,
  sayProblem,
  type Step,
  type Topic,
  type Trace,
} from './engine/index';
export { topics } from './topics/all';
export { towFit } from './topics/tow-fit/index';
