import type { Topic } from '../engine/define/shapes';
import { bodyRepair } from './body-repair/index';
import { coldWeather } from './cold-weather/index';
import { electricTowRange } from './electric-tow-range/index';
import { gasSupply } from './gas-supply/index';
import { hitchSetup } from './hitch-setup/index';
import { houseBattery } from './house-battery/index';
import { offGridStay } from './off-grid-stay/index';
import { optionsFit } from './options-fit/index';
import { retrofit } from './retrofit/index';
import { serviceTriage } from './service-triage/index';
import { shorePower } from './shore-power/index';
import { sparesKit } from './spares-kit/index';
import { sway } from './sway/index';
import { theftDeterrence } from './theft-deterrence/index';
import { tires } from './tires/index';
import { towFit } from './tow-fit/index';
import { towedCar } from './towed-car/index';
import { truckCamper } from './truck-camper/index';
import { usedTrailer } from './used-trailer/index';
import { weighIn } from './weigh-in/index';

const byId = (all: readonly Topic[]): Readonly<Record<string, Topic>> =>
  Object.fromEntries(all.map((topic) => [topic.id, topic]));

/**
 * Every rule set there is, by its id, in the order of the trade's questions. Called as something
 * without effects, so that a bundler leaves out the topics of a program that asks one of them.
 */
export const topics: Readonly<Record<string, Topic>> = /* @__PURE__ */ byId([
  towFit,
  hitchSetup,
  weighIn,
  houseBattery,
  gasSupply,
  sparesKit,
  tires,
  shorePower,
  electricTowRange,
  truckCamper,
  retrofit,
  optionsFit,
  bodyRepair,
  theftDeterrence,
  serviceTriage,
  offGridStay,
  coldWeather,
  sway,
  towedCar,
  usedTrailer,
]);
