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
import { theftDeterrence } from './theft-deterrence/index';
import { tires } from './tires/index';
import { towFit } from './tow-fit/index';
import { truckCamper } from './truck-camper/index';
import { weighIn } from './weigh-in/index';

/** Every rule set there is, by its id, in the order of the trade's questions. */
export const topics: Readonly<Record<string, Topic>> = {
  [towFit.id]: towFit,
  [hitchSetup.id]: hitchSetup,
  [weighIn.id]: weighIn,
  [houseBattery.id]: houseBattery,
  [gasSupply.id]: gasSupply,
  [sparesKit.id]: sparesKit,
  [tires.id]: tires,
  [shorePower.id]: shorePower,
  [electricTowRange.id]: electricTowRange,
  [truckCamper.id]: truckCamper,
  [retrofit.id]: retrofit,
  [optionsFit.id]: optionsFit,
  [bodyRepair.id]: bodyRepair,
  [theftDeterrence.id]: theftDeterrence,
  [serviceTriage.id]: serviceTriage,
  [offGridStay.id]: offGridStay,
  [coldWeather.id]: coldWeather,
};
