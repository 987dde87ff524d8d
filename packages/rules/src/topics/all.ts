import type { Topic } from '../engine/define/shapes';
import { houseBattery } from './house-battery/index';
import { towFit } from './tow-fit/index';
import { truckCamper } from './truck-camper/index';

/** Every rule set there is, by its id. */
export const topics: Readonly<Record<string, Topic>> = {
  [towFit.id]: towFit,
  [houseBattery.id]: houseBattery,
  [truckCamper.id]: truckCamper,
};
