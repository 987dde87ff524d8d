import type { Sign } from './shapes';

const soon = `tonight, tonite, 2 nite, nite, night, overnight, tomorrow, tmrw, tmw, tomorow, forecast, evening, by morning, this morning, morning, weekend, supposed to,
  calling for, dropping to, going down to, gonna hit, gonna be, weatherman, warning, cold snap, tonights, already`;

/** Degrees Fahrenheit at which water freezes, as they are written without their unit. */
const frosty = Array.from({ length: 28 }, (_, above) => `${5 + above}`).join(', ');

/** Frost that is near, or has come. */
export const cold: readonly Sign[] = [
  {
    kind: 'frost',
    lists: [
      'freeze, freezes, freezing, froze, frozen, frost, teens, twenties, minus, below zero, below, single digits, cold snap, arctic, polar, ice, icy, ice storm, blizzard, hard freeze, zero, subzero, snow, frosty',
      soon,
    ],
    within: 14,
  },
  {
    kind: 'frost',
    lists: [
      frosty,
      'tonight, tonite, 2 nite, last night, overnight, by morning, forecast, forecast says, night, tomorrow, tmrw',
    ],
    within: 4,
  },
  {
    kind: 'frost',
    lists: [
      'degrees, deg, f, °f, low, lows, celsius',
      'tonight, tonite, 2 nite, overnight, tomorrow, tmrw, night, forecast',
    ],
    within: 10,
  },
  {
    kind: 'frost',
    lists: [
      'get down to, go down to, going down to, drop to, dropping to, dip to, hit, falling to',
      'five, six, seven, eight, nine, ten, eleven, twelve, thirteen, fourteen, fifteen, sixteen, seventeen, eighteen, nineteen, twenty, teens, twenties, zero',
    ],
    within: 4,
  },
  {
    kind: 'frost',
    lists: [
      'low of, lows of, low in, lows in, negative, below zero, sub zero, colder than',
      'water, tank, tanks, pipe, pipes, hose, trailer, camper, friday, saturday, sunday, monday, tuesday, wednesday, thursday, weekend, full, plumbing',
    ],
    within: 12,
    told: true,
  },
  // Water in it, and nothing that could warm it.
  {
    kind: 'frost',
    lists: [
      'freeze, freezes, freezing, frost, hard freeze, cold snap, twenties, teens',
      'midnight, dawn, sunup, sunrise, daybreak, dark, by then, later, sloshing, tanks full, in tank, in tanks, belly, gallons, nothing to plug, no hookup, no power, no shore power, no propane, undrained, not drained',
    ],
    within: 22,
    told: true,
  },
  // No heat where people are.
  {
    kind: 'frost',
    lists: [
      'furnace, heater, heat, propane, gas, heating, no heat',
      'no, quit, quits, locks out, lockout, out, died, dead, wont light, wont start, wont stay, blows cold, blowing cold, cold air, clicks, cycles, short cycles, keeps trying, stopped, gone, empty, ran out, run out, running out, off',
      'tonight, tonite, freezing, baby, kids, snow, below, minus, blanket, blankets, shivering, see breath, zero, hour ago, teeth, midnight, november, december, january, february, supper',
    ],
    within: 22,
  },
  // Water that does not come, or not as water does.
  {
    kind: 'frost',
    lists: [
      'tap, taps, faucet, faucets, hose, water, pump, shower, toilet, dump valve, valve, drain, line, lines, pipe, pipes, pond, puddles, bucket',
      'spits, spit, sputters, trickle, trickles, stiff, solid, hard as, nothing comes, wont come, no water, stuck, slush, slushy, skin of ice, crackles, crunchy, bulged, pops, popped, froze over',
      'this morning, morning, overnight, tonight, tonite, last night, cold, clear, still, winter, ice, stick, rock, nite',
    ],
    within: 16,
    told: true,
  },
  {
    kind: 'frost',
    lists: [
      'froze, frozen, burst, split, iced',
      'pipe, pipes, line, lines, faucet, tap, water, hose, pump, tank, valve, toilet, fittings, plumbing, solid',
    ],
    within: 8,
  },
];
