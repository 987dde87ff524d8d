import { topics } from '@tarebook/rules';
import {
  type Answer,
  answerTraced,
  type FactsGiven,
  InputError,
  type State,
  type Topic,
} from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { randomFrom, seed } from '../untold/rigs';

const asOf = '2026-11-01';
const rigs = 200;

/** The topics that hold a rig against ratings by what was told of it, and not by what a scale showed. */
const towing = ['tow-fit', 'truck-camper', 'hitch-setup', 'tires'] as const;

/** What the topic of tires calls a tire of the rear, towing calls the rear tires. */
const byPlace = {
  front: 'vehicle-tires-front',
  rear: 'vehicle-tires-rear',
  trailer: 'trailer-tires',
} as const;
const places = ['front', 'rear', 'trailer'] as const;

type Random = () => number;
const between = (random: Random, lo: number, hi: number): number =>
  Math.round(lo + random() * (hi - lo));

/** A figure as people tell it: exactly, about, as a range, or that they do not know. */
function told(random: Random, value: number, unit: string): string {
  const how = random();
  if (how < 0.7) return `${value} ${unit}`;
  if (how < 0.8) return `about ${value} ${unit}`;
  if (how < 0.83) return `at least ${value} ${unit}`;
  if (how < 0.86) return `at most ${value} ${unit}`;
  if (how < 0.95) return `${value} to ${value + Math.max(1, Math.round(value * 0.1))} ${unit}`;
  return 'unknown';
}

const row = (weight: string, ahead: string | undefined) => [
  ahead === undefined ? { weight } : { weight, ahead },
];

/** A truck with a camper in its bed and a trailer behind, of which a share is told. */
function rigOf(random: Random, share: number): FactsGiven {
  const of = (lo: number, hi: number, unit = 'lb') => told(random, between(random, lo, hi), unit);
  const exact = (lo: number, hi: number, unit = 'lb') => `${between(random, lo, hi)} ${unit}`;
  const oneOf = (...words: readonly string[]) => words[between(random, 0, words.length - 1)] ?? '';
  const all: FactsGiven = {
    'vehicle.placardPayload': exact(900, 4_000),
    'vehicle.gvwr': exact(6_500, 12_000),
    'vehicle.gcwr': exact(11_000, 20_000),
    'vehicle.gawrFront': exact(3_300, 5_500),
    'vehicle.gawrRear': exact(3_500, 7_000),
    'vehicle.curbWeight': of(4_900, 7_300),
    'vehicle.curbFront': of(2_900, 4_200),
    'vehicle.curbRear': of(2_000, 3_100),
    'vehicle.wheelbase': exact(130, 175, 'in'),
    'vehicle.overhang': exact(40, 65, 'in'),
    'vehicle.maxTrailerWeight': exact(4_000, 12_000),
    'vehicle.maxTongueCarried': exact(350, 1_000),
    'vehicle.tireCapacityFront': exact(1_500, 3_200),
    'vehicle.tireCapacityRear': exact(1_500, 3_400),
    'vehicle.tireKind': oneOf('passenger', 'light-truck'),
    'vehicle.type': oneOf('truck', 'multipurpose', 'passenger-car'),
    'load.occupants': row(of(150, 700), random() < 0.5 ? '60 in' : undefined),
    'load.cargo': row(of(20, 300), random() < 0.5 ? '20 in' : undefined),
    'hitch.hardwareWeight': of(0, 120),
    'hitch.distribution': oneOf('yes', 'no'),
    'hitch.extension': exact(0, 30, 'in'),
    'hitch.extensionRating': exact(300, 900),
    'camper.weight': of(600, 3_200),
    'camper.center': of(-5, 30, 'in'),
    'camper.cargo': row(of(50, 400), random() < 0.5 ? '30 in' : undefined),
    'camper.freshWater': of(0, 40, 'gal'),
    'camper.labelWater': exact(0, 30, 'gal'),
    'camper.propane': of(0, 40),
    'camper.tieDowns': oneOf('frame', 'bed'),
    'trailer.dryWeight': of(1_500, 8_000),
    'trailer.gvwr': exact(2_000, 9_500),
    'trailer.axles': String(between(random, 1, 2)),
    'trailer.gawr': exact(2_000, 5_000),
    'trailer.dryTongueWeight': of(150, 800),
    'trailer.measuredTongueWeight': of(150, 900),
    'trailer.ballToAxle': exact(10, 20, 'ft'),
    'trailer.cargo': row(of(50, 700), random() < 0.5 ? '4 ft' : undefined),
    'trailer.freshWater': of(0, 40, 'gal'),
    'trailer.propane': of(0, 60),
    'trailer.tireCapacity': exact(1_000, 3_000),
    'trailer.tireKind': oneOf('passenger', 'special-trailer'),
    'tire.kind': oneOf('passenger', 'light-truck'),
    'tire.place': places[between(random, 0, 2)] ?? 'rear',
  };
  const kept = Object.entries(all).filter(([id]) => id === 'tire.place' || random() < share);
  return Object.fromEntries(kept);
}

/** What one topic says of the facts of a rig that are its own; nothing where they contradict each other. */
function answerOf(topic: Topic, facts: FactsGiven): Answer | undefined {
  const own = Object.entries(facts).filter(([id]) => Object.hasOwn(topic.facts, id));
  try {
    return answerTraced(topic, { facts: Object.fromEntries(own), asOf });
  } catch (problem) {
    if (problem instanceof InputError) return undefined;
    throw problem;
  }
}

const capacityOf = {
  front: 'vehicle.tireCapacityFront',
  rear: 'vehicle.tireCapacityRear',
  trailer: 'trailer.tireCapacity',
} as const;

/** The same rig on tires about as strong as what stands on them: there a tenth less decides. */
function onTightTires(facts: FactsGiven, random: Random): FactsGiven {
  const place = places.find((each) => each === facts['tire.place']) ?? 'rear';
  const towFit = topics['tow-fit'];
  const load = (towFit && answerOf(towFit, facts))?.values[`tire.${place}`]?.hi ?? 0;
  if (!Number.isFinite(load) || load < 500 || load > 10_000) return facts;
  const capacity = `${Math.round(load * (1 + random() * 0.2))} lb`;
  return { ...facts, [capacityOf[place]]: capacity };
}

const isYes = (state: State): boolean => state === 'ok' || state === 'care';

/** How each topic finds each limit of one rig, by the name that towing has for it. */
function statesOf(facts: FactsGiven): ReadonlyMap<string, readonly (readonly [string, State])[]> {
  const found = new Map<string, (readonly [string, State])[]>();
  const place = places.find((each) => each === facts['tire.place']);
  for (const id of towing) {
    const topic = topics[id];
    const answer = topic && answerOf(topic, facts);
    for (const limit of answer?.limits ?? []) {
      const name = limit.id === 'tire-load' && place ? byPlace[place] : limit.id;
      found.set(name, [...(found.get(name) ?? []), [id, limit.state]]);
    }
  }
  return found;
}

/** Limits that at least two topics hold of a rig with a camper and a trailer. */
const shared = [
  'payload',
  'vehicle-gross',
  'front-axle',
  'rear-axle',
  'extension',
  'vehicle-tires-rear',
  'vehicle-tires-front',
  'trailer-tires',
];

test('no topic says yes where another says no of the same limit of one rig', () => {
  const random = randomFrom(seed);
  const apart: string[] = [];
  const pairs = new Map<string, number>();
  for (let i = 0; i < rigs; i += 1) {
    const bare = rigOf(random, [1, 0.75, 0.5, 0.25][i % 4] ?? 1);
    const facts = i % 4 < 2 ? onTightTires(bare, random) : bare;
    for (const [limit, states] of statesOf(facts)) {
      const says = states.map(([, state]) => state).filter((state) => state !== 'not-asked');
      if (says.length < 2) continue;
      pairs.set(limit, (pairs.get(limit) ?? 0) + 1);
      if (!says.includes('stop') || !says.some(isYes)) continue;
      apart.push(`${limit}: ${states.map((each) => each.join(' ')).join(', ')}`);
    }
  }
  expect(apart).toEqual([]);
  for (const limit of shared) expect(pairs.get(limit) ?? 0, limit).toBeGreaterThan(20);
});

test('where passenger tires count for less than their sidewall, the answer says so', () => {
  const says = (facts: FactsGiven): readonly string[] =>
    ['tow-fit', 'truck-camper'].flatMap((id) => {
      const topic = topics[id];
      const answer = topic && answerOf(topic, facts);
      const told = answer?.assumed.filter(({ says }) => says.startsWith('Passenger tires'));
      return told?.length ? [`${id}: ${told.map((each) => each.says).join(' ')}`] : [];
    });
  const rear = { 'vehicle.tireCapacityRear': '1,700 lb', 'vehicle.tireKind': 'passenger' };
  expect(says({ ...rear, 'vehicle.type': 'truck' })).toEqual([
    'tow-fit: Passenger tires on a truck or multipurpose vehicle count with their rating divided by 1.1.',
    'truck-camper: Passenger tires on a truck or multipurpose vehicle count with their rating divided by 1.1.',
  ]);
  expect(says({ ...rear, 'vehicle.type': 'passenger-car' })).toEqual([]);
  const trailer = { 'trailer.tireCapacity': '1,500 lb', 'tire.kind': 'passenger' };
  expect(says(trailer)).toEqual([
    'tow-fit: Passenger tires on a trailer count with their rating divided by 1.1.',
  ]);
  expect(says({ ...trailer, 'tire.place': 'rear' })).toEqual([]);
});

test('an extension that may be in is asked for its rating, and passenger tires for the type', () => {
  const topic = topics['tow-fit'];
  const of = (facts: FactsGiven) => topic && answerOf(topic, facts);
  const level = (facts: FactsGiven) =>
    of(facts)?.findings.find(({ id }) => id === 'extension-rating')?.level;
  expect(level({ 'hitch.extension': 'unknown' })).toBe('if');
  expect(level({ 'hitch.extension': '0 in' })).toBe('not-asked');
  expect(level({})).toBe('not-asked');
  const tires = { 'vehicle.tireCapacityRear': '1,640 lb', 'vehicle.tireKind': 'passenger' };
  const says = (facts: FactsGiven) =>
    of(facts)
      ?.assumed.map(({ says }) => says)
      .join(' ');
  expect(says(tires)).toMatch(/its type was not told/);
  expect(says({ ...tires, 'vehicle.type': 'truck' })).not.toMatch(/its type was not told/);
});
