import type { Topic } from '../engine/define/shapes';
import { gasSupply } from './gas-supply/index';
import { hitchSetup } from './hitch-setup/index';
import { houseBattery } from './house-battery/index';
import { tires } from './tires/index';
import { towFit } from './tow-fit/index';
import { truckCamper } from './truck-camper/index';

/** Every rule set there is, by its id. */
export const topics: Readonly<Record<string, Topic>> = {
  [towFit.id]: towFit,
  [hitchSetup.id]: hitchSetup,
  [houseBattery.id]: houseBattery,
  [gasSupply.id]: gasSupply,
  [truckCamper.id]: truckCamper,
  [tires.id]: tires,
};
