import type { Answer, Ends } from '@tarebook/rules/engine';

/** Where the pounds of a rig go, all of them known; in pounds. */
export type PoundsWay = {
  /** What is in the vehicle: people, their things, and what the hitch weighs. */
  readonly aboard: Ends;
  /** What of the trailer rests on the vehicle; it counts on both. */
  readonly tongue: Ends;
  /** The trailer as loaded, and what of it rests on its axles. */
  readonly trailer: Ends;
  readonly axles: Ends;
  /** What may be in and on the vehicle; undefined where nobody has read it. */
  readonly payload: Ends | undefined;
};

const closed = (ends: Ends | undefined): Ends | undefined =>
  ends && Number.isFinite(ends.lo) && Number.isFinite(ends.hi) ? ends : undefined;

/** The way of each pound, from the trailer over the ball into the payload; undefined where one end is open. */
export function poundsWayOf({ values, limits }: Answer): PoundsWay | undefined {
  const aboard = closed(values['load.aboard']);
  const tongue = closed(values['tongue.loaded']);
  const trailer = closed(values['trailer.loaded']);
  if (!aboard || !tongue || !trailer || tongue.lo < 0 || trailer.lo < tongue.hi) return undefined;
  const axles = { lo: trailer.lo - tongue.lo, hi: trailer.hi - tongue.hi, unit: trailer.unit };
  const payload = limits.find(({ id }) => id === 'payload');
  return { aboard, tongue, trailer, axles, payload: closed(payload?.limit) };
}
