export { type Asked, answerNow } from './answer/answer';
export { answer } from './answer/by-engine';
export type {
  Answer,
  Assumed,
  Ends,
  FindingAnswer,
  LimitAnswer,
  Missing,
  ParameterAnswer,
  Step,
  Trace,
} from './answer/shapes';
export {
  type CellGiven,
  type FactGiven,
  type FactsGiven,
  type RowGiven,
  readFacts,
} from './check/facts';
export { sayProblem } from './check/messages';
export { nearest } from './check/near';
export { InputError, type Problem } from './check/problem';
export { checkTopic } from './check/topic';
export { type ConditionRule, conditionRules, publish } from './condition/rules';
export * from './define/shapes';
export { declaredUnit, defineTopic, gather, part } from './define/topic';
