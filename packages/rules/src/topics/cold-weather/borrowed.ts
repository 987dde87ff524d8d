import type { Fact } from '../../engine/define/shapes';
import { standingOn } from '../../engine/formula/standing-on';
import { batteryTrade } from '../../trade/battery/index';
import { boil } from '../../trade/gas/boil';
import { gasTrade } from '../../trade/gas/index';

/** A fact of another topic without its default: here it must be told. */
function mustBeTold(fact: Fact): Fact {
  if (fact.kind === 'rows') return fact;
  const { silent: _silent, ...rest } = fact;
  return rest;
}

/** Facts without those that are reckoned here, and with those that must be told. */
function facts(
  of: Readonly<Record<string, Fact>> | undefined,
  told: readonly string[],
): Readonly<Record<string, Fact>> {
  const kept = Object.entries(of ?? {}).filter(([id]) => id !== 'furnace.duty');
  return Object.fromEntries(
    kept.map(([id, fact]) => [id, told.includes(id) ? mustBeTold(fact) : fact]),
  );
}

const burning = standingOn(
  gasTrade,
  'gas.aboard',
  'gas.counted',
  'gas.neededPounds',
  'gas.days',
  'furnace.gasNight',
  'demand.atOnce',
  'demand.lasting',
  'vapour.pressure',
  'vapour.rule',
  'vapour.least',
  'vapour.most',
  'vapour.perFactor',
  'assumed.size',
);

const drawing = standingOn(batteryTrade, 'battery.usable');

const { silent: _none, ...blowerCurrent } = gasTrade.facts['furnace.blowerCurrent'];

/**
 * What gas supply and the house battery reckon, under their own names. There the share of the time
 * that the furnace runs is told by the owner; here it is a result of the cold, and all that stands on
 * it – gas, blower, vaporization – follows.
 *
 *     heat loss ─► furnace.duty ─┬─► furnace.gasNight, gas.days, vaporization   gas supply
 *                                └─► blower.ampHours ─► battery.usable          house battery
 */
export const gas = {
  ...burning,
  facts: facts(burning.facts, ['furnace.input']),
  tables: burning.tables ?? {},
  parameters: {
    ...burning.parameters,
    ...boil.parameters,
    'vapour.ends': gasTrade.parameters['vapour.ends'],
  },
  simulations: boil.simulations,
};

export const battery = {
  ...drawing,
  facts: {
    ...facts(drawing.facts, ['battery.temperature']),
    'furnace.blowerCurrent': blowerCurrent,
  },
  parameters: {
    ...drawing.parameters,
    'margin.battery': batteryTrade.parameters['margin.battery'],
    'margin.gas': gasTrade.parameters['margin.gas'],
  },
  formulas: {
    ...drawing.formulas,
    'blower.ampHours': gasTrade.formulas['blower.ampHours'],
  },
};

/** Limits and findings that hold here as they do there. */
export const rulings = {
  limits: { gas: gasTrade.limits.gas },
  findings: {
    vaporization: {
      ...gasTrade.findings.vaporization,
      askedBy: ['cylinder.fill', 'cylinder.waterCapacity', 'cylinder.scaleWeight'],
    },
  },
};
