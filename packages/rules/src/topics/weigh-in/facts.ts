import { part } from '../../engine/define/topic';
import { custom } from '../../trade/bibliography/common';
import { printedSteps } from '../../trade/bibliography/weigh-in';

const reading = { kind: 'quantity', unit: 'lb', least: 0, most: 60_000 } as const;
const tight = 'the ticket of the pass with the bars tight';
const slack = 'the ticket of the pass with the bars slack, or without bars';
const alone = 'the ticket of the vehicle alone';

/** What the tickets print, pass by pass. */
export const ticketFacts = part({
  facts: {
    'tight.front': {
      ...reading,
      label: 'Front axle, hitched, bars tight',
      noun: 'the printed front axle with bars tight',
      ask: 'Hitched with the bars tight, what does the ticket print for the front axle?',
      where: tight,
    },
    'tight.rear': {
      ...reading,
      label: 'Rear axle, hitched, bars tight',
      noun: 'the printed rear axle with bars tight',
      ask: 'Hitched with the bars tight, what does the ticket print for the rear axle?',
      where: tight,
    },
    'tight.trailer': {
      ...reading,
      label: 'Trailer axles, hitched, bars tight',
      noun: 'the printed trailer axles with bars tight',
      ask: 'Hitched with the bars tight, what does the ticket print for the trailer’s axles?',
      where: tight,
    },
    'slack.front': {
      ...reading,
      label: 'Front axle, hitched, bars slack',
      noun: 'the printed front axle with bars slack',
      ask: 'Hitched with the bars slack, what does the ticket print for the front axle?',
      where: slack,
      means: 'Bars come slack only on the scale, and back on before it is left, at walking pace.',
    },
    'slack.rear': {
      ...reading,
      label: 'Rear axle, hitched, bars slack',
      noun: 'the printed rear axle with bars slack',
      ask: 'Hitched with the bars slack, what does the ticket print for the rear axle?',
      where: slack,
    },
    'slack.trailer': {
      ...reading,
      label: 'Trailer axles, hitched, bars slack',
      noun: 'the printed trailer axles with bars slack',
      ask: 'Hitched with the bars slack, what does the ticket print for the trailer’s axles?',
      where: slack,
    },
    'alone.front': {
      ...reading,
      label: 'Front axle, vehicle alone',
      noun: 'the printed front axle of the vehicle alone',
      ask: 'With the trailer off the hitch, what does the ticket print for the front axle?',
      where: alone,
      means: 'The hitch head stays on, with the same people and the same fuel.',
    },
    'alone.rear': {
      ...reading,
      label: 'Rear axle, vehicle alone',
      noun: 'the printed rear axle of the vehicle alone',
      ask: 'With the trailer off the hitch, what does the ticket print for the rear axle?',
      where: alone,
    },
    'alone.sameLoad': {
      kind: 'yes-no',
      label: 'Vehicle alone: head on, same people and fuel',
      noun: 'whether the vehicle was weighed alone with the head on and the same load',
      ask: 'Did the hitch head stay on for the pass alone, with the same people and fuel?',
      where: 'told by whoever drove',
      silent: {
        value: 'yes',
        says: 'The vehicle alone was weighed with the hitch head on, the same people and fuel.',
        source: custom,
      },
    },
    'scale.step': {
      kind: 'quantity',
      unit: 'lb',
      least: 0,
      most: 200,
      exact: true,
      label: 'Step in which the scale prints',
      noun: 'the step of the scale',
      ask: 'In what steps does the scale print?',
      where: 'the ticket: do all figures end in 0, in 20s, in 5s?',
      silent: { value: 20, says: 'A scale that prints in steps of 20 lb.', source: printedSteps },
    },
  },
});

/** Weighed by other means: wheel by wheel, and the tongue over a lever. */
export const otherFacts = part({
  facts: {
    'trailer.leftWheels': {
      ...reading,
      label: 'Trailer’s left wheels',
      ask: 'What do the trailer’s left wheels weigh together?',
      where: 'a wheel scale, rig level and hitched',
    },
    'trailer.rightWheels': {
      ...reading,
      label: 'Trailer’s right wheels',
      ask: 'What do the trailer’s right wheels weigh together?',
      where: 'a wheel scale, rig level and hitched',
    },
    'lever.reading': {
      kind: 'quantity',
      unit: 'lb',
      least: 0,
      most: 1_000,
      label: 'Small scale under the beam',
      noun: 'the small scale',
      instead: 'Read the small scale once more',
      ask: 'With the coupler resting on the beam, what does the small scale show, the bare beam’s share taken off?',
      where: 'a bathroom scale under one end of a beam',
    },
    'lever.toScale': {
      kind: 'quantity',
      unit: 'in',
      least: 6,
      most: 120,
      label: 'Coupler to the support on the scale',
      ask: 'How far along the beam is it from the coupler to the support on the scale?',
      where: 'a tape measure',
    },
    'lever.toBlock': {
      kind: 'quantity',
      unit: 'in',
      least: 3,
      most: 120,
      label: 'Coupler to the support on the block',
      ask: 'How far is it from the coupler to the support on the block?',
      where: 'a tape measure',
    },
  },
});
