import { part } from '../../engine/define/topic';
import { custom, house } from '../../trade/bibliography/common';
import { energyBalance, makersManual } from '../../trade/bibliography/electric-tow-range';

const from = '2020-01-01';

/**
 * Where it charges, how often it must, and what that takes of a day.
 *
 *     100 % ┬
 *      80 % ┼── window.top ─────┐ a charge is quick in here
 *      15 % ┼── reserve, cold ──┤ the higher of the two
 *      10 % ┼── window.bottom ──┘
 */
export const stops = part({
  parameters: {
    'window.top': {
      label: 'Share up to which charging is quick',
      noun: 'the top of the charging window',
      unit: '1',
      values: [{ from, value: 0.8 }],
      range: [0.6, 1],
      source: house,
    },
    'window.bottom': {
      label: 'Share at which a charge is best begun',
      noun: 'the bottom of the charging window',
      unit: '1',
      values: [{ from, value: 0.1 }],
      range: [0, 0.3],
      source: house,
    },
    'unhitch.time': {
      label: 'Time to park, unhitch and hitch again',
      noun: 'the time to unhitch and hitch',
      unit: 'min',
      values: [{ from, value: 30 }],
      range: [10, 60],
      source: house,
    },
    'stops.none': {
      label: 'No stop',
      noun: 'none',
      unit: '',
      values: [{ from, value: 0 }],
      source: custom,
    },
  },
  formulas: {
    'stops.planned': {
      label: 'Stops planned',
      noun: 'the stops planned',
      unit: '',
      is: 'sum(choose(given(route.legs.chargeTo), 1, 0))',
      source: custom,
    },
    'floor.share': {
      label: 'Share that is never planned on: reserve and what the cold locks away',
      noun: 'what is never planned on',
      unit: '1',
      is: 'range.reserve + 1 - lookup(coldShare, route.coldest)',
      source: house,
    },
    'window.share': {
      label: 'Share that a quick charge gives',
      noun: 'what a quick charge gives',
      unit: '1',
      is: 'window.top - max(window.bottom, floor.share)',
      source: house,
    },
    'stops.spare': {
      label: 'What the first charge has beyond the route, in quick charges (below zero: missing)',
      noun: 'what the first charge has beyond the route',
      unit: '1',
      is: '(battery.full * (trip.startCharge - floor.share) - route.energy) / (battery.full * window.share)',
      source: energyBalance,
    },
    'stops.needed': {
      label: 'Stops needed, charging from the reserve up to where the window ends',
      noun: 'the stops to charge',
      unit: '',
      is: 'choose(drive.hasEngine, 0, max(0, -whole(stops.spare)))',
      source: energyBalance,
    },
    'stops.areNone': {
      label: 'It needs no stop',
      unit: 'yes-no',
      is: 'stops.needed <= 0',
      source: energyBalance,
    },
    'stops.mayBe': {
      label: 'It may need a stop or none',
      unit: 'yes-no',
      is: 'may(stops.needed > 0) && may(stops.needed <= 0)',
      source: energyBalance,
    },
    'stops.most': {
      label: 'Stops, planned or needed',
      unit: '',
      is: 'max(stops.planned, stops.needed)',
      source: custom,
    },
    'charge.highest': {
      label: 'Highest charge planned at a stop',
      noun: 'the highest charge planned',
      unit: '1',
      is: 'mostOver(legs, legs.target)',
      source: custom,
    },
    'charge.energy': {
      label: 'Charged on the way',
      noun: 'what is charged on the way',
      unit: 'kWh',
      is: 'totalOver(legs, legs.charged)',
      source: energyBalance,
    },
    'charge.time': {
      label: 'Time for the planned stops, unhitching counted',
      unit: 'h',
      is: "choose(stops.planned > 0, charge.energy / charge.power + stops.planned * choose(charge.access == 'stall', unhitch.time, 0), 0)",
      source: energyBalance,
    },
  },
  findings: {
    window: {
      label: 'Charging window',
      askedBy: ['route.legs'],
      care: {
        when: 'charge.highest > window.top',
        wrong:
          'A stop is planned to charge to {charge.highest}, past the {window.top} up to which charging is quick.',
        because: 'The last part may take as long as all before it.',
        do: 'Stop once more rather than longer.',
      },
      otherwise: 'No stop charges past the window in which charging is quick.',
      source: makersManual,
    },
    plug: {
      label: 'Something to plug in',
      askedBy: ['vehicle.drive'],
      stop: {
        when: '!drive.isPlugged && stops.planned > stops.none',
        wrong: 'A stop to charge is planned, and this vehicle has nothing to plug in.',
        because: 'A hybrid without a plug charges from its engine and on the way down alone.',
        do: 'Plan that stop for fuel instead, and the trip anew.',
      },
      open: {
        wrong: 'A stop to charge is planned, and it is not told whether the vehicle has a plug.',
        do: 'Make sure that it can be plugged in at all.',
      },
      otherwise: 'No stop is planned that needs a plug, or the vehicle has one.',
      source: makersManual,
    },
    unhitch: {
      label: 'Unhitching to charge',
      askedBy: ['charge.access'],
      care: {
        when: "charge.access == 'stall' && stops.most > stops.none",
        wrong: 'At a stall the trailer comes off.',
        because: 'Each stop takes {unhitch.time} more, and a trailer that stands by itself rolls.',
        do: 'Have a level place for the trailer out of everybody’s way. Chock the trailer before the ball is free, and check coupler, chains, plug and lamps afterwards.',
      },
      open: {
        wrong: 'The trailer may have to come off to charge.',
        do: 'Look at the places before you set out.',
      },
      otherwise: 'It charges without unhitching, or need not charge.',
      source: custom,
    },
  },
});
