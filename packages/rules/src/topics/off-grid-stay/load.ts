import type { QuantityFact } from '../../engine/define/shapes';
import { part } from '../../engine/define/topic';
import { tongueBandSeen as tongueBand } from '../../trade/bibliography/common';
import { grossRatings, statics } from '../../trade/bibliography/off-grid-stay';
import { rigTrade } from '../../trade/rig/index';

const ahead = (label: string, noun: string, ask: string) =>
  ({
    kind: 'quantity',
    unit: 'ft',
    least: -80,
    most: 80,
    label,
    noun,
    ask,
    where: 'a tape along the trailer’s side; below zero behind the axles',
  }) satisfies QuantityFact;

/**
 * Tanks are loads: full on the way there, and full again, of something else, on the way home.
 *
 *     there  ├── trailer ──┼── fresh ──┤
 *     home   ├── trailer ──┼─ gray ─┼ black ┤
 *
 * What stood ahead of the axles goes, what comes stands where its tank is: the ball feels both.
 */
export const load = part({
  facts: {
    'trailer.measuredTongueWeight': rigTrade.facts['trailer.measuredTongueWeight'],
    'trailer.ballToAxle': rigTrade.facts['trailer.ballToAxle'],
    'trailer.freshWaterAhead': rigTrade.facts['trailer.freshWaterAhead'],
    'water.grayAhead': ahead(
      'Gray tank, ahead of the axles',
      'the place of the gray tank',
      'How far ahead of the axles, or behind them, is the middle of the gray tank?',
    ),
    'water.blackAhead': ahead(
      'Black tank, ahead of the axles',
      'the place of the black tank',
      'How far ahead of the axles, or behind them, is the middle of the black tank?',
    ),
  },
  formulas: {
    'fresh.left': {
      label: 'Fresh water left after the stay',
      noun: 'the fresh water left',
      unit: 'gal',
      is: 'max(0, fresh.start - fresh.needed)',
      source: statics,
    },
    'gray.aboard': {
      label: 'Gray water after the stay',
      noun: 'the gray water',
      unit: 'gal',
      is: 'trailer.grayWater + min(gray.room, gray.filled)',
      source: statics,
    },
    'black.aboard': {
      label: 'Black water after the stay',
      noun: 'the black water',
      unit: 'gal',
      is: 'trailer.blackWater + choose(black.told, min(black.room, black.filled), 0)',
      source: statics,
    },
    'fresh.weight': {
      label: 'Weight of the fresh water aboard',
      noun: 'the weight of the water',
      unit: 'lb',
      is: 'trailer.freshWater * water.density',
      source: statics,
    },
    'trailer.arriving': {
      label: 'Trailer on the way there',
      noun: 'the trailer on the way there',
      unit: 'lb',
      is: 'trailer.loaded + (fresh.carried - trailer.freshWater) * water.density',
      source: statics,
    },
    'trailer.leaving': {
      label: 'Trailer on the way home, tanks not emptied',
      noun: 'the trailer on the way home',
      unit: 'lb',
      is: 'trailer.loaded + (fresh.left - trailer.freshWater + gray.aboard - trailer.grayWater + black.aboard - trailer.blackWater) * water.density',
      source: statics,
    },
    'tongue.shift': {
      label: 'Change of the tongue weight from the way there to the way home',
      noun: 'the change of the tongue weight',
      unit: 'lb',
      is: '((fresh.left - fresh.carried) * trailer.freshWaterAhead + (gray.aboard - trailer.grayWater) * water.grayAhead + choose(black.told, (black.aboard - trailer.blackWater) * water.blackAhead, 0)) * water.density / trailer.ballToAxle',
      source: statics,
    },
    'tongue.leaving': {
      label: 'Tongue weight on the way home',
      noun: 'the tongue on the way home',
      unit: 'lb',
      is: 'trailer.measuredTongueWeight + tongue.shift',
      source: statics,
    },
    'share.leaving': {
      label: 'Tongue share on the way home',
      noun: 'the tongue’s share on the way home',
      unit: '1',
      is: 'tongue.leaving / trailer.leaving',
      source: tongueBand,
    },
  },
  findings: {
    'water-cargo': {
      label: 'Water against the cargo label',
      askedByKnown: ['trailer.cargoCapacity', 'trailer.freshWater'],
      stop: {
        when: 'fresh.weight > trailer.cargoCapacity',
        wrong:
          'The water alone weighs {fresh.weight}, more than the {trailer.cargoCapacity} that the label lets you carry.',
        do: 'Carry less water and fill it there.',
      },
      otherwise: 'The water alone is within what the label lets you carry.',
      source: grossRatings,
    },
    'tongue-home': {
      label: 'Tongue on the way home',
      askedBy: ['trailer.measuredTongueWeight'],
      stop: {
        when: 'share.leaving < tongue.stopEdge',
        wrong:
          'With the tanks as they are after the stay only {share.leaving} of the trailer rests on the ball.',
        because: 'So light a tongue sways, and a gust or a passing truck is enough.',
        do: 'Do not drive home so: empty gray and black before the road.',
      },
      care: {
        when: 'share.leaving < tongue.lowEdge',
        wrong:
          'With the tanks as they are after the stay only {share.leaving} of the trailer rests on the ball.',
        because:
          '{tongue.lowEdge} is the least of the usual band; below it a trailer begins to sway.',
        do: 'Empty gray and black before the road.',
      },
      otherwise:
        'With the tanks as they are after the stay the tongue’s share is not under the usual band.',
      open: {
        wrong: 'The tongue may be too light with the tanks full behind.',
        do: 'Weigh it, or empty them before the road.',
      },
      source: tongueBand,
    },
  },
  limits: {
    arriving: {
      label: 'Trailer on the way there',
      short: 'the trailer’s own rating on the way there',
      do: 'Carry less water and fill it there, or leave load at home.',
      near: 'Put nothing more into the trailer on the way there.',
      exceeded: true,
      used: 'trailer.arriving',
      limit: 'trailer.gvwr',
      empty: 'trailer.unloaded',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['trailer.gvwr', 'trailer.dryWeight'],
      source: grossRatings,
    },
    leaving: {
      label: 'Trailer on the way home',
      short: 'the trailer’s own rating on the way home',
      do: 'Empty gray and black at a dump station before the road.',
      near: 'Empty gray and black before the road.',
      exceeded: true,
      used: 'trailer.leaving',
      limit: 'trailer.gvwr',
      empty: 'trailer.unloaded',
      margin: 'margin.other',
      marginLeast: 'margin.least',
      askedBy: ['trailer.gvwr', 'trailer.dryWeight'],
      source: grossRatings,
    },
  },
});
