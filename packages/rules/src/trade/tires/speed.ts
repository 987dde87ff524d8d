import { part } from '../../engine/define/topic';
import { custom } from '../bibliography/common';
import { speedSymbols, speedSymbolsRemembered, unmarkedTires } from '../bibliography/tires';

/**
 * How fast: the slowest-rated tire of the rig sets it.
 *
 *     121/118 R      the letter after the index      R ─► 170 km/h ─► 106 mph
 */
export const speed = part({
  parameters: {
    'speed.unmarked': {
      label: 'Speed of a special-trailer tire without a symbol',
      noun: 'the speed of a trailer tire without a letter',
      unit: 'mph',
      values: [{ from: '2020-01-01', value: 65 }],
      source: unmarkedTires,
    },
    'speed.standing': {
      label: 'No speed',
      unit: 'mph',
      values: [{ from: '2020-01-01', value: 0 }],
      source: speedSymbols,
    },
  },
  wordTables: {
    symbolSpeed: {
      label: 'Speed of each symbol',
      valueUnit: 'km/h',
      // biome-ignore format: eight pairs a line read like the printed list
      values: {
        a1: 5, a2: 10, a3: 15, a4: 20, a5: 25, a6: 30, a7: 35, a8: 40,
        b: 50, c: 60, d: 65, e: 70, f: 80, g: 90, j: 100, k: 110,
        l: 120, m: 130, n: 140, p: 150, q: 160, r: 170, s: 180, t: 190,
        u: 200, h: 210, v: 240, w: 270, y: 300, none: 104.60736,
      },
      source: speedSymbolsRemembered,
    },
  },
  formulas: {
    'speed.isUnmarked': {
      label: 'The tire has no speed symbol, and is none that the trade has a habit for',
      unit: 'yes-no',
      is: "tire.speedSymbol == 'none' && (given(tire.kind) && tire.kind != 'special-trailer')",
      source: unmarkedTires,
    },
    'tire.fastest': {
      label: 'Speed of this tire',
      unit: 'mph',
      is: "needs(choose(speed.isUnmarked, between(speed.standing, unlimited), choose(tire.speedSymbol == 'none', speed.unmarked, pick(symbolSpeed, tire.speedSymbol))), tire.speedSymbol)",
      source: speedSymbols,
    },
    'speed.allowed': {
      label: 'Speed the tires allow',
      noun: 'the speed the tires allow',
      unit: 'mph',
      is: 'choose(given(tire.slowestOther), min(tire.fastest, tire.slowestOther), tire.fastest)',
      source: custom,
    },
  },
  limits: {
    speed: {
      label: 'Speed',
      short: 'the slowest tire’s speed',
      do: 'Stay at {speed.allowed} or below, the whole way.',
      near: 'Go no faster than that; it is a ceiling and no advice.',
      used: 'trip.speed',
      limit: 'speed.allowed',
      askedBy: ['trip.speed'],
      source: speedSymbols,
    },
  },
});
