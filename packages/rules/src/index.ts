export {
  type Answer,
  type Asked,
  answer,
  answerEverybody,
  answerNow,
  answerRig,
  checkTopic,
  compareSaved,
  compareTopics,
  compareVerdicts,
  type Ends,
  type Everybody,
  type FactsGiven,
  type FindingAnswer,
  type Forms,
  formsOf,
  type HouseLayer,
  InputError,
  type LimitAnswer,
  type Matter,
  type Missing,
  matters,
  type NamedValues,
  namedValues,
  type Problem,
  publish,
  quickly,
  type Remedies,
  type Remedy,
  type RigAnswer,
  type RigAsked,
  type RigTopic,
  readHouse,
  readSaved,
  remedies,
  type Spread,
  type Step,
  sayProblem,
  spread,
  spreadInBlocks,
  type Topic,
  type Trace,
  topicFromPublished,
  type Verdict,
  type Whys,
  why,
  whys,
  withHouse,
} from './engine/index';
export { topics } from './topics/all';
export { bodyRepair } from './topics/body-repair/index';
export { coldWeather } from './topics/cold-weather/index';
export { electricTowRange } from './topics/electric-tow-range/index';
export { gasSupply } from './topics/gas-supply/index';
export { hitchSetup } from './topics/hitch-setup/index';
export { houseBattery } from './topics/house-battery/index';
export { offGridStay } from './topics/off-grid-stay/index';
export { optionsFit } from './topics/options-fit/index';
export { retrofit } from './topics/retrofit/index';
export { serviceTriage } from './topics/service-triage/index';
export { shorePower } from './topics/shore-power/index';
export { sparesKit } from './topics/spares-kit/index';
export { sway } from './topics/sway/index';
export { theftDeterrence } from './topics/theft-deterrence/index';
export { tires } from './topics/tires/index';
export { towFit } from './topics/tow-fit/index';
export { towedCar } from './topics/towed-car/index';
export { truckCamper } from './topics/truck-camper/index';
export { usedTrailer } from './topics/used-trailer/index';
export { weighIn } from './topics/weigh-in/index';
