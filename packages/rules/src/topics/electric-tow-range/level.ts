import { part } from '../../engine/define/topic';
import { house } from '../../trade/bibliography/common';
import { energyBalance, roadLoad, towingRule } from '../../trade/bibliography/electric-tow-range';

const from = '2020-01-01';

/**
 * A level mile at one speed, where nobody told the way leg by leg; and, where too little is told to
 * reckon it, the rule: so many times what it takes without a trailer.
 */
export const level = part({
  parameters: {
    'speed.usual': {
      label: 'Usual speed with a trailer on a highway',
      unit: 'mph',
      values: [{ from, value: 60 }],
      range: [45, 70],
      source: house,
    },
    'towing.leastTimes': {
      label: 'So many times as much with a trailer, at the least',
      unit: '1',
      values: [{ from, value: 1.4 }],
      source: towingRule,
    },
    'towing.mostTimes': {
      label: 'So many times as much with a trailer, at the most',
      unit: '1',
      values: [{ from, value: 2.8 }],
      source: towingRule,
    },
  },
  formulas: {
    'level.speed': {
      label: 'Speed on the way as a whole',
      noun: 'the speed on the way',
      unit: 'mph',
      is: 'choose(given(trip.towSpeed), trip.towSpeed, choose(known(trial.speed), trial.speed, choose(known(solo.speed), solo.speed, speed.usual)))',
      source: house,
    },
    'level.airRatio': {
      label: 'Air’s pressure at that speed against that on the known drive',
      unit: '1',
      is: 'level.speed * level.speed / (known.speed * known.speed)',
      source: roadLoad,
    },
    'level.asKnown': {
      label: 'A level mile of it against one of the known drive',
      unit: '1',
      is: 'level.airRatio * (1 + known.added) + known.rollingShare * (combined.gross / known.weight - level.airRatio)',
      source: roadLoad,
    },
    'level.perMile': {
      label: 'Tires and air for a level mile',
      unit: 'kWh/mi',
      is: 'choose(known.drive, known.perMile * level.asKnown, (rolling.coefficient * combined.gross * standard.gravity + air.seaLevel * rig.drag * level.speed * level.speed / 2) / drive.efficiency)',
      source: roadLoad,
    },
    'towing.times': {
      label: 'So many times as much with a trailer, by the rule',
      noun: 'the rule for towing',
      unit: '1',
      is: 'between(towing.leastTimes, towing.mostTimes)',
      source: towingRule,
    },
    'level.isReckoned': {
      label: 'Enough is told to reckon it',
      unit: 'yes-no',
      is: 'known(level.perMile)',
      source: energyBalance,
    },
    'level.consumption': {
      label: 'Consumption on a level road with the trailer',
      noun: 'the consumption with the trailer',
      unit: 'kWh/mi',
      is: 'choose(level.isReckoned, level.perMile + auxiliary.mild / level.speed, solo.consumption * towing.times)',
      source: energyBalance,
    },
  },
});
