import { readFileSync } from 'node:fs';
import { askedOf, readCase } from '@tarebook/casebook';
import { topics } from '@tarebook/rules';
import { remedies } from '@tarebook/rules/engine';
import { expect, test } from 'vitest';
import { changesOf } from './changes-of';

const file = new URL('../../../cases/tow-fit/crossover-and-single-axle.md', import.meta.url);
const { topic, asked } = askedOf(readCase(readFileSync(file, 'utf8')));

test('changes are tried in every other question that the same facts answer, as the command line does', async () => {
  const { remedies: found, noHelp } = await changesOf({ topic: topic.id, asked, houses: [] });
  const beside = remedies(topic, asked, Object.values(topics));
  expect(found).toEqual(beside.remedies);
  expect(noHelp).toEqual(beside.noHelp);
});

test('a dealer’s own numbers count in the case and beside it', async () => {
  const house = {
    topic: topic.id,
    name: 'Sallowbridge Trailers',
    parameters: { 'margin.towRating': { value: 25, unit: '%', reason: 'Hills.' } },
  };
  const own = await changesOf({ topic: topic.id, asked, houses: [house] });
  const usual = await changesOf({ topic: topic.id, asked, houses: [] });
  expect(own.remedies).not.toEqual(usual.remedies);
});

test('a topic that is not there is no topic', async () => {
  await expect(changesOf({ topic: 'nowhere', asked, houses: [] })).rejects.toThrow('nowhere');
});
