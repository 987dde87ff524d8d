import { at, type Ends, over, plus, span, times, zeroUp } from './ends';
import { andBoth, type Maybe, type reader, surely } from './plain-case';

const none = at(0);
const sum = (all: Ends[]): Ends => all.reduce((a, b) => plus(a, b), none);

/** The trailer on the road, what it puts on the ball, and whether bars are hooked up. */
export function plainTongue(f: ReturnType<typeof reader>) {
  // The trailer: dry, options, cargo, water at 8.34 lb to the gallon (published), gas.
  const rows = [...f.rows('trailer.options'), ...f.rows('trailer.cargo')];
  const water = (tank: string): Ends => times(f.number(tank, none), at(8.34));
  const fresh = water('trailer.freshWater');
  const waste = plus(water('trailer.grayWater'), water('trailer.blackWater'));
  const propane = f.number('trailer.propane', none);
  const packed = sum(rows.map((row) => f.cell(row.weight)));
  const trailer = plus(f.number('trailer.dryWeight'), packed, fresh, waste, propane);

  // Weight distribution is in use when it is fitted and the maker allows it or nobody said.
  const allowed: Maybe = f.given('vehicle.distributionAllowed')
    ? f.maybe('vehicle.distributionAllowed')
    : surely(true);
  const fitted: Maybe = f.given('hitch.distribution')
    ? f.maybe('hitch.distribution')
    : surely(false);

  // The tongue: measured; or by moments about the trailer's axle; or the dry tongue and a tenth
  // (common practice). With nothing to go by it is anything from zero up.
  const dry = f.number('trailer.dryTongueWeight');
  const far = f.number('trailer.ballToAxle');
  const dryKnown = f.known('trailer.dryTongueWeight');
  const byMoments =
    dryKnown && f.known('trailer.ballToAxle') && rows.length > 0 && rows.every(f.isPlaced);
  const measured = f.known('trailer.measuredTongueWeight');
  const tongue = measured
    ? f.number('trailer.measuredTongueWeight')
    : byMoments
      ? plus(dry, fromMoments())
      : dryKnown
        ? times(dry, at(1.1))
        : zeroUp;

  /**
   * Each thing turns the trailer about its axle; the ball, L ahead, holds against it. Gas that
   * nobody placed rides on the A-frame, 0.8 L ahead (common practice), so a part of 0.8 of it
   * stands on the ball; waste water, and fresh water that nobody placed, sit at the axle.
   */
  function fromMoments(): Ends {
    const turning = rows.map((row) => times(f.cell(row.weight), f.cell(row.ahead)));
    if (f.known('trailer.freshWaterAhead')) {
      turning.push(times(fresh, f.number('trailer.freshWaterAhead')));
    }
    const gasPlaced = f.known('trailer.propaneAhead');
    if (gasPlaced) turning.push(times(propane, f.number('trailer.propaneAhead')));
    const moment = sum(turning);
    const onBall = span(over(moment, at(far.lo)), over(moment, at(far.hi)));
    return gasPlaced ? onBall : plus(onBall, times(propane, at(0.8)));
  }

  return {
    trailer,
    tongue,
    far,
    inUse: andBoth(fitted, allowed),
    estimate: dryKnown && !measured && !byMoments,
    share: over(tongue, trailer),
  };
}
