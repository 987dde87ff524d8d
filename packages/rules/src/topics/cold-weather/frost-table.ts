import type { Decision } from '../../engine/define/shapes';
import { frostCustom } from '../../trade/bibliography/cold-weather';

/** Stay, drain or winterise: by frost, hard frost, what is in the lines, who is there, where tanks hang. */
export const frostTable: Decision = {
  label: 'Water in the cold',
  hit: 'unique',
  on: ['frost.isMet', 'frost.isHard', 'water.state', 'trailer.use', 'tanks.place'],
  rows: [
    { when: ['no', '-', '-', '-', '-'], gives: 'nothing-freezes' },
    { when: ['yes', '-', 'winterised', '-', '-'], gives: 'winterised' },
    { when: ['yes', '-', 'drained', '-', '-'], gives: 'drained' },
    { when: ['yes', '-', 'in-use', 'stands-unused', '-'], gives: 'winterise' },
    { when: ['yes', '-', 'in-use', 'lived-in', 'heated'], gives: 'stay' },
    { when: ['yes', 'no', 'in-use', 'lived-in', 'enclosed'], gives: 'watch' },
    { when: ['yes', 'yes', 'in-use', 'lived-in', 'enclosed'], gives: 'drain' },
    { when: ['yes', '-', 'in-use', 'lived-in', 'exposed'], gives: 'drain' },
  ],
  results: {
    'nothing-freezes': {
      label: 'nothing freezes',
      level: 'ok',
      says: 'It does not get cold enough for water to freeze.',
    },
    winterised: {
      label: 'winterised',
      level: 'ok',
      says: 'It is winterised: nothing that could burst is left in it.',
    },
    drained: {
      label: 'drained, not winterised',
      level: 'care',
      says: 'Drained is not winterised: water stays in traps, pump, valves and the low bends. Blow the lines out or fill them with antifreeze made for drinking water, and bypass the water heater.',
    },
    winterise: {
      label: 'winterise',
      level: 'stop',
      says: 'Winterise it now: nobody heats it, and water in lines, pump, heater and toilet valve freezes and bursts them.',
    },
    stay: {
      label: 'stay, with the furnace on',
      level: 'care',
      says: 'Stay with the furnace on day and night, and count gas and battery for all 24 hours: its air is what keeps the tanks from freezing, an electric heater does not reach them. Hose and outlets outside freeze all the same: unhook and drain them.',
    },
    watch: {
      label: 'stay and watch',
      level: 'care',
      says: 'Enclosed is not heated: a light frost may pass, a long one gets in. Furnace on, cabinet doors open, hose unhooked, valves shut, and drain before a harder night.',
    },
    drain: {
      label: 'drain',
      level: 'stop',
      says: 'Drain tanks and lines before the night: hung in the cold, or only enclosed in a hard frost, they freeze even while it is warm inside. Carry drinking water inside.',
    },
  },
  source: frostCustom,
};
