import { part } from '../../engine/define/topic';
import { dayDrawn } from '../../trade/battery/day-drawn';
import { custom } from '../../trade/bibliography/common';
import { balance, circuits } from '../../trade/bibliography/retrofit';

/** What a day that takes more than it gives back comes to. */
const runsDown = {
  because: 'The battery lasts some days and then runs down.',
  do: 'Plan shore power, a generator or a rest of the sun in between.',
};

/**
 * What it draws or brings a day.
 *
 *     add-on ─┬─ 12 volts ──────────► battery ─► a day without sun fits, or not
 *             ├─ inverter ÷ eff. ───►    ▲
 *             └─ 120 V circuit          panel
 */
export const energy = part({
  facts: {
    'addon.power': {
      kind: 'quantity',
      unit: 'W',
      least: 0,
      most: 20_000,
      label: 'Power it takes',
      noun: 'the power it takes',
      ask: 'How many watts does the new part take while it runs?',
      where: 'its data plate; amperes times volts',
    },
    'addon.hours': {
      kind: 'quantity',
      unit: 'h',
      least: 0,
      most: 24,
      label: 'Hours a day it runs',
      noun: 'the hours it runs',
      ask: 'For how many hours a day will the new part run?',
      where: 'told by the owner',
    },
    'addon.runsOn': {
      kind: 'choice',
      options: ['nothing', 'twelve-volt', 'inverter', 'shore-power'],
      label: 'What it runs on',
      noun: 'what it runs on',
      ask: 'Does the new part run on 12 volts, on an inverter, or only on shore power?',
      where: 'its data plate',
    },
    'addon.panelPower': {
      kind: 'quantity',
      unit: 'W',
      least: 0,
      most: 5_000,
      label: 'Solar power it brings',
      ask: 'How many watts of panel does the addition bring?',
      where: 'label on the panel',
      silent: { value: 0, says: 'It brings no solar power.', source: custom, quiet: true },
    },
    'addon.capacity': {
      kind: 'quantity',
      unit: 'Ah',
      least: 0,
      most: 2_000,
      label: 'Battery capacity it brings, at the bank’s voltage',
      ask: 'How many ampere-hours does the new battery add to the bank?',
      where: 'label on the battery: of the same kind, size and age as the others',
      silent: { value: 0, says: 'It brings no battery capacity.', source: custom, quiet: true },
    },
    'battery.dayDrawn': dayDrawn.facts['battery.dayDrawn'],
  },
  formulas: {
    'addon.mayTakePower': {
      label: 'It may take power',
      unit: 'yes-no',
      is: "addon.kind == 'bidet-seat' || addon.kind == 'television' || addon.kind == 'air-conditioner' || (addon.kind == 'other' && (touches.mains == 'yes' || touches.twelveVolt == 'yes'))",
      source: custom,
    },
    'addon.watts': {
      label: 'Power it takes while it runs',
      noun: 'the power it takes',
      unit: 'W',
      is: "choose(given(addon.runsOn) && addon.runsOn == 'nothing', 0, choose(given(addon.power) || addon.mayTakePower, addon.power, 0))",
      source: circuits,
    },
    'added.energy': {
      label: 'Energy it takes from the battery a day',
      noun: 'the energy it takes a day',
      unit: 'Wh',
      is: 'choose(chain.isLoad, addon.watts * addon.hours / choose(chain.throughInverter, inverter.efficiency, 1), 0)',
      source: circuits,
    },
    'added.ampHours': {
      label: 'Ampere-hours it takes a day',
      noun: 'what it takes a day',
      unit: 'Ah',
      is: 'added.energy / bank.volts',
      source: circuits,
    },
    'energy.before': {
      label: 'Ampere-hours a day takes without it',
      noun: 'what a day takes without it',
      unit: 'Ah',
      is: 'choose(count(loads.dc) + count(loads.ac) > 0 && !known(battery.dayDrawn), day.ampHours, battery.dayDrawn)',
      source: balance,
    },
    'charging.isTold': {
      label: 'Something is told that gives back what a day takes',
      unit: 'yes-no',
      is: 'given(solar.power) || count(charging.spells) > 0 || given(addon.panelPower)',
      source: balance,
    },
    'energy.after': {
      label: 'Ampere-hours a day takes with it',
      noun: 'what a day takes with it',
      unit: 'Ah',
      is: 'energy.before + added.ampHours',
      source: balance,
    },
    'panel.gain': {
      label: 'What its own panel brings a day',
      noun: 'what its panel brings',
      unit: 'Ah',
      is: 'choose(addon.panelPower > 0, addon.panelPower * solar.peakSunHours * solar.derate / (solar.blockVolts * bank.blocks), 0)',
      source: balance,
    },
    'energy.offered': {
      label: 'What sun and chargers bring a day with it',
      noun: 'what sun and chargers bring',
      unit: 'Ah',
      is: 'choose(given(solar.power) || count(charging.spells) > 0, day.offered, 0) + panel.gain',
      within: ['0', 'unlimited'],
      source: balance,
    },
    'usable.after': {
      label: 'Usable capacity with it',
      noun: 'the usable capacity with it',
      unit: 'Ah',
      is: 'battery.usable + addon.capacity * battery.depth * battery.temperatureFactor',
      source: balance,
    },
    'energy.days': {
      label: 'Such days with it, full to the stop line',
      unit: 'd',
      is: 'choose(energy.after > energy.offered, usable.after / (energy.after - energy.offered) * time.day, unlimited)',
      source: balance,
    },
    'circuit.load': {
      label: 'Current on its 120-volt circuit with it',
      noun: 'the current on its circuit',
      unit: 'A',
      is: 'choose(mains.runs, addon.watts / volts.nominal, 0) + circuit.alreadyOn / volts.nominal',
      source: circuits,
    },
    'circuit.limit': {
      label: 'What the circuit’s breaker carries for that time',
      noun: 'what the breaker carries',
      unit: 'A',
      is: 'circuit.breaker * choose(addon.hours >= lasting.from, lasting.share, 1)',
      source: circuits,
    },
  },
  limits: {
    'battery-day': {
      label: 'A day without sun',
      short: 'the battery',
      supply: true,
      do: 'Use less of what keeps nobody warm or well, or add battery and charging first.',
      near: 'Plan to charge every day.',
      used: 'energy.after',
      limit: 'usable.after',
      margin: 'margin.battery',
      askedBy: ['battery.capacity', 'battery.dayDrawn'],
      source: balance,
    },
    circuit: {
      label: 'Its 120-volt circuit',
      short: 'its circuit',
      do: 'Run it by itself, or have a licensed electrician give it a circuit of its own.',
      near: 'Run nothing else on that circuit meanwhile.',
      used: 'circuit.load',
      limit: 'circuit.limit',
      askedBy: ['circuit.breaker'],
      source: circuits,
    },
  },
  findings: {
    'day-balance': {
      label: 'Balance of the day',
      askedBy: ['battery.capacity', 'battery.dayDrawn'],
      care: [
        {
          when: 'energy.after > energy.offered && !charging.isTold',
          wrong:
            'With it a day takes {energy.after}, and no sun or charger was told of that gives it back.',
          ...runsDown,
        },
        {
          when: 'energy.after > energy.offered',
          wrong:
            'With it a day takes {energy.after}, more than the {energy.offered} that sun and chargers bring.',
          ...runsDown,
        },
      ],
      otherwise: 'With it the day still gives back what it takes.',
      open: { wrong: 'Whether a day gives back what it takes is not told.' },
      source: balance,
    },
  },
});
