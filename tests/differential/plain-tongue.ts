import { at, closed, type Ends, larger, minus, over, plus, span, times, zeroUp } from './ends';
import type { PlainRow, Reader } from './plain-case';

const none = at(0);
const sum = (all: Ends[]): Ends => all.reduce((a, b) => plus(a, b), none);

/** House choices of where something rides that nobody placed, as a share of its weight. */
const unplaced: Ends = { lo: -0.15, hi: 0.5 };
export const tankShare = 0.35;
/** By custom propane stands on the A-frame. */
const aFrame = at(0.8);
const addOn = at(1.1);

const tanks = ['trailer.freshWater', 'trailer.grayWater', 'trailer.blackWater'];

/** What the trailer weighs on the road, and what it puts on the ball or the pin. */
export function plainTongue(f: Reader) {
  const rows = [...f.rows('trailer.options'), ...f.rows('trailer.cargo')];
  const weigh = (list: string): Ends => sum(f.rows(list).map((row) => f.cell(row.weight)));
  const water = (tank: string): Ends => times(f.number(tank, none), at(8.34));
  const allWater = sum(tanks.map(water));
  const propane = f.number('trailer.propane', none);

  // Unloaded: the brochure's dry weight with its options, or what the label on that very trailer
  // leaves below its own rating, whichever is more.
  const byBrochure = plus(f.number('trailer.dryWeight'), weigh('trailer.options'));
  const byLabel = minus(f.number('trailer.gvwr'), f.number('trailer.cargoCapacity'));
  const labelKnown = f.known('trailer.gvwr') && f.known('trailer.cargoCapacity');
  const ways = [
    ...(f.known('trailer.dryWeight') ? [byBrochure] : []),
    ...(labelKnown ? [byLabel] : []),
  ];
  const unloaded = ways.length === 0 ? zeroUp : ways.reduce(larger);
  const loaded = plus(unloaded, weigh('trailer.cargo'), allWater, propane);

  const measured = f.known('trailer.measuredTongueWeight');
  const dryKnown = f.known('trailer.dryTongueWeight');
  const dry = f.number('trailer.dryTongueWeight');
  const far = f.number('trailer.ballToAxle');

  const mayBeAboard = (weight: string): boolean => f.number(weight, none).hi > 0;
  const isPlaced = (weight: string): boolean => mayBeAboard(weight) && f.known(`${weight}Ahead`);
  const somethingPlaced =
    rows.some((row) => f.place(row) !== undefined) || [...tanks, 'trailer.propane'].some(isPlaced);
  const byMoments = !measured && dryKnown && f.known('trailer.ballToAxle') && somethingPlaced;
  const byTenth = !measured && !byMoments && dryKnown;

  /** The part of a weight that stands on the ball, at a distance ahead of the axle. */
  const lever = (ahead: Ends): Ends => span(over(ahead, at(far.lo)), over(ahead, at(far.hi)));
  const ofRow = (row: PlainRow): Ends => {
    const ahead = f.place(row);
    return times(f.cell(row.weight), ahead ? lever(ahead) : unplaced);
  };
  const placedOr = (weight: string, of: Ends, otherwise: Ends): Ends => {
    const ahead = `${weight}Ahead`;
    return times(of, f.known(ahead) ? lever(f.number(ahead)) : otherwise);
  };
  const turned = (): Ends =>
    sum([
      ...rows.map(ofRow),
      ...tanks.map((tank) => placedOr(tank, water(tank), { lo: -tankShare, hi: tankShare })),
      placedOr('trailer.propane', propane, aFrame),
    ]);

  const tongue = measured
    ? f.number('trailer.measuredTongueWeight')
    : byMoments
      ? plus(dry, turned())
      : byTenth
        ? times(dry, addOn)
        : zeroUp;

  // A loaded tongue is never set against an empty trailer, nor an estimate against a loaded one.
  const ofDry = byTenth && f.known('trailer.dryWeight');
  const share = ofDry ? over(dry, f.number('trailer.dryWeight')) : over(tongue, loaded);

  // What rides behind the axles lightens the ball; by how much hangs on how far the ball is.
  const behind = sum(
    rows.map((row) => {
      const { lo, hi } = f.place(row) ?? none;
      return times(f.cell(row.weight), { lo: Math.min(0, lo), hi: Math.min(0, hi) });
    }),
  );
  const isUnreckoned = byTenth && !f.known('trailer.ballToAxle');

  return {
    behind: isUnreckoned ? behind : none,
    unloaded,
    unloadedKnown: ways.length > 0,
    loaded,
    allWater,
    tongue,
    tongueKnown: measured || dryKnown,
    estimate: byTenth,
    share,
    shareKnown: closed(share) && (ofDry || (closed(tongue) && closed(loaded))),
    far,
  };
}

export type PlainTongue = ReturnType<typeof plainTongue>;
