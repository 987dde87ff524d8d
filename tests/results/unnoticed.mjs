/**
 * Why no filed case turns where a parameter is a tenth more. What could hurt somebody has its edge in
 * tests/cases/edges.test.ts or tests/published/ instead, and stands here only where a tenth means nothing.
 */
const ends =
  'The end of a range for what nobody placed; a case tells places, so that its figures can be worked out by hand.';
const list =
  'It weighs or ranks one thing of a list that is shown whole; no verdict turns on it alone.';
const whole = 'The whole of something: more than all of it there is not.';
const mathematics = 'A number of mathematics, or how finely a curve is drawn.';
const band =
  'One end of a range that stands in for what nobody told; verdicts turn where it is told.';
const said = 'It decides how a thing is said, or from when on, and no verdict.';

const counted = 'A count: a tenth more of so few is no other count.';

export const unnoticed = {
  'class.secondMost': 'Classes 2 and 3 take the same ball and the same coupler.',
  'soft.most': counted,
  'seats.fewest': counted,
  'seats.most': counted,
  'camper.unplacedBehind': ends,
  'camper.unplacedAhead': ends,
  'unplaced.behind': ends,
  'unplaced.ahead': ends,
  'unplaced.hung': ends,
  'unplaced.inBodyBehind': ends,
  'unplaced.inBodyAhead': ends,
  'place.foremost': ends,
  'place.rearmost': ends,
  'weightOf.gloves': list,
  'weightOf.vest': list,
  'weightOf.lamp': list,
  'weightOf.gauge': list,
  'weightOf.fuses': list,
  'weightOf.bulbs': list,
  'weightOf.splice': list,
  'missed.secondSpare': list,
  'missed.hub': list,
  'missed.grease': list,
  'missed.compressor': list,
  'missed.bearings': list,
  'stretch.less': list,
  'stretch.can': list,
  'stretch.tote': list,
  'stretch.charging': list,
  'restored.most': whole,
  'setting.most': whole,
  'efficiency.whole': whole,
  'decay.base': mathematics,
  'curve.parts': mathematics,
  'boil.stride': mathematics,
  'furnace.usualHours': band,
  'furnace.usualShare': band,
  'rolling.least': band,
  'rolling.most': band,
  'engine.leastShare': band,
  'engine.mostShare': band,
  'regeneration.least': band,
  'regeneration.most': band,
  'rate.low': band,
  'rate.high': band,
  'premium.usualLow': band,
  'generator.smallOutlet': band,
  'generator.largeOutlet': band,
  'coupler.spread': band,
  'usual.loadedShare': said,
  'usual.grossShare': said,
  'stay.foretold': said,
  'retorque.first': said,
  'retorque.second': said,
  'retorque.third': said,
};
