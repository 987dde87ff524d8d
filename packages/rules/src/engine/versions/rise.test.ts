import { expect, test } from 'vitest';
import { towFit } from '../../topics/tow-fit/index';
import { defineTopic } from '../check/define';
import type { Topic } from '../define/shapes';
import { compareTopics } from './compare';
import { hasRisenEnough, reckonedOf, riseFor, risen } from './rise';

const was: Topic = towFit;
const { payload } = was.limits;
const payloadUsed = was.formulas['payload.used'];
const tongue = was.parameters['tongue.addOn'];
const share = was.findings['tongue-share'];
if (!payload || !payloadUsed || !tongue || !share) throw new Error('Tow fit has lost a part.');

const changed: Readonly<Record<string, Partial<Topic>>> = {
  'a label': {
    formulas: { ...was.formulas, 'payload.used': { ...payloadUsed, label: 'Used of the payload' } },
  },
  'a source': {
    parameters: { ...was.parameters, 'tongue.addOn': { ...tongue, source: payload.source } },
  },
  'what is said first': { cautions: [] },
  'a parameter that nothing uses yet': {
    parameters: { ...was.parameters, 'tongue.spare': tongue },
  },
  'a formula of another family of the trade': {
    formulas: { ...was.formulas, 'payload.used': { ...payloadUsed, is: 'trailer.loaded' } },
  },
  'a value': {
    parameters: {
      ...was.parameters,
      'tongue.addOn': { ...tongue, values: [{ from: '2020-01-01', value: 12 }] },
    },
  },
  'where a finding leads': {
    findings: {
      ...was.findings,
      'tongue-share': { ...share, see: { topic: 'tires', says: 'Tires' } },
    },
  },
  'a limit more': { limits: { ...was.limits, again: payload } },
  'a limit less': { limits: {} },
};

test.each([
  ['a label', 'patch', true],
  ['a source', 'patch', true],
  ['where a finding leads', 'patch', true],
  ['what is said first', 'patch', true],
  ['a parameter that nothing uses yet', 'minor', false],
  ['a formula of another family of the trade', 'major', false],
  ['a value', 'major', false],
  ['a limit more', 'major', false],
  ['a limit less', 'major', false],
] as const)('%s raises the %s number', (what, wanted, reckonedAlike) => {
  const now: Topic = defineTopic<Topic>({ ...was, ...changed[what] });
  expect(riseFor(compareTopics(was, now))).toBe(wanted);
  const alike = JSON.stringify(reckonedOf(was)) === JSON.stringify(reckonedOf(now));
  expect(alike).toBe(reckonedAlike);
});

test('nothing need rise where nothing changed', () => {
  expect(riseFor(compareTopics(was, { ...was }))).toBe('none');
});

test('a version that has risen too little is found out', () => {
  const now: Topic = defineTopic<Topic>({ ...was, ...changed['a value'] });
  const at = (version: string) => hasRisenEnough({ ...was, version: '1.2.3' }, { ...now, version });
  expect(['1.2.3', '1.2.4', '1.3.0', '2.0.0'].map(at)).toEqual([false, false, false, true]);
  expect([risen('1.2.3', '1.2.3'), risen('1.2.3', '1.2.9'), risen('1.2.3', '1.3.0')]).toEqual([
    'none',
    'patch',
    'minor',
  ]);
});
