import type { Decision } from '../../engine/define/shapes';
import { frostCustom } from '../bibliography/cold-weather';

const below = ['enclosed', 'exposed'];

/**
 * Stay, drain or winterize: by frost, how long and how hard it is, what is in the lines, who is
 * there, where tanks hang. A short frost gets into lines and valves, a long one into tanks.
 */
export const frostTable: Decision = {
  label: 'Water in the cold',
  hit: 'unique',
  on: ['frost.isMet', 'water.state', 'trailer.use', 'tanks.place', 'frost.isHard', 'frost.isBrief'],
  rows: [
    { when: ['no', '-', '-', '-', '-', '-'], gives: 'nothing-freezes' },
    { when: ['yes', 'winterized', '-', '-', '-', '-'], gives: 'winterized' },
    { when: ['yes', 'drained', '-', '-', '-', '-'], gives: 'drained' },
    { when: ['yes', 'in-use', 'stands-unused', '-', '-', '-'], gives: 'winterize' },
    { when: ['yes', 'in-use', 'lived-in', 'heated', '-', '-'], gives: 'stay' },
    { when: ['yes', 'in-use', 'lived-in', below, 'yes', '-'], gives: 'drain' },
    { when: ['yes', 'in-use', 'lived-in', below, 'no', 'yes'], gives: 'lines' },
    { when: ['yes', 'in-use', 'lived-in', 'enclosed', 'no', 'no'], gives: 'watch' },
    { when: ['yes', 'in-use', 'lived-in', 'exposed', 'no', 'no'], gives: 'drain' },
  ],
  results: {
    'nothing-freezes': {
      label: 'nothing to do',
      level: 'ok',
      says: 'By what was told, the night does not get cold enough for water to freeze.',
    },
    winterized: {
      label: 'leave it winterized',
      level: 'ok',
      says: 'It is winterized: nothing that could burst is left in its lines.',
    },
    drained: {
      label: 'blow out what draining left',
      level: 'care',
      says: 'Drained is not winterized.',
      because: 'Water stays in traps, pump, valves and the low bends.',
      do: 'Drain, bypass and switch off the water heater first. Then blow the lines out under {blowout.most}, or fill the lines with propylene glycol antifreeze made for drinking water.',
    },
    winterize: {
      label: 'winterize it today',
      level: 'stop',
      says: 'Winterize it today.',
      because:
        'It is not heated, and water in lines, pump, heater and toilet valve freezes and bursts them.',
      do: 'Until then keep it as warm as can be, pump and city water off.',
    },
    stay: {
      label: 'leave the furnace on day and night',
      level: 'care',
      says: 'While you stay, leave the furnace on day and night.',
      because:
        'Only its air keeps the tanks from freezing; an electric heater does not reach them.',
      do: 'Count gas and battery per hour of frost. Unhook the hose; drain it and the outlets outside.',
    },
    lines: {
      label: 'stay and look after hose, lines and valves',
      level: 'care',
      says: 'So short a frost gets into hose, lines and valves, not into tanks.',
      do: 'Furnace on, cabinet doors open, hose unhooked and drained, pump off, a faucet open over the drain; valves shut until it thaws.',
    },
    watch: {
      label: 'stay and watch',
      level: 'care',
      says: 'Enclosed is not heated: a light frost may pass, a long one gets in.',
      do: 'Furnace on, cabinet doors open, hose unhooked, valves shut; drain before a harder night.',
    },
    drain: {
      label: 'drain before the night',
      level: 'stop',
      says: 'Drain tanks and lines before the night.',
      because:
        'Hung in the cold, or only enclosed in a hard frost, they freeze even while it is warm inside.',
      do: 'Carry drinking water inside, and leave the faucets open.',
    },
  },
  source: frostCustom,
};
