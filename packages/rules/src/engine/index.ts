export { type Asked, answerNow, compiledOf, prepare } from './answer/answer';
export { bringingCatalogues } from './answer/bringing-catalogues';
export { answer } from './answer/by-engine';
export { factsBelow } from './answer/grounds';
export { gravestFirst } from './answer/levels';
export { type LimitTrials, limitTrials } from './answer/limit-trials';
export { dayProblems, inBase, parametersOn } from './answer/parameters';
export { prepareInSteps } from './answer/prepare';
export { type QuickOptions, quickly, type Verdict } from './answer/quickly';
export { againstOf, atMost, leftOf, overOf } from './answer/room';
export { beneathWord, urgentOf } from './answer/sentence';
export type {
  Answer,
  Assumed,
  ChoiceAnswer,
  Dated,
  Ends,
  FindingAnswer,
  HouseAnswer,
  LimitAnswer,
  Missing,
  ParameterAnswer,
  RankingAnswer,
  SelectionAnswer,
  SeriesAnswer,
  Step,
  Trace,
  Untraced,
} from './answer/shapes';
export { type NamedValues, namedValues, publish } from './answer/stock';
export { answerTraced, traceOf } from './answer/traced';
export { ruleInWords } from './catalogue/words';
export { defineTopic } from './check/define';
export { refuseUnless, refuseUnlessParts } from './check/doors';
export { readFacts } from './check/facts';
export {
  asWritten,
  type CellGiven,
  type FactGiven,
  type FactsGiven,
  isCell,
  isRows,
  type RowGiven,
} from './check/given';
export { sayProblem } from './check/messages';
export { nearest } from './check/near';
export { InputError, type Mistake, type Problem, type ProblemCode } from './check/problem';
export { type OldId, presentFacts, presentId } from './check/renamed';
export { checkTopic } from './check/topic';
export { type ConditionRule, conditionRules } from './condition/rules';
export { rulesHolding } from './condition/walk';
export type { Catalogue } from './define/catalogue';
export { compareVersions, isVersion } from './define/order';
export * from './define/shapes';
export { levels } from './define/shapes';
export {
  declaredUnit,
  findingOf,
  fullName,
  gather,
  part,
  reckoningOf,
  roomName,
} from './define/topic';
export { answerEverybody, type Branch, type Everybody } from './forms/everybody/everybody';
export {
  type FormName,
  type FormOptions,
  type Forms,
  formNames,
  formOf,
  formsOf,
  knownOf,
  writtenForm,
} from './forms/forms';
export { fitted, ifShort, may, must, type Part, secondsOf, wordsIn } from './forms/length';
export type { Compiled } from './formula/compile';
export type { Node } from './formula/grammar/nodes';
export { FormulaError } from './formula/grammar/problem';
export { namesIn } from './formula/kinds';
export { parseFormula } from './formula/parse';
export { standingOn } from './formula/standing-on';
export { bringingSun } from './formula/sun';
export { withHouse } from './house/house';
export { readHouse } from './house/read';
export type { HouseLayer, HouseValue } from './house/shapes';
export { type Matter, type Mover, matters, mattersSays } from './matters/matters';
export { type Along, alongScale, type Stretch } from './remedy/along';
export { remedies } from './remedy/remedies';
export type { FactChange, NoHelp, Remedies, Remedy, Told } from './remedy/shapes';
export {
  answerRig,
  factsFor,
  type RigAnswer,
  type RigAsked,
  type RigTopic,
  rigProblems,
} from './rig/rig';
export { answerSchema } from './schema/answer';
export { factsSchema, type Schema } from './schema/facts';
export { type Draw, drawsOf, type Filler, filler } from './spread/draws';
export type {
  Chance,
  Density,
  Drawn,
  Quantile,
  Spread,
  SpreadOptions,
} from './spread/shapes';
export { mostDraws, mostSeed, spread, spreadInBlocks } from './spread/spread';
export type { Input, Inputs, NumberInput, Status } from './value/values';
export { compareTopics, type FieldChange, isWording, type TopicChange } from './versions/compare';
export { compareVerdicts, type Effect, type VerdictChange } from './versions/effects';
export { keptText } from './versions/kept';
export { topicFromPublished } from './versions/published';
export { compareSaved, type Replay, type ReplayDifference } from './versions/replay';
export { hasRisenEnough, type Rise, reckonedOf, riseFor, risen } from './versions/rise';
export { houseLayerOf, readSaved, type Saved } from './versions/saved';
export {
  conditionInWords,
  fieldInWords,
  nameOf,
  partInWords,
  rulingsInWords,
  sayChange,
} from './versions/words';
export { type Length, why } from './why/why';
export { type Whys, whys } from './why/whys';
export { english } from './words/en';
export type { Language } from './words/language';
export { type Code, message } from './words/message';
export { say, sayer } from './words/say';
export { sayAnswer } from './words/say-answer';
export type { Voice } from './words/speaker';
export type { Medium, Quantity, Said, Say, Sayable, Text } from './words/value';
export { own, text } from './words/value';
