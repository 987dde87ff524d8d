import { standingOn } from '../../engine/formula/standing-on';
import { batteryTrade } from '../../trade/battery/index';
import { boil } from '../../trade/gas/boil';
import { gasTrade } from '../../trade/gas/index';

/**
 * What gas supply and the house battery reckon, under their own names and by the same formulas, so
 * that the same facts come to the same gas, blower, vaporization and battery in every question.
 *
 *     heat loss ─► furnace.runs ─┬─► furnace.gasNight, gas.days, vaporization   gas
 *                                └─► blower.ampHours ─► battery.usable          battery
 */
const burning = standingOn(
  gasTrade,
  'heat.perDegree',
  'heat.degrees',
  'heat.loss',
  'heat.gas',
  'heat.gasForDegree',
  'night.isTold',
  'furnace.on',
  'furnace.runs',
  'furnace.usual',
  'assumed.furnaceHours',
  'assumed.furnaceShare',
  'assumed.furnaceBoth',
  'assumed.cylinderFull',
  'assumed.size',
  'blower.ampHours',
  'gas.aboard',
  'gas.counted',
  'gas.neededPounds',
  'gas.days',
  'trip.counted',
  'furnace.gasNight',
  'demand.atOnce',
  'demand.lasting',
  'vapor.isAsked',
  'vapor.pressure',
  'vapor.rule',
  'vapor.least',
  'vapor.most',
  'vapor.perFactor',
);

export const gas = {
  ...burning,
  parameters: {
    ...burning.parameters,
    ...boil.parameters,
    'vapor.ends': gasTrade.parameters['vapor.ends'],
  },
  simulations: boil.simulations,
};

const drawing = standingOn(
  batteryTrade,
  'battery.usable',
  'battery.cells',
  'stored.freezesAt',
  'start.isRead',
);

export const battery = {
  ...drawing,
  parameters: {
    ...drawing.parameters,
    'margin.battery': batteryTrade.parameters['margin.battery'],
    'margin.gas': gasTrade.parameters['margin.gas'],
  },
};

/** Limits and findings that hold here as they do there. */
export const rulings = {
  limits: { gas: gasTrade.limits.gas },
  findings: {
    'fill-untold': gasTrade.findings['fill-untold'],
    vaporization: {
      ...gasTrade.findings.vaporization,
      askedBy: ['cylinder.fill', 'cylinder.waterCapacity', 'cylinder.scaleWeight'],
    },
  },
};
