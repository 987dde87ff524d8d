import type { Answer, Ends } from '@tarebook/rules/engine';
import { convert, readQuantity, unitOf, wasMisread } from '@tarebook/rules/quantity';
import { trailerBody, vehicleBody } from './bodies';
import type { Bars, Drawn, FiguresOf, Load, RigFigure } from './figure';

const inches = unitOf('in');

/** A fact as given, in inches, at the middle of its range; undefined where it is not known. */
function distance({ doc }: Drawn, id: string): number | undefined {
  const given = doc.facts[id];
  const read = typeof given === 'string' ? readQuantity(given) : undefined;
  if (!read || wasMisread(read) || !read.unit) return undefined;
  return convert((read.from + read.to) / 2, read.unit, inches);
}

const finite = (ends: Ends | undefined): Ends | undefined =>
  ends && Number.isFinite(ends.lo) && Number.isFinite(ends.hi) ? ends : undefined;

function load(answer: Answer, label: string, value: string, limit: string): Load {
  const found = answer.limits.find(({ id }) => id === limit);
  return {
    label,
    used: finite(answer.values[value]),
    limit: found && found.state !== 'not-asked' ? finite(found.limit) : undefined,
    state: found?.state ?? 'not-asked',
  };
}

const gravest = ['stop', 'unknown', 'care', 'ok'] as const;

/**
 * What rests on the ball against the gravest of all the limits that it rests on: beside an extension
 * that nobody has read, the room on the bare ball would only reassure.
 */
function onBall({ doc, answer }: Drawn): Load {
  const limits = doc.topic?.limits ?? {};
  const resting = answer.limits.filter(({ id }) => limits[id]?.used === limits.tongue?.used);
  const worst = gravest.flatMap((state) => resting.find((each) => each.state === state) ?? [])[0];
  return load(answer, 'Ball', 'tongue.loaded', worst?.id ?? 'tongue');
}

/** Tight when they carry a moment for certain, slack when for certain none. */
function barsOf({ doc, answer }: Drawn): Bars {
  if (doc.facts['hitch.distribution'] !== 'yes') return 'none';
  const moment = answer.values['bars.moment'];
  if (!moment || !Number.isFinite(moment.hi)) return 'unsure';
  if (moment.lo > 0) return 'tight';
  return moment.hi === 0 ? 'slack' : 'unsure';
}

const textOf = ({ doc }: Drawn, id: string): string => {
  const given = doc.facts[id];
  return typeof given === 'string' ? given : '';
};

/** The rig from the side, once anything that rests on an axle or the ball is known. */
export const rigFigures: FiguresOf = (drawn) => {
  const { doc, answer } = drawn;
  const wheelbase = distance(drawn, 'vehicle.wheelbase');
  const rig: RigFigure = {
    kind: 'rig',
    vehicle: vehicleBody(doc.front.title, doc.text, wheelbase),
    trailer: trailerBody(doc.front.title, doc.text, textOf(drawn, 'trailer.coupling')),
    trailerAxles: Math.min(4, Math.max(1, Math.round(Number(textOf(drawn, 'trailer.axles')) || 1))),
    wheelbase,
    overhang: distance(drawn, 'vehicle.overhang'),
    ballToAxle: distance(drawn, 'trailer.ballToAxle'),
    front: load(answer, 'Front axle', 'axle.front', 'front-axle'),
    rear: load(answer, 'Rear axle', 'axle.rear', 'rear-axle'),
    ball: onBall(drawn),
    axles: load(answer, 'Trailer axles', 'axle.trailer', 'trailer-axles'),
    bars: barsOf(drawn),
  };
  const any = [rig.front, rig.rear, rig.ball, rig.axles].some(({ used }) => used);
  return any ? [rig] : [];
};
