import { expect, test } from 'vitest';
import { towFit } from '../../topics/tow-fit/index';
import { answerTraced } from '../answer/traced';
import { defineTopic } from '../check/define';
import { shelf } from '../define/small-topic.fixture';
import { standingOn } from './standing-on';

test('a result brings just what it stands on', () => {
  const part = standingOn(shelf, 'kind.strength');
  expect(Object.keys(part.formulas)).toEqual(['kind.strength']);
  expect(Object.keys(part.facts ?? {}).toSorted()).toEqual(['shelf.kind', 'shelf.rating']);
  expect(Object.keys(part.parameters ?? {})).toEqual([]);
  expect('limits' in part).toBe(false);
});

test('lists and tables come along', () => {
  expect(Object.keys(standingOn(shelf, 'load.moment').facts ?? {})).toEqual(['boxes']);
  expect(Object.keys(standingOn(shelf, 'span.carries').tables ?? {})).toEqual(['sag']);
});

test('in another topic the result is the same, with its trace whole', () => {
  const other = defineTopic({
    ...shelf,
    ...standingOn(towFit, 'tongue.loaded', 'axle.rear'),
    limits: {},
    findings: {},
    headline: ['tongue.loaded', 'axle.rear'],
  });
  const facts = {
    'trailer.dryTongueWeight': '430 lb',
    'vehicle.curbFront': '2,600 lb',
    'vehicle.curbRear': '1,960 lb',
    'vehicle.wheelbase': '112 in',
    'vehicle.overhang': '40 in',
  };
  const [there, here] = [answerTraced(towFit, { facts }), answerTraced(other, { facts })];
  for (const name of ['tongue.loaded', 'axle.rear'] as const) {
    expect(here.values[name]).toEqual(there.values[name]);
    expect(here.trace.steps[name]).toEqual(there.trace.steps[name]);
  }
});

test('a result that is not there is told at once', () => {
  const strange: Parameters<typeof standingOn>[1][] = ['no.such'];
  expect(() => standingOn(shelf, ...strange)).toThrow('There is no result “no.such”');
});
