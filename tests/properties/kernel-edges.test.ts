import { towFit } from '@tarebook/rules';
import { type FactsGiven, levels, type Topic } from '@tarebook/rules/engine';
import { describe, expect, test } from 'vitest';
import { askEngine, roomFor } from '../../packages/sweep/src/kernel/found';
import type { Step } from '../../packages/sweep/src/kernel/graph';
import { inputsOf } from '../../packages/sweep/src/kernel/inputs';
import { pairing } from '../../packages/sweep/src/kernel/pairs';
import { type Program, programOf } from '../../packages/sweep/src/kernel/program';
import { towSides as sides } from '../../packages/sweep/src/kernel/sides';

/*
 * The law of the untold in kernels on a rig made so that everything in it is in order: one figure after
 * another is told so that it stops, so that it may stop or not, and not at all. What must come out is
 * known by hand, without asking the explained answer or a kernel. Weights are in pounds.
 */
const asOf = '2026-11-01';
const topic: Topic = towFit;
const program = programOf(topic, sides);

/** A rig with room in every rating, all of it told. */
const sound: FactsGiven = {
  'vehicle.maxTrailerWeight': '9,000 lb',
  'vehicle.maxTongueCarried': '1,200 lb',
  'vehicle.placardPayload': '1,900 lb',
  'vehicle.gvwr': '7,500 lb',
  'vehicle.curbWeight': '5,600 lb',
  'vehicle.curbFront': '3,000 lb',
  'vehicle.curbRear': '2,600 lb',
  'vehicle.gawrFront': '4,000 lb',
  'vehicle.gawrRear': '4,600 lb',
  'vehicle.gcwr': '16,000 lb',
  'vehicle.wheelbase': '145 in',
  'vehicle.overhang': '46 in',
  'vehicle.tireCapacityFront': '2,500 lb',
  'vehicle.tireCapacityRear': '2,600 lb',
  'vehicle.maxFrontalArea': '60 ft²',
  'vehicle.sevenWay': 'yes',
  'vehicle.brakeController': 'yes',
  'vehicle.towPackageNeeded': 'no',
  'vehicle.distributionAllowed': 'no',
  'trailer.dryWeight': '3,600 lb',
  'trailer.gvwr': '5,600 lb',
  'trailer.axles': '2',
  'trailer.gawr': '3,500 lb',
  'trailer.dryTongueWeight': '440 lb',
  'trailer.couplerRating': '7,000 lb',
  'trailer.tireCapacity': '1,800 lb',
  'trailer.frontalArea': '40 ft²',
  'trailer.brakes': 'electric',
  'trailer.coupling': 'ball',
  'load.occupants': [
    { label: 'Driver', weight: '180 lb', ahead: '4 ft' },
    { label: 'Partner', weight: '150 lb', ahead: '4 ft' },
  ],
  'hitch.hardwareWeight': '30 lb',
  'hitch.distribution': 'no',
  'trailer.cargo': [{ label: 'A weekend', weight: '200 lb' }],
};

/** Figures of which each by itself stops this rig, told so. */
const stopping: Readonly<Record<string, string>> = {
  'vehicle.maxTrailerWeight': '3,000 lb',
  'vehicle.maxTongueCarried': '200 lb',
  'vehicle.placardPayload': '600 lb',
  'vehicle.gvwr': '6,000 lb',
  'vehicle.gawrFront': '2,500 lb',
  'vehicle.gawrRear': '2,600 lb',
  'vehicle.gcwr': '9,000 lb',
  'vehicle.tireCapacityFront': '1,000 lb',
  'vehicle.tireCapacityRear': '1,000 lb',
  'vehicle.maxFrontalArea': '20 ft²',
  'trailer.gvwr': '3,700 lb',
  'trailer.gawr': '1,200 lb',
  'trailer.couplerRating': '3,000 lb',
  'trailer.tireCapacity': '700 lb',
  'trailer.dryWeight': '9,500 lb',
  'trailer.dryTongueWeight': '1,300 lb',
  'vehicle.curbWeight': '7,400 lb',
};

/** From where it stops to where it does not, or the other way round. */
function anywhere(id: string): FactsGiven[string] {
  const [a, b] = [sound[id], stopping[id]].map((text) => parseFloat(`${text}`.replaceAll(',', '')));
  const unit = stopping[id]?.split(' ')[1] ?? '';
  return { lo: Math.min(a ?? 0, b ?? 0), hi: Math.max(a ?? 0, b ?? 0), unit };
}

type Wanted = 'goes' | 'stops' | 'open' | 'does not go' | 'is not stopped';

/** Whether what a kernel says is as it must be; where it leaves it to the engine it says nothing wrong. */
function holds(wanted: Wanted, found: number): boolean {
  const level = levels[found];
  if (level === undefined) return wanted === 'open' || wanted === 'does not go';
  if (wanted === 'stops') return level === 'stop';
  if (wanted === 'open') return level === 'unknown';
  if (wanted === 'goes') return level !== 'stop' && level !== 'unknown';
  return wanted === 'does not go' ? level === 'unknown' || level === 'stop' : level !== 'stop';
}

type Tried = { readonly says: string; readonly facts: FactsGiven; readonly wanted: Wanted };

const told = (facts: FactsGiven, says: string, wanted: Wanted): Tried => ({
  says,
  facts: { ...sound, ...facts },
  wanted,
});

const figures = Object.keys(sound).filter((id) => topic.facts[id]?.kind === 'quantity');
const tried: readonly Tried[] = [
  told({}, 'all is in order', 'goes'),
  // Nothing times what nobody knows is nothing.
  told({ 'camper.weight': '0 lb' }, 'a camper of no weight', 'goes'),
  ...Object.entries(stopping).flatMap(([id, value]) => [
    told({ [id]: value }, `${id} stops`, 'stops'),
    told({ [id]: anywhere(id) }, `${id} may stop`, 'open'),
    // Of a stop that stays certain whatever the other comes to nothing better is said.
    ...figures
      .filter((other) => other !== id)
      .map((other) =>
        told({ [id]: value, [other]: 'unknown' }, `${id} stops, ${other} unknown`, 'does not go'),
      ),
  ]),
  // It may still be what it is in the rig that goes.
  ...Object.keys(sound)
    .filter((id) => !Array.isArray(sound[id]))
    .map((id) => told({ [id]: 'unknown' }, `${id} unknown`, 'is not stopped')),
];

/** What a kernel says of each; what is not of vehicle or trailer makes a case of its own. */
function judged(by: Program, all: readonly Tried[]): readonly number[] {
  const { places, over } = pairing({ topic, sides, asOf, program: by, withRoom: false });
  const inputs = all.map(({ facts }) => inputsOf(topic, facts));
  const set = over(places('rows', inputs), places('columns', inputs));
  const caseOf = ({ facts }: Tried) =>
    JSON.stringify(
      Object.entries(facts).filter(([id]) => !/^(vehicle|trailer)\.[a-zA-Z]+$/.test(id)),
    );
  const found = all.map(() => askEngine);
  for (const text of new Set(all.map(caseOf))) {
    const members = all.flatMap((each, at) => (caseOf(each) === text ? [at] : []));
    const judge = set(inputs[members[0] ?? 0] ?? new Map());
    for (const at of members) {
      const room = roomFor(all.length);
      judge(at, room);
      found[at] = room.levels[at] ?? askEngine;
    }
  }
  return found;
}

function breaches(by: Program): readonly string[] {
  const found = judged(by, tried);
  return tried.flatMap(({ says, wanted }, at) => {
    const level = found[at] ?? askEngine;
    return holds(wanted, level) ? [] : [`${says}: ${levels[level] ?? 'asks'}, and not ${wanted}`];
  });
}

describe('a rig with room everywhere, told otherwise in one figure', () => {
  test('goes, stops or is open as it must', { timeout: 60_000 }, () => {
    expect(breaches(program)).toEqual([]);
  });

  const steps = (change: (step: Step) => Partial<Step>): Program => ({
    ...program,
    steps: program.steps.map((step) => ({ ...step, ...change(step) })),
  });
  const read = (as: (name: string) => string): Program =>
    steps((step) =>
      step.op === 'input'
        ? { name: as(step.name), least: -Infinity, most: Infinity, mayBeNone: true }
        : {},
    );
  const only = (op: Step['op'], change: (step: Step) => Partial<Step>): Program =>
    steps((step) => (step.op === op ? change(step) : {}));

  test.each<readonly [string, Program]>([
    ['the unknown is the most that it may be', read((name) => name.replace(/ lo$/, ' hi'))],
    ['the unknown is the least that it may be', read((name) => name.replace(/ hi$/, ' lo'))],
    ['less is more', only('less', ({ args }) => ({ args: args.toReversed() }))],
    ['no number is a great one', only('number-or', () => ({ value: 1e9, most: 1e9 }))],
  ])('a kernel to which %s is caught', { timeout: 60_000 }, (_, wrong) => {
    expect(breaches(wrong).length).toBeGreaterThan(0);
  });
});
