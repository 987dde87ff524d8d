import { part } from '../../engine/define/topic';
import { custom, house } from '../../trade/bibliography/common';
import {
  energyBalance,
  gallonEquivalent,
  towingRule,
} from '../../trade/bibliography/electric-tow-range';

/**
 * An engine refuels: miles a tank, to empty and with the reserve, and where it stops for fuel.
 *
 *     ├──────────── tank.toEmpty ────────────┤
 *     ├──────── tank.toReserve ────────┼─ reserve ┤
 */
export const fuel = part({
  formulas: {
    'fuel.isReckoned': {
      label: 'Enough is told to reckon the fuel',
      unit: 'yes-no',
      is: 'known(route.energy)',
      source: energyBalance,
    },
    'fuel.economy': {
      label: 'Miles to the gallon with the trailer',
      noun: 'the miles to the gallon with the trailer',
      unit: 'mpg',
      is: 'choose(drive.hasEngine, choose(fuel.isReckoned || !given(solo.fuelEconomy), choose(route.consumption > energy.perMileNone, max(0, gallon.energy * engine.share / route.consumption), unlimited), solo.fuelEconomy / towing.times), unlimited)',
      within: ['0', 'unlimited'],
      source: gallonEquivalent,
    },
    'fuel.used': {
      label: 'Fuel used',
      noun: 'the fuel used',
      unit: 'gal',
      is: 'choose(drive.hasEngine, choose(fuel.isReckoned || !given(solo.fuelEconomy), max(0, engine.energy / (gallon.energy * engine.share)), route.distance / solo.fuelEconomy * towing.times), 0)',
      within: ['0', 'unlimited'],
      source: gallonEquivalent,
    },
    'tank.size': {
      label: 'A full tank',
      noun: 'a full tank',
      unit: 'gal',
      is: 'choose(given(vehicle.fuelTank), vehicle.fuelTank, trip.fuel)',
      source: custom,
    },
    'tank.start': {
      label: 'Fuel at the start',
      noun: 'the fuel at the start',
      unit: 'gal',
      is: 'choose(given(trip.fuel), trip.fuel, vehicle.fuelTank)',
      source: custom,
    },
    'tank.toEmpty': {
      label: 'Miles a tank with the trailer, to empty',
      noun: 'the way on a tank, to empty',
      unit: 'mi',
      is: 'choose(drive.hasEngine, tank.size * fuel.economy, 0)',
      source: gallonEquivalent,
    },
    'tank.toReserve': {
      label: 'Miles a tank with the trailer, reserve kept',
      noun: 'the way on a tank, reserve kept',
      unit: 'mi',
      is: 'tank.toEmpty * (1 - range.reserve)',
      source: gallonEquivalent,
    },
    'fuel.spare': {
      label: 'What the first tank has beyond the way, in tanks (below zero: missing)',
      unit: '1',
      is: '(tank.start - tank.size * range.reserve - fuel.used) / (tank.size * (1 - range.reserve))',
      source: energyBalance,
    },
    'fuel.stops': {
      label: 'Stops for fuel',
      noun: 'the stops for fuel',
      unit: '',
      is: 'choose(drive.hasEngine, max(0, -whole(fuel.spare)), 0)',
      source: house,
    },
    'fuel.isRule': {
      label: 'The fuel is taken by the rule for towing',
      unit: 'yes-no',
      is: 'drive.hasEngine && given(solo.fuelEconomy) && !fuel.isReckoned',
      source: towingRule,
    },
  },
  findings: {
    refuel: {
      label: 'Stops for fuel',
      askedBy: ['vehicle.drive', 'trip.fuel', 'vehicle.fuelTank', 'solo.fuelEconomy'],
      settles: true,
      care: {
        when: 'drive.hasEngine && fuel.stops > stops.none',
        wrong:
          'The vehicle stops for fuel {fuel.stops} times on the way, by a tank with the reserve kept.',
        do: 'Choose stations where the rig can pull through, the first of them early.',
      },
      otherwise: 'It needs no fuel on the way, or has no engine.',
      open: {
        wrong: 'How often it stops for fuel is open.',
        do: 'Refill at half a tank until the first tank has told what it takes.',
      },
      source: gallonEquivalent,
    },
  },
});
