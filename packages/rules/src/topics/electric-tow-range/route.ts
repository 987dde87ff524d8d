import { part } from '../../engine/define/topic';
import { custom, house } from '../../trade/bibliography/common';
import {
  coldHabits,
  display,
  dragHabits,
  energyBalance,
  gallonEquivalent,
  makersManual,
  mechanics,
} from '../../trade/bibliography/electric-tow-range';

const _from = '2020-01-01';

/**
 * What the route takes, how far a full battery goes on such roads, and whether it is enough.
 *
 *     ├────────── energy.deepest ──────────┤
 *     ├─────────────── energy.planned ──────────┼─ reserve ─┤   a full battery
 *
 * An engine refuels: it is never stopped for want of kilowatt-hours.
 */
export const route = part({
  formulas: {
    'route.isLegged': {
      label: 'The way is told leg by leg',
      unit: 'yes-no',
      is: 'count(route.legs) > 0',
      source: mechanics,
    },
    'route.isUntold': {
      label: 'How far it goes is not known',
      unit: 'yes-no',
      is: '!known(trip.distance)',
      source: mechanics,
    },
    'tells.battery': {
      label: 'Its way on the battery is worth telling',
      unit: 'yes-no',
      is: '!drive.hasEngine',
      source: energyBalance,
    },
    'trial.isWithoutSpeed': {
      label: 'A trial drive was told, and not its speed',
      unit: 'yes-no',
      is: 'known(trial.consumption) && !known(trial.speed)',
      source: display,
    },
    'ratings.areUntold': {
      label: 'What the vehicle may tow was not told',
      unit: 'yes-no',
      is: '!known(vehicle.maxTrailerWeight)',
      source: makersManual,
    },
    'route.distance': {
      label: 'Length of the route',
      noun: 'the route',
      unit: 'mi',
      is: 'choose(route.isLegged, sum(route.legs.distance), trip.distance)',
      source: mechanics,
    },
    'route.time': {
      label: 'Time at the wheel',
      unit: 'h',
      is: 'choose(route.isLegged, totalOver(legs, legs.time), trip.distance / level.speed)',
      source: mechanics,
    },
    'route.speed': {
      label: 'Speed on average',
      noun: 'the speed on average',
      unit: 'mph',
      is: 'route.distance / route.time',
      source: mechanics,
    },
    'route.energy': {
      label: 'Energy the route takes, what returns counted',
      noun: 'the energy for the route',
      unit: 'kWh',
      is: 'choose(route.isLegged, totalOver(legs, legs.net), trip.distance * level.consumption)',
      source: energyBalance,
    },
    'route.consumption': {
      label: 'Consumption on this route',
      noun: 'the consumption',
      unit: 'kWh/mi',
      is: 'choose(route.isLegged, route.energy / route.distance, level.consumption)',
      source: energyBalance,
    },
    'route.perGallon': {
      label: 'Miles to the energy of a gallon of gasoline',
      unit: 'mpg',
      is: 'choose(!drive.hasEngine && route.consumption > energy.perMileNone, gallon.energy / route.consumption, unlimited)',
      source: gallonEquivalent,
    },
    'route.lowest': {
      label: 'Least left on arrival that can be used (below zero: short)',
      noun: 'the least left on arrival',
      unit: 'kWh',
      is: 'choose(route.isLegged, leastOver(legs, legs.left), choose(drive.hasEngine, max(0, battery.full * trip.startCharge - route.energy), battery.full * trip.startCharge - route.energy))',
      source: energyBalance,
    },
    'route.coldest': {
      label: 'Coldest leg',
      unit: '°F',
      is: 'choose(route.isLegged, leastOver(legs, legs.warmth), mild.temperature)',
      source: custom,
    },
    'route.spilled': {
      label: 'Energy that finds no room in a full battery',
      unit: 'kWh',
      is: 'choose(route.isLegged, totalOver(legs, legs.spilled), 0)',
      source: energyBalance,
    },
    'engine.countsBattery': {
      label: 'What the battery gives is known and counted',
      unit: 'yes-no',
      is: 'known(vehicle.usableBattery)',
      source: energyBalance,
    },
    'engine.energy': {
      label: 'Energy that the engine gives',
      noun: 'what the engine gives',
      unit: 'kWh',
      is: 'choose(drive.hasEngine, choose(engine.countsBattery, max(0, choose(route.isLegged, totalOver(legs, legs.engine), route.energy - battery.full * trip.startCharge)), max(0, route.energy)), 0)',
      source: energyBalance,
    },
    'reach.distance': {
      label: 'Way on the battery until its reserve is touched',
      unit: 'mi',
      is: 'choose(route.isLegged, lastOf(legs, legs.reached), min(trip.distance, max(0, battery.full * (trip.startCharge - range.reserve)) / level.consumption))',
      source: energyBalance,
    },
    'range.towing': {
      label: 'Range of a full battery on such roads, reserve kept',
      unit: 'mi',
      is: 'choose(route.consumption > energy.perMileNone, battery.full * (1 - range.reserve) / route.consumption, unlimited)',
      source: energyBalance,
    },
    'range.told': {
      label: 'The same, where there is a battery to drive on; else no figure',
      noun: 'the range of a full battery',
      unit: 'mi',
      is: 'choose(drive.hasBattery, range.towing, unlimited)',
      source: energyBalance,
    },
    'range.toEmpty': {
      label: 'Range of a full battery on such roads, to empty',
      noun: 'the range to empty',
      unit: 'mi',
      is: 'choose(route.consumption > energy.perMileNone, battery.full / route.consumption, unlimited)',
      source: energyBalance,
    },
    'range.solo': {
      label: 'Range of a full battery without a trailer, reserve kept',
      unit: 'mi',
      is: 'needs(battery.full * (1 - range.reserve) / solo.consumption, solo.consumption)',
      source: display,
    },
    'energy.deepest': {
      label: 'Taken from a full battery and the fuel, at the most',
      noun: 'what is taken at the most',
      unit: 'kWh',
      is: 'battery.full - route.lowest',
      source: energyBalance,
    },
    'energy.planned': {
      label: 'What may be planned on',
      noun: 'what may be planned on',
      unit: 'kWh',
      is: 'battery.full * (1 - range.reserve)',
      source: house,
    },
    'energy.asked': {
      label: 'Taken from the battery where there is nothing else to drive on',
      noun: 'what is taken at the most',
      unit: 'kWh',
      is: 'choose(drive.hasEngine, 0, energy.deepest)',
      source: energyBalance,
    },
    'energy.granted': {
      label: 'What may be planned on; without end where an engine refuels',
      noun: 'what may be planned on',
      unit: 'kWh',
      is: 'choose(drive.hasEngine, unlimited, energy.planned)',
      source: house,
    },
  },
  limits: {
    energy: {
      label: 'Energy for the route',
      short: 'the energy for the route',
      supply: true,
      do: 'Plan a stop to charge, or go slower; find the chargers before you leave.',
      near: 'Go five miles an hour slower, and keep clear of detours.',
      used: 'energy.asked',
      limit: 'energy.granted',
      margin: 'margin.range',
      source: energyBalance,
    },
  },
  findings: {
    'start-charge': {
      label: 'Charge at the start',
      askedBy: ['trip.startCharge'],
      askedWhen: 'tells.battery',
      first: true,
      stop: {
        when: 'trip.startCharge < range.reserve',
        wrong:
          'The trip begins with {trip.startCharge} in the battery, and {range.reserve} are the reserve.',
        because: 'A tow begun on the reserve ends at the roadside.',
        do: 'Charge before you set out.',
      },
      open: {
        wrong: 'The trip may begin on the reserve.',
        do: 'Look at the display, and charge before you set out.',
      },
      otherwise: 'The trip begins with more than the reserve.',
      source: house,
    },
    'trial-speed': {
      label: 'Speed of the trial drive',
      askedByKnown: ['trial.consumption'],
      first: true,
      care: {
        when: 'trial.isWithoutSpeed',
        wrong: 'The trial drive with this trailer counts once its speed is told.',
        because: 'What a mile takes grows with the speed.',
        do: 'Say at what steady speed it was driven; then it goes before any other figure.',
      },
      otherwise: 'The speed of the trial drive was told.',
      source: display,
    },
    way: {
      label: 'Which way it goes',
      unknown: {
        when: '!route.isLegged && trip.distance > distance.none && route.isUntold',
        wrong: 'How far the trip goes is not known yet.',
      },
      otherwise: 'The way is told.',
      open: {
        wrong: 'How far the trip goes is not known yet.',
        do: 'Say how far and how fast, or stretch by stretch where it goes over hills.',
      },
      source: mechanics,
    },
    'right-by-tow-fit': {
      label: 'What the vehicle may tow was asked',
      if: {
        when: 'ratings.areUntold',
        wrong: 'What the vehicle may tow is not known yet.',
        because:
          'The battery says nothing about ratings, brakes and coupling, and those come first.',
        do: 'Check tow rating, tongue weight and payload by that very vehicle’s labels and manual.',
        proviso: 'vehicle and trailer fit one another by their ratings, brakes and controller',
      },
      otherwise: 'What the vehicle may tow is told.',
      source: makersManual,
    },
    estimate: {
      label: 'Drag is an estimate',
      care: {
        when: 'rig.isEstimated && energy.asked > energy.granted',
        wrong: 'The drag is an estimate by body and front.',
        because: 'By that it may get there or not.',
        do: 'Drive some twenty miles with the trailer on, there and back at the speed of the trip, and put in what the display says.',
      },
      open: {
        wrong: 'The drag is an estimate by body and front, and by that it may get there or not.',
        do: 'Drive some twenty miles with the trailer on, there and back at the speed of the trip, and put in what the display says.',
      },
      otherwise: 'The drag is known from a drive or told, or it is enough by any usual drag.',
      source: dragHabits,
    },
    cold: {
      label: 'Cold',
      askedBy: ['route.legs'],
      care: {
        when: 'route.coldest < cold.line',
        wrong: 'The way is as cold as {route.coldest}.',
        because:
          'Below freezing a battery gives less, charges slowly, and the heater takes its part.',
        do: 'Warm battery and cabin at the plug before you leave, and plan the first stop early.',
      },
      open: {
        wrong: 'The way may be below freezing.',
        do: 'Look at the forecast before planning the stops.',
      },
      otherwise: 'No leg is below freezing.',
      source: coldHabits,
    },
    'full-battery': {
      label: 'Downhill on a full battery',
      askedBy: ['vehicle.usableBattery'],
      care: {
        when: 'route.spilled > spilled.little',
        wrong: 'The battery is full on a way down, and {route.spilled} find no room in it.',
        because: 'A full battery holds nothing back, and the brakes take it all.',
        do: 'Charge that much less before a long descent.',
      },
      open: {
        wrong: 'The battery may be full on a way down.',
        because: 'A full battery holds nothing back.',
        do: 'Leave some room at the top.',
      },
      otherwise: 'The battery has room for what comes back downhill.',
      source: makersManual,
    },
    'engine-alone': {
      label: 'Battery spent on the way',
      askedBy: ['vehicle.usableBattery'],
      care: {
        when: 'drive.hasBattery && engine.energy > energy.none',
        wrong: 'The battery is spent on the way, and from there the engine pulls alone.',
        do: 'Ask what the maker rates it for then, and keep some charge for the grades.',
      },
      open: {
        wrong: 'The battery may be spent on the way, and from there the engine pulls alone.',
        do: 'Keep some charge for the grades.',
      },
      otherwise: 'The battery is not spent on the way, or there is no engine.',
      source: makersManual,
    },
  },
});
