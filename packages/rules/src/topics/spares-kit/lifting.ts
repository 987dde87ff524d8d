import type { Decision } from '../../engine/define/shapes';
import { findingOf, part } from '../../engine/define/topic';
import { partsRating as makersRating, statics } from '../../trade/bibliography/common';
import { baseList, lifting as liftingRule } from '../../trade/bibliography/spares-kit';

const jacks = ['bottle-jack', 'scissor-jack', 'vehicle-jack'] as const;

const lifted: Decision = {
  label: 'How the trailer is lifted',
  hit: 'unique',
  on: ['lift.kind', 'lift.point', 'ramp.isAllowed'],
  rows: [
    { when: ['none', '-', '-'], gives: 'nothing-to-lift' },
    { when: ['drive-up-ramp', '-', 'no'], gives: 'no-ramp' },
    { when: ['drive-up-ramp', '-', 'yes'], gives: 'ramp' },
    { when: [jacks, 'named-by-maker', '-'], gives: 'right-point' },
    { when: [jacks, ['axle', 'torsion-tube', 'elsewhere'], '-'], gives: 'wrong-point' },
  ],
  results: {
    'nothing-to-lift': {
      label: 'wait for help',
      level: 'care',
      says: 'There is nothing to lift the trailer with.',
      because: 'A flat tire means waiting for help: corner stabilizers must not lift a trailer.',
      do: 'Carry a jack rated for one side, or the number of somebody who comes with one.',
    },
    'no-ramp': {
      label: 'no ramp',
      level: 'stop',
      says: 'No drive-up ramp here.',
      because:
        'A ramp needs two axles or more. One tire then carries its whole side, so the makers of tire and trailer must both allow it.',
      do: 'Lift it where its maker says.',
    },
    ramp: {
      label: 'a ramp, as both makers allow',
      level: 'care',
      says: 'Both makers allow a ramp, where the tire on it stays within its load.',
      because: 'One tire carries its whole side on it.',
      do: 'Keep the lift short, stay hitched and chocked, and look at that tire afterwards.',
    },
    'right-point': {
      label: 'a jack at a point the maker names',
      level: 'ok',
      says: 'It is lifted at a point that the trailer’s maker names.',
    },
    'wrong-point': {
      label: 'no jack there',
      level: 'stop',
      says: 'Do not put the jack there.',
      because:
        'An axle bends, a torsion tube loses its line, and a frame gives where nothing was meant to stand.',
      do: 'Lift only where the trailer’s maker says.',
    },
  },
  source: liftingRule,
};

/**
 * What is lifted: one side of the trailer. A jack at the frame of a tandem lifts both of its wheels
 * there before one is free, and on a ramp one tire has all of it.
 *
 *     side.load = axle loads ÷ 2 × imbalance
 */
export const lift = part({
  formulas: {
    'side.load': {
      label: 'One side of the trailer',
      noun: 'one side of the trailer',
      unit: 'lb',
      is: 'max(0, axle.trailer + kit.onAxles) / 2 * tire.imbalance',
      source: liftingRule,
    },
    'lift.used': {
      label: 'What the lifting device has to lift',
      noun: 'what is to be lifted',
      unit: 'lb',
      is: "choose(lift.kind == 'none', 0, side.load)",
      source: liftingRule,
    },
    'lift.isPointWrong': {
      label: 'A point that the maker does not name, and nobody said what lifts there',
      unit: 'yes-no',
      is: "!known(lift.kind) && lift.point != 'named-by-maker'",
      source: liftingRule,
    },
    'ramp.onTire': {
      label: 'What one tire carries on the ramp',
      noun: 'the tire on the ramp',
      unit: 'lb',
      is: "choose(lift.kind == 'drive-up-ramp', side.load, 0)",
      source: liftingRule,
    },
    'ramp.isForbidden': {
      label: 'A ramp is ruled out, whoever else allows it',
      unit: 'yes-no',
      is: "trailer.axles < 2 || ramp.tireAllows == 'no' || ramp.trailerAllows == 'no'",
      source: liftingRule,
    },
    'ramp.isAllowed': {
      label: 'A ramp is allowed here',
      unit: 'yes-no',
      is: "lift.kind == 'drive-up-ramp' && trailer.axles >= 2 && ramp.tireAllows == 'yes' && ramp.trailerAllows == 'yes'",
      source: liftingRule,
    },
  },
  decisions: { 'lift.way': lifted },
  limits: {
    lift: {
      label: 'Lifting device',
      short: 'the lifting device’s rating',
      exceeded: true,
      do: 'Take a jack rated for more than one side of the loaded trailer.',
      near: 'Lift no higher than you must.',
      used: 'lift.used',
      limit: 'lift.rating',
      margin: 'margin.other',
      askedBy: ['lift.kind', 'lift.rating'],
      source: makersRating,
    },
    'ramp-tire': {
      label: 'Tire on the ramp',
      short: 'the tire on the ramp',
      do: 'Use no ramp: take a jack to the point that the trailer’s maker names.',
      near: 'Lift no higher than you must.',
      used: 'ramp.onTire',
      limit: 'trailer.tireCapacity',
      margin: 'margin.other',
      askedBy: ['lift.kind'],
      source: makersRating,
    },
    stand: {
      label: 'Jack stand',
      short: 'the jack stand’s rating',
      exceeded: true,
      do: 'Take a stand rated for more than one side of the loaded trailer.',
      near: 'Set the stand straight, on firm ground.',
      used: 'lift.used',
      limit: 'stand.rating',
      margin: 'margin.other',
      askedBy: ['stand.rating'],
      source: makersRating,
    },
    'lift-height': {
      label: 'Reach of the lifting device',
      short: 'the reach of the lifting device',
      supply: true,
      do: 'Take a jack that lifts higher, at the point that the trailer’s maker names.',
      near: 'Try it at home, with the tire flat.',
      used: 'lift.heightNeeded',
      limit: 'lift.reach',
      askedBy: ['lift.reach', 'lift.heightNeeded'],
      source: statics,
    },
    'lift-under': {
      label: 'Room for the lifting device on a flat tire',
      short: 'the room below the jack point',
      supply: true,
      do: 'Take a jack that goes lower, at the point that the trailer’s maker names.',
      near: 'Try it at home, with the tire flat.',
      used: 'lift.lowest',
      limit: 'lift.gapFlat',
      askedBy: ['lift.lowest', 'lift.gapFlat'],
      source: statics,
    },
  },
  findings: {
    lifting: findingOf('lift.way', lifted, {
      askedBy: ['lift.kind', 'lift.point'],
    }),
    'lift-point': {
      label: 'Point at which it is lifted',
      first: true,
      // Where it is told what lifts, how the trailer is lifted says it.
      askedWhen: 'lift.isPointWrong',
      askedByKnown: ['lift.point'],
      stop: {
        when: 'lift.isPointWrong',
        wrong: 'Put no jack there: lift only where the trailer’s maker says.',
        because:
          'An axle bends, a torsion tube loses its line, and a frame gives where nothing was meant to stand.',
        do: 'Read in the trailer’s manual where a jack may stand.',
      },
      otherwise: 'No jack stands where the maker does not allow it, as far as that is told here.',
      source: liftingRule,
    },
    socket: {
      label: 'Socket',
      askedBy: ['kit.socketTried'],
      care: {
        when: "kit.socketTried == 'no'",
        wrong: 'The socket has not been tried on the trailer’s own wheel nuts.',
        because: 'Often they are not the vehicle’s size.',
        do: 'Try it before you leave.',
      },
      open: {
        wrong: 'Whether the socket fits the wheel nuts is not known.',
        do: 'Try it before you leave.',
      },
      otherwise: 'The socket fits the wheel nuts.',
      source: baseList,
    },
  },
});
