import { type Judging, judging } from './engine/define/looked-at';
import { bodyRepair as wholeBodyRepair } from './topics/body-repair/index';
import { coldWeather as wholeColdWeather } from './topics/cold-weather/index';
import { electricTowRange as wholeElectricTowRange } from './topics/electric-tow-range/index';
import { gasSupply as wholeGasSupply } from './topics/gas-supply/index';
import { hitchSetup as wholeHitchSetup } from './topics/hitch-setup/index';
import { houseBattery as wholeHouseBattery } from './topics/house-battery/index';
import { offGridStay as wholeOffGridStay } from './topics/off-grid-stay/index';
import { optionsFit as wholeOptionsFit } from './topics/options-fit/index';
import { retrofit as wholeRetrofit } from './topics/retrofit/index';
import { serviceTriage as wholeServiceTriage } from './topics/service-triage/index';
import { shorePower as wholeShorePower } from './topics/shore-power/index';
import { sparesKit as wholeSparesKit } from './topics/spares-kit/index';
import { sway as wholeSway } from './topics/sway/index';
import { theftDeterrence as wholeTheftDeterrence } from './topics/theft-deterrence/index';
import { tires as wholeTires } from './topics/tires/index';
import { towFit as wholeTowFit } from './topics/tow-fit/index';
import { towedCar as wholeTowedCar } from './topics/towed-car/index';
import { truckCamper as wholeTruckCamper } from './topics/truck-camper/index';
import { usedTrailer as wholeUsedTrailer } from './topics/used-trailer/index';
import { weighIn as wholeWeighIn } from './topics/weigh-in/index';

export {
  type Answer,
  type Asked,
  answer,
  answerEverybody,
  answerNow,
  answerRig,
  answerTraced,
  checkTopic,
  compareSaved,
  compareTopics,
  compareVerdicts,
  type Ends,
  type Everybody,
  english,
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
  type ProblemCode,
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
  traceOf,
  type Untraced,
  type Verdict,
  type Whys,
  why,
  whys,
  withHouse,
} from './engine/index';
export { topics } from './topics/all';

/*
 * Each question as far as it is judged. With what is said to everybody, what people call its things and
 * how its hands-on work is done, a rule set is `topics[id]`, or what `@tarebook/rules/ID` exports.
 */
export const bodyRepair: Judging<typeof wholeBodyRepair> = /* @__PURE__ */ judging(wholeBodyRepair);
export const coldWeather: Judging<typeof wholeColdWeather> =
  /* @__PURE__ */ judging(wholeColdWeather);
export const electricTowRange: Judging<typeof wholeElectricTowRange> =
  judging(wholeElectricTowRange);
export const gasSupply: Judging<typeof wholeGasSupply> = /* @__PURE__ */ judging(wholeGasSupply);
export const hitchSetup: Judging<typeof wholeHitchSetup> = /* @__PURE__ */ judging(wholeHitchSetup);
export const houseBattery: Judging<typeof wholeHouseBattery> =
  /* @__PURE__ */ judging(wholeHouseBattery);
export const offGridStay: Judging<typeof wholeOffGridStay> =
  /* @__PURE__ */ judging(wholeOffGridStay);
export const optionsFit: Judging<typeof wholeOptionsFit> = /* @__PURE__ */ judging(wholeOptionsFit);
export const retrofit: Judging<typeof wholeRetrofit> = /* @__PURE__ */ judging(wholeRetrofit);
export const serviceTriage: Judging<typeof wholeServiceTriage> =
  /* @__PURE__ */ judging(wholeServiceTriage);
export const shorePower: Judging<typeof wholeShorePower> = /* @__PURE__ */ judging(wholeShorePower);
export const sparesKit: Judging<typeof wholeSparesKit> = /* @__PURE__ */ judging(wholeSparesKit);
export const sway: Judging<typeof wholeSway> = /* @__PURE__ */ judging(wholeSway);
export const theftDeterrence: Judging<typeof wholeTheftDeterrence> =
  /* @__PURE__ */ judging(wholeTheftDeterrence);
export const tires: Judging<typeof wholeTires> = /* @__PURE__ */ judging(wholeTires);
export const towFit: Judging<typeof wholeTowFit> = /* @__PURE__ */ judging(wholeTowFit);
export const towedCar: Judging<typeof wholeTowedCar> = /* @__PURE__ */ judging(wholeTowedCar);
export const truckCamper: Judging<typeof wholeTruckCamper> =
  /* @__PURE__ */ judging(wholeTruckCamper);
export const usedTrailer: Judging<typeof wholeUsedTrailer> =
  /* @__PURE__ */ judging(wholeUsedTrailer);
export const weighIn: Judging<typeof wholeWeighIn> = /* @__PURE__ */ judging(wholeWeighIn);
